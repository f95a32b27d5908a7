package housewright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.study.Study;
import java.util.List;
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
        List<Row> planned = snags.sheets(Halls.planned(), Halls.OPTIONS)
                .getFirst()
                .tables()
                .getFirst()
                .rows();
        List<Row> demo =
                snags.sheets(DEMO, Halls.OPTIONS).getFirst().tables().getFirst().rows();
        assertThat(demo).noneMatch(row -> row.key().startsWith("log-")).hasSize(16);
        long held = Halls.planned().project().log().values().stream()
                .filter(entry -> entry.state() == housewright.model.SiteState.LATE
                        || entry.state() == housewright.model.SiteState.BLOCKED)
                .count();
        assertThat(planned.stream().filter(row -> row.key().startsWith("log-"))).hasSize((int) held);
    }
}
