package housewright.signal;

import housewright.model.Patchable;
import housewright.model.Ref.Address;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A reached channel or point in a device that may be patched to one that leads to the destination. */
final class Unpatched {
    /** How much two nodes are as others that are joined: like ones, and besides ... */
    private static final int LIKE_JOINED = 1;

    /** ... the channel next to it takes its like; */
    private static final int NEIGHBOUR = 2;

    /** ... the same number is joined to the same number; */
    private static final int SAME_NUMBER = 3;

    /** ... its like is joined to the very same place; */
    private static final int SAME_PLACE = 4;

    /** ... several of its like are. */
    private static final int SUMMED = 5;

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
    private final Search search;
    private final BitSet wanted;
    private final Idle idle;
    private final Map<Integer, Map<Kin, Pattern>> patterns = new HashMap<>();

    /**
     * @param wanted what leads to the destination
     */
    Unpatched(SignalGraph graph, Search search, BitSet wanted, Idle idle) {
        this.graph = graph;
        this.search = search;
        this.wanted = wanted;
        this.idle = idle;
    }

    /** The likeliest; of several, that where like is patched to like, then the deepest. */
    @Nullable
    Suspect find() {
        Map<Integer, List<Integer>> wantedIn = new HashMap<>();
        wanted.stream()
                .filter(node -> graph.side(node) != Side.ARRIVING)
                .forEach(node -> wantedIn.computeIfAbsent(graph.pieceNumber(node), piece -> new ArrayList<>())
                        .add(node));
        Likely best = null;
        int bestScore = 0;
        int bestFrom = -1;
        int bestTo = -1;
        for (int from : search.reached()) {
            for (int to : wantedIn.getOrDefault(graph.pieceNumber(from), List.of())) {
                if (!mayPatch(from, to)) {
                    continue;
                }
                int kinship = kinship(from, to);
                Likely likely = likely(from, to, kinship);
                int score = kinship * 1_000 + search.hops(from);
                int order = best == null ? -1 : likely.compareTo(best);
                if (order < 0 || (order == 0 && score > bestScore)) {
                    best = likely;
                    bestScore = score;
                    bestFrom = from;
                    bestTo = to;
                }
            }
        }
        if (best == null) {
            return null;
        }
        Address from = graph.address(bestFrom);
        Address to = graph.address(bestTo);
        return new Suspect(
                best,
                new Stop(from, "nothing in " + to.thing() + " is patched from " + from.spot() + " to " + to.spot()));
    }

    private boolean mayPatch(int from, int to) {
        Piece piece = graph.piece(from);
        Layout layout = piece.layout();
        Patchable patch = layout == null ? null : layout.model.patch();
        if (layout == null || patch == null || from == to || graph.side(from) == Side.LEAVING) {
            return false;
        }
        Media one = graph.place(from).media();
        Media other = graph.place(to).media();
        if (one != null && other != null && one != other) {
            return false;
        }
        int end = piece.base() + layout.nodes.size();
        boolean laidOut = from >= piece.base() && from < end && to >= piece.base() && to < end;
        return laidOut ? layout.mayPatch(from - piece.base(), to - piece.base()) : patch.free();
    }

    private Likely likely(int from, int to, int kinship) {
        if (isLike(from, to) && kinship == 0) {
            return Likely.POSSIBLE; // a channel is seldom patched to the next one
        }
        boolean sourced = graph.inStarts()[to + 1] > graph.inStarts()[to];
        // a channel takes one source; a point sums, but where it has one like it, it may be meant to have no other
        boolean taken = sourced && (graph.side(to) == Side.LEAVING || (kinship < SUMMED && likeSources(from, to) == 1));
        boolean unused = idle.servesNoFeed(from) && isUnused(from);
        if (unused && !taken) {
            return Likely.PATCH_DUE;
        }
        if (kinship >= (graph.side(to) == Side.LEAVING ? SAME_NUMBER : LIKE_JOINED) && !taken) {
            return Likely.PATCH_LIKE_OTHERS;
        }
        return unused || !sourced ? Likely.ONE_WAITS : Likely.POSSIBLE;
    }

    /** It is not led on, though others like it are: a place where all of them end is meant to be an end. */
    private boolean isUnused(int from) {
        if (isLedOn(from)) {
            return false;
        }
        boolean alone = true;
        for (int node : nodesIn(graph.pieceNumber(from))) {
            if (node != from && isLike(node, from)) {
                if (isLedOn(node)) {
                    return true;
                }
                alone = false;
            }
        }
        return alone;
    }

    /** An input that is patched on; a point that leads anywhere. What the type itself loops through does not count. */
    private boolean isLedOn(int node) {
        for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
            if (graph.side(node) == Side.POINT || graph.cause[e] instanceof Cause.ByPatch) {
                return true;
            }
        }
        return false;
    }

    /** As said above; 0 for strangers, and for what goes one by one and is joined to its own already. */
    private int kinship(int from, int to) {
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
    private long likeSources(int from, int to) {
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

    private int[] nodesIn(int piece) {
        Layout layout = graph.pieces.get(piece).layout();
        int base = graph.pieces.get(piece).base();
        int size = layout == null ? 0 : layout.nodes.size();
        return java.util.stream.IntStream.concat(
                        java.util.stream.IntStream.range(base, base + size),
                        java.util.stream.IntStream.range(graph.builder.laidOut, graph.nodes)
                                .filter(node -> graph.pieceNumber(node) == piece))
                .toArray();
    }

    /** Channels of one port, or the same channel of like ports, or like points. */
    private boolean isLike(int one, int other) {
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
