package housewright.signal;

import java.util.ArrayDeque;
import java.util.BitSet;

/** Which nodes lead to one, or to any of several. */
final class Backward {
    private final SignalGraph graph;

    Backward(SignalGraph graph) {
        this.graph = graph;
    }

    BitSet reaching(int node) {
        BitSet ends = new BitSet();
        ends.set(node);
        return reaching(ends);
    }

    /** Which nodes lead to any of these, these included. */
    BitSet reaching(BitSet ends) {
        int[] starts = graph.inStarts();
        int[] in = graph.inEdges();
        BitSet reaching = new BitSet(graph.nodes);
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        ends.stream().forEach(node -> {
            reaching.set(node);
            queue.add(node);
        });
        while (!queue.isEmpty()) {
            int v = queue.remove();
            for (int i = starts[v]; i < starts[v + 1]; i++) {
                int u = graph.from[in[i]];
                if (!graph.contested[in[i]] && !reaching.get(u)) {
                    reaching.set(u);
                    queue.add(u);
                }
            }
        }
        return reaching;
    }
}
