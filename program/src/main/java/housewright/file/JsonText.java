package housewright.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import housewright.file.Node.Entry;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.file.Node.Sequence;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;

/** Nodes as JSON, a line for each member. */
final class JsonText {
    private JsonText() {}

    static String document(Node root) {
        return text(root, printer()) + "\n";
    }

    /** All on one line. */
    static String line(Node root) {
        return text(root, null);
    }

    private static String text(Node root, @Nullable PrettyPrinter printer) {
        StringWriter out = new StringWriter();
        try (JsonGenerator generator = new JsonFactory().createGenerator(out)) {
            if (printer != null) {
                generator.setPrettyPrinter(printer);
            }
            write(root, generator);
        } catch (IOException e) {
            throw new UncheckedIOException("A text in memory cannot fail to be written", e);
        }
        return out.toString();
    }

    /** Two spaces a level, and a line break that is the same everywhere. */
    static DefaultPrettyPrinter printer() {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(
                Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER));
        printer.indentObjectsWith(lines);
        printer.indentArraysWith(lines);
        return printer;
    }

    private static void write(Node node, JsonGenerator out) throws IOException {
        switch (node) {
            case Mapping mapping -> {
                out.writeStartObject();
                for (Entry entry : mapping.entries()) {
                    out.writeFieldName(entry.key().text());
                    write(entry.value(), out);
                }
                out.writeEndObject();
            }
            case Sequence sequence -> {
                out.writeStartArray();
                for (Node item : sequence.items()) {
                    write(item, out);
                }
                out.writeEndArray();
            }
            case Scalar scalar -> {
                switch (scalar.look()) {
                    case NUMBER -> out.writeNumber(scalar.text());
                    case TRUTH ->
                        out.writeBoolean(
                                scalar.text().equals("yes") || scalar.text().equals("on"));
                    case PLAIN, TEXT -> out.writeString(scalar.text());
                }
            }
        }
    }
}
