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
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Which network ports are joined: through cables, passive panels and network switches, within one VLAN. */
final class Network {
    /** The network a switch port carries when nothing is said. */
    static final int DEFAULT_VLAN = 1;

    /** A signal about to leave by a port, or just arrived at one. */
    private record At(PortKey port, boolean leaving) {
        At turned() {
            return new At(port, !leaving);
        }
    }

    private record Hop(At to, String name) {}

    /** Either what the path runs over, in order, or why there is none. */
    record Answer(@Nullable List<String> over, String why) {}

    private static final Comparator<List<String>> BY_HOPS =
            Comparator.<List<String>>comparingInt(List::size).thenComparing(over -> String.join("\n", over));

    private final GraphBuilder graph;
    private final Map<PortKey, List<Hop>> links = new HashMap<>();
    private final Set<Integer> vlans = new TreeSet<>();
    private Map<PortKey, List<Integer>> supposed = Map.of();

    Network(GraphBuilder graph) {
        this.graph = graph;
    }

    void link(PortKey one, PortKey other, String cable) {
        links.computeIfAbsent(one, key -> new ArrayList<>()).add(new Hop(new At(other, false), cable));
        links.computeIfAbsent(other, key -> new ArrayList<>()).add(new Hop(new At(one, false), cable));
    }

    /** The path of fewest hops between two ports, by ids where several are as short. */
    Answer path(PortKey from, PortKey to, @Nullable Integer vlan) {
        if (vlan != null) {
            List<String> over = search(from, to, vlan);
            return new Answer(over, over != null ? "" : why(from, to) + " within VLAN " + vlan);
        }
        List<String> best = null;
        for (int each : vlans()) {
            List<String> over = search(from, to, each);
            if (over != null && (best == null || BY_HOPS.compare(over, best) < 0)) {
                best = over;
            }
        }
        return new Answer(best, best != null ? "" : why(from, to));
    }

    /** Every VLAN that is named, and the default network. */
    private Set<Integer> vlans() {
        if (vlans.isEmpty()) {
            vlans.add(DEFAULT_VLAN);
            graph.pieces.forEach(piece -> piece.equipment().vlans().values().forEach(vlans::addAll));
        }
        return vlans;
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
        At start = new At(from, true);
        Map<At, Integer> left = hopsLeft(start, new At(to, false), vlan);
        Integer hops = left.get(start);
        if (hops == null) {
            return null;
        }
        List<String> over = new ArrayList<>();
        Set<At> front = Set.of(start); // all that is reached over the same ids
        for (int togo = hops - 1; togo >= 0; togo--) {
            String least = null;
            Set<At> next = new LinkedHashSet<>();
            for (At at : front) {
                for (Hop hop : next(at)) {
                    Integer further = left.get(hop.to());
                    if (further == null || further != togo) {
                        continue;
                    }
                    if (least == null || hop.name().compareTo(least) < 0) {
                        least = hop.name();
                        next.clear();
                    }
                    if (hop.name().equals(least)) {
                        next.add(hop.to());
                    }
                }
            }
            over.add(least == null ? "" : least);
            front = next;
        }
        return over;
    }

    /** How many hops it is to the end from every place no further from it than the start. */
    private Map<At, Integer> hopsLeft(At start, At end, int vlan) {
        Map<At, Integer> left = new HashMap<>();
        Map<Integer, Integer> crossed = new HashMap<>();
        ArrayDeque<At> queue = new ArrayDeque<>(List.of(end));
        left.put(end, 0);
        while (!queue.isEmpty() && !left.containsKey(start)) {
            At at = queue.remove();
            int hops = left.getOrDefault(at, 0);
            At back = at.turned(); // every hop can be made the other way
            // a second crossing of a switch reaches the port of the first, a third none that is new
            if (back.leaving()
                    || !isSwitch(at.port().piece())
                    || crossed.merge(at.port().piece(), 1, Integer::sum) < 3) {
                for (Hop hop : next(back)) {
                    At before = hop.to().turned();
                    if (carries(before.port(), vlan) && left.putIfAbsent(before, hops + 1) == null) {
                        queue.add(before);
                    }
                }
            }
        }
        return left;
    }

    private boolean isSwitch(int piece) {
        Layout layout = graph.pieces.get(piece).layout();
        return layout != null && layout.model.kind() == Kind.SWITCH;
    }

    /** From a port along its cables; from where it arrives across the switch or panel, and nowhere in other equipment. */
    private List<Hop> next(At at) {
        if (at.leaving()) {
            return links.getOrDefault(at.port(), List.of());
        }
        Piece piece = graph.pieces.get(at.port().piece());
        Layout layout = piece.layout();
        if (layout == null) {
            return List.of();
        }
        List<Hop> hops = new ArrayList<>();
        String port = at.port().port();
        if (layout.model.kind() == Kind.SWITCH) {
            for (Socket socket : layout.shape.sockets().values()) {
                if (socket.port().signal() == Signal.ETHERNET && !socket.name().equals(port)) {
                    cross(at, socket.name(), piece, hops);
                }
            }
        }
        for (Tie tie : layout.model.ties()) {
            for (Tie.Pair pair : tie.pairs()) {
                if (pair.one().equals(port)) {
                    cross(at, pair.other(), piece, hops);
                } else if (pair.other().equals(port)) {
                    cross(at, pair.one(), piece, hops);
                }
            }
        }
        return hops;
    }

    private void cross(At at, String port, Piece piece, List<Hop> hops) {
        PortKey other = new PortKey(at.port().piece(), port);
        if (links.containsKey(other)) {
            hops.add(new Hop(new At(other, true), piece.id()));
        }
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
        for (At at : reached(port)) {
            if (!at.leaving() && isSwitch(at.port().piece())) {
                return at.port();
            }
        }
        return null;
    }

    /** All that a signal leaving by this port may come to, nearest first. */
    private Set<At> reached(PortKey port) {
        Set<At> seen = new LinkedHashSet<>();
        ArrayDeque<At> queue = new ArrayDeque<>(List.of(new At(port, true)));
        seen.add(queue.element());
        while (!queue.isEmpty()) {
            for (Hop hop : next(queue.remove())) {
                if (seen.add(hop.to())) {
                    queue.add(hop.to());
                }
            }
        }
        return seen;
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
        Set<Integer> switches = new LinkedHashSet<>();
        for (At at : reached(port)) {
            if (isSwitch(at.port().piece())) {
                switches.add(at.port().piece());
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

    /** One end of a network cable, and where its other is. */
    record Plug(String cable, PortKey port, PortKey far) {}

    /** Ends of cables in panels and switches that what leaves by either port comes to. */
    List<Plug> plugsNear(PortKey from, PortKey to) {
        Set<Plug> plugs = new LinkedHashSet<>();
        for (PortKey start : List.of(from, to)) {
            for (At at : reached(start)) {
                for (Hop hop : links.getOrDefault(at.port(), List.of())) {
                    if (!hop.name().isEmpty()) {
                        plugs.add(new Plug(hop.name(), at.port(), hop.to().port()));
                        plugs.add(new Plug(hop.name(), hop.to().port(), at.port()));
                    }
                }
            }
        }
        plugs.removeIf(plug -> likeJacks(plug.port()).isEmpty());
        return List.copyOf(plugs);
    }

    /** Free jacks of the same panel or switch on the same side. */
    List<PortKey> likeJacks(PortKey port) {
        Layout layout = graph.pieces.get(port.piece()).layout();
        if (layout == null || (layout.model.ties().isEmpty() && !isSwitch(port.piece()))) {
            return List.of();
        }
        String stem = Words.stem(port.port());
        List<PortKey> like = new ArrayList<>();
        for (Socket socket : layout.shape.sockets().values()) {
            PortKey key = new PortKey(port.piece(), socket.name());
            if (Words.stem(socket.name()).equals(stem)
                    && graph.plugged.getOrDefault(key, List.of()).isEmpty()) {
                like.add(key);
            }
        }
        return like;
    }

    /** Ports of switches whose cable leads to another switch. */
    List<PortKey> portsBetweenSwitches() {
        List<PortKey> between = new ArrayList<>();
        for (PortKey port : links.keySet()) {
            PortKey far = isSwitch(port.piece()) ? switchPortAt(port) : null;
            if (far != null && far.piece() != port.piece()) {
                between.add(port);
            }
        }
        between.sort(Comparator.comparingInt(PortKey::piece).thenComparing(PortKey::port));
        return between;
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

    /** The two would be on one network if this end of a cable were in another jack. */
    boolean wouldJoinMoved(PortKey from, PortKey to, @Nullable Integer vlan, Plug plug, PortKey jack) {
        Hop there = new Hop(new At(plug.far(), false), plug.cable());
        Hop back = new Hop(new At(plug.port(), false), plug.cable());
        List<Hop> outward = List.copyOf(links.getOrDefault(plug.port(), List.of()));
        List<Hop> homeward = List.copyOf(links.getOrDefault(plug.far(), List.of()));
        put(plug.port(), without(outward, there));
        put(plug.far(), without(homeward, back));
        boolean joins = wouldJoin(from, to, vlan, plug.far(), jack);
        put(plug.port(), outward);
        put(plug.far(), homeward);
        return joins;
    }

    private static List<Hop> without(List<Hop> hops, Hop hop) {
        List<Hop> less = new ArrayList<>(hops);
        less.remove(hop);
        return less;
    }

    private void put(PortKey port, List<Hop> hops) {
        if (hops.isEmpty()) {
            links.remove(port);
        } else {
            links.put(port, new ArrayList<>(hops));
        }
    }

    private void unlink(PortKey one, PortKey other) {
        List<Hop> hops = links.getOrDefault(one, new ArrayList<>());
        hops.remove(new Hop(new At(other, false), ""));
        if (hops.isEmpty()) {
            links.remove(one);
        }
    }

    /** The two would be on one network if switch ports carried these VLANs. */
    boolean wouldJoin(PortKey from, PortKey to, @Nullable Integer vlan, Map<PortKey, List<Integer>> carried) {
        supposed = carried;
        boolean joined = path(from, to, vlan).over() != null;
        supposed = Map.of();
        return joined;
    }
}
