package housewright.model.change;

import housewright.model.AcceptedPlan;
import housewright.model.Join;
import housewright.model.PatchEntry;
import housewright.model.Project;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Finds what makes one project of another. */
final class Difference {
    private Difference() {}

    static List<Change> between(Project before, Project after) {
        List<Change> changes = new ArrayList<>();
        if (!before.about().equals(after.about())) {
            changes.add(new Change.Describe(after.about()));
        }
        if (!Objects.equals(before.budget(), after.budget()) || !Objects.equals(before.practice(), after.practice())) {
            changes.add(new Change.Reckon(after.budget(), after.practice()));
        }
        for (Section section : Section.values()) {
            section(section, section.of(before), section.of(after), changes);
        }
        for (String device : both(before.patch(), after.patch())) {
            patch(
                    device,
                    before.patch().getOrDefault(device, List.of()),
                    after.patch().getOrDefault(device, List.of()),
                    changes);
        }
        for (String id : both(before.pairs(), after.pairs())) {
            if (!before.pairs().getOrDefault(id, List.of()).equals(after.pairs().getOrDefault(id, List.of()))) {
                changes.add(new Change.Pair(id, after.pairs().getOrDefault(id, List.of())));
            }
        }
        AcceptedPlan plan = Section.plan(after).withPins(Map.of());
        if (!Section.plan(before).withPins(Map.of()).equals(plan)) {
            changes.add(new Change.Accept(plan));
        }
        if (!before.exempt().equals(after.exempt())) {
            changes.add(new Change.Exempt(after.exempt()));
        }
        return List.copyOf(changes);
    }

    private static void section(
            Section section,
            Map<String, ? extends Record> before,
            Map<String, ? extends Record> after,
            List<Change> changes) {
        Set<String> order = new LinkedHashSet<>(before.keySet());
        for (String id : before.keySet()) {
            if (!after.containsKey(id)) {
                changes.add(new Change.Drop(section, id));
                order.remove(id);
            }
        }
        after.forEach((id, entity) -> {
            if (!entity.equals(before.get(id))) {
                changes.add(new Change.Put(section, id, entity));
                order.add(id);
            }
        });
        if (!List.copyOf(order).equals(List.copyOf(after.keySet()))) {
            changes.add(new Change.Arrange(section, List.copyOf(after.keySet())));
        }
    }

    /** Entry by entry where that gives the same list, so that two people may patch one device. */
    private static void patch(String device, List<PatchEntry> before, List<PatchEntry> after, List<Change> changes) {
        if (before.equals(after)) {
            return;
        }
        List<Change> small = new ArrayList<>();
        for (PatchEntry entry : before) {
            if (!after.contains(entry)) {
                for (Join.Pair pair : entry.join().pairs()) {
                    small.add(new Change.Unpatch(device, pair.from(), pair.to()));
                }
            }
        }
        for (PatchEntry entry : after) {
            if (!before.contains(entry)) {
                small.add(new Change.Patch(device, entry));
            }
        }
        changes.addAll(Edit.patched(before, small).equals(after) ? small : List.of(new Change.Repatch(device, after)));
    }

    private static Set<String> both(Map<String, ?> before, Map<String, ?> after) {
        Set<String> ids = new LinkedHashSet<>(before.keySet());
        ids.addAll(after.keySet());
        return ids;
    }
}
