package housewright.app.plan;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import housewright.plan.Level;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Solved;
import java.io.IOException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What the program and its solver's process say to each other, a line each. */
final class Wire {
    static final String STOP = "stop";

    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .addModule(new SimpleModule()
                    .addSerializer(new DateWriter())
                    .addDeserializer(LocalDate.class, new DateReader()))
            .build();

    private Wire() {}

    /** What to solve. */
    record Ask(Request request, Schedule first) {}

    /** What was found; the parts that do not apply are absent. */
    record Answer(
            @Nullable Schedule better,
            @Nullable Level level,
            @Nullable Solved solved) {}

    static String line(Object ask) {
        try {
            return MAPPER.writeValueAsString(ask);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("The records of a plan cannot be written", e);
        }
    }

    static Ask ask(String line) throws IOException {
        return MAPPER.readValue(line, Ask.class);
    }

    static Answer answer(String line) throws IOException {
        return MAPPER.readValue(line, Answer.class);
    }

    private static final class DateWriter extends StdSerializer<LocalDate> {
        private static final long serialVersionUID = 1;

        DateWriter() {
            super(LocalDate.class);
        }

        @Override
        public void serialize(LocalDate date, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeString(date.toString());
        }
    }

    private static final class DateReader extends StdDeserializer<LocalDate> {
        private static final long serialVersionUID = 1;

        DateReader() {
            super(LocalDate.class);
        }

        @Override
        public LocalDate deserialize(JsonParser in, DeserializationContext context) throws IOException {
            return LocalDate.parse(in.getText());
        }
    }
}
