package housewright.signal;

import housewright.model.Equipment;
import housewright.model.Join;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.Setting;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A switch turned on, a channel unmuted, contested sources taken out down to one, a cable kept. */
final class PossibleSettings {
    private static final int MINUTES = 1;
    private static final Setting OFF = new Setting(false, null, null, null, false, null);

    private final Signals signals;
    private final SignalGraph graph;
    private final Map<Integer, List<Integer>> stopped = new HashMap<>();
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final List<Kept> kept = new ArrayList<>();

    /** An edge that would be there if a cable were not struck. */
    private record Kept(int from, int to, String cable) {}

    PossibleSettings(Signals signals) {
        this.signals = signals;
        this.graph = signals.graph();
        for (int e = 0; e < graph.stopped.count; e++) {
            stopped.computeIfAbsent(graph.stopped.from[e], key -> new ArrayList<>(1))
                    .add(e);
        }
        for (int node : graph.gatedBy.keySet()) {
            gate(node);
        }
        findKept();
    }

    /** Cables that are to be struck while both their ends stay. */
    private void findKept() {
        List<Change> keep = new ArrayList<>();
        for (housewright.model.Cable cable : signals.project().cables().values()) {
            if (cable.life() == housewright.model.Life.STRIKE) {
                keep.add(new Change.Put(Section.CABLES, cable.id(), Lives.kept(cable)));
            }
        }
        if (keep.isEmpty()) {
            return;
        }
        SignalGraph longer = signals.with(Change.apply(signals.project(), keep)).graph();
        Set<String> struck = new java.util.HashSet<>();
        keep.forEach(change -> struck.add(((Change.Put) change).id()));
        for (int e = 0; e < longer.to.length; e++) {
            addKept(longer, longer.from[e], longer.to[e], longer.cause[e], struck);
        }
        Edges stopped = longer.stopped;
        for (int e = 0; e < stopped.count; e++) {
            addKept(longer, stopped.from[e], stopped.to[e], stopped.cause[e], struck);
        }
    }

    private void addKept(SignalGraph longer, int from, int to, Cause cause, Set<String> struck) {
        if (cause instanceof Cause.ByCable cable && struck.contains(cable.id())) {
            int here = same(longer, from);
            int there = same(longer, to);
            if (here >= 0 && there >= 0) {
                kept.add(new Kept(here, there, cable.id()));
            }
        }
    }

    /** The node of our graph that is the same place as one of the other. */
    private int same(SignalGraph other, int node) {
        return graph.find(other.piece(node).id(), other.spot(node), other.side(node));
    }

    void from(int node, Possible.Offers offers) {
        for (int e : stopped.getOrDefault(node, List.of())) {
            int to = graph.stopped.to[e];
            boolean contested = graph.contestedAt.get(to) && graph.stopped.cause[e] instanceof Cause.ByPatch;
            List<Step> needed = contested ? List.of(alone(node, to, graph.stopped.cause[e])) : List.of();
            offers.offer(to, needed, graph.stopped.delay[e], 0);
        }
        if (graph.anyContested) {
            for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
                if (graph.contested[e]) {
                    offers.offer(graph.to[e], List.of(alone(node, graph.to[e], graph.cause[e])), graph.delay[e], 0);
                }
            }
        }
        for (Kept each : kept) {
            if (each.from() == node) {
                offers.offer(each.to(), List.of(keep(each.cable())), 0, 0);
            }
        }
    }

    /** The steps of a way from one node to another, with those that let a signal pass there at all. */
    List<Step> opened(int from, int to, List<Step> steps) {
        if (!graph.gatedBy.containsKey(from) && !graph.gatedBy.containsKey(to)) {
            return steps;
        }
        Set<Step> all = new LinkedHashSet<>();
        for (int node : new int[] {from, to}) {
            Step gate = gate(node);
            if (gate != null) {
                all.add(gate);
            }
        }
        all.addAll(steps);
        return List.copyOf(all);
    }

    /** What has to be turned on or unmuted for anything to pass a node; null where nothing has. */
    @Nullable
    Step gate(int node) {
        String name = graph.gatedBy.get(node);
        if (name == null) {
            return null;
        }
        Piece piece = graph.piece(node);
        if (name.isEmpty()) {
            LocalRef ref = mutedBy(piece, node);
            return ref == null
                    ? null
                    : set(
                            piece,
                            ref,
                            "unmute " + piece.id() + " " + ref,
                            "Unmute " + ref + " of " + Said.name(piece.id()) + ".");
        }
        LocalRef ref = new LocalRef(name);
        return set(
                piece,
                ref,
                "switch " + piece.id() + " " + name,
                "Turn on " + name + " of " + Said.name(piece.id()) + ".");
    }

    private @Nullable LocalRef mutedBy(Piece piece, int node) {
        for (Map.Entry<LocalRef, Setting> each : piece.equipment().set().entrySet()) {
            if (each.getValue().mute()
                    && each.getKey().spots().stream().anyMatch(spot -> isMeant(spot, graph.spot(node)))) {
                return each.getKey();
            }
        }
        return null;
    }

    private static boolean isMeant(Spot set, Spot place) {
        return set.name().equals(place.name())
                && (set.channel() == null || set.channel().equals(place.channel()));
    }

    private Step set(Piece piece, LocalRef ref, String key, String words) {
        return steps.computeIfAbsent(
                key,
                k -> new Step(k, Cost.of(0, MINUTES, 1), Set.of(), (now, ids) -> {
                    Equipment equipment = now.equipment().getOrDefault(piece.id(), piece.equipment());
                    Setting old = equipment.set().get(ref);
                    Setting set = old == null || old.on() != null || k.startsWith("switch ")
                            ? new Setting(true, null, null, null, false, null)
                            : old.open();
                    return new Step.Done(
                            List.of(new Change.Put(
                                    Section.EQUIPMENT,
                                    piece.id(),
                                    Lives.with(equipment, ref, set, old == null ? OFF : old))),
                            List.of(words),
                            List.of());
                }));
    }

    /** Of several sources patched to one place, only this one. */
    private Step alone(int from, int to, Cause own) {
        Piece piece = graph.piece(to);
        List<Cause.ByPatch> others = new ArrayList<>(graph.patchesInto(to));
        others.removeIf(own::equals);
        String key = "alone " + graph.address(from) + " -> " + graph.address(to);
        return new Step(key, Cost.of(0, MINUTES * others.size(), others.size()), Set.of(), (now, ids) -> {
            List<Change> changes = new ArrayList<>();
            List<String> words = new ArrayList<>();
            for (Cause.ByPatch other : others) {
                changes.addAll(Lives.unpatched(now, piece.id(), new Join.Pair(other.from(), other.to())));
                words.add("In " + Said.name(piece.id()) + ", take out the patch from " + other.from() + " to "
                        + other.to() + ".");
            }
            return new Step.Done(changes, words, List.of());
        });
    }

    private Step keep(String id) {
        return new Step("keep " + id, Cost.of(0, MINUTES, 1), Set.of(), (now, ids) -> {
            housewright.model.Cable cable = now.cables().get(id);
            return new Step.Done(
                    cable == null ? List.of() : List.of(new Change.Put(Section.CABLES, id, Lives.kept(cable))),
                    List.of("Keep cable " + id + " instead of striking it."),
                    List.of());
        });
    }

    /** Cables to be kept that carry both ways. */
    List<Step> keptBothWays() {
        Set<String> there = new LinkedHashSet<>();
        Set<String> both = new LinkedHashSet<>();
        for (Kept each : kept) {
            String way = each.cable() + " " + graph.pieceNumber(each.from()) + " " + graph.pieceNumber(each.to());
            there.add(way);
            if (there.contains(
                    each.cable() + " " + graph.pieceNumber(each.to()) + " " + graph.pieceNumber(each.from()))) {
                both.add(each.cable());
            }
        }
        return both.stream().map(this::keep).toList();
    }

    /** Every switch that is off and every mute, found when this was made. */
    List<Step> switches() {
        return List.copyOf(steps.values());
    }
}
