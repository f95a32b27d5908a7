package housewright.signal;

import housewright.model.Cable;
import housewright.model.End;
import housewright.model.Signal;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A reached port that leads nowhere, and one with nothing in it that leads to the destination. */
final class OpenEnds {
    /**
     * A port where the way may have been led on.
     *
     * @param waiting the port that would take it; -1 where none of its kind is free
     * @param bothWait the way to it serves nothing else, and the other is of the same use and does not lead back
     * @param leadsBack it would come back to a thing that it has passed already
     * @param along the way runs along all that the ways to the feed's other destinations have in common
     * @param beside those are led on from a like port of the same thing
     */
    private record OpenEnd(int node, int waiting, boolean bothWait, boolean leadsBack, boolean along, boolean beside) {
        OpenEnd waitingAt(int other) {
            return new OpenEnd(node, other, bothWait, leadsBack, along, beside);
        }
    }

    private final SignalGraph graph;
    private final Fit fit;
    private final Search search;
    private final Idle idle;
    private final int[] trunk;
    private final List<Integer> siblings;
    private final List<Integer> waiting = new ArrayList<>();

    /**
     * @param wanted what leads to the destination
     * @param siblings where else the same source should arrive, and does
     */
    OpenEnds(SignalGraph graph, Search search, BitSet wanted, Idle idle, List<Integer> siblings) {
        this.graph = graph;
        this.fit = new Fit(graph);
        this.search = search;
        this.idle = idle;
        this.siblings = siblings;
        this.trunk = trunk();
        for (int node = wanted.nextSetBit(0); node >= 0; node = wanted.nextSetBit(node + 1)) {
            if (graph.side(node) == Side.ARRIVING && graph.socket(node) != null && isOpen(node)) {
                waiting.add(node);
            }
        }
    }

    /** The likeliest; null where no port that is reached comes into question. */
    @Nullable
    Suspect find() {
        Comparator<OpenEnd> better = better();
        OpenEnd best = null;
        for (int node : search.reached()) {
            if (graph.side(node) != Side.LEAVING
                    || graph.socket(node) == null
                    || !isOpen(node)
                    || idle.isTerminated(node)) {
                continue;
            }
            boolean unused = idle.isIdle(node);
            boolean along = runsAlong(node);
            boolean beside = along && leadsToSiblingsBeside(node);
            for (int other : partners(node)) {
                boolean back = other >= 0 && leadsBack(node, other);
                boolean bothWait = unused && !back && fit.isOfOneUse(node, other);
                OpenEnd end = new OpenEnd(node, other, bothWait, back, along, beside);
                if ((other >= 0 || beside) && (best == null || better.compare(end, best) > 0)) {
                    best = end;
                }
            }
        }
        return best == null
                ? null
                : new Suspect(
                        best.bothWait() ? Likely.BOTH_WAIT : best.leadsBack() ? Likely.POSSIBLE : Likely.ONE_WAITS,
                        stop(best));
    }

    private Comparator<OpenEnd> better() {
        return Comparator.comparing(OpenEnd::bothWait)
                .thenComparing(end -> !end.leadsBack())
                .thenComparing(OpenEnd::along)
                .thenComparingInt(end -> end.waiting() >= 0 ? 1 : 0)
                .thenComparingInt(end -> fit.width(end.waiting()))
                .thenComparingInt(end -> fit.nearness(end.node(), end.waiting()))
                .thenComparingInt(end -> fit.mates(end.node(), end.waiting()) ? 1 : 0)
                .thenComparingInt(end -> fit.othersBesideInUse(end.node()) ? 1 : 0)
                .thenComparingInt(end -> fit.isOfItsLike(end.node(), end.waiting()) ? 1 : 0)
                .thenComparingInt(end -> search.hops(end.node()));
    }

    private Stop stop(OpenEnd end) {
        String why = graph.intoUnknown.getOrDefault(end.node(), nothingLeadsOn(graph, end.node()));
        return new Stop(graph.address(end.node()), why + "; " + waits(end));
    }

    private String waits(OpenEnd end) {
        if (end.waiting() < 0) {
            return "the feed's other destinations are led on from beside it";
        }
        if (isSamePort(end.node(), end.waiting())) {
            return "what leads on comes back by it";
        }
        Comparator<OpenEnd> better = better();
        long asGood = partners(end.node()).stream()
                .filter(other -> better.compare(end.waitingAt(other), end) == 0)
                .count();
        String place = Said.place(Fit.port(graph.address(end.waiting())));
        if (asGood == 1 && !graph.plugged(end.node()).isEmpty()) {
            return place + " could take it";
        }
        if (asGood > 1) {
            return place + " is one of " + asGood + " that could take it";
        }
        return place + (graph.signal(end.node()) == Signal.RADIO ? " has no link" : " waits for it");
    }

    /** Nothing is in the port, or a cable whose other end nobody knows; by radio, several may listen to one. */
    private boolean isOpen(int node) {
        if (graph.signal(node) == Signal.RADIO) {
            return graph.side(node) == Side.LEAVING || graph.inStarts()[node] == graph.inStarts()[node + 1];
        }
        return graph.plugged(node).stream().allMatch(this::isLoose);
    }

    private boolean isLoose(String id) {
        Cable cable = graph.project.cables().get(id);
        return cable != null && cable.ways().isEmpty() && (isUnknown(cable.from()) || isUnknown(cable.to()));
    }

    private static boolean isUnknown(@Nullable End end) {
        return end == null || end.ref() == null;
    }

    /** Ports that would take it, or the same port where the way comes back by it; -1 for none. */
    private List<Integer> partners(int node) {
        List<Integer> partners = new ArrayList<>();
        for (int other : waiting) {
            boolean takes = graph.pieceNumber(other) != graph.pieceNumber(node)
                    && graph.signal(other) == graph.signal(node)
                    && Objects.equals(
                            graph.spot(other).channel(), graph.spot(node).channel())
                    && agree(graph.protocol(node), graph.protocol(other));
            if (takes || isSamePort(node, other)) {
                partners.add(other);
            }
        }
        return partners.isEmpty() ? List.of(-1) : partners;
    }

    private boolean leadsBack(int node, int other) {
        for (int edge : search.path(node)) {
            if (graph.pieceNumber(graph.from[edge]) == graph.pieceNumber(other)) {
                return !isSamePort(node, other);
            }
        }
        return false;
    }

    private boolean isSamePort(int node, int other) {
        return graph.pieceNumber(other) == graph.pieceNumber(node)
                && graph.spot(other).name().equals(graph.spot(node).name());
    }

    private static boolean agree(@Nullable String speaks, @Nullable String hears) {
        return speaks == null || hears == null || speaks.equals(hears);
    }

    /** The way that all of the feed's other destinations have in common; none where there is but one of them. */
    private int[] trunk() {
        int[] common = {};
        for (int i = 0; i < siblings.size() && siblings.size() > 1; i++) {
            int[] path = search.path(siblings.get(i));
            common = i == 0 ? path : java.util.Arrays.copyOf(common, Math.max(0, mismatch(common, path)));
        }
        return common;
    }

    private static int mismatch(int[] one, int[] other) {
        int differs = java.util.Arrays.mismatch(one, other);
        return differs < 0 ? one.length : differs;
    }

    private boolean runsAlong(int node) {
        return trunk.length > 0 && mismatch(trunk, search.path(node)) == trunk.length;
    }

    private boolean leadsToSiblingsBeside(int node) {
        for (int sibling : siblings) {
            for (int edge : search.path(sibling)) {
                if (fit.isBeside(graph.to[edge], node)) {
                    return true;
                }
            }
        }
        return false;
    }

    static String nothingLeadsOn(SignalGraph graph, int node) {
        String place = Said.place(Fit.port(graph.address(node)));
        if (graph.side(node) != Side.LEAVING) {
            return "nothing leads on from " + place;
        }
        if (graph.signal(node) == Signal.RADIO) {
            return "no radio link leads on from " + place;
        }
        return graph.plugged(node).isEmpty()
                ? "nothing is plugged into " + place
                : "what is plugged into " + place + " does not take it on";
    }
}
