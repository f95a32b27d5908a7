package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.file.Node.Sequence;
import housewright.file.RecordForm.Part;
import housewright.file.ValueType.Keys;
import housewright.file.ValueType.Many;
import housewright.file.ValueType.Of;
import housewright.file.ValueType.One;
import housewright.file.ValueType.Table;
import housewright.model.Lighting;
import housewright.model.LocalRef;
import housewright.model.LogEntry;
import housewright.model.NamePattern;
import housewright.model.Project;
import housewright.model.Venue;
import housewright.model.WordingException;
import housewright.unit.UnitException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Nodes to records, going by {@link RecordForm}. Goes on after an error, so that all are found: an entity with one is
 * left out, and remembered as {@linkplain #isBroken broken} so that nobody calls its id unknown.
 */
final class Binder {
    /** Stands for a value that has errors. */
    private static final Object FAILED = new Object();

    private static final Set<Class<?>> SECTIONS = Set.of(Project.class, Venue.class, Lighting.class);

    /** A key longer than this is no key in YAML, which takes at most 1024 characters on one line. */
    private static final int LONGEST_KEY = 1000;

    private static final int LONGEST_ID = 100;
    private static final int MOST_KEYS_SHOWN = 12;

    private final Errors errors;
    private final Budget budget;
    private final List<Object> path = new ArrayList<>();
    private final Set<String> broken = new HashSet<>();

    Binder(Errors errors, Budget budget) {
        this.errors = errors;
        this.budget = budget;
    }

    /** The project, without whatever has errors. */
    Project project(Mapping root) {
        return (Project) record(RecordForm.of(Project.class), root, null);
    }

    /** A project of nothing but the types that a library's file has. */
    Project types(Mapping root) {
        RecordForm form = RecordForm.of(Project.class);
        RecordForm.Draft draft = form.draft();
        for (Entry entry : root.entries()) {
            Part part = form.find(entry.key().text());
            if (part == null || !(part.type() instanceof Table table) || table.keys() != Keys.TYPE_ID) {
                errors.add(
                        entry.key().span(),
                        "",
                        entry.key().found(),
                        "models, cable-types or adapters",
                        null,
                        List.of());
                continue;
            }
            path.add(part.key());
            if (draft.has(part)) {
                twice(entry.key(), part.key(), firstOf(root, part.key()));
            } else {
                draft.set(part, table(table, entry.value()));
            }
            path.clear();
        }
        return (Project) draft.finish(null);
    }

    /** One entity of a section, or null where it has errors. */
    @Nullable
    Object entity(Class<?> type, String section, String id, Node node) {
        path.add(section);
        path.add(id);
        Object entity = record(RecordForm.of(type), node, id);
        path.clear();
        return entity == FAILED ? null : entity;
    }

    /** A section that is one record, or null where it has errors. */
    @Nullable
    Object whole(Class<?> type, String section, Node node) {
        path.add(section);
        Object value = value(ValueType.of(type), node);
        path.clear();
        return value == FAILED ? null : value;
    }

    /** The entries of a log, without those that have errors. */
    @SuppressWarnings("unchecked") // the form of the project says of what type they are
    Map<String, LogEntry> log(@Nullable Node node) {
        Part part = RecordForm.of(Project.class).find("log");
        if (node == null || part == null) {
            return Map.of();
        }
        path.add(part.key());
        Object entries = value(part.type(), node);
        path.clear();
        return entries == FAILED ? Map.of() : (Map<String, LogEntry>) entries;
    }

    /** Whether the section, or this entity of it, has errors of its own. */
    boolean isBroken(String section, String id) {
        return broken.contains(section) || broken.contains(section + "." + id);
    }

    private Object value(ValueType type, Node node) {
        return switch (type) {
            case One one -> one(one, node);
            case Many many -> many(many, node);
            case Table table -> table(table, node);
            case Of of -> record(of.form(), node, null);
        };
    }

    private Object one(One one, Node node) {
        if (!(node instanceof Scalar scalar)) {
            return refuse(node, Scalars.expected(one));
        }
        if (scalar.isNothing()) {
            return refuse(node, Scalars.expected(one) + ", or the key left out");
        }
        if (one.notation() == ValueType.Notation.WRITTEN && !budget.spendFor(scalar.text())) {
            return refuse(node, "ranges that all together stand for fewer names");
        }
        try {
            Object value = Scalars.parse(one, scalar.text());
            return one.notation() == ValueType.Notation.TEXT && hasHalfCharacter(scalar.text())
                    ? refuse(node, "text of whole characters: an escape stands for half of one")
                    : value;
        } catch (IllegalArgumentException e) {
            return refuse(scalar, e, Scalars.candidates(one));
        }
    }

    /** Half of a surrogate pair, which an escape can say and no file can hold. */
    private static boolean hasHalfCharacter(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isSurrogate(text.charAt(i))) {
                if (Character.charCount(text.codePointAt(i)) == 1) {
                    return true;
                }
                i++;
            }
        }
        return false;
    }

    private Object many(Many many, Node node) {
        if (node instanceof Scalar scalar) {
            if (scalar.isNothing()) {
                return List.of();
            }
            if (isScalar(many.element())) {
                Object single = value(many.element(), node);
                return single == FAILED ? FAILED : List.of(single);
            }
        }
        if (!(node instanceof Sequence sequence)) {
            return refuse(node, "a list");
        }
        List<Object> values = new ArrayList<>(sequence.items().size());
        boolean failed = false;
        for (int i = 0; i < sequence.items().size(); i++) {
            path.add(i);
            Object value = value(many.element(), sequence.items().get(i));
            path.removeLast();
            failed |= value == FAILED;
            values.add(value);
        }
        return failed ? FAILED : values;
    }

    private static boolean isScalar(ValueType type) {
        return type instanceof One || (type instanceof Of of && of.form().hasShorthand());
    }

    private Object table(Table table, Node node) {
        RecordForm entities = table.value() instanceof Of of && of.form().isEntity() ? of.form() : null;
        if (node instanceof Scalar scalar && scalar.isNothing()) {
            return Map.of();
        }
        if (!(node instanceof Mapping mapping)) {
            markBroken(null);
            return refuse(node, "a mapping of names to what they are");
        }
        boolean section = entities != null || path.size() == 1;
        Map<Object, Object> values = new LinkedHashMap<>(mapping.entries().size() * 2);
        Map<String, Scalar> names = new HashMap<>(mapping.entries().size() * 2);
        boolean failed = false;
        for (Entry entry : mapping.entries()) {
            String name = entry.key().text();
            path.add(name);
            Object key = key(table, entry.key(), names);
            Object value =
                    entities != null ? record(entities, entry.value(), name) : value(table.value(), entry.value());
            path.removeLast();
            if (key != FAILED && value != FAILED) {
                values.put(key, value);
            } else if (section) {
                markBroken(name);
            } else {
                failed = true;
            }
        }
        return failed ? FAILED : values;
    }

    private Object key(Table table, Scalar key, Map<String, Scalar> before) {
        String text = key.text();
        boolean pattern = table.keys() == Keys.PATTERN;
        if (text.length() > LONGEST_KEY || (pattern && !budget.spendFor(text))) {
            return refuse(key, "a shorter name");
        }
        if (!pattern) {
            if (!isId(text, table.keys() == Keys.TYPE_ID)) {
                return refuse(
                        key,
                        table.keys() == Keys.TYPE_ID
                                ? "an id: letters, digits, hyphens and dots, a letter or digit first"
                                : "an id: letters, digits and hyphens, a letter or digit first");
            }
            Scalar first = before.putIfAbsent(text, key);
            return first == null ? text : twice(key, text, first);
        }
        try {
            if (table.keyType() == NamePattern.class) {
                NamePattern names = NamePattern.parse(text);
                return isNew(key, names.names(), before) ? names : FAILED;
            }
            LocalRef places = LocalRef.parse(text);
            List<String> spots = new ArrayList<>();
            for (LocalRef.Spot spot : places.spots()) {
                spots.add(spot.toString());
            }
            return isNew(key, spots, before) ? places : FAILED;
        } catch (WordingException e) {
            return refuse(key, e, List.of());
        }
    }

    private boolean isNew(Scalar key, List<String> names, Map<String, Scalar> before) {
        for (String name : names) {
            Scalar first = before.putIfAbsent(name, key);
            if (first != null) {
                twice(key, name, first);
                return false;
            }
        }
        return true;
    }

    private Object twice(Scalar key, String name, Scalar first) {
        errors.add(
                key.span(),
                pathText(),
                Shown.quoted(name) + " a second time",
                "it once; the first is on line " + first.span().line());
        return FAILED;
    }

    static boolean isId(String text, boolean dots) {
        return text.length() <= LONGEST_ID
                && NamePattern.isName(dots ? text.replace('.', '-') : text)
                && !text.startsWith(".");
    }

    private Object record(RecordForm form, Node node, @Nullable String id) {
        return switch (node) {
            case Scalar scalar -> fromScalar(form, scalar, id);
            case Sequence sequence -> fromList(form, sequence);
            case Mapping mapping -> fromMapping(form, mapping, id);
        };
    }

    private Object fromScalar(RecordForm form, Scalar scalar, @Nullable String id) {
        if (scalar.isNothing() && !form.isTuple()) {
            return fromMapping(form, new Mapping(List.of(), Node.Layout.COMPACT, scalar.span()), id);
        }
        if (!form.hasShorthand()) {
            return refuse(scalar, recordExpected(form));
        }
        if (!budget.spendFor(scalar.text())) {
            return refuse(scalar, "ranges that all together stand for fewer names");
        }
        try {
            return form.ofText(scalar.text());
        } catch (IllegalArgumentException e) {
            return refuse(scalar, e, List.of());
        }
    }

    private Object fromList(RecordForm form, Sequence sequence) {
        RecordForm.Draft draft = form.draft();
        Part list = form.listPart();
        if (list != null) {
            Object items = value(list.type(), sequence);
            draft.set(list, items);
            return items == FAILED ? FAILED : finish(draft, sequence, null);
        }
        if (!form.isTuple() || sequence.items().size() != form.parts().size()) {
            return refuse(sequence, recordExpected(form));
        }
        boolean failed = false;
        for (int i = 0; i < form.parts().size(); i++) {
            Part part = form.parts().get(i);
            path.add(i);
            Object value = value(part.type(), sequence.items().get(i));
            path.removeLast();
            draft.set(part, value);
            failed |= value == FAILED;
        }
        return failed ? FAILED : finish(draft, sequence, null);
    }

    private Object fromMapping(RecordForm form, Mapping mapping, @Nullable String id) {
        if (form.isTuple() || form.listPart() != null) {
            return refuse(mapping, recordExpected(form));
        }
        boolean lenient = SECTIONS.contains(form.type());
        RecordForm.Draft draft = form.draft();
        boolean failed = false;
        for (Entry entry : mapping.entries()) {
            Part part = form.find(entry.key().text());
            if (part == null) {
                unknownKey(form, entry.key());
                failed = true;
                continue;
            }
            path.add(part.key());
            boolean again = draft.has(part);
            if (again && errors.isFull()) {
                errors.count();
            } else if (again) {
                twice(entry.key(), part.key(), firstOf(mapping, part.key()));
            }
            Object value = value(part.type(), entry.value());
            path.removeLast();
            if (value == FAILED || again) {
                failed = true;
            } else {
                draft.set(part, value);
            }
        }
        for (Part part : form.required()) {
            if (!draft.has(part) && mapping.find(part.key()) == null) {
                errors.add(
                        mapping.span(),
                        pathText(),
                        mapping.entries().isEmpty() ? "nothing" : "no " + part.key(),
                        part.key() + ": " + expected(part.type()));
                failed = true;
            }
        }
        return failed && !lenient ? FAILED : finish(draft, mapping, id);
    }

    private static Scalar firstOf(Mapping mapping, String key) {
        for (Entry entry : mapping.entries()) {
            if (entry.key().text().equals(key)) {
                return entry.key();
            }
        }
        throw new IllegalArgumentException(key);
    }

    private void unknownKey(RecordForm form, Scalar key) {
        if (errors.isFull()) {
            errors.count();
            return;
        }
        String where = pathText();
        String name = Shown.cut(key.text());
        String what = path.isEmpty() ? "a section" : "a key of this " + Phrases.words(form.type());
        List<String> keys = List.copyOf(form.keys());
        boolean near = Nearest.find(key.text(), keys) != null;
        errors.add(
                key.span(),
                where.isEmpty() ? name : where + "." + name,
                "the unknown key " + Shown.quoted(key.text()),
                near && keys.size() > MOST_KEYS_SHOWN ? what : what + ": " + Phrases.oneOf(keys),
                key.text(),
                keys);
    }

    private Object finish(RecordForm.Draft draft, Node node, @Nullable String id) {
        try {
            return draft.finish(id);
        } catch (IllegalArgumentException e) {
            return refuse(node, e, List.of());
        }
    }

    private void markBroken(@Nullable String name) {
        int last = path.size() - 1;
        if (last >= 0) {
            broken.add(name == null ? path.get(last).toString() : path.get(last) + "." + name);
        }
    }

    private Object refuse(Node node, String expected) {
        errors.add(node.span(), pathText(), node.found(), expected);
        return FAILED;
    }

    private Object refuse(Node node, IllegalArgumentException e, Collection<String> candidates) {
        if (errors.isFull()) {
            errors.count();
            return FAILED;
        }
        String text = node instanceof Scalar scalar ? scalar.text() : "";
        switch (e) {
            case WordingException wording -> {
                boolean part = !wording.found().equals(text) && !wording.found().isEmpty();
                String found =
                        part && !text.isEmpty() ? node.found() + ", in it " + Shown.quoted(wording.found()) : null;
                boolean lost = candidates.size() > MOST_KEYS_SHOWN && Nearest.find(text, candidates) == null;
                errors.add(
                        node.span(),
                        pathText(),
                        found == null ? node.found() : found,
                        lost && candidates.size() < 100
                                ? wording.expected() + ": " + Phrases.oneOf(List.copyOf(candidates))
                                : wording.expected(),
                        text,
                        candidates);
            }
            case UnitException unit -> {
                String nearest = unit.findNearest().orElse(null);
                errors.add(
                        node.span(),
                        pathText(),
                        UnitWords.found(unit),
                        UnitWords.expected(unit),
                        nearest,
                        nearest == null ? List.of() : List.of(nearest));
            }
            default -> errors.add(node.span(), pathText(), node.found(), "a value that is possible: " + e.getMessage());
        }
        return FAILED;
    }

    private static String expected(ValueType type) {
        return switch (type) {
            case One one -> Scalars.expected(one);
            case Many many -> "a list";
            case Table table -> "a mapping";
            case Of of -> recordExpected(of.form());
        };
    }

    private static String recordExpected(RecordForm form) {
        if (form.isTuple()) {
            List<Part> parts = form.parts();
            String first = expected(parts.getFirst().type());
            boolean alike = parts.stream()
                    .allMatch(part -> part.type().equals(parts.getFirst().type()));
            return parts.size() + " in square brackets with commas between" + (alike ? ", each " + first : "");
        }
        String what = Phrases.one(form.type());
        List<String> keys = List.copyOf(form.keys());
        String some = String.join(", ", keys.subList(0, Math.min(4, keys.size()))) + (keys.size() > 4 ? " …" : "");
        return form.listPart() != null ? what + ": a list, or one word" : what + " as a mapping: {" + some + "}";
    }

    private String pathText() {
        return Paths.text(path);
    }
}
