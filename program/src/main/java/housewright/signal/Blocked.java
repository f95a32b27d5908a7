package housewright.signal;

import housewright.model.Ref.Address;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What certainly stands in the way: a switch that is off, a join that does not hold, a channel with several sources. */
final class Blocked {
    private final SignalGraph graph;

    Blocked(SignalGraph graph) {
        this.graph = graph;
    }

    @Nullable
    Stop find(Search search, BitSet wanted) {
        Stop stop = switchedOff(search, wanted);
        if (stop == null) {
            stop = unjoined(search, wanted);
        }
        return stop != null ? stop : contested(search, wanted);
    }

    private @Nullable Stop switchedOff(Search search, BitSet wanted) {
        Edges stopped = graph.stopped;
        BitSet leading = leadingOn(wanted);
        for (int e = 0; e < stopped.count; e++) {
            if (search.reaches(stopped.from[e]) && leading.get(stopped.to[e])) {
                int gated = graph.gatedBy.containsKey(stopped.to[e]) ? stopped.to[e] : stopped.from[e];
                String gate = graph.gatedBy.getOrDefault(gated, "");
                String why = gate.isEmpty()
                        ? graph.address(stopped.to[e]) + " is muted"
                        : "the switch " + gate + " of " + graph.piece(gated).id() + " is off";
                return new Stop(graph.address(stopped.from[e]), why);
            }
        }
        return null;
    }

    /** What leads to the destination if every switch on the way were on and nothing were muted. */
    private BitSet leadingOn(BitSet wanted) {
        Map<Integer, List<Integer>> into = new HashMap<>();
        for (int e = 0; e < graph.stopped.count; e++) {
            into.computeIfAbsent(graph.stopped.to[e], key -> new ArrayList<>(1)).add(graph.stopped.from[e]);
        }
        BitSet leading = (BitSet) wanted.clone();
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        wanted.stream().forEach(queue::add);
        int[] starts = graph.inStarts();
        int[] in = graph.inEdges();
        while (!queue.isEmpty()) {
            int v = queue.remove();
            List<Integer> before = new ArrayList<>(into.getOrDefault(v, List.of()));
            for (int i = starts[v]; i < starts[v + 1]; i++) {
                before.add(graph.from[in[i]]);
            }
            for (int u : before) {
                if (!leading.get(u)) {
                    leading.set(u);
                    queue.add(u);
                }
            }
        }
        return leading;
    }

    private @Nullable Stop unjoined(Search search, BitSet wanted) {
        for (Unjoined dead : graph.unjoined) {
            Stop stop = unjoined(dead, dead.one(), dead.other(), search, wanted);
            if (stop == null) {
                stop = unjoined(dead, dead.other(), dead.one(), search, wanted);
            }
            if (stop != null) {
                return stop;
            }
        }
        return null;
    }

    /** The furthest join that is reached and does not hold, whatever it would lead to; null for none. */
    @Nullable
    Stop anyUnjoined(Search search) {
        int furthest = -1;
        Unjoined found = null;
        for (Unjoined dead : graph.unjoined) {
            for (Address end : List.of(dead.one(), dead.other())) {
                for (int node : graph.nodesOf(end)) {
                    if (graph.side(node) == Layout.Side.LEAVING
                            && search.reaches(node)
                            && (furthest < 0 || search.hops(node) > search.hops(furthest))) {
                        furthest = node;
                        found = dead;
                    }
                }
            }
        }
        return found == null
                ? null
                : new Stop(graph.address(furthest), Said.cause(found.cause()) + " does not join: " + found.why());
    }

    private @Nullable Stop unjoined(Unjoined dead, Address one, Address other, Search search, BitSet wanted) {
        for (int from : graph.nodesOf(one)) {
            if (search.reaches(from)) {
                return graph.nodesOf(other).stream().anyMatch(wanted::get)
                        ? new Stop(graph.address(from), Said.cause(dead.cause()) + " does not join: " + dead.why())
                        : null;
            }
        }
        return null;
    }

    private @Nullable Stop contested(Search search, BitSet wanted) {
        if (!graph.anyContested) {
            return null;
        }
        for (int node : search.reached()) {
            for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
                if (graph.contested[e] && wanted.get(graph.to[e])) {
                    List<String> sources = graph.patchesInto(graph.to[e]).stream()
                            .map(each -> each.from().toString())
                            .toList();
                    return new Stop(
                            graph.address(node),
                            "several sources are patched to " + graph.address(graph.to[e]) + " ("
                                    + String.join(", ", sources) + "); only one of them can hold");
                }
            }
        }
        return null;
    }
}
