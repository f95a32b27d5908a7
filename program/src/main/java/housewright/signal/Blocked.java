package housewright.signal;

import housewright.model.Ref.Address;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What certainly stands in the way: a switch that is off, a join that does not hold, a channel with several sources. */
final class Blocked {
    /** Gated nodes in a row that are looked through. */
    private static final int GATES_IN_A_ROW = 4;

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
        for (int e = 0; e < stopped.count; e++) {
            if (search.reaches(stopped.from[e]) && leadsOn(stopped, stopped.to[e], wanted, GATES_IN_A_ROW)) {
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

    /** From a gated node on, through gated nodes only, to a place that leads to the destination. */
    private static boolean leadsOn(Edges stopped, int node, BitSet wanted, int further) {
        if (wanted.get(node)) {
            return true;
        }
        for (int e = 0; further > 0 && e < stopped.count; e++) {
            if (stopped.from[e] == node && leadsOn(stopped, stopped.to[e], wanted, further - 1)) {
                return true;
            }
        }
        return false;
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
