package housewright.signal;

import housewright.model.LocalRef.Spot;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.model.Tie;
import housewright.signal.GraphBuilder.PortKey;
import housewright.signal.Layout.Side;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Nodes of ports that have whatever channels they are given: network ports, and the passive ports of panels. What
 * runs through a panel keeps its signal and protocol, so that analogue sound does not come out of it as a picture.
 */
final class OpenNodes {
    /** One such node. */
    record Extra(
            int piece,
            Spot spot,
            Side side,
            Socket socket,
            Signal signal,
            @Nullable String protocol,
            Layout.Local place) {}

    /** What tells one from another; its socket follows from it. */
    private record Key(
            int piece,
            Spot spot,
            Side side,
            Signal signal,
            @Nullable String protocol) {}

    private record Carried(Signal signal, @Nullable String protocol, String channel) {}

    private record Link(PortKey one, PortKey other, Cause cause) {
        @SuppressWarnings("ArgumentSelectionDefectChecker") // turning round is the point
        Link turned() {
            return new Link(other, one, cause);
        }
    }

    private final GraphBuilder graph;
    private final Map<Key, Integer> known = new HashMap<>();
    private final List<Link> links = new ArrayList<>();
    private final Map<PortKey, String> intoUnknown = new HashMap<>();

    OpenNodes(GraphBuilder graph) {
        this.graph = graph;
    }

    /** The node of a network port's channel, made where it is not there and is to be; else -1. */
    int node(int piece, Socket socket, Spot spot, Side side, Signal signal, boolean make) {
        return make
                ? node(piece, socket, spot, side, signal, null)
                : known.getOrDefault(new Key(piece, spot, side, signal, null), -1);
    }

    private int node(int piece, Socket socket, Spot spot, Side side, Signal signal, @Nullable String protocol) {
        return known.computeIfAbsent(new Key(piece, spot, side, signal, protocol), key -> {
            Layout layout = graph.pieces.get(piece).layout();
            if (layout == null) {
                throw new IllegalStateException(spot + " in what nobody knows the inside of");
            }
            Layout.Local place = Layout.Local.of(spot, side, socket, layout.model);
            graph.extras.add(new Extra(piece, spot, side, socket, signal, protocol, place));
            return graph.laidOut + graph.extras.size() - 1;
        });
    }

    /** A cable with a passive port on at least one end. */
    void link(PortKey one, PortKey other, Cause cause) {
        links.add(new Link(one, other, cause));
    }

    /** A cable in this passive port leads to where nobody knows yet. */
    void leadsIntoUnknown(PortKey port, String words) {
        intoUnknown.put(port, words);
    }

    /** Works out what every passive port carries, and joins it. */
    void spread() {
        if (links.isEmpty()) {
            return;
        }
        Map<PortKey, List<PortKey>> next = new LinkedHashMap<>();
        List<Link> ties = new ArrayList<>();
        Map<PortKey, Set<Carried>> carried = new LinkedHashMap<>();
        Set<Integer> panels = new LinkedHashSet<>();
        for (Link link : links) {
            for (PortKey key : List.of(link.one(), link.other())) {
                if (isPassive(key)) {
                    panels.add(key.piece());
                }
            }
            neighbours(next, link.one(), link.other());
        }
        for (int panel : panels) {
            Layout layout = graph.pieces.get(panel).layout();
            if (layout == null) {
                continue;
            }
            Cause cause = new Cause.ByTie(graph.pieces.get(panel).id());
            for (Tie tie : layout.model.ties()) {
                for (Tie.Pair pair : tie.pairs()) {
                    Link link = new Link(new PortKey(panel, pair.one()), new PortKey(panel, pair.other()), cause);
                    ties.add(link);
                    neighbours(next, link.one(), link.other());
                }
            }
        }
        ArrayDeque<PortKey> work = new ArrayDeque<>();
        for (PortKey key : next.keySet()) {
            if (!isPassive(key)) {
                carried.put(key, ofPort(key));
                work.add(key);
            }
        }
        intoUnknown.forEach((key, words) -> followBack(key, words, next));
        while (!work.isEmpty()) {
            PortKey key = work.remove();
            for (PortKey other : next.getOrDefault(key, List.of())) {
                if (isPassive(other)
                        && carried.computeIfAbsent(other, k -> new LinkedHashSet<>())
                                .addAll(carried.getOrDefault(key, Set.of()))) {
                    work.add(other);
                }
            }
        }
        for (Link link : links) {
            join(link, carried);
            join(link.turned(), carried);
        }
        for (Link tie : ties) {
            if (isPassive(tie.one()) && isPassive(tie.other())) {
                tie(tie, carried);
                tie(tie.turned(), carried);
            }
        }
        for (int i = 0; i < graph.extras.size(); i++) {
            Extra extra = graph.extras.get(i);
            String words =
                    intoUnknown.get(new PortKey(extra.piece(), extra.spot().name()));
            if (words != null && extra.side() == Side.LEAVING) {
                graph.intoUnknown.put(graph.laidOut + i, words);
            }
        }
    }

    /** What is plugged into a panel from where nobody knows arrives wherever the panel leads. */
    private void followBack(PortKey start, String words, Map<PortKey, List<PortKey>> next) {
        Set<PortKey> seen = new LinkedHashSet<>(Set.of(start));
        ArrayDeque<PortKey> queue = new ArrayDeque<>(seen);
        while (!queue.isEmpty()) {
            for (PortKey other : next.getOrDefault(queue.remove(), List.of())) {
                Layout layout = graph.pieces.get(other.piece()).layout();
                if (seen.add(other) && layout != null) {
                    if (isPassive(other)) {
                        queue.add(other);
                    } else {
                        layout.shape
                                .findSocket(other.port())
                                .ifPresent(socket -> graph.comesFromUnknown(other, socket, words));
                    }
                }
            }
        }
    }

    private static void neighbours(Map<PortKey, List<PortKey>> next, PortKey one, PortKey other) {
        next.computeIfAbsent(one, key -> new ArrayList<>()).add(other);
        next.computeIfAbsent(other, key -> new ArrayList<>()).add(one);
    }

    /** What leaves one port arrives at the other. */
    private void join(Link link, Map<PortKey, Set<Carried>> carried) {
        boolean intoPassive = isPassive(link.other());
        for (Carried each : carried.getOrDefault(link.one(), Set.of())) {
            int from = node(link.one(), each, Side.LEAVING);
            if (from < 0) {
                continue;
            }
            for (Carried taken : carried.getOrDefault(link.other(), Set.of())) {
                if (!each.channel().equals(taken.channel()) || !agree(each, taken)) {
                    continue;
                }
                int to = node(link.other(), intoPassive ? each : taken, Side.ARRIVING);
                if (to >= 0) {
                    graph.edges.add(from, to, 0, 0, link.cause());
                }
                if (intoPassive) {
                    break;
                }
            }
        }
    }

    /** What arrives at one passive port leaves at the other. */
    private void tie(Link tie, Map<PortKey, Set<Carried>> carried) {
        for (Carried each : carried.getOrDefault(tie.one(), Set.of())) {
            int from = node(tie.one(), each, Side.ARRIVING);
            int to = node(tie.other(), each, Side.LEAVING);
            if (from >= 0 && to >= 0) {
                graph.edges.add(from, to, 0, 0, tie.cause());
            }
        }
    }

    private static boolean agree(Carried one, Carried other) {
        return one.signal() == other.signal()
                && (one.protocol() == null
                        || other.protocol() == null
                        || one.protocol().equals(other.protocol()));
    }

    private int node(PortKey key, Carried carried, Side side) {
        Layout layout = graph.pieces.get(key.piece()).layout();
        Socket socket =
                layout == null ? null : layout.shape.findSocket(key.port()).orElse(null);
        if (layout == null || socket == null) {
            return -1;
        }
        if (socket.port().signal() != null) {
            boolean leaves = side == Side.LEAVING;
            int at = (leaves ? socket.leaving() : socket.arriving()).indexOf(carried.channel());
            int[] firsts = layout.firsts.get(socket.name());
            return at < 0 || firsts == null ? -1 : graph.pieces.get(key.piece()).base() + firsts[leaves ? 1 : 0] + at;
        }
        Spot spot = new Spot(key.port(), carried.channel());
        return node(key.piece(), socket, spot, side, carried.signal(), carried.protocol());
    }

    private boolean isPassive(PortKey key) {
        Layout layout = graph.pieces.get(key.piece()).layout();
        Socket socket =
                layout == null ? null : layout.shape.findSocket(key.port()).orElse(null);
        return socket != null && socket.port().signal() == null;
    }

    private Set<Carried> ofPort(PortKey key) {
        Set<Carried> all = new LinkedHashSet<>();
        Layout layout = graph.pieces.get(key.piece()).layout();
        Socket socket =
                layout == null ? null : layout.shape.findSocket(key.port()).orElse(null);
        Signal signal = socket == null ? null : socket.port().signal();
        if (socket != null && signal != null) {
            for (List<String> channels : List.of(socket.leaving(), socket.arriving())) {
                for (String channel : channels) {
                    all.add(new Carried(signal, socket.port().protocol(), channel));
                }
            }
        }
        return all;
    }
}
