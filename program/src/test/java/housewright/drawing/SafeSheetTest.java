package housewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Project;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.w3c.dom.Element;

/** What holds of every sheet that stands in a page. */
class SafeSheetTest {
    static final List<String> HALLS = Halls.NAMES;

    private static List<Sheet> sheets(Project project) {
        Drawings drawings = Halls.drawings(project);
        List<Sheet> sheets = new ArrayList<>();
        for (State state : State.values()) {
            for (Trade trade : Trade.values()) {
                sheets.addAll(drawings.signal(trade, state));
            }
            sheets.add(drawings.floorPlan(state).sheet());
            drawings.sideViews(state).forEach(plan -> sheets.add(plan.sheet()));
            sheets.addAll(drawings.racks(state));
        }
        project.feeds().keySet().forEach(feed -> sheets.add(drawings.feed(feed, State.TARGET)));
        return sheets;
    }

    @ParameterizedTest
    @FieldSource("HALLS")
    void aSheetHasNoStyleNoScriptNoSmallTextAndANameForEverythingDrawn(String hall) {
        Set<String> ids = new java.util.HashSet<>();
        for (Sheet sheet : sheets(Halls.load(hall))) {
            assertThat(ids.add(sheet.id()))
                    .as("one sheet is called " + sheet.id())
                    .isTrue();
            Drawn page = new Drawn(sheet.svg());
            assertThat(page.tagged("style")).isEmpty();
            assertThat(page.tagged("script")).isEmpty();
            for (Element each : page.all()) {
                assertThat(each.hasAttribute("style")).isFalse();
                assertThat(each.hasAttribute("id")).as("two sheets in one page").isFalse();
                if (each.getTagName().equals("text")) {
                    assertThat(Drawn.number(each, "font-size")).as("9 pt").isGreaterThanOrEqualTo(12);
                }
                if (each.hasAttribute("data-subject")) {
                    assertThat(each.getAttribute("aria-label")).isNotBlank();
                    assertThat(Drawn.within(each, "title").getFirst().getTextContent())
                            .isEqualTo(each.getAttribute("aria-label"));
                }
            }
        }
    }

    @Test
    void hostileNamesStayText() {
        String evil = "</text><script>alert(1)</script>\" onload='x' & ]]> <![CDATA[";
        String text = Halls.TINY
                .replace("name: Tiny hall", "name: \"" + evil.replace("\"", "\\\"") + "\"")
                .replace("name: Floor box", "name: \"" + evil.replace("\"", "\\\"") + "\"");
        Project project = Halls.read(text);
        List<Sheet> sheets = sheets(project);
        for (Sheet sheet : sheets) {
            Drawn page = new Drawn(sheet.svg());
            assertThat(page.tagged("script")).isEmpty();
            assertThat(page.all()).noneMatch(each -> each.hasAttribute("onload"));
        }
        Drawn page = new Drawn(Halls.drawings(project)
                .signal(Trade.SOUND, State.TARGET)
                .getFirst()
                .svg());
        assertThat(page.about("equipment:box").getFirst().getAttribute("aria-label"))
                .isEqualTo("Equipment box, " + evil);
    }

    /** XML 1.0, production 2: what a document may hold. */
    @Test
    void whatXmlCannotHoldBecomesTheReplacementCharacter() {
        assertThat(Svg.clean("a\u0000b\u001Bc\uD800d\uFFFFe\tf\ng😀")).isEqualTo("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe f g😀");
        String svg = new Svg()
                .open("svg", "aria-label", "\u0001\uDC00")
                .chars("\u0002")
                .close()
                .finish();
        assertThat(new Drawn(svg).tagged("svg").getFirst().getTextContent()).isEqualTo("\uFFFD");
    }

    @Test
    void anEmptyProjectGivesSheetsThatSayWhatBelongsThere() {
        Project empty = Halls.read("housewright: 1\nproject: {name: Empty}\n");
        Drawings drawings = Halls.drawings(empty);
        assertThat(drawings.trades(State.CHANGE)).isEmpty();
        for (Sheet sheet : sheets(empty)) {
            Element said = new Drawn(sheet.svg()).ofClass("empty").getFirst();
            assertThat(said.getTextContent()).contains("Here belong");
        }
        assertThat(drawings.sideViews(State.TARGET)).isEmpty();
    }

    @Test
    void theTitleBlockSaysProjectDrawingRevisionDateScaleAndSheet() {
        Drawn page = new Drawn(Halls.tiny().floorPlan(State.TODAY).sheet().svg());
        assertThat(Drawn.within(page.ofClass("title-block").getFirst(), "text"))
                .extracting(Element::getTextContent)
                .containsExactly(
                        "Project",
                        "Tiny hall",
                        "Drawing",
                        "Floor plan, today",
                        "Revision",
                        "7",
                        "Date",
                        "2027-01-11",
                        "Scale",
                        "1:20",
                        "Sheet, A2",
                        "1 of 1");
    }
}
