package housewright.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cycles whose gain is 0 dB or more. The graph is cut into its strongly connected parts (Tarjan 1972); in each, the
 * part's edges get the weight of their loss, so that a cycle of no loss is one of negative weight once every edge is
 * made a little cheaper, and Bellman and Ford's relaxation finds it. One is reported for each part: a part is mended
 * one loop at a time.
 */
final class Loops {
    /** Gains are compared in steps of this many dB. */
    private static final double STEP_DB = 0.01;

    private final SignalGraph graph;
    private final int[] index;
    private final int[] low;
    private final int[] part;
    private int parts;

    Loops(SignalGraph graph) {
        this.graph = graph;
        this.index = new int[graph.nodes];
        this.low = new int[graph.nodes];
        this.part = new int[graph.nodes];
    }

    List<Loop> find() {
        cutIntoParts();
        int[] sizes = new int[parts];
        for (int p : part) {
            sizes[p]++;
        }
        List<List<Integer>> edges = new ArrayList<>();
        int[] slot = new int[parts];
        Arrays.fill(slot, -1);
        for (int e = 0; e < graph.to.length; e++) {
            int p = part[graph.from[e]];
            if (part[graph.to[e]] == p && (sizes[p] > 1 || graph.from[e] == graph.to[e])) {
                if (slot[p] < 0) {
                    slot[p] = edges.size();
                    edges.add(new ArrayList<>());
                }
                edges.get(slot[p]).add(e);
            }
        }
        List<Loop> loops = new ArrayList<>();
        for (List<Integer> within : edges) {
            int[] cycle = cycle(within);
            if (cycle != null) {
                loops.add(loop(cycle));
            }
        }
        return loops;
    }

    private Loop loop(int[] cycle) {
        double gain = 0;
        for (int edge : cycle) {
            gain += graph.gain[edge];
        }
        return new Loop(new Prover(graph, false).hops(cycle), Math.max(0, gain));
    }

    private int @Nullable [] cycle(List<Integer> edges) {
        java.util.Map<Integer, Integer> local = new java.util.LinkedHashMap<>();
        for (int e : edges) {
            local.putIfAbsent(graph.from[e], local.size());
            local.putIfAbsent(graph.to[e], local.size());
        }
        int n = local.size();
        int[] from = new int[edges.size()];
        int[] to = new int[edges.size()];
        long[] weight = new long[edges.size()];
        for (int i = 0; i < edges.size(); i++) {
            int e = edges.get(i);
            from[i] = local.getOrDefault(graph.from[e], 0);
            to[i] = local.getOrDefault(graph.to[e], 0);
            weight[i] = -Math.round(graph.gain[e] / STEP_DB) * (n + 1L) - 1;
        }
        long[] dist = new long[n];
        int[] by = new int[n];
        Arrays.fill(by, -1);
        int last = -1;
        for (int round = 0; round <= n; round++) {
            last = -1;
            for (int i = 0; i < from.length; i++) {
                if (dist[from[i]] + weight[i] < dist[to[i]]) {
                    dist[to[i]] = dist[from[i]] + weight[i];
                    by[to[i]] = i;
                    last = to[i];
                }
            }
            if (last < 0) {
                return null;
            }
        }
        int at = last;
        for (int i = 0; i < n; i++) {
            at = from[by[at]];
        }
        List<Integer> cycle = new ArrayList<>();
        int start = at;
        do {
            cycle.addFirst(edges.get(by[at]));
            at = from[by[at]];
        } while (at != start);
        return cycle.stream().mapToInt(Integer::intValue).toArray();
    }

    private void cutIntoParts() {
        int[] stack = new int[graph.nodes];
        int[] calls = new int[graph.nodes];
        int[] next = new int[graph.nodes];
        boolean[] onStack = new boolean[graph.nodes];
        int top = 0;
        int counter = 0;
        for (int root = 0; root < graph.nodes; root++) {
            if (index[root] != 0) {
                continue;
            }
            int depth = 0;
            calls[depth++] = root;
            index[root] = low[root] = ++counter;
            next[root] = graph.start[root];
            stack[top++] = root;
            onStack[root] = true;
            while (depth > 0) {
                int u = calls[depth - 1];
                if (next[u] < graph.start[u + 1]) {
                    int v = graph.to[next[u]++];
                    if (index[v] == 0) {
                        index[v] = low[v] = ++counter;
                        next[v] = graph.start[v];
                        stack[top++] = v;
                        onStack[v] = true;
                        calls[depth++] = v;
                    } else if (onStack[v]) {
                        low[u] = Math.min(low[u], index[v]);
                    }
                    continue;
                }
                depth--;
                if (depth > 0) {
                    low[calls[depth - 1]] = Math.min(low[calls[depth - 1]], low[u]);
                }
                if (low[u] == index[u]) {
                    int v;
                    do {
                        v = stack[--top];
                        onStack[v] = false;
                        part[v] = parts;
                    } while (v != u);
                    parts++;
                }
            }
        }
    }
}
