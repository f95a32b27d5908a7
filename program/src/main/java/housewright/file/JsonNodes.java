package housewright.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamReadException;
import housewright.file.Node.Entry;
import housewright.file.Node.Layout;
import housewright.file.Node.Look;
import housewright.file.Node.Scalar;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** JSON as nodes. */
final class JsonNodes {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(Documents.DEEPEST * 2)
                    .maxStringLength(Documents.LARGEST_BYTES)
                    .maxNameLength(Documents.LARGEST_BYTES)
                    .maxNumberLength(Documents.LARGEST_BYTES)
                    .build())
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .build();

    private final JsonParser parser;

    private JsonNodes(JsonParser parser) {
        this.parser = parser;
    }

    static Node read(String text) throws DocumentException {
        try (JsonParser parser = FACTORY.createParser(text)) {
            JsonNodes nodes = new JsonNodes(parser);
            JsonToken first = parser.nextToken();
            if (first == null) {
                throw Documents.empty();
            }
            Node root = nodes.node(first, 0);
            if (parser.nextToken() != null) {
                Span span = nodes.span();
                throw new DocumentException(
                        span.line(),
                        span.column(),
                        Shown.quoted(parser.getText()) + " after the end",
                        "one JSON object");
            }
            return root;
        } catch (StreamReadException e) {
            JsonLocation at = e.getLocation();
            throw new DocumentException(
                    at == null ? 1 : at.getLineNr(),
                    at == null ? 1 : at.getColumnNr(),
                    "what is no JSON: " + firstSentence(e.getOriginalMessage()),
                    "");
        } catch (IOException e) {
            throw new UncheckedIOException("A text in memory cannot fail to be read", e);
        }
    }

    private Node node(@Nullable JsonToken token, int depth) throws IOException, DocumentException {
        Span span = span();
        if (depth > Documents.DEEPEST) {
            throw Documents.tooDeep(span);
        }
        return switch (token) {
            case START_OBJECT -> {
                List<Entry> entries = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    Scalar key = new Scalar(parser.getText(), Look.TEXT, span());
                    entries.add(new Entry(key, node(parser.nextToken(), depth + 1)));
                }
                yield new Node.Mapping(entries, Layout.COMPACT, span);
            }
            case START_ARRAY -> {
                List<Node> items = new ArrayList<>();
                for (JsonToken item = parser.nextToken(); item != JsonToken.END_ARRAY; item = parser.nextToken()) {
                    items.add(node(item, depth + 1));
                }
                yield new Node.Sequence(items, Layout.COMPACT, span);
            }
            case VALUE_NULL -> new Scalar("", Look.PLAIN, span);
            case VALUE_TRUE, VALUE_FALSE -> new Scalar(parser.getText(), Look.TRUTH, span);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Scalar(parser.getText(), Look.NUMBER, span);
            case VALUE_STRING -> new Scalar(parser.getText(), Look.TEXT, span);
            case null, default -> throw new DocumentException(span.line(), span.column(), "an early end", "a value");
        };
    }

    private Span span() {
        JsonLocation at = parser.currentTokenLocation();
        int offset = (int) at.getCharOffset();
        return new Span(at.getLineNr(), at.getColumnNr(), offset, offset);
    }

    /** Without what the library adds about its own settings and sources. */
    private static String firstSentence(String message) {
        int end = message.indexOf('\n');
        return Shown.cut(end < 0 ? message : message.substring(0, end));
    }
}
