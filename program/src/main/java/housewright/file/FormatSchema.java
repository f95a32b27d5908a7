package housewright.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import housewright.file.RecordForm.Part;
import housewright.file.ValueType.Keys;
import housewright.file.ValueType.Many;
import housewright.file.ValueType.Notation;
import housewright.file.ValueType.Of;
import housewright.file.ValueType.One;
import housewright.file.ValueType.Table;
import housewright.model.Channels;
import housewright.model.Days;
import housewright.model.Doc;
import housewright.model.End;
import housewright.model.Join;
import housewright.model.Latency;
import housewright.model.LocalRef;
import housewright.model.NamePattern;
import housewright.model.Needs;
import housewright.model.PatchEntry;
import housewright.model.Patchable;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Route;
import housewright.model.Setting;
import housewright.model.Tie;
import housewright.model.Way;
import housewright.unit.Delay;
import housewright.unit.Quantities;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The format as a JSON Schema (draft 2020-12), made from the records: what an editor needs to complete and check a
 * project file. It says what a file may hold, entry by entry; that an id names something there is beyond it, and the
 * reader takes a little more than it allows (a number in quotation marks).
 */
public final class FormatSchema {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private static final String ID = "[A-Za-z0-9][A-Za-z0-9-]*";
    private static final String TYPE_ID = "[A-Za-z0-9][A-Za-z0-9.-]*";
    private static final String RANGE = "\\{[^{}]+\\}";
    private static final String NAMES =
            "([A-Za-z0-9][A-Za-z0-9-]*(" + RANGE + "[A-Za-z0-9-]*)?|" + RANGE + "[A-Za-z0-9-]*)";
    private static final String LOCAL = NAMES + "(:" + NAMES + ")?";
    private static final String REF = NAMES + "\\." + LOCAL;
    private static final String JOIN = "\\s*" + LOCAL + "\\s*->\\s*" + LOCAL + "(\\s*,\\s*" + LOCAL + ")*\\s*";
    private static final String DAY = "[A-Za-z]{3}(\\s*-\\s*[A-Za-z]{3})?";
    private static final String DATE = "[0-9]{4}-[0-9]{2}-[0-9]{2}";
    private static final String TIME = "[0-9]{2}:[0-9]{2}(:[0-9]{2})?";

    private final Map<Class<?>, String> names = new LinkedHashMap<>();
    private final Deque<Class<?>> waiting = new ArrayDeque<>();

    private FormatSchema() {}

    /** The schema as JSON text. */
    public static String json() {
        try {
            return new ObjectMapper().writer(JsonText.printer()).writeValueAsString(new FormatSchema().schema()) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A schema is plain JSON", e);
        }
    }

    private ObjectNode schema() {
        ObjectNode schema = JSON.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "Housewright project, format " + ProjectReader.FORMAT);
        schema.setAll(record(RecordForm.of(Project.class)));
        ((ObjectNode) schema.get("properties"))
                .set(
                        "housewright",
                        described(JSON.objectNode().put("const", ProjectReader.FORMAT), "Version of this format"));
        ObjectNode definitions = JSON.objectNode();
        while (!waiting.isEmpty()) {
            Class<?> type = waiting.removeFirst();
            definitions.set(name(type), definition(type));
        }
        schema.set("$defs", definitions);
        return schema;
    }

    private static String name(Class<?> type) {
        return Phrases.words(type).replace(' ', '-');
    }

    private ObjectNode reference(Class<?> type) {
        if (names.putIfAbsent(type, name(type)) == null) {
            waiting.addLast(type);
        }
        return JSON.objectNode().put("$ref", "#/$defs/" + name(type));
    }

    private ObjectNode value(ValueType type) {
        return switch (type) {
            case One one
            when one.notation() == Notation.WORD
                    || one.notation() == Notation.WRITTEN
                    || one.notation() == Notation.QUANTITY
                    || one.notation() == Notation.PICTURE_FORMAT -> reference(one.type());
            case One one -> scalar(one);
            case Many many -> list(many);
            case Table table -> table(table);
            case Of of -> reference(of.type());
        };
    }

    private ObjectNode list(Many many) {
        ObjectNode list = items(many);
        boolean single = many.element() instanceof One
                || (many.element() instanceof Of of && of.form().hasShorthand());
        return single ? anyOf(value(many.element()), list) : list;
    }

    private ObjectNode items(Many many) {
        ObjectNode list = JSON.objectNode();
        list.set("type", array("array", "null"));
        list.set("items", value(many.element()));
        return list;
    }

    private ObjectNode table(Table table) {
        ObjectNode members = JSON.objectNode();
        members.set(
                anchored(
                        table.keys() == Keys.PATTERN
                                ? table.keyType() == NamePattern.class ? NAMES : LOCAL
                                : table.keys() == Keys.TYPE_ID ? TYPE_ID : ID),
                value(table.value()));
        ObjectNode schema = JSON.objectNode();
        schema.set("type", array("object", "null"));
        schema.set("patternProperties", members);
        return schema.put("additionalProperties", false);
    }

    private ObjectNode definition(Class<?> type) {
        ObjectNode schema = switch (ValueType.of(type)) {
            case One one -> scalar(one);
            case Of of -> forms(of.form());
            case Many many -> throw new IllegalStateException("No class is a list");
            case Table table -> throw new IllegalStateException("No class is a table");
        };
        Doc doc = type.getAnnotation(Doc.class);
        return doc == null ? schema : described(schema, doc.value());
    }

    /** Short form, list form and mapping, as far as the record has them. */
    private ObjectNode forms(RecordForm form) {
        if (form.isTuple()) {
            return tuple(form);
        }
        Part list = form.listPart();
        ObjectNode full = list != null && list.type() instanceof Many many ? items(many) : record(form);
        return form.hasShorthand() ? anyOf(shorthand(form.type()), full) : full;
    }

    private ObjectNode tuple(RecordForm form) {
        ArrayNode items = JSON.arrayNode();
        form.parts().forEach(part -> items.add(value(part.type())));
        ObjectNode schema = JSON.objectNode().put("type", "array");
        schema.set("prefixItems", items);
        return schema.put("minItems", items.size()).put("maxItems", items.size());
    }

    private ObjectNode record(RecordForm form) {
        ObjectNode properties = JSON.objectNode();
        ArrayNode required = JSON.arrayNode();
        for (Part part : form.parts()) {
            ObjectNode property = value(part.type());
            String written = part.written();
            if (written != null && part.type() instanceof One one) {
                property.set(
                        "default",
                        Scalars.look(one) == Node.Look.NUMBER
                                ? JSON.numberNode(Integer.parseInt(written))
                                : JSON.textNode(written));
            }
            properties.set(part.key(), described(property, part.doc()));
            if (!form.absence(part).allowed()) {
                required.add(part.key());
            }
        }
        ObjectNode schema = JSON.objectNode();
        schema.set("type", required.isEmpty() ? array("object", "null") : JSON.textNode("object"));
        schema.set("properties", properties);
        if (!required.isEmpty()) {
            schema.set("required", required);
        }
        return schema.put("additionalProperties", false);
    }

    private static ObjectNode scalar(One one) {
        return switch (one.notation()) {
            case TEXT -> typed(array("string", "number"));
            case WHOLE -> JSON.objectNode().put("type", "integer");
            case DECIMAL -> JSON.objectNode().put("type", "number");
            case MONEY -> JSON.objectNode().put("type", "number").put("minimum", 0);
            case YES_NO -> words(array("yes", "no"));
            case ON_OFF -> words(array("on", "off"));
            case WORD -> {
                ArrayNode words = JSON.arrayNode();
                one.words().keySet().forEach(words::add);
                yield (ObjectNode) JSON.objectNode().set("enum", words);
            }
            case QUANTITY, PICTURE_FORMAT -> {
                ObjectNode schema = pattern(Quantities.pattern(one.type()));
                schema.put("description", Scalars.expected(one));
                schema.set("examples", array(Quantities.example(one.type())));
                yield schema;
            }
            case WRITTEN -> written(one.type());
            case MOMENT -> pattern(anchored(DATE + "[ T]" + TIME));
            case DATE -> pattern(anchored(DATE));
            case TIME -> pattern(anchored(TIME));
            case ZONE -> JSON.objectNode().put("type", "string");
        };
    }

    private static ObjectNode written(Class<?> type) {
        ObjectNode schema = JSON.objectNode();
        // A name may be a number, which YAML takes for one: the pattern holds for text alone.
        schema.set(
                "type",
                type == NamePattern.class || type == LocalRef.class
                        ? array("string", "integer")
                        : JSON.textNode("string"));
        schema.put("pattern", anchored(writtenPattern(type)));
        return described(schema, Phrases.of(type));
    }

    private static String writtenPattern(Class<?> type) {
        if (type == NamePattern.class) {
            return NAMES;
        }
        if (type == LocalRef.class) {
            return LOCAL;
        }
        if (type == Ref.class) {
            return REF;
        }
        if (type == End.class) {
            return "unknown|" + REF;
        }
        if (type == Join.class) {
            return JOIN;
        }
        if (type == Tie.class) {
            return "\\s*" + NAMES + "\\s*=\\s*" + NAMES + "\\s*";
        }
        if (type == Way.class) {
            return "\\s*" + REF + "\\s*->\\s*" + REF + "\\s*";
        }
        if (type == Days.class) {
            return DAY + "(\\s*,\\s*" + DAY + ")*";
        }
        throw new IllegalStateException("The schema has no pattern for " + type.getName());
    }

    private static ObjectNode shorthand(Class<?> type) {
        if (type == Channels.class) {
            return JSON.objectNode().put("type", "integer").put("minimum", 0).put("maximum", NamePattern.MOST);
        }
        if (type == Latency.class) {
            return pattern(Quantities.pattern(Delay.class));
        }
        if (type == PatchEntry.class || type == Route.class) {
            return described(pattern(anchored(JOIN)), Phrases.of(Join.class));
        }
        if (type == Setting.class) {
            return words(array("on", "off"));
        }
        if (type == Needs.class) {
            return JSON.objectNode().put("const", "all");
        }
        if (type == Patchable.class) {
            return JSON.objectNode().put("const", "free");
        }
        throw new IllegalStateException("The schema has no short form of " + type.getName());
    }

    private static ObjectNode words(ArrayNode words) {
        return (ObjectNode) JSON.objectNode().set("enum", words.add(true).add(false));
    }

    private static ObjectNode pattern(String pattern) {
        return JSON.objectNode().put("type", "string").put("pattern", pattern);
    }

    private static String anchored(String pattern) {
        return "^(" + pattern + ")$";
    }

    private static ObjectNode typed(ArrayNode types) {
        return (ObjectNode) JSON.objectNode().set("type", types);
    }

    private static ObjectNode anyOf(ObjectNode one, ObjectNode other) {
        return (ObjectNode)
                JSON.objectNode().set("anyOf", JSON.arrayNode().add(one).add(other));
    }

    private static ArrayNode array(String... texts) {
        ArrayNode array = JSON.arrayNode();
        for (String text : texts) {
            array.add(text);
        }
        return array;
    }

    private static ObjectNode described(ObjectNode schema, @Nullable String text) {
        return text == null ? schema : schema.put("description", text);
    }
}
