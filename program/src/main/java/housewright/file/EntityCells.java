package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Layout;
import housewright.file.Node.Look;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.file.Node.Sequence;
import housewright.file.RecordForm.Part;
import housewright.file.ValueType.Many;
import housewright.file.ValueType.Notation;
import housewright.file.ValueType.Of;
import housewright.file.ValueType.One;
import housewright.file.ValueType.Table;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An entity as a row of a table: a cell for each key, its text what the project file has on one line. Keys of a mapping
 * within the entity have a dot: {@code light.mode}.
 */
public final class EntityCells {

    /**
     * A column that a section's entities may have.
     *
     * @param key as the file has it
     * @param says what it is, where the format says more than the key does
     * @param required an entity must have it
     * @param choices the words it may be; empty where it may be more than a few words
     * @param list several values, with commas between
     */
    public record Column(String key, @Nullable String says, boolean required, List<String> choices, boolean list) {
        public Column {
            choices = List.copyOf(choices);
        }
    }

    /** What came of reading cells. */
    public sealed interface Reading {
        record Read(Record entity) implements Reading {}

        /** @param errors what is wrong, the path of each being that of the cell, such as {@code light.mode} */
        record Refused(List<FileError> errors) implements Reading {
            public Refused {
                errors = List.copyOf(errors);
            }
        }
    }

    private EntityCells() {}

    /** All columns of a section, in the order of the format. */
    public static List<Column> columns(Section section) {
        return columns(section.type());
    }

    /** As above, of rows that are no entities of a section. */
    public static List<Column> columns(Class<? extends Record> type) {
        List<Column> columns = new ArrayList<>();
        columns(RecordForm.of(type), "", columns);
        return List.copyOf(columns);
    }

    private static void columns(RecordForm form, String before, List<Column> columns) {
        for (Part part : form.parts()) {
            RecordForm inner = opened(part.type());
            if (inner != null) {
                columns(inner, before + part.key() + ".", columns);
                continue;
            }
            columns.add(new Column(
                    before + part.key(),
                    part.doc(),
                    before.isEmpty() && !form.absence(part).allowed(),
                    choices(part.type()),
                    part.type() instanceof Many));
        }
    }

    private static List<String> choices(ValueType type) {
        return switch (type) {
            case One one when one.notation() == Notation.YES_NO -> List.of("yes", "no");
            case One one when one.notation() == Notation.ON_OFF -> List.of("on", "off");
            case One one -> List.copyOf(one.words().keySet());
            case Many many -> choices(many.element());
            case Table table -> List.of();
            case Of of -> List.of();
        };
    }

    /** The form of a record whose keys are columns of their own. */
    private static @Nullable RecordForm opened(ValueType type) {
        if (type instanceof Of of) {
            RecordForm form = of.form();
            if (!form.isTuple() && !form.hasShorthand() && form.listPart() == null) {
                return form;
            }
        }
        return null;
    }

    /** The cells that are not empty, in the order of the format. */
    public static Map<String, String> of(Record entity) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells(RecordForm.of(entity.getClass()), "", ModelNodes.of(entity), cells);
        return cells;
    }

    static void cells(RecordForm form, String before, Node node, Map<String, String> cells) {
        if (!(node instanceof Mapping mapping)) {
            return;
        }
        for (Entry entry : mapping.entries()) {
            Part part = form.find(entry.key().text());
            if (part == null) {
                continue;
            }
            RecordForm inner = opened(part.type());
            if (inner != null
                    && entry.value() instanceof Mapping own
                    && own.entries().isEmpty()) {
                cells.put(before + part.key(), "{}"); // there, and nothing said of it
            } else if (inner != null) {
                cells(inner, before + part.key() + ".", entry.value(), cells);
            } else {
                cells.put(before + part.key(), text(part.type(), entry.value()));
            }
        }
    }

    /** Without the outer brackets: a person in a table types a list as words with commas. */
    static String text(ValueType type, Node node) {
        return switch (node) {
            case Scalar scalar -> type instanceof Many ? CellList.join(List.of(scalar.text())) : scalar.text();
            // There and empty is not the same as not there.
            case Sequence sequence when sequence.items().isEmpty() -> "[]";
            case Sequence sequence
            when isList(type) ->
                CellList.join(sequence.items().stream()
                        .map(item -> ((Scalar) item).text())
                        .toList());
            // The brackets of an only one would be taken for those of the list.
            case Sequence sequence
            when sequence.items().size() == 1 && sequence.items().getFirst() instanceof Sequence ->
                YamlText.flow(sequence);
            case Sequence sequence -> inner(YamlText.flow(sequence));
            case Mapping mapping -> inner(YamlText.flow(mapping));
        };
    }

    private static boolean isList(ValueType type) {
        return switch (type) {
            case Many many -> many.element() instanceof One;
            case Of of ->
                of.form().listPart() != null && isList(of.form().listPart().type());
            case One one -> false;
            case Table table -> false;
        };
    }

    private static String inner(String flow) {
        return flow.substring(1, flow.length() - 1).strip();
    }

    /**
     * The entity with some cells set; the others stay as they were.
     *
     * @param before what it was; null where it is new
     * @param cells texts by key; a blank one takes the key away
     */
    public static Reading read(Section section, String id, @Nullable Record before, Map<String, String> cells) {
        return read(section.type(), section.path(), id, before, cells);
    }

    /**
     * As above, for rows that are no entities of a section.
     *
     * @param where what such rows are called in the file
     */
    public static Reading read(
            Class<? extends Record> type, String where, String id, @Nullable Record before, Map<String, String> cells) {
        RecordForm form = RecordForm.of(type);
        Node node = before == null ? empty() : ModelNodes.of(before);
        if (!(node instanceof Mapping mapping)) {
            throw new IllegalArgumentException(where + " has no rows");
        }
        Errors errors = new Errors();
        for (Map.Entry<String, String> cell : cells.entrySet()) {
            try {
                mapping = with(mapping, form, cell.getKey(), cell.getValue().strip(), false, Span.NONE);
            } catch (DocumentException e) {
                FileError error = e.error("");
                errors.add(Span.NONE, cell.getKey(), error.found(), error.expected());
            }
        }
        if (!errors.isEmpty()) {
            return new Reading.Refused(errors.list(id));
        }
        Object entity = new Binder(errors, new Budget()).entity(type, where, id, mapping);
        return entity instanceof Record read && errors.isEmpty()
                ? new Reading.Read(read)
                : new Reading.Refused(errors.list(id).stream()
                        .map(error -> at(error, where + "." + id))
                        .toList());
    }

    private static FileError at(FileError error, String entity) {
        String path = error.path();
        String cell =
                path.equals(entity) ? "" : path.startsWith(entity + ".") ? path.substring(entity.length() + 1) : path;
        return new FileError(error.file(), 0, 0, cell, error.found(), error.expected(), error.nearest());
    }

    /**
     * @param emptyIsText an empty text is one; else it takes the key away
     * @param span where the text stands
     */
    static Mapping with(Mapping mapping, RecordForm form, String key, String text, boolean emptyIsText, Span span)
            throws DocumentException {
        Part whole = form.find(key);
        int dot = key.indexOf('.');
        if (whole == null && dot < 0) {
            return set(
                    mapping, key, new Scalar(text, Look.PLAIN, span), span); // an unknown key, which the binder names
        }
        if (whole != null) {
            boolean none = text.isEmpty() && !emptyIsText;
            return set(mapping, key, none ? null : at(value(whole.type(), text), span), span);
        }
        Part outer = form.find(key.substring(0, dot));
        RecordForm inner = outer == null ? null : opened(outer.type());
        if (outer == null || inner == null) {
            return set(mapping, key, new Scalar(text, Look.PLAIN, span), span);
        }
        Mapping was = mapping.find(outer.key()) instanceof Mapping own ? own : empty();
        Mapping changed = with(was, inner, key.substring(dot + 1), text, emptyIsText, span);
        return set(mapping, outer.key(), changed.entries().isEmpty() ? null : changed, span);
    }

    /** The same node, all of it at one place. */
    static Node at(Node node, Span span) {
        return switch (node) {
            case Scalar scalar -> new Scalar(scalar.text(), scalar.look(), span);
            case Sequence sequence ->
                new Sequence(
                        sequence.items().stream().map(item -> at(item, span)).toList(), sequence.layout(), span);
            case Mapping mapping ->
                new Mapping(
                        mapping.entries().stream()
                                .map(entry -> new Entry((Scalar) at(entry.key(), span), at(entry.value(), span)))
                                .toList(),
                        mapping.layout(),
                        span);
        };
    }

    static Node value(ValueType type, String text) throws DocumentException {
        return switch (type) {
            case One one -> new Scalar(text, Scalars.look(one));
            case Many many
            when many.element() instanceof One one ->
                new Sequence(
                        CellList.split(isBracketed(text, '[', ']') ? text.substring(1, text.length() - 1) : text)
                                .stream()
                                .map(item -> (Node) new Scalar(item, Scalars.look(one)))
                                .toList(),
                        Layout.COMPACT,
                        Span.NONE);
            case Many many -> flow(text, '[', ']');
            case Table table -> flow(text, '{', '}');
            case Of of -> of(of.form(), text);
        };
    }

    private static Node of(RecordForm form, String text) throws DocumentException {
        if (text.startsWith("{") || text.startsWith("[")) {
            return YamlNodes.read(text);
        }
        if (form.listPart() != null
                && form.listPart().type() instanceof Many many
                && many.element() instanceof One one) {
            return isShorthand(form, text) ? new Scalar(text, Look.PLAIN) : list(one, text);
        }
        if (form.hasShorthand()) {
            return text.contains(": ") ? flow(text, '{', '}') : new Scalar(text, Look.PLAIN);
        }
        return form.isTuple() || form.listPart() != null ? flow(text, '[', ']') : flow(text, '{', '}');
    }

    private static boolean isShorthand(RecordForm form, String text) {
        try {
            return form.hasShorthand() && form.ofText(text) != null;
        } catch (IllegalArgumentException noShorthand) {
            return false;
        }
    }

    private static Node list(One element, String text) {
        String inner = isBracketed(text, '[', ']') ? text.substring(1, text.length() - 1) : text;
        return new Sequence(
                CellList.split(inner).stream()
                        .map(item -> (Node) new Scalar(item, Scalars.look(element)))
                        .toList(),
                Layout.COMPACT,
                Span.NONE);
    }

    private static Node flow(String text, char open, char close) throws DocumentException {
        return YamlNodes.read(isBracketed(text, open, close) ? text : open + text + close);
    }

    /** Whether the first character is a bracket that the last one closes: {@code [1, 2], [3, 4]} is not. */
    private static boolean isBracketed(String text, char open, char close) {
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == open ? 1 : c == close ? -1 : 0;
            if (depth == 0) {
                return i > 0 && i == text.length() - 1;
            }
        }
        return false;
    }

    private static Mapping set(Mapping mapping, String key, @Nullable Node value, Span span) {
        List<Entry> entries = new ArrayList<>();
        boolean there = false;
        for (Entry entry : mapping.entries()) {
            if (!entry.key().text().equals(key)) {
                entries.add(entry);
            } else if (value != null) {
                entries.add(new Entry(entry.key(), value));
                there = true;
            }
        }
        if (value != null && !there) {
            entries.add(new Entry(new Scalar(key, Look.TEXT, span), value));
        }
        return new Mapping(entries, Layout.COMPACT, mapping.span());
    }

    private static Mapping empty() {
        return new Mapping(List.of(), Layout.COMPACT, Span.NONE);
    }
}
