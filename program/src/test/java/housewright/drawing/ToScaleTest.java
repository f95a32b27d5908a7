package housewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.finding.Subject;
import housewright.model.Place;
import housewright.model.Project;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.w3c.dom.Element;

class ToScaleTest {
    /** Numbers in a sheet are rounded to hundredths of a 96th of an inch. */
    private static final double ROUNDED = 0.011;

    private static final double MM = 96 / 25.4;

    static final List<String> HALLS = Halls.NAMES;

    @Test
    void aWallOfEightMetresMeasuresEightMetresOnPaperTimesTheScale() {
        Plan plan = Halls.tiny().floorPlan(State.TARGET);
        Element room = new Drawn(plan.sheet().svg()).about("room:hall").getFirst();
        List<Drawn.Point> corners = Drawn.corners(Drawn.within(room, "path").getFirst());
        double wall = corners.get(1).x() - corners.get(0).x();
        assertThat(scale(plan)).isEqualTo("1:20");
        assertThat(wall / MM).as("mm on paper").isCloseTo(8000 / 20.0, within(ROUNDED));
        assertThat(corners.get(1).y() - corners.get(2).y()).isCloseTo(5000 / 20.0 * MM, within(ROUNDED));
    }

    private static String scale(Plan plan) {
        List<Element> texts = Drawn.within(
                new Drawn(plan.sheet().svg()).ofClass("title-block").getFirst(), "text");
        for (int i = 0; i < texts.size(); i++) {
            if (texts.get(i).getTextContent().equals("Scale")) {
                return texts.get(i + 1).getTextContent();
            }
        }
        return "";
    }

    @ParameterizedTest
    @FieldSource("HALLS")
    void everyPlaceIsWhereTheMappingPutsItsMetresAndBack(String hall) {
        Project project = Halls.load(hall);
        Plan plan = Halls.drawings(project).floorPlan(State.TARGET);
        Drawn page = new Drawn(plan.sheet().svg());
        for (Place place : project.venue().places().values()) {
            if (place.at() == null) {
                assertThat(plan.missing()).contains(new Subject("place", place.id()));
                continue;
            }
            double x = place.at().x().metres();
            double y = place.at().y().metres();
            Element mark = page.about("place:" + place.id()).getFirst();
            Drawn.Point middle = middle(mark);
            assertThat(middle.x()).isCloseTo(plan.mapping().x(x), within(ROUNDED));
            assertThat(middle.y()).isCloseTo(plan.mapping().y(y), within(ROUNDED));
            assertThat(plan.mapping().across(plan.mapping().x(x))).isCloseTo(x, within(1e-9));
            assertThat(plan.mapping().up(plan.mapping().y(y))).isCloseTo(y, within(1e-9));
        }
    }

    /** Of a ring, a square or a cross. */
    private static Drawn.Point middle(Element place) {
        List<Element> rings = Drawn.within(place, "circle");
        if (!rings.isEmpty()) {
            return new Drawn.Point(Drawn.number(rings.getFirst(), "cx"), Drawn.number(rings.getFirst(), "cy"));
        }
        if (!Drawn.within(place, "rect").isEmpty()) {
            Drawn.Rect rect = Drawn.rect(place);
            return new Drawn.Point(rect.x() + rect.width() / 2, rect.y() + rect.height() / 2);
        }
        List<Drawn.Point> stroke = Drawn.corners(Drawn.within(place, "path").getFirst());
        return new Drawn.Point(
                (stroke.get(0).x() + stroke.get(1).x()) / 2,
                (stroke.get(0).y() + stroke.get(1).y()) / 2);
    }

    @Test
    void whatHasNoPositionIsListedAndNotGuessed() {
        Plan plan = Halls.tiny().floorPlan(State.TARGET);
        assertThat(plan.missing()).containsExactly(Subject.equipment("lost"), new Subject("place", "attic"));
        Drawn page = new Drawn(plan.sheet().svg());
        assertThat(page.about("place:attic")).isEmpty();
        assertThat(page.ofClass("notes").getFirst().getTextContent())
                .contains("Places without a position: attic.")
                .contains("Equipment without a place: lost.");
    }

    @Test
    void theSideViewHasHeightsAndTheEdgesOfWhatIsSeenAndHeard() {
        Plan plan = Halls.tiny().sideViews(State.TARGET).getFirst();
        Drawn page = new Drawn(plan.sheet().svg());
        Drawn.Point wall = middle(page.about("place:wall").getFirst());
        assertThat(plan.mapping().up(wall.y())).isCloseTo(2.4, within(0.001));
        Element speaker = page.about("equipment:speaker").getFirst();
        List<Drawn.Point> edges = Drawn.corners(Drawn.within(speaker, "path").getFirst());
        assertThat(plan.mapping().up(edges.get(0).y())).isCloseTo(2.1, within(0.001));
        assertThat(plan.mapping().up(edges.get(1).y())).isCloseTo(2.7, within(0.001));
        assertThat(page.about("place:wall").getFirst().getTextContent()).contains("limit 40 kg");
    }

    /** A rack unit is 44.45 mm: EIA-310 and IEC 60297-3-100. */
    @Test
    void aRackUnitIsFortyFourPointFourFiveMillimetres() {
        Sheet sheet = Halls.tiny().racks(State.TARGET).getFirst();
        Drawn page = new Drawn(sheet.svg());
        Drawn.Rect rack = Drawn.rect(page.about("place:rack").getFirst());
        Drawn.Rect spare = Drawn.rect(page.about("equipment:spare").getFirst());
        double scale = 5;
        assertThat(rack.height() / MM * scale).isCloseTo(6 * 44.45, within(0.02));
        assertThat(rack.width() / MM * scale).isCloseTo(482.6, within(0.02));
        assertThat(spare.height() / MM * scale).isCloseTo(2 * 44.45, within(0.02));
        double bottom = rack.y() + rack.height() - spare.y() - spare.height();
        assertThat(bottom / MM * scale).as("its lowest unit is 3").isCloseTo(2 * 44.45, within(0.02));
    }

    @Test
    void twoThingsInOneUnitAndWhatHasNoUnitAreSaidBesideTheRack() {
        String text = Halls.TINY.replace(
                "  lost:  {model: mic}\n",
                "  lost:  {model: mic}\n  clash: {model: mixer, at: rack, unit: 4}\n  high: {model: mixer, at: rack, unit: 6}\n"
                        + "  loose: {model: mixer, at: rack}\n");
        Drawings drawings = Halls.drawings(Halls.read(text));
        String beside = new Drawn(drawings.racks(State.TARGET).getFirst().svg())
                .ofClass("beside")
                .getFirst()
                .getTextContent();
        assertThat(beside)
                .contains("loose: unit not given")
                .contains("spare and clash: both in unit 4")
                .contains("high: reaches beyond the rack");
    }

    @Test
    void whatMovesIsSaidToMoveAtBothItsPlaces() {
        String text = Halls.TINY.replace(
                "  speaker: {model: speaker, at: wall}",
                "  speaker: {model: speaker, at: wall, life: move, was: {at: stage}}");
        Drawn page = new Drawn(
                Halls.drawings(Halls.read(text)).floorPlan(State.CHANGE).sheet().svg());
        assertThat(page.about("equipment:speaker"))
                .extracting(each -> each.getAttribute("aria-label"))
                .containsExactlyInAnyOrder(
                        "Equipment speaker, Loudspeaker (moves away)", "Equipment speaker, Loudspeaker (moves here)");
        assertThat(page.about("equipment:old-desk").getFirst().getAttribute("aria-label"))
                .isEqualTo("Equipment old-desk, Small desk (struck)");
    }

    @Test
    void underUsRulesLengthsAreInFeetAndTheScaleIsAnArchitectsOne() {
        Plan plan = Halls.drawings(Halls.load("/housewright/halls/us-sanctuary.yaml"))
                .floorPlan(State.TARGET);
        assertThat(scale(plan)).contains("= 1'-0\"");
        Element room = new Drawn(plan.sheet().svg()).about("room:sanctuary").getFirst();
        List<Drawn.Point> corners = Drawn.corners(Drawn.within(room, "path").getLast());
        double inches = (corners.get(1).x() - corners.get(0).x()) / 96;
        assertThat(inches).as("60 ft at a quarter inch to the foot").isCloseTo(15, within(0.001));
    }
}
