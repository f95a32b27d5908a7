package housewright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.cable.Lead;
import housewright.model.SiteState;
import housewright.study.Study;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Expected values, worked out here by hand. */
class TestRecordTest {
    private static final Study DEMO = Halls.demo();

    private static Row row(String sheet, String key) {
        return Papers.find("test-record").orElseThrow().sheets(DEMO, Halls.OPTIONS).stream()
                .filter(each -> each.id().equals(sheet))
                .flatMap(each -> each.tables().stream())
                .flatMap(table -> table.rows().stream())
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static String text(Row row) {
        return String.join(" | ", row.cells().stream().map(Cell::text).toList());
    }

    /** Copper has 0.017241 ohm mm2/m at 20 degrees (IEC 60028): 2 x 28 m of 4 mm2 are 0.241 ohm. */
    @Test
    void aLoudspeakerCablesLoopIsReckonedFromCopper() {
        assertThat(2 * 28 * 0.017241 / 4).isBetween(0.24, 0.245);
        assertThat(text(row("test-cables", "C301"))).contains("about 0.24 ohm (28", "there and back");
    }

    @Test
    void eachKindOfCableIsTriedInItsWay() {
        assertThat(text(row("test-cables", "C201"))).contains("1 to 1, 2 to 2, 3 to 3");
        assertThat(text(row("test-cables", "M2"))).contains("Each of 4 ways");
        assertThat(text(row("test-cables", "C521"))).contains("1 to 8 straight", "link at 1 Gbit/s");
        assertThat(text(row("test-cables", "C601"))).contains("1080p50, no drop-out", "3G-SDI");
        assertThat(text(row("test-cables", "C901"))).contains("licensed electrician");
    }

    /** Glass has no pins, and a lead with two wires no cold; its test claims nothing of ends that nobody knows. */
    @Test
    void whatIsTriedGoesByTheEnds() {
        Study study = Halls.of("""
                housewright: 1
                project: {name: Ends, library: 1}
                equipment: {near: {model: switch-8-poe}, far: {model: switch-8-poe}}
                cables:
                  F1: {type: fibre-om3, from: near.uplink-1, to: far.uplink-1, life: new}
                  N1: {type: cat6, from: near.port-1, to: far.port-1, life: new}
                  J1: {type: instrument-cable, life: new}
                  A1: {life: new}
                """);
        Say say = Say.of(study.project());
        Map<String, CableTest> tests = study.cabling().leads().stream()
                .collect(Collectors.toMap(Lead::id, lead -> CableTest.of(study, lead, say)));
        assertThat(Objects.requireNonNull(tests.get("F1")).how()).contains("Never look into an end");
        assertThat(Objects.requireNonNull(tests.get("F1")).expect())
                .contains("link at 1 Gbit/s")
                .doesNotContain("1 to 8");
        assertThat(Objects.requireNonNull(tests.get("N1")).expect()).contains("1 to 8 straight");
        assertThat(Objects.requireNonNull(tests.get("J1")).expect())
                .contains("screen through")
                .doesNotContain("cold", "3 to 3");
        assertThat(tests.get("A1")).isEqualTo(new CableTest("Ask first what it carries.", ""));
    }

    @Test
    void aFeedSaysItsDelayAndANeverFeedNothing() {
        assertThat(text(row("test-feeds", "words-to-screen projector.picture")))
                .contains("house format 1080p50", "allowed 6 frames");
        double nanos = DEMO.findProof("words-to-screen")
                .orElseThrow()
                .pairs()
                .getFirst()
                .delayNanos();
        assertThat(text(row("test-feeds", "words-to-screen projector.picture")))
                .contains("delay " + Say.number(nanos / 1e6, 1) + " ms");
        assertThat(text(row("test-feeds", "click-stays-in sub.sound")))
                .contains("Nothing of it")
                .doesNotContain("delay");
    }

    @Test
    void snagsComeFromTheLogAndLinesForTheRest() {
        Paper snags = Papers.find("snag-list").orElseThrow();
        Study onSite = Halls.example("on-site");
        List<Row> held = snags.sheets(onSite, Halls.OPTIONS).getFirst().tables().getFirst().rows().stream()
                .filter(row -> row.key().startsWith("log-"))
                .toList();
        List<Row> demo =
                snags.sheets(DEMO, Halls.OPTIONS).getFirst().tables().getFirst().rows();
        assertThat(demo).noneMatch(row -> row.key().startsWith("log-")).hasSize(16);
        assertThat(held)
                .isNotEmpty()
                .extracting(Row::key)
                .containsExactlyElementsOf(onSite.project().log().values().stream()
                        .filter(entry -> entry.state() == SiteState.LATE || entry.state() == SiteState.BLOCKED)
                        .map(entry -> "log-" + entry.id())
                        .toList());
        assertThat(held).allMatch(row -> text(row).matches(".*(late|held up).*"));
    }
}
