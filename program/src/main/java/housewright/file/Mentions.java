package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Layout;
import housewright.file.Node.Look;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.file.Node.Sequence;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Task;
import housewright.model.TaskKind;
import housewright.model.Way;
import housewright.model.WordingException;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Where in a project its parts are named by others: to rename one everywhere, and to take one away with every mention
 * of it. Works on the document, by the ways through it that {@link Naming} lists.
 */
public final class Mentions {
    /**
     * One mention.
     *
     * @param subject the entity that names it, section and id: {@code cables.C014}, {@code patch.desk}, {@code exempt}
     * @param key where in that entity; empty where the entity itself is named so
     */
    public record Mention(String subject, String key) {
        public String text() {
            return key.isEmpty() ? subject : subject + " (" + key + ")";
        }
    }

    /** Gives the id that stands in place of one; the id itself where it stays, null where it goes. */
    private interface Renaming {
        @Nullable
        String of(String id);
    }

    private final Project project;
    private final String section;
    private final Renaming renaming;
    private final Set<Mention> found = new LinkedHashSet<>();
    /** Entities that cannot be without what has gone from them. */
    private final Set<String> fallen = new LinkedHashSet<>();

    private boolean exemptionFell;

    private Mentions(Project project, Section section, Renaming renaming) {
        this.project = project;
        this.section = last(section.path());
        this.renaming = renaming;
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** Every mention of these, in the order of the document; what they say of each other is none. */
    public static List<Mention> of(Project project, Section section, Collection<String> ids) {
        Mentions mentions = new Mentions(project, section, id -> ids.contains(id) ? null : id);
        mentions.changed();
        return mentions.found.stream()
                .filter(mention ->
                        ids.stream().noneMatch(id -> mention.subject().equals(section.path() + "." + id)))
                .toList();
    }

    /** The project in which it has another id, everywhere; the new one must be free. */
    public static Project renamed(Project project, Section section, String from, String to) {
        Mentions mentions = new Mentions(project, section, id -> id.equals(from) ? to : id);
        Mapping changed = mentions.changed();
        return bound(within(changed, List.of(section.path().split("\\.")), entities -> key(entities, from, to)));
    }

    /**
     * The project without these and without any mention of them. A cable keeps its other end; one that had no other
     * end, and a link that has lost an end, goes too, as does an exemption that was for nothing else.
     */
    public static Project without(Project project, Section section, Collection<String> ids) {
        Mentions mentions = new Mentions(project, section, id -> ids.contains(id) ? null : id);
        Mapping changed = mentions.changed();
        Mapping left = within(changed, List.of(section.path().split("\\.")), entities -> {
            Mapping less = entities;
            for (String id : ids) {
                less = key(less, id, null);
            }
            return less;
        });
        Project bound = bound(left);
        return mentions.fallen.isEmpty() ? bound : mentions.withoutFallen(bound);
    }

    /** What fell is named by others in its turn. */
    private Project withoutFallen(Project from) {
        Map<Section, List<String>> bySection = new LinkedHashMap<>();
        for (Section each : Section.values()) {
            for (String path : fallen) {
                String start = each.path() + ".";
                if (path.startsWith(start) && each.of(from).containsKey(path.substring(start.length()))) {
                    bySection.computeIfAbsent(each, key -> new ArrayList<>()).add(path.substring(start.length()));
                }
            }
        }
        Project left = from;
        for (Map.Entry<Section, List<String>> each : bySection.entrySet()) {
            left = without(left, each.getKey(), each.getValue());
        }
        return left;
    }

    private static Project bound(Mapping document) {
        Errors errors = new Errors();
        Project bound = new Binder(errors, new Budget()).project(document);
        if (!errors.isEmpty()) {
            throw new IllegalStateException("A project with names changed does not read: "
                    + errors.list("").getFirst());
        }
        return bound;
    }

    private Mapping changed() {
        Mapping document = (Mapping) ModelNodes.of(project);
        for (Map.Entry<String, Naming> path : Naming.PATHS.entrySet()) {
            Naming naming = path.getValue();
            if (naming == Naming.SUBJECT
                    || naming == Naming.TASK
                    || naming == Naming.TASK_OR_ORDER
                    || naming.sections().contains(section)) {
                Node walked = walk(document, List.of(path.getKey().split("\\.")), 0, new ArrayList<>(), naming);
                document = walked instanceof Mapping mapping ? mapping : document; // a way never ends at the root
            }
        }
        return document;
    }

    /** The node with every name at the end of the way changed. */
    private @Nullable Node walk(Node node, List<String> way, int at, List<String> path, Naming naming) {
        if (at == way.size()) {
            return value(node, path, naming);
        }
        String step = way.get(at);
        boolean last = at == way.size() - 1;
        boolean any = step.equals(Naming.ANY);
        if (node instanceof Sequence list && any) {
            List<Node> items = new ArrayList<>();
            for (Node item : list.items()) {
                exemptionFell = false;
                Node changed = walk(item, way, at + 1, path, naming);
                if (changed != null && !exemptionFell) {
                    items.add(changed);
                }
            }
            return new Sequence(items, list.layout(), list.span());
        }
        if (!(node instanceof Mapping mapping)) {
            return node;
        }
        boolean keys = any && last && naming == Naming.EQUIPMENT;
        boolean tasks = any && last && (naming == Naming.TASK || naming == Naming.TASK_OR_ORDER);
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : mapping.entries()) {
            String key = entry.key().text();
            if (!any && !key.equals(step)) {
                entries.add(entry);
                continue;
            }
            path.add(key);
            if (tasks) {
                task(entry, path, entries);
            } else if (keys) {
                String name = renaming.of(key);
                if (!key.equals(name)) {
                    note(path);
                }
                if (name != null) {
                    entries.add(new Entry(new Scalar(name, Look.TEXT), entry.value()));
                }
            } else {
                Node changed = walk(entry.value(), way, at + 1, path, naming);
                if (changed != null) {
                    entries.add(new Entry(entry.key(), changed));
                }
            }
            path.removeLast();
        }
        return new Mapping(entries, mapping.layout(), mapping.span());
    }

    /**
     * What a project changes of a task that is worked out, and what the plan and the log say of it, goes with what the
     * task is about; a task of its own stays.
     */
    private void task(Entry entry, List<String> path, List<Entry> entries) {
        String key = entry.key().text();
        List<String> names = path.getFirst().equals("tasks")
                ? section.equals("tasks") || isOwn(key) ? null : workedOut(key)
                : ofPlan(key, path.getFirst());
        if (names == null) {
            entries.add(entry);
            return;
        }
        note(path);
        names.forEach(name -> entries.add(new Entry(new Scalar(name, Look.TEXT), entry.value())));
    }

    /** What stands in place of a task's or order's id in the plan or the log; null where it stays as it is. */
    private @Nullable List<String> ofPlan(String id, String where) {
        if (where.equals("log") && project.orders().containsKey(id)) {
            return section.equals("orders") ? named(id, "") : null;
        }
        if (isOwn(id)) {
            return section.equals("tasks") ? named(id, "") : null;
        }
        return section.equals("tasks") ? null : workedOut(id);
    }

    private boolean isOwn(String task) {
        Task own = project.tasks().get(task);
        return own != null && own.name() != null;
    }

    /** A task's id with what it is about renamed; empty where that is gone, null where it is about something else. */
    private @Nullable List<String> workedOut(String task) {
        TaskKind.Named named = TaskKind.find(task).orElse(null);
        TaskKind.Where where = named == null
                ? null
                : named.where((in, id) -> Sections.of(project, in).containsKey(id))
                        .orElse(null);
        if (named != null && where != null && section.equals(where.section())) {
            String name = renaming.of(where.id());
            return where.id().equals(name) ? null : name == null ? List.of() : List.of(named.renamed(where, name));
        }
        if (named == null
                || !section.equals(named.kind().section())
                || !Sections.of(project, section).containsKey(named.about())) {
            return null;
        }
        String name = renaming.of(named.about());
        return named.about().equals(name)
                ? null
                : name == null ? List.of() : List.of(named.kind().id(name));
    }

    private @Nullable Node value(Node node, List<String> path, Naming naming) {
        if (node instanceof Sequence list) {
            List<Node> items = new ArrayList<>();
            boolean same = true;
            for (Node item : list.items()) {
                List<String> texts = item instanceof Scalar scalar ? texts(scalar.text(), naming) : null;
                if (texts == null) {
                    items.add(item);
                } else {
                    same = false;
                    texts.forEach(text -> items.add(new Scalar(text, ((Scalar) item).look())));
                }
            }
            if (same) {
                return node;
            }
            note(path);
            return items.isEmpty() && path.getFirst().equals("pairs")
                    ? null
                    : new Sequence(items, list.layout(), list.span());
        }
        if (!(node instanceof Scalar scalar)) {
            return node;
        }
        List<String> texts = texts(scalar.text(), naming);
        if (texts == null) {
            return node;
        }
        note(path);
        if (texts.isEmpty()) {
            return gone(path);
        }
        if (texts.size() == 1) {
            return new Scalar(texts.getFirst(), scalar.look());
        }
        return new Sequence(
                texts.stream()
                        .map(text -> (Node) new Scalar(text, scalar.look()))
                        .toList(),
                Layout.COMPACT,
                Span.NONE);
    }

    private void note(List<String> path) {
        boolean venue = List.of("venue", "lighting", "plan").contains(path.getFirst());
        int own = path.getFirst().equals("exempt") ? 1 : Math.min(path.size(), venue ? 3 : 2);
        found.add(
                new Mention(String.join(".", path.subList(0, own)), String.join(".", path.subList(own, path.size()))));
    }

    /** What stands where a single name was that has gone; null for nothing. */
    private @Nullable Node gone(List<String> path) {
        String first = path.getFirst();
        if (first.equals("cables") && isEnd(path.getLast())) {
            if (path.size() == 3) {
                fallIfLoose(path.get(1));
            }
            return new Scalar("unknown", Look.PLAIN);
        }
        if ((first.equals("network-sends") || first.equals("radio")) && isEnd(path.getLast())) {
            fallen.add(first + "." + path.get(1));
            return new Scalar("gone." + path.getLast(), Look.PLAIN); // until the link itself goes
        }
        exemptionFell = first.equals("exempt");
        return null;
    }

    private static boolean isEnd(String key) {
        return key.equals("from") || key.equals("to");
    }

    private void fallIfLoose(String id) {
        var cable = project.cables().get(id);
        if (cable != null && cable.ways().isEmpty() && isLost(cable.from()) && isLost(cable.to())) {
            fallen.add("cables." + id);
        }
    }

    private boolean isLost(housewright.model.@Nullable End end) {
        Ref ref = end == null ? null : end.ref();
        return ref == null || ref.addresses().stream().allMatch(at -> renaming.of(at.thing()) == null);
    }

    /** What stands in place of a text that names something; null where it stays as it is. */
    private @Nullable List<String> texts(String text, Naming naming) {
        if (naming == Naming.SUBJECT) {
            int dot = text.indexOf('.');
            return dot > 0 && text.substring(0, dot).equals(section)
                    ? named(text.substring(dot + 1), text.substring(0, dot + 1))
                    : null;
        }
        if (naming == Naming.TASK && !section.equals("tasks")) {
            return isOwn(text) ? null : workedOut(text);
        }
        if (!naming.isWithinAThing()) {
            return naming.sections().size() > 1 && isElsewhere(text, naming) ? null : named(text, "");
        }
        if (text.equals("unknown")) {
            return null;
        }
        return text.contains("->") ? ways(text) : places(text);
    }

    private @Nullable List<String> named(String id, String before) {
        String name = renaming.of(id);
        return id.equals(name) ? null : name == null ? List.of() : List.of(before + name);
    }

    /** Another section has one of that id, too, and which is meant nobody can tell: the mention stays. */
    private boolean isElsewhere(String id, Naming naming) {
        return naming.sections().stream()
                .filter(other -> !other.equals(section))
                .anyMatch(other -> Sections.of(project, other).containsKey(id));
    }

    private @Nullable List<String> places(String text) {
        Ref ref;
        try {
            ref = Ref.parse(text);
        } catch (WordingException e) {
            return null;
        }
        if (ref.addresses().stream().allMatch(at -> at.thing().equals(renaming.of(at.thing())))) {
            return null;
        }
        if (ref.thing().indexOf('{') < 0) {
            String name = renaming.of(ref.thing());
            return name == null
                    ? List.of()
                    : List.of(name + text.substring(ref.thing().length()));
        }
        List<String> texts = new ArrayList<>();
        for (Ref.Address at : ref.addresses()) {
            String name = renaming.of(at.thing());
            if (name != null) {
                texts.add(name + "." + at.spot());
            }
        }
        return texts;
    }

    private @Nullable List<String> ways(String text) {
        Way way = Way.parse(text);
        List<String> from = places(way.from().text());
        List<String> to = places(way.to().text());
        if (from == null && to == null) {
            return null;
        }
        boolean whole = (from == null || from.size() == 1) && (to == null || to.size() == 1);
        if (whole) {
            return List.of((from == null ? way.from().text() : from.getFirst()) + " -> "
                    + (to == null ? way.to().text() : to.getFirst()));
        }
        List<String> texts = new ArrayList<>();
        for (Way.Pair pair : way.pairs()) {
            String one = renaming.of(pair.from().thing());
            String other = renaming.of(pair.to().thing());
            if (one != null && other != null) {
                texts.add(one + "." + pair.from().spot() + " -> " + other + "."
                        + pair.to().spot());
            }
        }
        return texts;
    }

    private static Mapping within(Mapping mapping, List<String> keys, UnaryOperator<Mapping> change) {
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : mapping.entries()) {
            if (entry.key().text().equals(keys.getFirst()) && entry.value() instanceof Mapping inner) {
                Mapping changed =
                        keys.size() == 1 ? change.apply(inner) : within(inner, keys.subList(1, keys.size()), change);
                entries.add(new Entry(entry.key(), changed));
            } else {
                entries.add(entry);
            }
        }
        return new Mapping(entries, mapping.layout(), mapping.span());
    }

    private static Mapping key(Mapping entities, String from, @Nullable String to) {
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : entities.entries()) {
            if (!entry.key().text().equals(from)) {
                entries.add(entry);
            } else if (to != null) {
                entries.add(new Entry(new Scalar(to, Look.TEXT), entry.value()));
            }
        }
        return new Mapping(entries, entities.layout(), entities.span());
    }
}
