package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import housewright.testing.RandomProjects;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** Held against a validator of JSON Schema that is not ours, reading files as an editor would: YAML 1.2, core schema. */
class FormatSchemaTest {
    private static final Path PUBLISHED = Path.of("../docs/project.schema.json");
    private static final SchemaRegistry DIALECT = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema SCHEMA = DIALECT.getSchema(FormatSchema.json());

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    @Test
    void thePublishedSchemaIsTheOneOfTheRecords() throws IOException {
        String schema = FormatSchema.json();
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(PUBLISHED, schema);
            fail("Rewrote " + PUBLISHED + ". Read the diff, then run again without -Dgolden.update=true.");
        }
        assertThat(Files.readString(PUBLISHED))
                .as("The records have changed: run the test once with -Dgolden.update=true")
                .isEqualTo(schema);
    }

    @Test
    void itIsASchemaItself() {
        Schema schemaOfSchemas = DIALECT.getSchema(
                com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

        assertThat(schemaOfSchemas.validate(FormatSchema.json(), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void theExampleIsValid() {
        assertThat(errors(housewright.file.Files.resource("example.yaml"))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsWrittenIsValid(long seed) {
        assertThat(errors(ProjectWriter.yaml(RandomProjects.of(seed)))).isEmpty();
        assertThat(SCHEMA.validate(ProjectWriter.json(RandomProjects.of(seed)), InputFormat.JSON))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "project: {name: A, stage: planned}",
                "project: {stage: design}",
                "project: {name: A, library: one}",
                "project: {name: A, mains: {voltage: 230}}",
                "project: {name: A, mains: {voltage: 230 A}}",
                "project: {name: A, picture: 1080p}",
                "project: {name: A, coulour: red}",
                "venue: {places: {'a b': {}}}",
                "venue: {places: {a: {at: [1 m, 2 m]}}}",
                "venue: {places: {a: {at: [1 m, 2 m, 3]}}}",
                "venue: {rooms: {a: {outline: [[0 m, 0 m, 0 m]]}}}",
                "models: {a: {ports: {'in-{1..': {in: analog-audio}}}}",
                "models: {a: {ports: {b: {in: analogue-audio}}}}",
                "models: {a: {ports: {b: {in: usb-audio, channels: many}}}}",
                "models: {a: {patch: some}}",
                "models: {a: {routes: [b c]}}",
                "models: {a: {price: -4}}",
                "models: {a: {portsKnown: no}}",
                "equipment: {a: {set: {b: loud}}}",
                "equipment: {a: {was: {life: keep}}}",
                "equipment: [a]",
                "cables: {a: {from: desk}}",
                "patch: {a: [b -> ]}",
                "network-sends: {a: {from: b.c}}",
                "feeds: {a: {never: perhaps}}",
                "people: {a: {free: [{days: mon-fri, from: '9', to: '21:00'}]}}",
                "events: {a: {from: 2027-02-14}}",
                "events: {a: {needs: some}}",
                "exempt: [{rule: a}]",
                "wishes: {}",
            })
    void whatTheReaderRefusesIsInvalid(String line) {
        String head = line.startsWith("project:") ? "housewright: 1\n" : "housewright: 1\nproject: {name: A}\n";

        assertThat(errors(head + line)).isNotEmpty();
        assertThat(housewright.file.Files.errors("bad.yaml", head + line)).isNotEmpty();
    }

    @Test
    void versionAndProjectMustBeThere() {
        assertThat(errors("project: {name: A}")).isNotEmpty();
        assertThat(errors("housewright: 1")).isNotEmpty();
        assertThat(errors("housewright: 2\nproject: {name: A}")).isNotEmpty();
        assertThat(errors("housewright: 1\nproject: {name: A}\nequipment:\n  desk:\n"))
                .isEmpty();
    }

    @Test
    void keysAreExplainedInTheWordsOfTheRecords() throws IOException {
        JsonNode schema = new ObjectMapper().readTree(FormatSchema.json());

        assertThat(schema.at("/properties/feeds/description").asText())
                .isEqualTo("What must arrive where, and what must never");
        assertThat(schema.at("/$defs/equipment/properties/life/default").asText())
                .isEqualTo("keep");
        assertThat(schema.at("/$defs/equipment/properties/note/description").asText())
                .isEqualTo("A remark in free words");
        assertThat(schema.at("/$defs/length/examples/0").asText()).isEqualTo("31 m");
    }

    private static List<Error> errors(String yaml) {
        Object document =
                new Load(LoadSettings.builder().setSchema(new CoreSchema()).build()).loadFromString(yaml);
        return SCHEMA.validate(new ObjectMapper().<JsonNode>valueToTree(document));
    }
}
