package housewright.signal;

import housewright.model.Cable;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.NetworkSend;
import housewright.model.RadioLink;
import housewright.model.Ref.Address;
import housewright.model.Way;
import housewright.signal.Layout.Side;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A way that would be whole but for what is not there: struck, not yet come, or a thing whose inside nobody knows. It
 * counts only where both its ends have nothing else in them: what has been replaced is not missed.
 */
final class NotThere {
    /**
     * What would lead on, but does not.
     *
     * @param fails what is wrong with it itself; null where only a thing at its end is missing
     */
    private record Lead(
            Cause cause, Address from, Address to, @Nullable String fails) {}

    /** How far a way has come, and where it set out. */
    private record At(Lead last, Lead first, int start) {}

    private final SignalGraph graph;
    private @Nullable Map<String, List<Lead>> leads;

    NotThere(SignalGraph graph) {
        this.graph = graph;
    }

    /** Where the way sets out that lacks the least; null where there is none. */
    @Nullable
    Suspect find(Search search, BitSet wanted, Idle idle) {
        BitSet passed = new BitSet();
        for (int node : search.reached()) {
            passed.set(node);
        }
        List<At> starts = new ArrayList<>();
        for (int node : search.reached()) {
            if (!idle.isTerminated(node)) {
                leadsFrom(node).forEach(lead -> starts.add(new At(lead, lead, node)));
            }
        }
        starts.sort(Comparator.comparing(at -> !idle.isIdle(at.start())));
        ArrayDeque<At> queue = new ArrayDeque<>(starts);
        Set<Address> seen = new HashSet<>();
        while (!queue.isEmpty()) {
            At at = queue.remove();
            Address entered = at.last().to();
            if (!seen.add(entered)) {
                continue;
            }
            if (isMissing(entered.thing())) {
                onThroughMissing(at, queue);
            } else if (onThroughWhatIsThere(at, wanted, passed, queue)) {
                return new Suspect(idle.isIdle(at.start()) ? Likely.MISSING_ON_AN_IDLE_WAY : Likely.MISSING, stop(at));
            }
        }
        return null;
    }

    private void onThroughMissing(At at, ArrayDeque<At> queue) {
        Address entered = at.last().to();
        for (Lead lead : leads().getOrDefault(entered.thing(), List.of())) {
            if (!lead.from().spot().equals(entered.spot()) && lets(entered, true) && lets(lead.from(), false)) {
                queue.add(new At(lead, at.first(), at.start()));
            }
        }
    }

    /** Whether what it enters leads to the destination; else it goes on from there. */
    private boolean onThroughWhatIsThere(At at, BitSet wanted, BitSet passed, ArrayDeque<At> queue) {
        ArrayDeque<Integer> work = new ArrayDeque<>();
        for (int node : graph.nodesOf(at.last().to())) {
            if (graph.side(node) == Side.ARRIVING && isFreeFor(node, at) && !passed.get(node)) {
                work.add(node);
            }
        }
        while (!work.isEmpty()) {
            int node = work.remove();
            if (wanted.get(node)) {
                return true;
            }
            passed.set(node);
            leadsFrom(node).forEach(lead -> queue.add(new At(lead, at.first(), at.start())));
            for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
                if (!passed.get(graph.to[e]) && !graph.contested[e]) {
                    work.add(graph.to[e]);
                }
            }
        }
        return false;
    }

    /** What would lead on from a leaving channel that has nothing else in it. */
    private List<Lead> leadsFrom(int node) {
        if (graph.side(node) != Side.LEAVING) {
            return List.of();
        }
        Spot spot = graph.spot(node);
        return leads().getOrDefault(graph.piece(node).id(), List.of()).stream()
                .filter(lead -> lead.from().spot().name().equals(spot.name()))
                .filter(lead -> lead.from().spot().channel() == null
                        || lead.from().spot().channel().equals(spot.channel()))
                .filter(lead -> hasNothingElse(node, lead.cause()))
                .toList();
    }

    private boolean isFreeFor(int node, At at) {
        boolean sameChannel = at.first().equals(at.last()) && at.first().cause() instanceof Cause.ByCable;
        return graph.inStarts()[node] == graph.inStarts()[node + 1]
                && hasNothingElse(node, at.last().cause())
                && (!sameChannel
                        || Objects.equals(
                                graph.spot(at.start()).channel(),
                                graph.spot(node).channel()));
    }

    private boolean hasNothingElse(int node, Cause cause) {
        return !(cause instanceof Cause.ByCable cable)
                || graph.plugged(node).stream().allMatch(cable.id()::equals);
    }

    private Stop stop(At at) {
        Lead first = at.first();
        String unknown = graph.intoUnknown.get(at.start());
        if (unknown != null) {
            return new Stop(graph.address(at.start()), unknown);
        }
        String fails = first.fails();
        if (fails == null) {
            fails = "would lead on to " + Said.place(first.to()) + ", but "
                    + Said.name(first.to().thing()) + " " + absence(first.to().thing());
        }
        boolean open = first.cause() instanceof Cause.ByCable
                && graph.plugged(at.start()).isEmpty();
        String free = open ? OpenEnds.nothingLeadsOn(graph, at.start()) + "; " : "";
        return new Stop(graph.address(at.start()), free + Said.cause(first.cause()) + " " + fails);
    }

    private String absence(String thing) {
        Equipment equipment = graph.project.equipment().get(thing);
        return absence("equipment", thing, equipment == null ? Life.KEEP : equipment.life());
    }

    private String absence(String section, String id, Life life) {
        boolean struck = life == Life.STRIKE && graph.moment.isDone(section, id);
        return "is not there " + graph.moment.inWords() + (struck ? ": it is to be struck" : "");
    }

    /** Not there, or its inside is not known. */
    private boolean isMissing(String thing) {
        Integer index = graph.pieceIndex.get(thing);
        return index == null || graph.pieces.get(index).layout() == null;
    }

    /** A port of a missing thing takes a signal in, or gives one; a thing of unknown type might do either. */
    private boolean lets(Address port, boolean in) {
        Equipment equipment = graph.project.equipment().get(port.thing());
        Model model = equipment == null
                ? null
                : graph.builder.types.findModel(equipment.model()).orElse(null);
        if (model == null || !model.portsKnown()) {
            return true;
        }
        return graph.builder
                .layouts
                .of(model)
                .shape
                .findSocket(port.spot().name())
                .map(socket -> in ? socket.port().arrives() : socket.port().leaves())
                .orElse(false);
    }

    /** By the thing they lead from. */
    private Map<String, List<Lead>> leads() {
        Map<String, List<Lead>> known = leads;
        if (known == null) {
            known = new HashMap<>();
            for (Cable each : graph.project.cables().values()) {
                addCable(each, known);
            }
            for (RadioLink link : graph.project.radio().values()) {
                boolean there = graph.moment.isThere("radio", link.id(), link.life());
                String absent = there ? null : absence("radio", link.id(), link.life());
                add(new Cause.ByRadio(link.id()), new Way(link.from(), link.to()), absent, known);
            }
            for (NetworkSend send : graph.project.networkSends().values()) {
                boolean there = graph.moment.isThere("network-sends", send.id(), send.life());
                String absent = there ? null : absence("network-sends", send.id(), send.life());
                add(new Cause.BySend(send.id(), List.of()), new Way(send.from(), send.to()), absent, known);
            }
            for (Unjoined dead : graph.unjoined) {
                add(new Lead(dead.cause(), dead.one(), dead.other(), "does not join: " + dead.why()), known);
            }
            leads = known;
        }
        return known;
    }

    private void addCable(Cable each, Map<String, List<Lead>> all) {
        boolean there = graph.moment.isThere("cables", each.id(), each.life());
        String absent = there ? null : absence("cables", each.id(), each.life());
        Cable cable = graph.moment.isDone("cables", each.id()) ? each : each.today();
        Cause cause = new Cause.ByCable(each.id());
        End from = cable.from();
        End to = cable.to();
        if (from != null && to != null && from.ref() != null && to.ref() != null) {
            add(cause, new Way(from.ref(), to.ref()), absent, all);
        }
        cable.ways().forEach(way -> add(cause, way, absent, all));
    }

    private void add(Cause cause, Way way, @Nullable String absent, Map<String, List<Lead>> all) {
        for (Way.Pair pair : way.pairs()) {
            if (absent != null
                    || isMissing(pair.from().thing())
                    || isMissing(pair.to().thing())) {
                String there = "would lead on to " + Said.place(pair.to()) + ", but it " + absent;
                String back = "would lead on to " + Said.place(pair.from()) + ", but it " + absent;
                add(new Lead(cause, pair.from(), pair.to(), absent == null ? null : there), all);
                if (cause instanceof Cause.ByCable) {
                    add(new Lead(cause, pair.to(), pair.from(), absent == null ? null : back), all);
                }
            }
        }
    }

    private static void add(Lead lead, Map<String, List<Lead>> all) {
        all.computeIfAbsent(lead.from().thing(), thing -> new ArrayList<>(2)).add(lead);
    }
}
