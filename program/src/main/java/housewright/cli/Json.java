package housewright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.Locale;

/** Documents as JSON: keys in the order of the records, the same bytes on every system. */
final class Json {
    private Json() {}

    /** Constants as the words they stand for: small, with hyphens. */
    @SuppressWarnings("rawtypes")
    private static final class Words extends StdSerializer<Enum> {
        private static final long serialVersionUID = 1;

        Words() {
            super(Enum.class);
        }

        @Override
        public void serialize(Enum constant, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeString(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
    }

    static String write(Record document) {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentArraysWith(lines);
        printer.indentObjectsWith(lines);
        SimpleModule words = new SimpleModule().addSerializer(new Words());
        ObjectWriter writer = new ObjectMapper().registerModule(words).writer(printer);
        try {
            return writer.writeValueAsString(document) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
