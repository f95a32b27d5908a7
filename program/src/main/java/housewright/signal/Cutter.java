package housewright.signal;

import housewright.model.Cable;
import housewright.model.Equipment;
import housewright.model.Feed;
import housewright.model.Join;
import housewright.model.LocalRef;
import housewright.model.NetworkSend;
import housewright.model.Project;
import housewright.model.RadioLink;
import housewright.model.Setting;
import housewright.model.Signal;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest set of patch entries, switches, links or cables to take away so that a never-feed no longer arrives. A
 * cut must take something from every path; so a path is looked for, each thing on it that can be taken away makes a
 * larger cut, and the cheapest cut so far is gone on with. What harms another feed by itself is never taken.
 */
final class Cutter {
    private static final int MOST = 4_000;
    private static final Setting ON = new Setting(true, null, null, null, false, null);

    private final Signals signals;
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Map<String, Boolean> harmless = new LinkedHashMap<>();

    Cutter(Signals signals) {
        this.signals = signals;
    }

    private record Cut(Set<String> keys, long cost) {}

    List<Mend> cut(Feed feed) {
        PriorityQueue<Cut> queue = new PriorityQueue<>(
                Comparator.comparingLong(Cut::cost).thenComparing(cut -> String.join("\n", cut.keys())));
        Set<Set<String>> seen = new HashSet<>();
        queue.add(new Cut(Set.of(), 0));
        for (int looked = 0; !queue.isEmpty() && looked < MOST; looked++) {
            Cut cut = queue.remove();
            List<Change> changes = changes(cut.keys());
            Signals after = cut.keys().isEmpty() ? signals : signals.with(Change.apply(signals.project(), changes));
            PairProof arriving = arriving(after, feed);
            if (arriving == null) {
                if (harmsNothing(after)) {
                    return List.of(mend(cut, changes));
                }
                continue;
            }
            for (Hop hop : arriving.hops()) {
                for (Step step : away(hop)) {
                    Set<String> keys = new TreeSet<>(cut.keys());
                    if (keys.add(step.key().toString()) && isHarmless(step) && seen.add(keys)) {
                        queue.add(new Cut(keys, cut.cost() + step.cost()));
                    }
                }
            }
        }
        return List.of();
    }

    private static @Nullable PairProof arriving(Signals at, Feed feed) {
        return at.findProof(feed.id()).stream()
                .flatMap(proof -> proof.pairs().stream())
                .filter(pair -> pair.state() == FeedState.ARRIVES)
                .findFirst()
                .orElse(null);
    }

    private boolean harmsNothing(Signals after) {
        return signals.prospects().trials.harmsNothing(after);
    }

    private boolean isHarmless(Step step) {
        return harmless.computeIfAbsent(
                step.key().toString(),
                key -> harmsNothing(signals.with(Change.apply(signals.project(), changes(Set.of(key))))));
    }

    private List<Change> changes(Set<String> keys) {
        List<Change> changes = new ArrayList<>();
        NewIds ids = new NewIds(signals.project());
        Project now = signals.project();
        for (String key : keys) {
            Step step = steps.get(key);
            if (step != null) {
                List<Change> next = step.done().on(now, ids).changes();
                now = Change.apply(now, next);
                changes.addAll(next);
            }
        }
        return changes;
    }

    private Mend mend(Cut cut, List<Change> changes) {
        List<String> words = new ArrayList<>();
        NewIds ids = new NewIds(signals.project());
        for (String key : cut.keys()) {
            Step step = steps.get(key);
            if (step != null) {
                words.addAll(step.done().on(signals.project(), ids).words());
            }
        }
        return new Mend(changes, words, Cost.price(cut.cost()), Cost.minutes(cut.cost()), List.of(), List.of());
    }

    /** What could be taken away so that this hop no longer holds. */
    private List<Step> away(Hop hop) {
        List<Step> away = new ArrayList<>();
        Project project = signals.project();
        switch (hop.cause()) {
            case Cause.ByPatch patch ->
                away.add(step(
                        "unpatch " + patch.equipment() + " " + patch.from() + " -> " + patch.to(),
                        1,
                        now -> Lives.unpatched(now, patch.equipment(), new Join.Pair(patch.from(), patch.to())),
                        "In " + Said.name(patch.equipment()) + ", take out the patch from " + patch.from() + " to "
                                + patch.to() + "."));
            case Cause.BySend send -> {
                NetworkSend entity = project.networkSends().get(send.id());
                if (entity != null) {
                    away.add(step(
                            "drop send " + send.id(),
                            2,
                            now -> List.of(Lives.gone(entity)),
                            "Take out network-send " + send.id() + "."));
                }
            }
            case Cause.ByRadio radio -> {
                RadioLink entity = project.radio().get(radio.id());
                if (entity != null) {
                    away.add(step(
                            "drop radio " + radio.id(),
                            2,
                            now -> List.of(Lives.gone(entity)),
                            "Take out radio link " + radio.id() + "."));
                }
            }
            case Cause.ByCable cable -> {
                Cable entity = project.cables().get(cable.id());
                if (entity != null && !isLeftToPeople(hop)) {
                    away.add(step(
                            "drop cable " + cable.id(),
                            5,
                            now -> List.of(Lives.gone(entity)),
                            "Take out cable " + cable.id() + "."));
                }
            }
            case Cause.ByRoute route -> {}
            case Cause.ByTie tie -> {}
        }
        addSwitches(hop, away);
        return away;
    }

    /** A loudspeaker line or mains. */
    private boolean isLeftToPeople(Hop hop) {
        SignalGraph graph = signals.graph();
        int node = graph.end(hop.from(), true);
        Signal signal = node < 0 ? null : graph.signal(node);
        return signal != null && SafeToOffer.LEFT_TO_PEOPLE.contains(signal);
    }

    private Step step(String key, int minutes, Function<Project, List<Change>> changes, String words) {
        return steps.computeIfAbsent(
                key,
                k -> new Step(
                        k,
                        Cost.of(0, minutes, 1),
                        Set.of(),
                        (now, ids) -> new Step.Done(changes.apply(now), List.of(words), List.of())));
    }

    private Step switchOff(String id, String name, Setting off) {
        return steps.computeIfAbsent(
                "switch off " + id + " " + name,
                key -> new Step(key, Cost.of(0, 1, 1), Set.of(), (now, ids) -> {
                    Equipment equipment = now.equipment().get(id);
                    return new Step.Done(
                            equipment == null
                                    ? List.of()
                                    : List.of(new Change.Put(
                                            Section.EQUIPMENT, id, Lives.with(equipment, new LocalRef(name), off, ON))),
                            List.of("Turn off " + name + " of " + Said.name(id) + "."),
                            List.of());
                }));
    }

    private void addSwitches(Hop hop, List<Step> away) {
        SignalGraph graph = signals.graph();
        for (var place : List.of(hop.from(), hop.to())) {
            Integer index = graph.pieceIndex.get(place.thing());
            Layout layout = index == null ? null : graph.pieces.get(index).layout();
            Equipment equipment = graph.project.equipment().get(place.thing());
            if (layout == null || equipment == null) {
                continue;
            }
            layout.gates.forEach((name, gated) -> {
                for (int local : gated) {
                    if (layout.nodes
                            .get(local)
                            .spot()
                            .name()
                            .equals(place.spot().name())) {
                        Setting off = new Setting(false, null, null, null, false, null);
                        away.add(switchOff(equipment.id(), name, off));
                        return;
                    }
                }
            });
        }
    }
}
