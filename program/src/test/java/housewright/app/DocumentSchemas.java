package housewright.app;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import housewright.model.Doc;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The JSON Schema of a document, made from its records: every key is always there, and no other is. */
public final class DocumentSchemas {
    private final ObjectMapper json = new ObjectMapper();
    private final Map<String, ObjectNode> definitions = new TreeMap<>();

    private DocumentSchemas() {}

    public static String of(Class<? extends Record> document, String title) {
        DocumentSchemas maker = new DocumentSchemas();
        ObjectNode root = maker.json.createObjectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", title);
        root.setAll(maker.object(document));
        ObjectNode definitions = root.putObject("$defs");
        maker.definitions.forEach(definitions::set);
        try {
            return maker.json.writer(SerializationFeature.INDENT_OUTPUT).writeValueAsString(root) + "\n";
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private ObjectNode object(Class<?> type) {
        ObjectNode object = json.createObjectNode();
        object.put("type", "object");
        ObjectNode properties = object.putObject("properties");
        ArrayNode required = object.putArray("required");
        for (RecordComponent component : type.getRecordComponents()) {
            ObjectNode schema = schema(component.getGenericType());
            if (component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
                schema.putArray("type").add(schema.remove("type").asText()).add("null");
                if (schema.get("enum") instanceof ArrayNode values) {
                    values.addNull();
                }
            }
            Doc doc = component.getAnnotation(Doc.class);
            if (doc != null) {
                schema.put("description", doc.value());
            }
            properties.set(component.getName(), schema);
            required.add(component.getName());
        }
        object.put("additionalProperties", false);
        return object;
    }

    private ObjectNode schema(Type type) {
        ObjectNode schema = json.createObjectNode();
        if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
            schema.put("type", "array");
            schema.set("items", schema(list.getActualTypeArguments()[0]));
            return schema;
        }
        Class<?> plain = (Class<?>) type;
        if (plain.isRecord()) {
            String name = plain.getSimpleName();
            if (!definitions.containsKey(name)) {
                definitions.put(name, json.createObjectNode());
                definitions.put(name, object(plain));
            }
            return schema.put("$ref", "#/$defs/" + name);
        }
        if (plain.isEnum()) {
            schema.put("type", "string");
            ArrayNode values = schema.putArray("enum");
            for (Object constant : plain.getEnumConstants()) {
                values.add(((Enum<?>) constant).name().toLowerCase(Locale.ROOT).replace('_', '-'));
            }
            return schema;
        }
        return schema.put("type", word(plain));
    }

    private static String word(Class<?> type) {
        if (type == String.class) {
            return "string";
        }
        if (type == boolean.class) {
            return "boolean";
        }
        if (type == int.class || type == long.class || type == Integer.class) {
            return "integer";
        }
        if (type == double.class || type == Double.class || type == BigDecimal.class) {
            return "number";
        }
        throw new AssertionError("No JSON for " + type);
    }
}
