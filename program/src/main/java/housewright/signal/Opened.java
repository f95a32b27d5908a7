package housewright.signal;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The graph as it would be with every switch on and nothing muted. */
final class Opened {
    private final SignalGraph graph;
    private final Map<Integer, List<Integer>> stopped = new HashMap<>();

    Opened(SignalGraph graph) {
        this.graph = graph;
        for (int e = 0; e < graph.stopped.count; e++) {
            stopped.computeIfAbsent(graph.stopped.from[e], key -> new ArrayList<>(1))
                    .add(graph.stopped.to[e]);
        }
    }

    /** The switches and mutes on one way from a node to another, in words; empty where there is no way. */
    List<String> gates(int source, int destination) {
        int[] before = new int[graph.nodes];
        Arrays.fill(before, -1);
        before[source] = source;
        ArrayDeque<Integer> queue = new ArrayDeque<>(List.of(source));
        while (!queue.isEmpty() && before[destination] < 0) {
            int u = queue.remove();
            for (int e = graph.start[u]; e < graph.start[u + 1]; e++) {
                reach(u, graph.to[e], before, queue);
            }
            for (int v : stopped.getOrDefault(u, List.of())) {
                reach(u, v, before, queue);
            }
        }
        Set<String> gates = new LinkedHashSet<>();
        for (int at = destination; before[destination] >= 0; at = before[at]) {
            String gate = graph.gatedBy.get(at);
            if (gate != null) {
                gates.add(
                        gate.isEmpty()
                                ? graph.address(at).said() + " stays muted"
                                : "the switch " + gate + " of "
                                        + Said.name(graph.piece(at).id()) + " stays off");
            }
            if (at == source) {
                break;
            }
        }
        return List.copyOf(gates).reversed();
    }

    private static void reach(int from, int to, int[] before, ArrayDeque<Integer> queue) {
        if (before[to] < 0) {
            before[to] = from;
            queue.add(to);
        }
    }
}
