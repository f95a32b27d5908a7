package housewright.file;

import housewright.file.PlaceNames.Use;
import housewright.model.AcceptedPlan;
import housewright.model.Cable;
import housewright.model.CableToday;
import housewright.model.Control;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.EquipmentToday;
import housewright.model.Feed;
import housewright.model.FixtureSetting;
import housewright.model.Library;
import housewright.model.LocalRef;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.TaskKind;
import housewright.model.Types;
import housewright.model.Way;
import housewright.model.WordingException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Holds everything that names something else against what it names. */
final class References {
    private static final int MOST_SHOWN = 8;
    private static final String TASK =
            "a task of this project: one of its own (tasks), or a kind of work and what it is about (mount-desk)";

    private final Project project;
    private final Types types;
    private final Binder binder;
    private final Supplier<Node> document;
    private @Nullable Node read;
    private final Errors errors;
    private final Budget budget;
    private final PlaceNames places;

    References(Project project, Library library, Binder binder, Supplier<Node> document, Errors errors, Budget budget) {
        this.project = project;
        this.types = new Types(project, library);
        this.binder = binder;
        this.document = document;
        this.errors = errors;
        this.budget = budget;
        this.places = new PlaceNames(project, types, binder, budget);
    }

    void check() {
        library();
        venue();
        project.models().forEach(this::model);
        project.equipment().forEach(this::equipment);
        project.cables().forEach(this::cable);
        patch();
        links();
        project.feeds().forEach(this::feed);
        lighting();
        project.controls().forEach(this::control);
        work();
        plan();
        practice();
    }

    private void library() {
        if (project.about() != null
                && project.about().library() != types.library().version()) {
            refuse(
                    Integer.toString(project.about().library()),
                    "version " + types.library().version() + " of the built-in library, which is the one at hand",
                    List.of("project", "library"));
        }
    }

    private void venue() {
        project.venue().places().forEach((id, place) -> known("rooms", place.room(), "venue", "places", id, "room"));
        project.venue().pathways().forEach((id, pathway) -> {
            known("places", pathway.from(), "venue", "pathways", id, "from");
            known("places", pathway.to(), "venue", "pathways", id, "to");
        });
        project.venue()
                .circuits()
                .forEach((id, circuit) -> known("places", circuit.places(), "venue", "circuits", id, "places"));
    }

    private void model(String id, Model model) {
        for (TypeChecks.Trouble trouble : TypeChecks.of(model, budget)) {
            List<Object> path = new ArrayList<>(List.of("models", id));
            path.addAll(trouble.path());
            refuse(trouble.found(), trouble.expected(), path);
        }
    }

    private void equipment(String id, Equipment thing) {
        equipmentModel(thing.model(), "equipment", id, "model");
        known("places", thing.at(), "equipment", id, "at");
        known("circuits", thing.circuit(), "equipment", id, "circuit");
        place(thing.poweredBy(), Use.ANY, "equipment", id, "powered-by");
        known("equipment", thing.gang(), "equipment", id, "gang");
        known("equipment", thing.partOf(), "equipment", id, "part-of");
        known("equipment", thing.runsOn(), "equipment", id, "runs-on");
        settings(id, thing.set().keySet(), "equipment", id, "set");
        sockets(id, thing.vlans().keySet(), "equipment", id, "vlans");
        mode(thing.light(), List.of(thing), "equipment", id, "light", "mode");
        EquipmentToday was = thing.was();
        if (was != null) {
            equipmentModel(was.model(), "equipment", id, "was", "model");
            known("places", was.at(), "equipment", id, "was", "at");
            known("circuits", was.circuit(), "equipment", id, "was", "circuit");
            place(was.poweredBy(), Use.ANY, "equipment", id, "was", "powered-by");
            settings(id, was.set().keySet(), "equipment", id, "was", "set");
            sockets(id, was.vlans().keySet(), "equipment", id, "was", "vlans");
            mode(was.light(), List.of(thing, thing.today()), "equipment", id, "was", "light", "mode");
        }
    }

    private void equipmentModel(@Nullable String model, Object... path) {
        if (model != null && types.findModel(model).isEmpty() && !binder.isBroken("models", model)) {
            unknown(model, "a type of equipment of the project or of the library", types::modelIds, path);
        }
    }

    private void settings(String thing, Set<LocalRef> keys, Object... path) {
        for (LocalRef key : keys) {
            report(places.trouble(thing, key, true), key.text(), with(path, key.text()));
        }
    }

    private void sockets(String thing, Set<NamePattern> keys, Object... path) {
        for (NamePattern key : keys) {
            report(places.trouble(thing, new LocalRef(key.text()), false), key.text(), with(path, key.text()));
        }
    }

    private void mode(@Nullable FixtureSetting light, List<Equipment> states, Object... path) {
        if (light == null || light.mode() == null) {
            return;
        }
        Set<String> modes = new LinkedHashSet<>();
        for (Equipment state : states) {
            Model model = types.findModel(state.model()).orElse(null);
            if (model == null || model.light() == null || model.light().modes().isEmpty()) {
                return; // nothing to hold it against
            }
            modes.addAll(model.light().modes().keySet());
        }
        if (!modes.contains(light.mode())) {
            unknown(light.mode(), "a mode of " + states.getFirst().model(), modes, path);
        }
    }

    private void cable(String id, Cable cable) {
        cableType(cable.type(), "cables", id, "type");
        end(cable.from(), "cables", id, "from");
        end(cable.to(), "cables", id, "to");
        ways(cable.ways(), "cables", id, "ways");
        known("pathways", cable.via(), "cables", id, "via");
        adapters(cable.adapters(), "cables", id, "adapters");
        CableToday was = cable.was();
        if (was != null) {
            cableType(was.type(), "cables", id, "was", "type");
            end(was.from(), "cables", id, "was", "from");
            end(was.to(), "cables", id, "was", "to");
            ways(was.ways(), "cables", id, "was", "ways");
            known("pathways", was.via(), "cables", id, "was", "via");
            adapters(was.adapters(), "cables", id, "was", "adapters");
        }
    }

    private void cableType(@Nullable String type, Object... path) {
        if (type != null && types.findCableType(type).isEmpty() && !binder.isBroken("cable-types", type)) {
            unknown(type, "a cable type of the project or of the library", types::cableTypeIds, path);
        }
    }

    private void adapters(List<String> adapters, Object... path) {
        for (int i = 0; i < adapters.size(); i++) {
            String adapter = adapters.get(i);
            if (types.findAdapter(adapter).isEmpty() && !binder.isBroken("adapters", adapter)) {
                unknown(adapter, "an adapter of the project or of the library", types::adapterIds, with(path, i));
            }
        }
    }

    private void end(@Nullable End end, Object... path) {
        Ref ref = end == null ? null : end.ref();
        if (ref != null && ref.isRange()) {
            refuse(Shown.quoted(ref.text()), "one port: a multicore has its ends under ways", List.of(path));
        } else {
            place(ref, Use.CABLE, path);
        }
    }

    private void ways(List<Way> ways, Object... path) {
        for (int i = 0; i < ways.size(); i++) {
            place(ways.get(i).from(), Use.CABLE, with(path, i));
            place(ways.get(i).to(), Use.CABLE, with(path, i));
        }
    }

    private void patch() {
        project.patch().forEach((device, entries) -> {
            if (known("equipment", device, "patch", device)) {
                for (int i = 0; i < entries.size(); i++) {
                    try {
                        report(places.trouble(device, entries.get(i)), "", "patch", device, i);
                    } catch (WordingException e) {
                        refuse(Shown.quoted(e.found()), e.expected(), List.of("patch", device, i));
                    }
                }
            }
        });
    }

    private void links() {
        project.networkSends().forEach((id, send) -> {
            place(send.from(), Use.LEAVES, "network-sends", id, "from");
            place(send.to(), Use.ARRIVES, "network-sends", id, "to");
        });
        project.radio().forEach((id, link) -> {
            place(link.from(), Use.RADIO_LEAVES, "radio", id, "from");
            place(link.to(), Use.RADIO_ARRIVES, "radio", id, "to");
        });
        project.pairs().forEach((id, refs) -> places(refs, Use.ANY, "pairs", id));
    }

    private void feed(String id, Feed feed) {
        places(feed.from(), Use.LEAVES, "feeds", id, "from");
        places(feed.to(), Use.ARRIVES, "feeds", id, "to");
        places(feed.through(), Use.ANY, "feeds", id, "through");
    }

    private void lighting() {
        if (project.lighting() != null) {
            project.lighting().looks().forEach((id, look) -> {
                keys(look.levels().keySet(), "lighting", "looks", id, "levels");
                keys(look.colours().keySet(), "lighting", "looks", id, "colours");
            });
        }
    }

    private void keys(Set<String> things, Object... path) {
        for (String thing : things) {
            known("equipment", thing, with(path, thing));
        }
    }

    private void control(String id, Control control) {
        place(control.press(), Use.ANY, "controls", id, "press");
        known("looks", control.calls(), "controls", id, "calls");
        place(control.does(), Use.ANY, "controls", id, "does");
        known("events", control.at(), "controls", id, "at");
    }

    private void work() {
        project.events().forEach((id, event) -> {
            if (event.needs() != null) {
                known("feeds", event.needs().feeds(), "events", id, "needs");
            }
            String at = event.at();
            if (at != null && !at.equals("elsewhere") && !exists("rooms", at) && !exists("places", at)) {
                List<String> candidates = new ArrayList<>(List.of("elsewhere"));
                candidates.addAll(ids("rooms"));
                candidates.addAll(ids("places"));
                unknown(at, "where it is", candidates, "events", id, "at");
            }
        });
        project.files().forEach((id, file) -> {
            known("equipment", file.device(), "files", id, "for");
            known("people", file.madeBy(), "files", id, "made-by");
        });
        project.tasks().forEach((id, task) -> {
            known("people", task.who(), "tasks", id, "who");
            oneOf(NEEDED, "a piece of equipment, a cable, a hire or a file", task.needs(), "tasks", id, "needs");
            tasks(task.after(), "tasks", id, "after");
            tasks(task.covers(), "tasks", id, "covers");
            TaskKind.Named named = TaskKind.find(id).orElse(null);
            if (task.name() == null
                    && named != null
                    && named.kind().section() != null
                    && named.where(this::exists).isEmpty()) { // it changes one that is worked out
                known(named.kind().section(), named.about(), "tasks", id);
            }
        });
        project.questions().forEach((id, question) -> {
            known("people", question.to(), "questions", id, "to");
            subject(question.about(), "questions", id, "about");
        });
        project.orders()
                .forEach((id, order) -> oneOf(
                        ORDERED,
                        "a piece of equipment, a cable, a hire or a type",
                        order.items(),
                        "orders",
                        id,
                        "for"));
        for (int i = 0; i < project.exempt().size(); i++) {
            subject(project.exempt().get(i).subject(), "exempt", i, "subject");
        }
    }

    /** A plan may name tasks that the change no longer implies: a later plan leaves them out. */
    private void plan() {
        AcceptedPlan plan = project.plan();
        if (plan != null) {
            plan.times().forEach((id, each) -> {
                known("people", each.people(), "plan", "times", id, "people");
                known("hires", each.hires(), "plan", "times", id, "hires");
            });
            plan.pins().forEach((id, pin) -> {
                task(id, "plan", "pins", id);
                known("people", pin.people(), "plan", "pins", id, "people");
            });
        }
        project.log().forEach((id, entry) -> {
            if (!exists("orders", id)) {
                task(id, "log", id);
            }
            known("people", entry.people(), "log", id, "people");
        });
    }

    /** Tasks of the project, and those that may be worked out from what it has. */
    private void tasks(List<String> ids, Object... path) {
        for (int i = 0; i < ids.size(); i++) {
            task(ids.get(i), with(path, i));
        }
    }

    private void task(String id, Object... path) {
        TaskKind.Named named = TaskKind.find(id).orElse(null);
        String section = named == null ? null : named.kind().section();
        boolean workedOut = named != null
                && (section == null
                        || exists(section, named.about())
                        || named.where(this::exists).isPresent());
        if (!workedOut && !exists("tasks", id)) {
            add(List.of(path), Shown.quoted(id), TASK, id, errors.isFull() ? List.of() : tasksLike(named));
        }
    }

    /** What was probably meant: what the kind of work could be about, or with a kind misspelt, all kinds. */
    private Collection<String> tasksLike(TaskKind.@Nullable Named named) {
        List<String> like = new ArrayList<>(ids("tasks"));
        for (TaskKind kind : named == null ? List.of(TaskKind.values()) : List.of(named.kind())) {
            if (kind.section() != null) {
                ids(kind.section()).forEach(about -> like.add(kind.id(about)));
                ids("places").forEach(place -> like.add(kind.idAt(place, "")));
            }
        }
        return like;
    }

    private void practice() {
        if (project.practice() != null) {
            project.practice().drums().forEach((id, drum) -> {
                for (int i = 0; i < drum.types().size(); i++) {
                    String type = drum.types().get(i);
                    if (types.findCableType(type).isEmpty()) {
                        unknown(type, "a cable type", types::cableTypeIds, "practice", "drums", id, "for", i);
                    }
                }
            });
        }
    }

    private static final List<String> NEEDED = List.of("equipment", "cables", "hires", "files");
    private static final List<String> ORDERED =
            List.of("equipment", "cables", "hires", "models", "cable-types", "adapters");

    private void oneOf(List<String> sections, String what, List<String> ids, Object... path) {
        for (int i = 0; i < ids.size(); i++) {
            String id = ids.get(i);
            boolean found = (sections.contains("models") && types.findModel(id).isPresent())
                    || (sections.contains("cable-types")
                            && types.findCableType(id).isPresent())
                    || (sections.contains("adapters") && types.findAdapter(id).isPresent());
            for (String section : sections) {
                found |= exists(section, id);
            }
            if (!found && errors.isFull()) {
                errors.count();
            } else if (!found) {
                List<String> candidates = new ArrayList<>();
                sections.forEach(section -> candidates.addAll(ids(section)));
                unknown(id, what, candidates, with(path, i));
            }
        }
    }

    /** A section and an id in it. */
    private void subject(@Nullable String subject, Object... path) {
        if (subject == null) {
            return;
        }
        int dot = subject.indexOf('.');
        String section = dot < 0 ? subject : subject.substring(0, dot);
        if (dot < 0 || !Sections.NAMES.contains(section)) {
            String expected = "a section and an id, such as equipment.desk";
            unknown(section, expected, Sections.NAMES, path);
        } else if (!exists(section, subject.substring(dot + 1))) {
            add(
                    List.of(path),
                    Shown.quoted(subject),
                    some(Sections.what(section), ids(section)),
                    subject.substring(dot + 1),
                    ids(section));
        }
    }

    private void known(String section, List<String> ids, Object... path) {
        for (int i = 0; i < ids.size(); i++) {
            known(section, ids.get(i), with(path, i));
        }
    }

    private boolean known(String section, @Nullable String id, Object... path) {
        if (id == null || exists(section, id)) {
            return true;
        }
        unknown(id, Sections.what(section), ids(section), path);
        return false;
    }

    private boolean exists(String section, String id) {
        return ids(section).contains(id) || binder.isBroken(section, id);
    }

    private Collection<String> ids(String section) {
        return Sections.of(project, section).keySet();
    }

    private void places(List<Ref> refs, Use use, Object... path) {
        for (int i = 0; i < refs.size(); i++) {
            place(refs.get(i), use, with(path, i));
        }
    }

    private void place(@Nullable Ref ref, Use use, Object... path) {
        if (ref != null) {
            report(places.trouble(ref, use), ref.text(), path);
        }
    }

    private void report(PlaceNames.@Nullable Trouble trouble, String text, Object... path) {
        if (trouble != null) {
            boolean known = trouble.candidates().isEmpty();
            add(
                    List.of(path),
                    Shown.quoted(text.isEmpty() ? trouble.found() : text),
                    known ? trouble.expected() : some(trouble.expected(), trouble.candidates()),
                    known ? null : trouble.word(),
                    trouble.candidates());
        }
    }

    private void unknown(String id, String what, Supplier<? extends Collection<String>> candidates, Object... path) {
        unknown(id, what, errors.isFull() ? List.of() : candidates.get(), path);
    }

    private void unknown(String id, String what, Collection<String> candidates, Object... path) {
        add(List.of(path), Shown.quoted(id), some(what, candidates), id, candidates);
    }

    private void refuse(String found, String expected, List<?> path) {
        add(path, found, expected, null, List.of());
    }

    private void add(
            List<?> path, String found, String expected, @Nullable String word, Collection<String> candidates) {
        if (errors.isFull()) {
            errors.count(); // looking up the line takes time where there are many
        } else {
            Node root = document();
            errors.add(Paths.nearest(root, path).span(), Paths.text(root, path), found, expected, word, candidates);
        }
    }

    /** The document, put together only where there is an error to place in it. */
    private Node document() {
        Node known = read;
        if (known == null) {
            known = document.get();
            read = known;
        }
        return known;
    }

    /** With all there are, where they are few. */
    private static String some(String what, Collection<String> candidates) {
        if (candidates.isEmpty()) {
            return what + ", of which there is none";
        }
        return candidates.size() > MOST_SHOWN ? what : what + ": " + Phrases.oneOf(List.copyOf(candidates));
    }

    private static Object[] with(Object[] path, Object last) {
        Object[] longer = java.util.Arrays.copyOf(path, path.length + 1);
        longer[path.length] = last;
        return longer;
    }
}
