package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Layout;
import housewright.file.Node.Look;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.file.Node.Sequence;
import housewright.file.RecordForm.Absence;
import housewright.file.RecordForm.Part;
import housewright.file.ValueType.Many;
import housewright.file.ValueType.Of;
import housewright.file.ValueType.One;
import housewright.file.ValueType.Table;
import housewright.model.About;
import housewright.model.Lighting;
import housewright.model.Project;
import housewright.model.Shorthand;
import housewright.model.Venue;
import housewright.model.Words;
import housewright.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Records to nodes: the way back of {@link Binder}. What an absent key says as well is left out. */
final class ModelNodes {
    private static final Set<Class<?>> SECTIONS = Set.of(Project.class, About.class, Venue.class, Lighting.class);

    private ModelNodes() {}

    /** A record as it stands under its id, or the whole project. */
    static Node of(Record value) {
        return of(RecordForm.of(value.getClass()), value);
    }

    static Node of(ValueType type, Object value) {
        return switch (type) {
            case One one -> new Scalar(Scalars.text(one, value), Scalars.look(one));
            case Many many -> {
                List<Node> items = new ArrayList<>();
                for (Object item : (List<?>) value) {
                    items.add(of(many.element(), item));
                }
                yield new Sequence(items, layout(many.element()), Span.NONE);
            }
            case Table table -> {
                List<Entry> entries = new ArrayList<>();
                ((Map<?, ?>) value).forEach((key, each) -> entries.add(new Entry(key(key), of(table.value(), each))));
                yield new Mapping(entries, layout(table.value()), Span.NONE);
            }
            case Of of -> of(of.form(), value);
        };
    }

    private static Layout layout(ValueType member) {
        return member instanceof Of of && !of.form().isTuple() && !isSetting(of) ? Layout.LINES : Layout.COMPACT;
    }

    /** Settings are short, and many to a device. */
    private static boolean isSetting(Of of) {
        return of.type() == housewright.model.Setting.class;
    }

    static Scalar key(Object key) {
        return new Scalar(key instanceof Written written ? written.text() : key.toString(), Look.TEXT);
    }

    private static Node of(RecordForm form, Object value) {
        String text = value instanceof Shorthand shorthand ? shorthand.shortText() : null;
        if (text != null) {
            Look look = Words.yesOrNo(text) != null ? Look.TRUTH : isDigits(text) ? Look.NUMBER : Look.PLAIN;
            return new Scalar(text, look);
        }
        Part list = form.listPart();
        if (list != null) {
            return of(list.type(), needed(form.get(list, value)));
        }
        if (form.isTuple()) {
            List<Node> items = new ArrayList<>();
            for (Part part : form.parts()) {
                items.add(of(part.type(), needed(form.get(part, value))));
            }
            return new Sequence(items, Layout.COMPACT, Span.NONE);
        }
        List<Entry> entries = new ArrayList<>();
        for (Part part : form.parts()) {
            Object each = form.get(part, value);
            if (each != null && !isAbsent(form.absence(part), each)) {
                entries.add(new Entry(new Scalar(part.key(), Look.TEXT), value(form, part, each)));
            }
        }
        return new Mapping(entries, SECTIONS.contains(form.type()) ? Layout.SECTION : Layout.COMPACT, Span.NONE);
    }

    private static boolean isAbsent(Absence absence, Object value) {
        return absence.allowed() && value.equals(absence.value());
    }

    private static Node value(RecordForm form, Part part, Object value) {
        Node node = of(part.type(), value);
        if (node instanceof Sequence sequence) {
            boolean end = part.key().equals("from") || part.key().equals("to");
            if (end && sequence.items().size() == 1) {
                return sequence.items().getFirst();
            }
        }
        if (form.type() == Project.class && node instanceof Mapping mapping && mapping.layout() == Layout.COMPACT) {
            return new Mapping(mapping.entries(), Layout.LINES, Span.NONE);
        }
        return node;
    }

    private static boolean isDigits(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return !text.isEmpty();
    }

    private static Object needed(@Nullable Object value) {
        if (value == null) {
            throw new IllegalArgumentException("A component that must be there is null");
        }
        return value;
    }
}
