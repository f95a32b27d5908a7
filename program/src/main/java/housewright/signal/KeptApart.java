package housewright.signal;

import housewright.signal.Layout.Side;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Places that a way must not pass because of the never-feeds: where it ends in what leads on to a never-feed's
 * destination, everything that the never-feed's source already reaches; where it begins in what that source reaches,
 * everything that leads to the destination. An entry into an output may be replaced by the way itself and is not counted;
 * that a mend may also take a cable away is not thought of, so this only leads a first search.
 */
final class KeptApart {
    private final SignalGraph graph;
    private final List<Pair> pairs = new ArrayList<>();

    private record Pair(BitSet reached, BitSet leading) {}

    KeptApart(SignalGraph graph) {
        this.graph = graph;
        Search search = new Search(graph);
        for (Asked asked : graph.asked) {
            for (Asked.Pair pair : asked.feed.never() ? asked.pairs : List.<Asked.Pair>of()) {
                if (pair.source() >= 0 && pair.destination() >= 0) {
                    search.from(pair.source(), true);
                    if (!search.reaches(pair.destination())) { // else there is nothing to keep apart
                        pairs.add(new Pair(spread(pair.source(), true), spread(pair.destination(), false)));
                    }
                }
            }
        }
    }

    private BitSet spread(int start, boolean forward) {
        BitSet seen = new BitSet(graph.nodes);
        ArrayDeque<Integer> queue = new ArrayDeque<>(List.of(start));
        seen.set(start);
        int[] starts = forward ? graph.start : graph.inStarts();
        while (!queue.isEmpty()) {
            int at = queue.remove();
            for (int i = starts[at]; i < starts[at + 1]; i++) {
                int edge = forward ? i : graph.inEdges()[i];
                int next = forward ? graph.to[edge] : graph.from[edge];
                boolean replaceable =
                        graph.cause[edge] instanceof Cause.ByPatch && graph.side(graph.to[edge]) == Side.LEAVING;
                if (!replaceable && !graph.contested[edge] && !seen.get(next)) {
                    seen.set(next);
                    queue.add(next);
                }
            }
        }
        return seen;
    }

    /** What a way from one node to another must not pass. */
    BitSet from(int source, int destination) {
        BitSet apart = new BitSet(graph.nodes);
        for (Pair pair : pairs) {
            if (pair.leading().get(destination)) {
                apart.or(pair.reached());
            }
            if (pair.reached().get(source)) {
                apart.or(pair.leading());
            }
        }
        return apart;
    }
}
