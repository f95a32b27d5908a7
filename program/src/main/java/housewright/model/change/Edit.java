package housewright.model.change;

import housewright.model.Join;
import housewright.model.Lighting;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.Venue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes one change. */
final class Edit {
    private Edit() {}

    static Project apply(Project project, Change change) {
        return switch (change) {
            case Change.Put put -> {
                Map<String, Record> entities = new LinkedHashMap<>(put.section().of(project));
                entities.put(put.id(), put.entity());
                yield with(project, put.section(), entities, project.patch());
            }
            case Change.Drop drop -> {
                Map<String, Record> entities =
                        new LinkedHashMap<>(drop.section().of(project));
                entities.remove(drop.id());
                yield with(project, drop.section(), entities, project.patch());
            }
            case Change.Patch patch -> {
                List<PatchEntry> entries = new ArrayList<>(project.patch().getOrDefault(patch.device(), List.of()));
                if (joins(entries).containsAll(patch.entry().join().pairs())) {
                    yield project;
                }
                entries.add(patch.entry());
                yield withPatch(project, patch.device(), entries);
            }
            case Change.Unpatch unpatch ->
                withPatch(
                        project,
                        unpatch.device(),
                        without(
                                project.patch().getOrDefault(unpatch.device(), List.of()),
                                unpatch.from(),
                                unpatch.to()));
        };
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

    private static Project withPatch(Project project, String device, List<PatchEntry> entries) {
        Map<String, List<PatchEntry>> patch = new LinkedHashMap<>(project.patch());
        if (entries.isEmpty()) {
            patch.remove(device);
        } else {
            patch.put(device, List.copyOf(entries));
        }
        return with(project, Section.EQUIPMENT, project.equipment(), patch);
    }

    /** The project with one section, and the patch, put in place of its own. */
    private static Project with(
            Project p, Section section, Map<String, ? extends Record> entities, Map<String, List<PatchEntry>> patch) {
        return new Project(
                p.format(),
                p.about(),
                venue(p.venue(), section, entities),
                pick(section, Section.MODELS, entities, p.models()),
                pick(section, Section.CABLE_TYPES, entities, p.cableTypes()),
                pick(section, Section.ADAPTERS, entities, p.adapters()),
                pick(section, Section.EQUIPMENT, entities, p.equipment()),
                pick(section, Section.CABLES, entities, p.cables()),
                patch,
                pick(section, Section.NETWORK_SENDS, entities, p.networkSends()),
                pick(section, Section.RADIO, entities, p.radio()),
                p.pairs(),
                pick(section, Section.FEEDS, entities, p.feeds()),
                section == Section.TARGETS || section == Section.LOOKS
                        ? new Lighting(
                                pick(
                                        section,
                                        Section.TARGETS,
                                        entities,
                                        Section.lighting(p).targets()),
                                pick(
                                        section,
                                        Section.LOOKS,
                                        entities,
                                        Section.lighting(p).looks()))
                        : p.lighting(),
                pick(section, Section.CONTROLS, entities, p.controls()),
                pick(section, Section.PEOPLE, entities, p.people()),
                pick(section, Section.HIRES, entities, p.hires()),
                pick(section, Section.EVENTS, entities, p.events()),
                pick(section, Section.FILES, entities, p.files()),
                pick(section, Section.TASKS, entities, p.tasks()),
                pick(section, Section.QUESTIONS, entities, p.questions()),
                pick(section, Section.ORDERS, entities, p.orders()),
                p.exempt());
    }

    private static Venue venue(Venue v, Section section, Map<String, ? extends Record> entities) {
        return new Venue(
                pick(section, Section.ROOMS, entities, v.rooms()),
                pick(section, Section.PLACES, entities, v.places()),
                pick(section, Section.PATHWAYS, entities, v.pathways()),
                pick(section, Section.CIRCUITS, entities, v.circuits()));
    }

    @SuppressWarnings("unchecked") // a Put has checked that its entity is of the section's type
    private static <T> Map<String, T> pick(
            Section section, Section wanted, Map<String, ? extends Record> entities, Map<String, T> own) {
        return section == wanted ? (Map<String, T>) entities : own;
    }
}
