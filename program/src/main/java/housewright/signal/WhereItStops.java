package housewright.signal;

import housewright.model.Signal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where a person has to look when a signal does not arrive. What certainly stands in the way comes first; then the
 * likeliest of the places where what is reached could be led on to what leads to the destination.
 */
final class WhereItStops {
    private final SignalGraph graph;
    private final Blocked blocked;
    private final NotThere notThere;
    private final Kinship kin;
    private @Nullable Idle idle;

    WhereItStops(SignalGraph graph) {
        this.graph = graph;
        this.blocked = new Blocked(graph);
        this.notThere = new NotThere(graph);
        this.kin = new Kinship(graph);
    }

    /**
     * The furthest place reached, and why nothing leads on.
     *
     * @param search from the source
     * @param siblings where else the same source should arrive, and does
     */
    Stop find(Search search, int source, int destination, List<Integer> siblings) {
        BitSet wanted = new Backward(graph).reaching(destination);
        Stop sure = blocked.find(search, wanted);
        if (sure != null) {
            return sure;
        }
        List<@Nullable Suspect> suspects = new ArrayList<>();
        suspects.add(new Unpatched(graph, search, wanted, idle(), kin).find());
        suspects.add(notThere.find(search, wanted, idle()));
        suspects.add(new OpenEnds(graph, search, wanted, idle(), siblings).find());
        return suspects.stream()
                .filter(Objects::nonNull)
                .min(Comparator.comparing(Suspect::likely))
                .map(Suspect::stop)
                .orElseGet(() -> deepest(search, source, wanted));
    }

    private Idle idle() {
        Idle known = idle;
        if (known == null) {
            known = new Idle(graph);
            idle = known;
        }
        return known;
    }

    private Stop deepest(Search search, int source, BitSet wanted) {
        Stop dead = blocked.anyUnjoined(search);
        if (dead != null) {
            return dead;
        }
        Set<Signal> taken = EnumSet.noneOf(Signal.class);
        wanted.stream().mapToObj(graph::signal).filter(Objects::nonNull).forEach(taken::add);
        int deepest = source;
        for (int node : search.reached()) {
            String unknown = graph.intoUnknown.get(node);
            if (unknown != null) {
                return new Stop(graph.address(node), unknown);
            }
            boolean open = isOpen(node, taken);
            if (open == isOpen(deepest, taken) ? search.hops(node) > search.hops(deepest) : open) {
                deepest = node;
            }
        }
        return new Stop(graph.address(deepest), OpenEnds.nothingLeadsOn(graph, deepest));
    }

    /** A port with nothing in it that could serve, which says more than a place in the middle of a thing. */
    private boolean isOpen(int node, Set<Signal> taken) {
        return graph.side(node) == Layout.Side.LEAVING
                && graph.plugged(node).isEmpty()
                && graph.start[node] == graph.start[node + 1] // no radio link leads on
                && taken.contains(graph.signal(node));
    }
}
