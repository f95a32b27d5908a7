package housewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Project;
import housewright.signal.Moment;
import housewright.study.Study;
import housewright.testing.Golden;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.w3c.dom.Element;

class SignalSheetTest {
    private static final Path GOLDEN = Path.of("src/test/resources/housewright/drawing");
    private static final double HALF_A_HUNDREDTH = 0.011; // numbers in a sheet are rounded to hundredths

    static final List<String> HALLS = Halls.NAMES;

    @Test
    void theTinyHallLooksAsItDid() {
        Sheet sheet = Halls.tiny().signal(Trade.SOUND, State.CHANGE).getFirst();
        Golden.hold(GOLDEN.resolve("tiny-sound-change.svg"), sheet.svg().replace("><", ">\n<") + "\n");
    }

    @Test
    void theSameProjectGivesTheSameBytes() {
        for (State state : State.values()) {
            assertThat(Halls.tiny().signal(Trade.SOUND, state))
                    .isEqualTo(Halls.tiny().signal(Trade.SOUND, state));
        }
        Project demo = Halls.load(Halls.NAMES.getFirst());
        assertThat(Halls.drawings(demo).signal(Trade.SOUND, State.TARGET))
                .isEqualTo(Halls.drawings(demo).signal(Trade.SOUND, State.TARGET));
    }

    /** Every cable is on the sheets of its systems: once on each that has one of its ends, and it ends at its sockets. */
    @ParameterizedTest
    @FieldSource("HALLS")
    void everyCableIsDrawnOnceOnASheetAndEndsAtTheEdgesOfItsPorts(String hall) {
        Project project = Halls.load(hall);
        Drawings drawings = Halls.drawings(project);
        for (State state : List.of(State.TODAY, State.TARGET)) {
            Study study = Study.of(project, Halls.LIBRARY).at(state == State.TODAY ? Moment.today() : Moment.target());
            Map<String, Lead> there = new HashMap<>();
            for (Lead lead : study.cabling().leads()) {
                if (lead.joints().stream().anyMatch(SignalSheetTest::holds)) {
                    there.put(lead.id(), lead);
                }
            }
            TreeSet<String> drawn = new TreeSet<>();
            for (Trade trade : drawings.trades(state)) {
                for (Sheet sheet : drawings.signal(trade, state)) {
                    Drawn page = new Drawn(sheet.svg());
                    for (Element cable : page.ofClass("cable")) {
                        String id = cable.getAttribute("data-subject").substring("cable:".length());
                        drawn.add(id);
                        Lead lead = there.get(id);
                        assertThat(lead).as(id + " is there " + state).isNotNull();
                        assertThat(page.about("cable:" + id))
                                .as(id + " on " + sheet.id())
                                .hasSize(pairs(lead));
                        ends(page, sheet, cable, lead);
                    }
                }
            }
            assertThat(drawn).isEqualTo(new TreeSet<>(there.keySet()));
        }
    }

    private static boolean holds(Joint joint) {
        return joint.plugs().stream().allMatch(plug -> plug.equipment() != null);
    }

    /** Pairs of equipment that a cable joins: one, but for a multicore that fans out. */
    private static int pairs(Lead lead) {
        TreeSet<String> pairs = new TreeSet<>();
        lead.joints().stream()
                .filter(SignalSheetTest::holds)
                .forEach(joint -> pairs.add(thing(joint.from()) + " " + thing(joint.to())));
        return pairs.size();
    }

    private static String thing(@Nullable Plug plug) {
        return plug == null ? "" : plug.at().thing();
    }

    private static void ends(Drawn page, Sheet sheet, Element cable, Lead lead) {
        List<Drawn.Point> corners = Drawn.corners(Drawn.within(cable, "path").getFirst());
        List<String> sockets = new ArrayList<>();
        for (Joint joint : lead.joints()) {
            joint.plugs().forEach(plug -> sockets.add(plug.socket()));
        }
        for (Drawn.Point end : List.of(corners.getFirst(), corners.getLast())) {
            assertThat(sockets.stream().anyMatch(socket -> isAt(page, socket, end)) || isLoose(page, lead, end))
                    .as("%s on %s ends at %s, at none of %s", lead.id(), sheet.id(), end, sockets)
                    .isTrue();
        }
        for (int i = 1; i < corners.size(); i++) {
            Drawn.Point from = corners.get(i - 1);
            Drawn.Point to = corners.get(i);
            assertThat(Math.min(Math.abs(from.x() - to.x()), Math.abs(from.y() - to.y())))
                    .as("%s runs at right angles", lead.id())
                    .isLessThanOrEqualTo(HALF_A_HUNDREDTH);
        }
    }

    /** A point on the left or right edge of the box, level with a text in it that names the socket. */
    private static boolean isAt(Drawn page, String socket, Drawn.Point end) {
        String thing = socket.substring(0, socket.indexOf('.'));
        String port = socket.substring(socket.indexOf('.') + 1);
        List<Element> boxes = new ArrayList<>(page.about("equipment:" + thing));
        page.ofClass("elsewhere").stream()
                .filter(box ->
                        Drawn.within(box, "text").getFirst().getTextContent().equals(thing))
                .forEach(boxes::add);
        for (Element box : boxes) {
            Drawn.Rect rect = Drawn.rect(box);
            boolean onEdge = Math.abs(end.x() - rect.x()) <= HALF_A_HUNDREDTH
                    || Math.abs(end.x() - rect.x() - rect.width()) <= HALF_A_HUNDREDTH;
            boolean named = Drawn.within(box, "text").stream()
                    .anyMatch(text -> Math.abs(Drawn.number(text, "y") - 4 - end.y()) <= HALF_A_HUNDREDTH
                            && names(text.getTextContent(), port));
            if (onEdge && named) {
                return true;
            }
        }
        return false;
    }

    /** The name itself, or one of several that are gathered: in-1…4 names in-3. */
    private static boolean names(String text, String port) {
        if (text.equals(port)) {
            return true;
        }
        String stem = port.replaceAll("[0-9]+$", "");
        return (text.contains("…") || text.contains(",")) && text.contains(stem);
    }

    private static boolean isLoose(Drawn page, Lead lead, Drawn.Point end) {
        return lead.joints().stream().anyMatch(joint -> joint.plugs().size() < 2)
                && page.ofClass("loose").stream()
                        .anyMatch(box ->
                                Math.abs(Drawn.corners(Drawn.within(box, "path").getFirst())
                                                        .getFirst()
                                                        .x()
                                                - end.x())
                                        <= 200);
    }

    @Test
    void aCableWrittenAgainstItsSignalIsDrawnWithItAndItsLooseEndIsShown() {
        Drawn page = new Drawn(
                Halls.tiny().signal(Trade.SOUND, State.TARGET).getFirst().svg());
        assertThat(page.about("cable:C2").getFirst().getAttribute("aria-label"))
                .isEqualTo("Cable C2 mic-cable, from mic-2 out to box front-2");
        assertThat(page.ofClass("loose")).hasSize(1);
    }

    @Test
    void alikeNeighbouringChannelsOfAMulticoreAreGathered() {
        Drawn page = new Drawn(
                Halls.tiny().signal(Trade.SOUND, State.TARGET).getFirst().svg());
        assertThat(Drawn.within(page.about("equipment:box").getFirst(), "text"))
                .extracting(Element::getTextContent)
                .containsExactly("box", "Floor box", "front-1", "front-2", "rear-1…4");
    }

    @Test
    void whatChangesIsThinWhereItStaysNormalWhereItComesAndDashedWhereItGoes() {
        Drawn page = new Drawn(
                Halls.tiny().signal(Trade.SOUND, State.CHANGE).getFirst().svg());
        assertThat(line(page, "cable:C1").getAttribute("stroke-width")).isEqualTo("0.5");
        assertThat(line(page, "cable:C3").getAttribute("stroke-width")).isEqualTo("1");
        assertThat(page.about("cable:M1"))
                .extracting(each -> each.getAttribute("class"))
                .containsExactlyInAnyOrder("cable comes", "cable goes");
        assertThat(page.about("equipment:old-desk").getFirst().getAttribute("stroke-dasharray"))
                .isEqualTo("8 5");
    }

    private static Element line(Drawn page, String subject) {
        return Drawn.within(page.about(subject).getFirst(), "path").getFirst();
    }

    @Test
    void aChosenFeedIsLitEndToEndAndTheRestStandsBack() {
        Drawn page = new Drawn(Halls.tiny()
                .signal(Trade.SOUND, State.TARGET, "speech")
                .getFirst()
                .svg());
        for (String lit : List.of("cable:C1", "cable:M1", "cable:C3")) {
            assertThat(page.about(lit).getFirst().getAttribute("class")).endsWith(" lit");
            assertThat(line(page, lit).getAttribute("stroke-width")).isEqualTo("2");
        }
        assertThat(line(page, "cable:C2").getAttribute("stroke-width")).isEqualTo("0.5");
        assertThatThrownBy(() -> Halls.tiny().signal(Trade.SOUND, State.TARGET, "none"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("none");
    }

    @Test
    void aProvenFeedShowsItsStepsInOrder() {
        Sheet sheet = Halls.tiny().feed("speech", State.TARGET);
        Drawn page = new Drawn(sheet.svg());
        assertThat(sheet.title()).isEqualTo("Feed speech, target: proven");
        assertThat(page.ofClass("gap")).isEmpty();
        assertThat(Drawn.within(page.ofClass("steps").getFirst(), "text"))
                .extracting(Element::getTextContent)
                .startsWith("Steps in order", "1 mic 1, pickup → out")
                .anyMatch(text -> text.startsWith("2 C1"));
    }

    @Test
    void aBrokenFeedHasAGapWhereItStopsAndTheReasonInWords() {
        Sheet sheet = Halls.tiny().feed("second", State.TARGET);
        Drawn page = new Drawn(sheet.svg());
        assertThat(sheet.title()).isEqualTo("Feed second, target: does not arrive");
        List<Element> gaps = page.ofClass("gap");
        assertThat(gaps).hasSize(2);
        List<Element> pieces = Drawn.within(gaps.getFirst(), "path");
        assertThat(pieces).hasSize(2);
        assertThat(Drawn.corners(pieces.getLast()).getFirst().x())
                .isGreaterThan(Drawn.corners(pieces.getFirst()).getLast().x() + 5);
        String why = String.join(
                " ",
                Drawn.within(page.ofClass("stop").getFirst(), "text").stream()
                        .map(Element::getTextContent)
                        .toList());
        assertThat(why).startsWith("Stops here nothing in desk is patched");
    }

    @ParameterizedTest
    @FieldSource("HALLS")
    void everyFeedOfEveryHallCanBeDrawnInEveryState(String hall) {
        Project project = Halls.load(hall);
        Drawings drawings = Halls.drawings(project);
        for (String feed : project.feeds().keySet()) {
            for (State state : State.values()) {
                Sheet sheet = drawings.feed(feed, state);
                assertThat(new Drawn(sheet.svg()).tagged("svg")).hasSize(1);
            }
        }
    }
}
