package housewright.signal;

import housewright.model.Ref.Address;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** What may be patched inside a device. */
final class Patchables {
    private final SignalGraph graph;
    private final PossiblePatches possible;

    Patchables(SignalGraph graph) {
        this.graph = graph;
        this.possible = new PossiblePatches(graph);
    }

    List<PatchOffer> of(Address place, boolean from) {
        Integer index = graph.pieceIndex.get(place.thing());
        Layout layout = index == null ? null : graph.pieces.get(index).layout();
        int node = index == null ? -1 : graph.builder.nodeIfKnown(index, place.spot(), from);
        if (index == null || layout == null || node < 0) {
            return List.of();
        }
        int base = graph.pieces.get(index).base();
        List<PatchOffer> offers = new ArrayList<>();
        for (int local = 0; local < layout.nodes.size(); local++) {
            int other = base + local;
            int source = from ? node : other;
            int target = from ? other : node;
            if (other != node
                    && graph.side(source) != Side.LEAVING
                    && possible.mayBeSet(source, target)
                    && possible.isSameMedia(source, target)
                    && !isSet(source, target)) {
                offers.add(offer(source, target));
            }
        }
        offers.sort(Comparator.comparing(offer -> !offer.instead().isEmpty()));
        return List.copyOf(offers);
    }

    private boolean isSet(int source, int target) {
        for (int e = graph.start[source]; e < graph.start[source + 1]; e++) {
            if (graph.to[e] == target) {
                return true;
            }
        }
        return false;
    }

    private PatchOffer offer(int source, int target) {
        Set<Cause.ByPatch> there = graph.side(target) == Side.LEAVING ? graph.patchesInto(target) : Set.of();
        return new PatchOffer(
                graph.address(source).spot(),
                graph.address(target).spot(),
                there.stream().map(Cause.ByPatch::from).toList());
    }
}
