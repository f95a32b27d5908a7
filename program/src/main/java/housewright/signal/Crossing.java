package housewright.signal;

import housewright.signal.Layout.Side;
import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;

/**
 * Where two sources of a feed change over. Their ways are compared wherever both run through like ports of one thing:
 * as long as the one stands before the other there as it does in the feed, they have not changed over yet.
 */
final class Crossing {
    /** Like ports or points of one thing, on one side of it. */
    private record Stage(int piece, Side side, String stem) {}

    private final SignalGraph graph;

    Crossing(SignalGraph graph) {
        this.graph = graph;
    }

    /**
     * The place from which the source is led to where another belongs.
     *
     * @param search from the source
     * @param own the pair whose source goes astray
     * @param other the pair at whose destination it arrives
     */
    Stop find(Search search, Asked asked, Asked.Pair own, Asked.Pair other) {
        int[] path = search.path(other.destination());
        int[] others = wayOfTheOther(search, own, other);
        Map<Stage, Integer> stages = new HashMap<>();
        for (int edge : others) {
            stages.putIfAbsent(stage(graph.from[edge]), graph.from[edge]);
            stages.putIfAbsent(stage(graph.to[edge]), graph.to[edge]);
        }
        boolean alike = other.source() >= 0 && stage(own.source()).equals(stage(other.source()));
        boolean lowerFirst =
                alike ? own.source() < other.source() : asked.instead.indexOf(own) < asked.instead.indexOf(other);
        int onward = -1; // the edge from the last place where they still stood as they should
        boolean right = false;
        for (int edge : path) {
            if (right) {
                onward = edge;
            }
            int at = graph.to[edge];
            int beside = stages.getOrDefault(stage(at), at);
            right = beside != at;
            if (right && at < beside != lowerFirst) {
                return crosses(edge);
            }
        }
        return onward >= 0 && !right
                ? crosses(onward)
                : new Stop(graph.address(other.destination()), "it arrives where another source of the feed belongs");
    }

    private Stage stage(int node) {
        return new Stage(
                graph.pieceNumber(node),
                graph.side(node),
                Words.stem(graph.spot(node).name()));
    }

    private Stop crosses(int edge) {
        return new Stop(
                graph.address(graph.from[edge]),
                "it crosses over here: " + Said.cause(graph.cause[edge]) + " leads to " + graph.address(graph.to[edge])
                        + ", where another source of the feed belongs");
    }

    /** The way of the other source to where this one belongs; where it does not arrive, what leads there. */
    private int[] wayOfTheOther(Search search, Asked.Pair own, Asked.Pair other) {
        Search its = new Search(graph);
        if (other.source() >= 0) {
            its.from(other.source(), false);
            if (its.reaches(own.destination())) {
                return its.path(own.destination());
            }
        }
        return backwards(own.destination(), search);
    }

    /** Backwards from the destination, as far as the way runs apart from what is reached. */
    private int[] backwards(int destination, Search search) {
        ArrayDeque<Integer> edges = new ArrayDeque<>();
        int at = destination;
        BitSet seen = new BitSet();
        int[] starts = graph.inStarts();
        int[] in = graph.inEdges();
        while (!seen.get(at)) {
            seen.set(at);
            int best = -1;
            for (int i = starts[at]; i < starts[at + 1]; i++) {
                int before = graph.from[in[i]];
                if (!search.reaches(before) && (best < 0 || before < graph.from[best])) {
                    best = in[i];
                }
            }
            if (best < 0) {
                break;
            }
            edges.addFirst(best);
            at = graph.from[best];
        }
        return edges.stream().mapToInt(Integer::intValue).toArray();
    }
}
