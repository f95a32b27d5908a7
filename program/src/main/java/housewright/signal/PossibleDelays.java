package housewright.signal;

import housewright.model.Join;
import housewright.model.PatchEntry;
import housewright.model.change.Change;
import housewright.unit.Delay;
import housewright.unit.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Where a feed is late: the delay that a patch entry on its way adds, lowered by what is too much. */
final class PossibleDelays {
    private static final int MINUTES = 1;
    private static final double STEPS_PER_MS = 10;

    private PossibleDelays() {}

    /** One step for each delayed entry on the way of a late pair. */
    static List<Step> of(SignalGraph graph, FeedProof proof, long limitNanos) {
        Map<String, PatchEntry> entries = new LinkedHashMap<>();
        Map<String, Long> excess = new LinkedHashMap<>();
        Map<String, String> devices = new LinkedHashMap<>();
        for (PairProof pair : proof.pairs()) {
            if (pair.state() != FeedState.LATE) {
                continue;
            }
            for (Hop hop : pair.hops()) {
                PatchEntry entry = hop.cause() instanceof Cause.ByPatch by ? entry(graph, by) : null;
                if (entry != null && hop.cause() instanceof Cause.ByPatch by) {
                    String key = by.equipment() + " " + entry.join().text();
                    entries.put(key, entry);
                    devices.put(key, by.equipment());
                    excess.merge(key, pair.delayNanos() - limitNanos, Math::max);
                }
            }
        }
        List<Step> steps = new ArrayList<>();
        entries.forEach(
                (key, entry) -> steps.add(lower(devices.getOrDefault(key, ""), entry, excess.getOrDefault(key, 0L))));
        return steps;
    }

    /** The entry that makes the hop, where it adds a delay in time. */
    private static @org.jspecify.annotations.Nullable PatchEntry entry(SignalGraph graph, Cause.ByPatch by) {
        for (PatchEntry entry : graph.project.patch().getOrDefault(by.equipment(), List.of())) {
            Delay delay = entry.delay();
            if (delay != null
                    && !delay.inFrames()
                    && Lives.isOnlyNew(graph.project, by.equipment(), entry) // one join has no other delay today
                    && entry.join().pairs().contains(new Join.Pair(by.from(), by.to()))) {
                return entry;
            }
        }
        return null;
    }

    private static Step lower(String device, PatchEntry entry, long excessNanos) {
        Delay was = entry.delay();
        double milliseconds = was == null ? 0 : was.in(Unit.MILLISECOND);
        double lower = Math.max(0, Math.floor((milliseconds - excessNanos / 1e6) * STEPS_PER_MS) / STEPS_PER_MS);
        Delay is = Delay.ofMilliseconds(lower);
        List<Change> changes = new ArrayList<>();
        for (Join.Pair pair : entry.join().pairs()) {
            changes.add(new Change.Unpatch(device, pair.from(), pair.to()));
        }
        changes.add(new Change.Patch(
                device,
                new PatchEntry(
                        entry.from(),
                        entry.to(),
                        entry.tap(),
                        entry.gain(),
                        lower == 0 ? null : is,
                        entry.life(),
                        entry.note())));
        String words = "In " + Said.name(device) + ", lower the delay from "
                + entry.join().text().replace(" -> ", " to ") + " from " + (was == null ? "0 ms" : was.text()) + " to "
                + is.text() + ".";
        return new Step(
                "delay " + device + " " + entry.join().text(),
                Cost.of(0, MINUTES, changes.size()),
                Set.of(),
                (now, ids) ->
                        new Step.Done(changes, List.of(words), List.of("what the delay was set for is still right")));
    }
}
