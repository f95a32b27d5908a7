package housewright.model.change;

import housewright.model.About;
import housewright.model.AcceptedPlan;
import housewright.model.Budget;
import housewright.model.Exemption;
import housewright.model.Join;
import housewright.model.Lighting;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;
import housewright.model.Practice;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Venue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes one change. */
final class Edit {
    private Edit() {}

    /** Makes them in order; entities of one section that follow one another are put and dropped at once. */
    static Project apply(Project project, List<Change> changes) {
        Project changed = project;
        for (int i = 0; i < changes.size(); ) {
            Section section = section(changes.get(i));
            if (section == null) {
                changed = apply(changed, changes.get(i++));
                continue;
            }
            Map<String, Record> entities = new LinkedHashMap<>(section.of(changed));
            for (; i < changes.size() && section(changes.get(i)) == section; i++) {
                if (changes.get(i) instanceof Change.Put put) {
                    entities.put(put.id(), put.entity());
                } else if (changes.get(i) instanceof Change.Drop drop) {
                    entities.remove(drop.id());
                }
            }
            changed = with(changed, section, entities);
        }
        return changed;
    }

    /** Of a change that puts or drops an entity. */
    private static @Nullable Section section(Change change) {
        return change instanceof Change.Put put
                ? put.section()
                : change instanceof Change.Drop drop ? drop.section() : null;
    }

    private static Project apply(Project project, Change change) {
        return switch (change) {
            case Change.Put put -> apply(project, List.of(put));
            case Change.Drop drop -> apply(project, List.of(drop));
            case Change.Arrange arrange ->
                with(project, arrange.section(), arranged(arrange.section().of(project), arrange.ids()));
            case Change.Patch patch -> withPatch(project, patch.device(), change);
            case Change.Unpatch unpatch -> withPatch(project, unpatch.device(), change);
            case Change.Repatch repatch -> withPatch(project, repatch.device(), change);
            case Change.Pair pair -> {
                Map<String, List<Ref>> pairs = new LinkedHashMap<>(project.pairs());
                if (pair.channels().isEmpty()) {
                    pairs.remove(pair.id());
                } else {
                    pairs.put(pair.id(), pair.channels());
                }
                yield with(project, project.about(), project.patch(), pairs, project.exempt(), null, Map.of());
            }
            case Change.Describe describe ->
                with(project, describe.about(), project.patch(), project.pairs(), project.exempt(), null, Map.of());
            case Change.Reckon reckon -> with(project, reckon.budget(), reckon.practice(), project.plan());
            case Change.Exempt exempt ->
                with(project, project.about(), project.patch(), project.pairs(), exempt.exemptions(), null, Map.of());
            case Change.Accept accept ->
                with(
                        project,
                        project.budget(),
                        project.practice(),
                        planned(accept.plan().withPins(Section.plan(project).pins())));
        };
    }

    /** The entries of one device with changes of its patch made. */
    static List<PatchEntry> patched(List<PatchEntry> entries, List<Change> changes) {
        List<PatchEntry> patched = entries;
        for (Change change : changes) {
            patched = patched(patched, change);
        }
        return patched;
    }

    private static List<PatchEntry> patched(List<PatchEntry> entries, Change change) {
        return switch (change) {
            case Change.Patch patch -> {
                if (joins(entries).containsAll(patch.entry().join().pairs())) {
                    yield entries;
                }
                List<PatchEntry> longer = new ArrayList<>(entries);
                longer.add(patch.entry());
                yield longer;
            }
            case Change.Unpatch unpatch -> without(entries, unpatch.from(), unpatch.to());
            case Change.Repatch repatch -> repatch.entries();
            case Change.Put put -> entries;
            case Change.Drop drop -> entries;
            case Change.Pair pair -> entries;
            case Change.Describe describe -> entries;
            case Change.Reckon reckon -> entries;
            case Change.Exempt exempt -> entries;
            case Change.Arrange arrange -> entries;
            case Change.Accept accept -> entries;
        };
    }

    private static Map<String, Record> arranged(Map<String, ? extends Record> entities, List<String> ids) {
        Map<String, Record> arranged = new LinkedHashMap<>();
        for (String id : ids) {
            Record entity = entities.get(id);
            if (entity != null) {
                arranged.put(id, entity);
            }
        }
        entities.forEach(arranged::putIfAbsent);
        return arranged;
    }

    private static List<Join.Pair> joins(List<PatchEntry> entries) {
        return entries.stream().flatMap(entry -> entry.join().pairs().stream()).toList();
    }

    private static List<PatchEntry> without(List<PatchEntry> entries, Spot from, Spot to) {
        Join.Pair gone = new Join.Pair(from, to);
        List<PatchEntry> left = new ArrayList<>();
        for (PatchEntry entry : entries) {
            List<Join.Pair> pairs = entry.join().pairs();
            if (!pairs.contains(gone)) {
                left.add(entry);
                continue;
            }
            for (Join.Pair pair : pairs) {
                if (!pair.equals(gone)) {
                    left.add(single(entry, pair));
                }
            }
        }
        return left;
    }

    private static PatchEntry single(PatchEntry entry, Join.Pair pair) {
        return new PatchEntry(
                new LocalRef(pair.from().toString()),
                List.of(new LocalRef(pair.to().toString())),
                entry.tap(),
                entry.gain(),
                entry.delay(),
                entry.life(),
                entry.note());
    }

    private static Project withPatch(Project project, String device, Change change) {
        List<PatchEntry> before = project.patch().getOrDefault(device, List.of());
        List<PatchEntry> entries = patched(before, change);
        if (entries.equals(before)) {
            return project;
        }
        Map<String, List<PatchEntry>> patch = new LinkedHashMap<>(project.patch());
        if (entries.isEmpty()) {
            patch.remove(device);
        } else {
            patch.put(device, List.copyOf(entries));
        }
        return with(project, project.about(), patch, project.pairs(), project.exempt(), null, Map.of());
    }

    private static Project with(Project p, Section section, Map<String, ? extends Record> entities) {
        return with(p, p.about(), p.patch(), p.pairs(), p.exempt(), section, entities);
    }

    /** The project with these put in place of its own; no section where its entities stay. */
    private static Project with(
            Project p,
            About about,
            Map<String, List<PatchEntry>> patch,
            Map<String, List<Ref>> pairs,
            List<Exemption> exempt,
            @Nullable Section section,
            Map<String, ? extends Record> entities) {
        return new Project(
                p.format(),
                about,
                venue(p.venue(), section, entities),
                pick(section, Section.MODELS, entities, p.models()),
                pick(section, Section.CABLE_TYPES, entities, p.cableTypes()),
                pick(section, Section.ADAPTERS, entities, p.adapters()),
                pick(section, Section.EQUIPMENT, entities, p.equipment()),
                pick(section, Section.CABLES, entities, p.cables()),
                patch,
                pick(section, Section.NETWORK_SENDS, entities, p.networkSends()),
                pick(section, Section.RADIO, entities, p.radio()),
                pairs,
                pick(section, Section.FEEDS, entities, p.feeds()),
                lighting(p, section, entities),
                pick(section, Section.CONTROLS, entities, p.controls()),
                pick(section, Section.PEOPLE, entities, p.people()),
                pick(section, Section.HIRES, entities, p.hires()),
                pick(section, Section.EVENTS, entities, p.events()),
                pick(section, Section.FILES, entities, p.files()),
                pick(section, Section.TASKS, entities, p.tasks()),
                pick(section, Section.QUESTIONS, entities, p.questions()),
                pick(section, Section.ORDERS, entities, p.orders()),
                p.budget(),
                p.practice(),
                section == Section.PINS
                        ? planned(Section.plan(p).withPins(pick(section, Section.PINS, entities, Map.of())))
                        : p.plan(),
                pick(section, Section.LOG, entities, p.log()),
                exempt);
    }

    private static Project with(
            Project p, @Nullable Budget budget, @Nullable Practice practice, @Nullable AcceptedPlan plan) {
        return new Project(
                p.format(),
                p.about(),
                p.venue(),
                p.models(),
                p.cableTypes(),
                p.adapters(),
                p.equipment(),
                p.cables(),
                p.patch(),
                p.networkSends(),
                p.radio(),
                p.pairs(),
                p.feeds(),
                p.lighting(),
                p.controls(),
                p.people(),
                p.hires(),
                p.events(),
                p.files(),
                p.tasks(),
                p.questions(),
                p.orders(),
                budget,
                practice,
                plan,
                p.log(),
                p.exempt());
    }

    private static @Nullable AcceptedPlan planned(AcceptedPlan plan) {
        return plan.isNothing() ? null : plan;
    }

    private static @Nullable Lighting lighting(
            Project p, @Nullable Section section, Map<String, ? extends Record> entities) {
        if (section != Section.TARGETS && section != Section.LOOKS) {
            return p.lighting();
        }
        Lighting own = Section.lighting(p);
        Lighting changed = new Lighting(
                pick(section, Section.TARGETS, entities, own.targets()),
                pick(section, Section.LOOKS, entities, own.looks()));
        boolean nothing = changed.targets().isEmpty() && changed.looks().isEmpty();
        return nothing ? null : changed;
    }

    private static Venue venue(Venue v, @Nullable Section section, Map<String, ? extends Record> entities) {
        return new Venue(
                pick(section, Section.ROOMS, entities, v.rooms()),
                pick(section, Section.PLACES, entities, v.places()),
                pick(section, Section.PATHWAYS, entities, v.pathways()),
                pick(section, Section.CIRCUITS, entities, v.circuits()));
    }

    @SuppressWarnings("unchecked") // a Put has checked that its entity is of the section's type
    private static <T> Map<String, T> pick(
            @Nullable Section section, Section wanted, Map<String, ? extends Record> entities, Map<String, T> own) {
        return section == wanted ? (Map<String, T>) entities : own;
    }
}
