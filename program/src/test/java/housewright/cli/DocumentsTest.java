package housewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import housewright.app.CheckDocument;
import housewright.app.DocumentSchemas;
import housewright.app.MendDocument;
import housewright.app.OrdersDocument;
import housewright.app.TraceDocument;
import housewright.app.TypesDocument;
import housewright.app.WorkDocument;
import housewright.app.packet.AnswersDocument;
import housewright.app.packet.AnswersFile;
import housewright.app.plan.PlanDocument;
import housewright.app.plan.ReadyDocument;
import housewright.app.table.ImportDocument;
import housewright.testing.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Results for programs: the published schemas are those of the records, and what is printed is valid by them. */
class DocumentsTest {
    private static final SchemaRegistry DIALECT = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final Map<String, Class<? extends Record>> DOCUMENTS = Map.of(
            "import", ImportDocument.class,
            "answers", AnswersDocument.class,
            "check", CheckDocument.class,
            "trace", TraceDocument.class,
            "mend", MendDocument.class,
            "work", WorkDocument.class,
            "orders", OrdersDocument.class,
            "plan", PlanDocument.class,
            "ready", ReadyDocument.class,
            "library", TypesDocument.class);

    private static Path published(String command) {
        return Path.of("../docs/" + command + ".schema.json");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"check", "trace", "mend", "work", "orders", "plan", "ready", "library", "import", "answers"})
    void thePublishedSchemaIsTheOneOfTheRecords(String command) {
        Golden.hold(
                published(command),
                DocumentSchemas.of(
                        DOCUMENTS.get(command),
                        "What housewright " + (command.equals("ready") ? "plan --ready" : command) + " --json prints"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"check", "trace", "mend", "work", "orders", "plan", "ready", "library", "import", "answers"})
    void itIsASchemaItself(String command) throws IOException {
        assertThat(DIALECT.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"))
                        .validate(Files.readString(published(command)), InputFormat.JSON))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check ../program/src/main/resources/housewright/demo/carrowfenn-hall.yaml",
                "check ../program/src/main/resources/housewright/demo/carrowfenn-hall.yaml --today",
                "check ../examples/broken-converter.yaml",
                "check ../examples/broken-never-feed.yaml",
                "check ../examples/survey.yaml",
                "trace ../program/src/main/resources/housewright/demo/carrowfenn-hall.yaml lectern-to-foyer",
                "trace ../examples/broken-never-feed.yaml click-stays-out",
                "trace ../examples/broken-wrong-pair.yaml sound-to-stream",
                "trace ../examples/survey.yaml speech-to-loop",
                "mend ../examples/broken-converter.yaml camera-to-foyer",
                "mend ../examples/survey.yaml speech-to-hall",
                "mend ../examples/stage-box.yaml lectern",
                "work ../program/src/main/resources/housewright/demo/carrowfenn-hall.yaml",
                "work ../examples/survey.yaml",
                "orders ../program/src/main/resources/housewright/demo/carrowfenn-hall.yaml",
                "orders ../examples/survey.yaml",
                "plan ../examples/refit-plan.yaml --quick --now 2027-05-01T08:00",
                "plan src/test/resources/housewright/halls/us-chapel.yaml --quick --now 2027-02-01T08:00",
                "library converter",
                "library mixxer",
                "import ../examples/survey.yaml src/test/resources/housewright/sheet/kit.csv",
                "answers ../examples/survey.yaml src/test/resources/housewright/sheet/answers.json",
            })
    void whatIsPrintedIsValid(String command) throws IOException {
        List<String> arguments = new ArrayList<>(List.of(command.split(" ")));
        arguments.add("--json");
        String printed = Terminal.plain().run(arguments.toArray(new String[0])).out();
        assertThat(errors(arguments.getFirst(), printed)).isEmpty();
        assertThat(Terminal.plain().run(arguments.toArray(new String[0])).out())
                .as("the same bytes again")
                .isEqualTo(printed);
    }

    @Test
    void theAnswersFileOfAPacketIsPublished() throws IOException {
        Path schema = Path.of("../docs/answers-file.schema.json");
        Golden.hold(schema, DocumentSchemas.of(AnswersFile.class, "What a question packet saves"));
        Path saved = Path.of("src/test/resources/housewright/sheet/answers.json");
        assertThat(DIALECT.getSchema(Files.readString(schema)).validate(Files.readString(saved), InputFormat.JSON))
                .isEmpty();
    }

    private static List<?> errors(String command, String document) throws IOException {
        return DIALECT.getSchema(Files.readString(published(command))).validate(document, InputFormat.JSON);
    }

    /** The words of the issue that programs rely on. */
    @Test
    void checkPrintsTheDocumentThatWasPromised() throws IOException {
        String printed = Terminal.plain()
                .run("check", "../examples/broken-converter.yaml", "--json")
                .out();
        JsonNode document = JSON.readTree(printed);
        assertThat(names(document)).containsExactly("project", "feeds", "findings");
        JsonNode feed = document.get("feeds").get(0);
        assertThat(names(feed)).containsExactly("id", "state", "pairs", "mends");
        assertThat(feed.get("state").asText()).isEqualTo("broken");
        assertThat(names(feed.get("pairs").get(0)))
                .containsExactly("from", "to", "proven", "delayMs", "gainDb", "hops", "stopsAt", "why");
        assertThat(feed.get("mends")).hasSize(1);
        JsonNode finding = document.get("findings").get(0);
        assertThat(names(finding))
                .containsExactly("rule", "severity", "subjects", "message", "evidence", "source", "fixes");
        assertThat(names(finding.get("subjects").get(0))).containsExactly("kind", "id");
        assertThat(finding.get("severity").asText()).isEqualTo("stop");
    }

    @ParameterizedTest(name = "{0} → {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"state\" : \"broken\" | \"state\" : \"fine\"",
                "\"proven\" : false | \"proven\" : \"no\"",
                "\"why\" : | \"reason\" :",
                "\"stop\" | \"STOP\"",
                "\"minutes\" : 48 | \"minutes\" : 4.8",
            })
    void aSlipInADocumentIsNotValid(String passage, String other) throws IOException {
        String printed = Terminal.plain()
                .run("check", "../examples/broken-converter.yaml", "--json")
                .out();
        assertThat(printed).contains(passage);
        assertThat(errors("check", printed.replace(passage, other))).isNotEmpty();
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
