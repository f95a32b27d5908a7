package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Cable;
import housewright.model.Life;
import housewright.model.LocalRef;
import housewright.model.NamePattern;
import housewright.model.Project;
import housewright.model.Remarks;
import housewright.unit.Length;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The example of the format's page, completed so that every reference leads somewhere. */
class ExampleTest {
    private static final String TEXT = Files.resource("example.yaml");

    @Test
    void theExampleLoads() {
        Project project = Files.load("example.yaml", TEXT);

        assertThat(project.about().name()).isEqualTo("Mill Lane Chapel refit");
        assertThat(project.about().timeZone()).isEqualTo(ZoneId.of("Europe/London"));
        assertThat(project.models().get("desk-48").ports().keySet())
                .extracting(NamePattern::text)
                .containsExactly("mic-{1..16}", "out-{1..12}", "link", "usb", "mains");
        assertThat(project.equipment().get("front-1").was().light().address()).isEqualTo(17);
        assertThat(project.equipment()
                        .get("media-pc")
                        .set()
                        .get(new LocalRef("sound-on-sdi"))
                        .on())
                .isTrue();
        assertThat(project.patch().get("desk")).hasSize(5);
        assertThat(project.events().get("sunday-1").from()).isEqualTo(LocalDateTime.of(2027, 2, 14, 10, 30));
        assertThat(project.questions().get("q1").answer()).isEmpty();

        Cable microphone = project.cables().get("C002");
        assertThat(microphone.life()).isEqualTo(Life.NEW);
        assertThat(microphone.length()).isEqualTo(Length.parse("6 m"));
        assertThat(microphone.remarks()).isSameAs(Remarks.NONE);
    }

    @Test
    void whatIsWrittenReadsAsTheSameProjectInTheSameOrder() {
        Project project = Files.load("example.yaml", TEXT);

        String yaml = ProjectWriter.yaml(project);
        Project again = Files.load("again.yaml", yaml);
        assertThat(again).isEqualTo(project);
        assertThat(again.equipment().keySet())
                .containsExactlyElementsOf(project.equipment().keySet());
        assertThat(ProjectWriter.yaml(again)).isEqualTo(yaml);

        String json = ProjectWriter.json(project);
        assertThat(Files.load("again.json", json)).isEqualTo(project);
        assertThat(Files.load("again", json)).isEqualTo(project);
    }

    @Test
    void everyErrorOfAFileComesAtOnce() {
        String text = TEXT.replace("from: desk.link", "from: desk.lnk")
                .replace("kind: mixer", "kind: mixr")
                .replace("weight: 12 kg", "weight: 12");

        assertThat(Files.errors("hall.yaml", text))
                .containsExactly(
                        "hall.yaml:38:11  models.desk-48.kind: found \"mixr\", expected a kind; did you mean \"mixer\"?",
                        "hall.yaml:49:13  models.desk-48.weight: found \"12\", which has no unit, expected a weight in g, kg,"
                                + " t, oz, lb, such as 12 kg",
                        "hall.yaml:80:11  models.analog-16.kind: found \"mixr\", expected a kind; did you mean \"mixer\"?");
        assertThat(Files.errors("hall.yaml", TEXT.replace("from: desk.link", "from: desk.lnk")))
                .containsExactly(
                        "hall.yaml:161:37  cables.C001.from: found \"desk.lnk\", expected a port of desk-48; did you"
                                + " mean \"link\"?");
    }

    @Test
    void theLineOfAnEntityIsFound() {
        ReadResult.Loaded loaded = (ReadResult.Loaded) Files.read("example.yaml", TEXT);
        List<String> lines = TEXT.lines().toList();

        int cable = loaded.source().find("cables", "C002").orElseThrow().line();
        assertThat(lines.get(cable - 1)).startsWith("  C002:");
        int place = loaded.source().find("places", "bar-1").orElseThrow().line();
        assertThat(lines.get(place - 1)).startsWith("    bar-1:");
        assertThat(loaded.source().find("cables", "C999")).isEmpty();
    }
}
