package housewright.signal;

import housewright.model.Kind;
import housewright.model.NamePattern;
import housewright.model.Port;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.model.Tie;
import housewright.signal.GraphBuilder.PortKey;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Which network ports are joined: through cables, passive panels and network switches, within one VLAN. */
final class Network {
    /** The network a switch port carries when nothing is said. */
    static final int DEFAULT_VLAN = 1;

    private record Hop(PortKey to, String name) {}

    /** Either what the path runs over, in order, or why there is none. */
    record Answer(@Nullable List<String> over, String why) {}

    private final GraphBuilder graph;
    private final Map<PortKey, List<Hop>> links = new HashMap<>();
    private Map<PortKey, List<Integer>> supposed = Map.of();

    Network(GraphBuilder graph) {
        this.graph = graph;
    }

    void link(PortKey one, PortKey other, String cable) {
        links.computeIfAbsent(one, key -> new ArrayList<>()).add(new Hop(other, cable));
        links.computeIfAbsent(other, key -> new ArrayList<>()).add(new Hop(one, cable));
    }

    /** The path of fewest hops between two ports, first in order of the file where several are as short. */
    Answer path(PortKey from, PortKey to, @Nullable Integer vlan) {
        if (vlan != null) {
            List<String> over = search(from, to, vlan);
            return new Answer(over, over != null ? "" : why(from, to) + " within VLAN " + vlan);
        }
        TreeSet<Integer> candidates = new TreeSet<>(List.of(DEFAULT_VLAN));
        graph.pieces.forEach(piece -> piece.equipment().vlans().values().forEach(candidates::addAll));
        List<String> best = null;
        for (int each : candidates) {
            List<String> over = search(from, to, each);
            if (over != null && (best == null || over.size() < best.size())) {
                best = over;
            }
        }
        return new Answer(best, best != null ? "" : why(from, to));
    }

    private String why(PortKey from, PortKey to) {
        return name(from) + " and " + name(to) + " are not on one network";
    }

    private String name(PortKey key) {
        return graph.pieces.get(key.piece()).id() + "." + key.port();
    }

    private @Nullable List<String> search(PortKey from, PortKey to, int vlan) {
        if (!carries(from, vlan) || !carries(to, vlan)) {
            return null;
        }
        Map<PortKey, PortKey> cameFrom = new HashMap<>();
        Map<PortKey, String> cameOver = new HashMap<>();
        ArrayDeque<PortKey> queue = new ArrayDeque<>(List.of(from));
        cameFrom.put(from, from);
        while (!queue.isEmpty()) {
            PortKey at = queue.remove();
            if (at.equals(to)) {
                return over(from, to, cameFrom, cameOver);
            }
            for (Hop hop : next(at, at.equals(from))) {
                if (!cameFrom.containsKey(hop.to()) && carries(hop.to(), vlan)) {
                    cameFrom.put(hop.to(), at);
                    cameOver.put(hop.to(), hop.name());
                    queue.add(hop.to());
                }
            }
        }
        return null;
    }

    private static List<String> over(
            PortKey from, PortKey to, Map<PortKey, PortKey> cameFrom, Map<PortKey, String> cameOver) {
        List<String> over = new ArrayList<>();
        for (PortKey at = to; !at.equals(from); at = cameFrom.getOrDefault(at, from)) {
            over.add(cameOver.getOrDefault(at, ""));
        }
        Collections.reverse(over);
        return over;
    }

    /** Along the cables in this port; and, unless we start here, across the switch or panel it belongs to. */
    private List<Hop> next(PortKey at, boolean start) {
        List<Hop> hops = new ArrayList<>(links.getOrDefault(at, List.of()));
        Piece piece = graph.pieces.get(at.piece());
        Layout layout = piece.layout();
        if (layout == null) {
            return hops;
        }
        if (layout.model.kind() == Kind.SWITCH) {
            for (Socket socket : layout.shape.sockets().values()) {
                if (socket.port().signal() == Signal.ETHERNET && !socket.name().equals(at.port())) {
                    PortKey other = new PortKey(at.piece(), socket.name());
                    if (links.containsKey(other)) {
                        hops.add(new Hop(other, piece.id()));
                    }
                }
            }
        }
        if (!start) {
            for (Tie tie : layout.model.ties()) {
                for (Tie.Pair pair : tie.pairs()) {
                    if (pair.one().equals(at.port())) {
                        hops.add(new Hop(new PortKey(at.piece(), pair.other()), piece.id()));
                    } else if (pair.other().equals(at.port())) {
                        hops.add(new Hop(new PortKey(at.piece(), pair.one()), piece.id()));
                    }
                }
            }
        }
        return hops;
    }

    /** A port that says nothing carries the default network on a switch, and whatever it is given elsewhere. */
    private boolean carries(PortKey key, int vlan) {
        List<Integer> instead = supposed.get(key);
        if (instead != null) {
            return instead.contains(vlan);
        }
        Piece piece = graph.pieces.get(key.piece());
        for (Map.Entry<NamePattern, List<Integer>> each :
                piece.equipment().vlans().entrySet()) {
            if (each.getKey().names().contains(key.port())) {
                return each.getValue().contains(vlan);
            }
        }
        Layout layout = piece.layout();
        return layout == null || layout.model.kind() != Kind.SWITCH || vlan == DEFAULT_VLAN;
    }

    /** The switch port that the cable in this port leads to, through panels; null where there is none. */
    @Nullable
    PortKey switchPortAt(PortKey port) {
        Map<PortKey, PortKey> seen = new HashMap<>();
        ArrayDeque<PortKey> queue = new ArrayDeque<>(List.of(port));
        seen.put(port, port);
        while (!queue.isEmpty()) {
            PortKey at = queue.remove();
            if (!at.equals(port) && isSwitch(at)) {
                return at;
            }
            for (Hop hop : next(at, at.equals(port))) {
                if (seen.putIfAbsent(hop.to(), at) == null) {
                    queue.add(hop.to());
                }
            }
        }
        return null;
    }

    private boolean isSwitch(PortKey key) {
        Layout layout = graph.pieces.get(key.piece()).layout();
        return layout != null && layout.model.kind() == Kind.SWITCH;
    }

    /** The VLANs a switch port carries. */
    List<Integer> carried(PortKey key) {
        for (Map.Entry<NamePattern, List<Integer>> each :
                graph.pieces.get(key.piece()).equipment().vlans().entrySet()) {
            if (each.getKey().names().contains(key.port())) {
                return each.getValue();
            }
        }
        return List.of(DEFAULT_VLAN);
    }

    /** Free network ports on this side of a break: the port itself, or those of every switch it is joined to. */
    List<PortKey> freeOnSideOf(PortKey port) {
        List<PortKey> found = new ArrayList<>();
        if (!links.containsKey(port)) {
            return List.of(port);
        }
        Map<PortKey, PortKey> seen = new HashMap<>();
        ArrayDeque<PortKey> queue = new ArrayDeque<>(List.of(port));
        java.util.Set<Integer> switches = new java.util.LinkedHashSet<>();
        seen.put(port, port);
        while (!queue.isEmpty()) {
            PortKey at = queue.remove();
            if (isSwitch(at)) {
                switches.add(at.piece());
            }
            for (Hop hop : next(at, at.equals(port))) {
                if (seen.putIfAbsent(hop.to(), at) == null) {
                    queue.add(hop.to());
                }
            }
        }
        for (int piece : switches) {
            Layout layout = graph.pieces.get(piece).layout();
            for (Socket socket :
                    layout == null ? List.<Socket>of() : layout.shape.sockets().values()) {
                PortKey key = new PortKey(piece, socket.name());
                if (socket.port().signal() == Signal.ETHERNET
                        && !links.containsKey(key)
                        && graph.plugged.getOrDefault(key, List.of()).isEmpty()) {
                    found.add(key);
                }
            }
        }
        return found;
    }

    @Nullable
    Port port(PortKey key) {
        Layout layout = graph.pieces.get(key.piece()).layout();
        Socket socket =
                layout == null ? null : layout.shape.findSocket(key.port()).orElse(null);
        return socket == null ? null : socket.port();
    }

    /** The two would be on one network if a cable joined these free ports. */
    boolean wouldJoin(PortKey from, PortKey to, @Nullable Integer vlan, PortKey one, PortKey other) {
        link(one, other, "");
        boolean joined = path(from, to, vlan).over() != null;
        unlink(one, other);
        unlink(other, one);
        return joined;
    }

    private void unlink(PortKey one, PortKey other) {
        List<Hop> hops = links.getOrDefault(one, new ArrayList<>());
        hops.remove(new Hop(other, ""));
        if (hops.isEmpty()) {
            links.remove(one);
        }
    }

    /** The two would be on one network if a switch port carried these VLANs. */
    boolean wouldJoin(PortKey from, PortKey to, @Nullable Integer vlan, PortKey port, List<Integer> vlans) {
        supposed = Map.of(port, vlans);
        boolean joined = path(from, to, vlan).over() != null;
        supposed = Map.of();
        return joined;
    }
}
