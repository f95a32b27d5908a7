package housewright.signal;

import housewright.signal.GraphBuilder.PortKey;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What could be done to lead a signal on from a node: everything a mend may be made of. A patch entry where the
 * device allows it; a switch turned on, a channel unmuted; one of several contested sources taken out; a cable between
 * two free ports, or one moved or exchanged; a cable kept that was to be struck; a converter or splitter from the
 * library; a radio link; a network-send, a network cable or a VLAN.
 */
final class Possible {
    /** Takes what is offered. */
    interface Offers {
        /**
         * A way on.
         *
         * @param rank among offers of equal cost, the lower the more likely what a person would do
         */
        void offer(int to, List<Step> steps, long delayNanos, int rank);
    }

    private static final int DEEP = 50;

    private final @Nullable List<Offer>[] known;
    private final @Nullable List<Offer>[] knownJoining;
    private final PossiblePatches patches;
    private final PossibleSettings settings;
    private final PossibleCables cables;
    private final PossibleBoxes boxes;
    private final PossibleNetwork network;

    /** {@code withBoxes}: converters and splitters from the library are thought of. */
    @SuppressWarnings({"unchecked", "rawtypes"}) // Java has no arrays of generic lists
    Possible(Signals signals, boolean withBoxes) {
        SignalGraph graph = signals.graph();
        this.known = new List[graph.nodes];
        this.knownJoining = new List[graph.nodes];
        Runs runs = new Runs(signals.project(), signals.types());
        FreePorts free = new FreePorts(graph);
        this.patches = new PossiblePatches(graph);
        this.settings = new PossibleSettings(signals);
        this.cables = new PossibleCables(graph, free, runs);
        this.boxes = new PossibleBoxes(signals, free, runs, withBoxes);
        this.network = new PossibleNetwork(graph, free, runs);
    }

    /** A way on from a node. */
    record Offer(int to, List<Step> steps, long delayNanos, int rank, boolean isPatch) {
        /** Of patches that cost the same, one from deep in is what a person would set. */
        int rankAfter(int hops) {
            return rank + (isPatch ? Math.max(0, DEEP - hops) : 0);
        }
    }

    /** Every way on from a node, worked out once. */
    List<Offer> from(int node) {
        List<Offer> offers = known[node];
        if (offers == null) {
            offers = new ArrayList<>(joining(node));
            List<Offer> all = offers;
            patches.from(
                    node,
                    (to, steps, delay, rank) ->
                            all.add(new Offer(to, settings.opened(node, to, steps), delay, rank, true)));
            known[node] = offers;
        }
        return offers;
    }

    /** The same but for patch entries, which are by far the most. */
    List<Offer> joining(int node) {
        List<Offer> offers = knownJoining[node];
        if (offers == null) {
            List<Offer> found = new ArrayList<>(0);
            Offers others = (to, steps, delay, rank) ->
                    found.add(new Offer(to, settings.opened(node, to, steps), delay, rank, false));
            settings.from(node, others);
            cables.from(node, others);
            boxes.from(node, others);
            network.from(node, others);
            offers = found;
            knownJoining[node] = found;
        }
        return offers;
    }

    /** The least that any entry to this node costs. */
    long leastPatch(int node) {
        return patches.least(node);
    }

    /** Any entry may be set in this device and this one replaces none, so that two in a row are never better than one. */
    boolean isNeverBetterInTwo(int first, int to) {
        return patches.isFree(first) && patches.replacesNothing(to) && patches.mayBeSet(first, to);
    }

    /** What has to be turned on or unmuted for anything to pass a node; null where nothing has. */
    @Nullable
    Step gate(int node) {
        return settings.gate(node);
    }

    /**
     * Steps that may serve a path more than once: a link that carries both ways, new, moved or kept; a switch that gates
     * several.
     */
    List<Step> shared() {
        List<Step> shared = new ArrayList<>(cables.bothWays());
        shared.addAll(settings.switches());
        shared.addAll(settings.keptBothWays());
        return shared;
    }

    /** A cable that could be moved: alone in a port, with two plain ends at most. */
    static @Nullable String onlyCable(SignalGraph graph, PortKey port) {
        List<String> cables = graph.builder.plugged.getOrDefault(port, List.of());
        if (cables.size() != 1 || cables.getFirst().isEmpty()) {
            return null;
        }
        housewright.model.Cable cable = graph.project.cables().get(cables.getFirst());
        return cable == null || !cable.ways().isEmpty() || cable.was() != null ? null : cable.id();
    }
}
