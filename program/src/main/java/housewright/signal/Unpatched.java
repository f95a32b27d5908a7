package housewright.signal;

import housewright.model.Patchable;
import housewright.model.Ref.Address;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A reached channel or point in a device that may be patched to one that leads to the destination. */
final class Unpatched {
    private final SignalGraph graph;
    private final Search search;
    private final BitSet wanted;
    private final Idle idle;
    private final Kinship kin;

    /**
     * @param wanted what leads to the destination
     */
    Unpatched(SignalGraph graph, Search search, BitSet wanted, Idle idle, Kinship kin) {
        this.graph = graph;
        this.search = search;
        this.wanted = wanted;
        this.idle = idle;
        this.kin = kin;
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
                int kinship = kin.of(from, to);
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
        if (kin.isLike(from, to) && kinship == 0) {
            return Likely.POSSIBLE; // a channel is seldom patched to the next one
        }
        boolean sourced = graph.inStarts()[to + 1] > graph.inStarts()[to];
        // a channel takes one source; a point sums, but where it has one like it, it may be meant to have no other
        boolean taken = sourced
                && (graph.side(to) == Side.LEAVING || (kinship < Kinship.SUMMED && kin.likeSources(from, to) == 1));
        boolean unused = idle.servesNoFeed(from) && isUnused(from);
        if (unused && !taken) {
            return Likely.PATCH_DUE;
        }
        if (kinship >= (graph.side(to) == Side.LEAVING ? Kinship.SAME_NUMBER : Kinship.LIKE_JOINED) && !taken) {
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
        for (int node : kin.nodesIn(graph.pieceNumber(from))) {
            if (node != from && kin.isLike(node, from)) {
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
}
