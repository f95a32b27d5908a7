package housewright.signal;

import housewright.model.Ref.Address;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Goes up the graph from a place to wherever its signal begins. */
final class Upstream {
    private final SignalGraph graph;

    Upstream(SignalGraph graph) {
        this.graph = graph;
    }

    /** For each beginning a way of the fewest hops, the fewest first. */
    List<List<Hop>> ways(Address place) {
        int end = graph.end(place, false);
        if (end < 0) {
            return List.of();
        }
        int[] onward = new int[graph.nodes]; // the edge that leads on towards the end
        Arrays.fill(onward, -1);
        boolean[] seen = new boolean[graph.nodes];
        int[] starts = graph.inStarts();
        int[] in = graph.inEdges();
        List<Integer> queue = new ArrayList<>(List.of(end));
        seen[end] = true;
        List<List<Hop>> ways = new ArrayList<>();
        for (int at = 0; at < queue.size(); at++) {
            int node = queue.get(at);
            if (starts[node] == starts[node + 1] && node != end) {
                ways.add(way(node, onward));
            }
            for (int i = starts[node]; i < starts[node + 1]; i++) {
                int before = graph.from[in[i]];
                if (!seen[before]) {
                    seen[before] = true;
                    onward[before] = in[i];
                    queue.add(before);
                }
            }
        }
        return ways;
    }

    private List<Hop> way(int begin, int[] onward) {
        List<Hop> hops = new ArrayList<>();
        for (int edge = onward[begin]; edge >= 0; edge = onward[graph.to[edge]]) {
            hops.add(new Hop(
                    graph.cause[edge],
                    graph.address(graph.from[edge]),
                    graph.address(graph.to[edge]),
                    graph.delay[edge],
                    graph.gain[edge]));
        }
        return List.copyOf(hops);
    }
}
