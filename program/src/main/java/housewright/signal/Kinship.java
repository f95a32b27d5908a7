package housewright.signal;

import housewright.signal.Layout.Side;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;

/** How ports and points like two in question are joined in the same device. */
final class Kinship {
    /** How much two nodes are as others that are joined: like ones, and besides ... */
    static final int LIKE_JOINED = 1;

    /** ... the channel next to it takes its like; */
    static final int NEIGHBOUR = 2;

    /** ... the same number is joined to the same number; */
    static final int SAME_NUMBER = 3;

    /** ... its like is joined to the very same place; */
    static final int SAME_PLACE = 4;

    /** ... several of its like are. */
    static final int SUMMED = 5;

    /** What two joined ports or points are called, without their numbers. */
    private record Kin(String from, String to) {}

    /**
     * How like nodes are joined.
     *
     * @param apart how far apart the nodes' numbers are
     * @param fansOut one of them is joined to several
     */
    private record Pattern(Set<Integer> apart, boolean fansOut) {
        static final Pattern NONE = new Pattern(Set.of(), false);
    }

    private final SignalGraph graph;
    private final Map<Integer, Map<Kin, Pattern>> patterns = new HashMap<>();

    Kinship(SignalGraph graph) {
        this.graph = graph;
    }

    /** As said above; 0 for strangers, and for what goes one by one and is joined to its own already. */
    int of(int from, int to) {
        long alike = likeSources(from, to);
        if (alike > 1 && graph.side(to) == Side.POINT) {
            return SUMMED;
        }
        Pattern pattern = patterns(graph.pieceNumber(from)).getOrDefault(new Kin(group(from), group(to)), Pattern.NONE);
        if (!pattern.fansOut() && isJoinedToLike(from, to)) {
            return 0;
        }
        if (alike > 0) {
            return SAME_PLACE;
        }
        if (pattern.apart().contains(from - to)) {
            return SAME_NUMBER;
        }
        if (pattern.apart().isEmpty()) {
            return 0;
        }
        return takesLike(from, to, to - 1) || takesLike(from, to, to + 1) ? NEIGHBOUR : LIKE_JOINED;
    }

    private boolean takesLike(int from, int to, int next) {
        return next >= 0
                && next < graph.nodes
                && graph.pieceNumber(next) == graph.pieceNumber(to)
                && graph.side(next) == graph.side(to)
                && group(next).equals(group(to))
                && likeSources(from, next) > 0;
    }

    /** How many others like it are joined to a node. */
    long likeSources(int from, int to) {
        int alike = 0;
        for (int i = graph.inStarts()[to]; i < graph.inStarts()[to + 1]; i++) {
            int other = graph.from[graph.inEdges()[i]];
            alike += other != from && isLike(other, from) ? 1 : 0;
        }
        return alike;
    }

    private boolean isJoinedToLike(int from, int to) {
        for (int e = graph.start[from]; e < graph.start[from + 1]; e++) {
            if (graph.pieceNumber(graph.to[e]) == graph.pieceNumber(to)
                    && group(graph.to[e]).equals(group(to))) {
                return true;
            }
        }
        return false;
    }

    private Map<Kin, Pattern> patterns(int piece) {
        return patterns.computeIfAbsent(piece, key -> {
            Map<Kin, Pattern> all = new HashMap<>();
            for (int node : nodesIn(piece)) {
                Set<String> once = new HashSet<>();
                for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
                    if (graph.pieceNumber(graph.to[e]) != piece) {
                        continue;
                    }
                    String to = group(graph.to[e]);
                    Set<Integer> apart = new HashSet<>(Set.of(node - graph.to[e]));
                    all.merge(new Kin(group(node), to), new Pattern(apart, !once.add(to)), (one, other) -> {
                        one.apart().addAll(other.apart());
                        return new Pattern(one.apart(), one.fansOut() || other.fansOut());
                    });
                }
            }
            return all;
        });
    }

    int[] nodesIn(int piece) {
        Layout layout = graph.pieces.get(piece).layout();
        int base = graph.pieces.get(piece).base();
        int size = layout == null ? 0 : layout.nodes.size();
        return IntStream.concat(
                        IntStream.range(base, base + size),
                        IntStream.range(graph.builder.laidOut, graph.nodes)
                                .filter(node -> graph.pieceNumber(node) == piece))
                .toArray();
    }

    /** Channels of one port, or the same channel of like ports, or like points. */
    boolean isLike(int one, int other) {
        return graph.pieceNumber(one) == graph.pieceNumber(other)
                && graph.side(one) == graph.side(other)
                && (group(one).equals(group(other))
                        || (Words.stem(graph.spot(one).name())
                                        .equals(Words.stem(graph.spot(other).name()))
                                && Objects.equals(
                                        graph.spot(one).channel(),
                                        graph.spot(other).channel())));
    }

    /** What it is called without its number: the port of a channel where that has several, else the ports like it. */
    private String group(int node) {
        boolean ofSeveral = graph.place(node).said().channel() != null;
        String name = graph.spot(node).name();
        return ofSeveral ? name : Words.stem(name);
    }
}
