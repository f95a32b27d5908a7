package housewright.check.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.check.Rule;
import housewright.check.Small;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each rule about people in the room just under its limit and just over it. */
class PeopleRulesTest {
    /** Stage on the left, eight rows from x = 4 to x = 12 on a flat floor, the desk behind them. */
    private static final Small HALL = new Small("""
            housewright: 1
            project: {name: Small, stage: live}
            models:
              mic:
                kind: microphone
                ports: {out: {out: analog-audio, connector: XLR-3M, level: mic}}
                points: [pickup]
                routes: [pickup -> out]
              desk:
                kind: mixer
                ports: {in: {in: analog-audio, connector: XLR-3F, level: mic}}
              screen:
                kind: display
                height: 360 mm
                width: 560 mm
              cloth:
                kind: projection-screen
                height: 2 m
                width: 3.5 m
              beamer:
                kind: projector
              panel:
                kind: control-panel
              lamp:
                kind: fixture
                light: {modes: {1ch: 1}, beam: 20 deg}
              outlet:
                kind: power-distributor
                ports: {mains: {in: mains, connector: terminals}, out: {out: mains, connector: mains-socket}}
            venue:
              rooms:
                hall: {outline: [[0 m, 0 m], [20 m, 0 m], [20 m, 10 m], [0 m, 10 m]], floor: 0 m,
                       seats: {area: [[4 m, 1 m], [12 m, 1 m], [12 m, 9 m], [4 m, 9 m]], rows: 8, eye: 1.2 m}}
              places:
                lectern: {room: hall, at: [2 m, 5 m, 2.0 m]}
                desk: {room: hall, at: [14 m, 5 m, 1.0 m], operator: {stands: yes}}
                front: {room: hall, at: [0 m, 5 m, 3.2 m]}
                lens: {room: hall, at: [9 m, 5 m, 5.0 m]}
                door: {room: hall, at: [19 m, 1 m, 1.2 m]}
                bar: {room: hall, at: [6 m, 5 m, 5.0 m], hang: {limit: 100 kg, stated-by: somebody}}
            equipment:
              mic: {model: mic, at: lectern}
              desk: {model: desk, at: desk}
              cloth: {model: cloth, at: front}
              beamer: {model: beamer, at: lens}
              panel: {model: panel, at: door}
              lamp: {model: lamp, at: bar, secondary: fitted, light: {universe: 1, address: 1, mode: 1ch, aim: [2 m, 5 m, 2 m]}}
            lighting:
              targets:
                talk: {area: [[1.5 m, 4 m], [2.5 m, 4 m], [2.5 m, 6 m], [1.5 m, 6 m]], height: 2 m, facing: 0 deg}
            people:
              lead: {role: lead, skills: [general]}
            """);

    @Test
    void aSoundHallIsLeftAlone() {
        assertThat(PeopleRules.all().stream()
                        .map(Rule::card)
                        .map(Rule.Card::id)
                        .filter(id -> !id.equals("heads-hide-stage")) // the congregation on its feet, which is true
                        .flatMap(id -> HALL.lines(id).stream()))
                .isEmpty();
    }

    /** The line from a standing eye 1.501 m up to 2 m, 12 m away, is 1.530 m high at arm's length. */
    @ParameterizedTest
    @CsvSource({"1.52 m, 0", "1.54 m, 1"})
    void aScreenIsInTheWayWhereItsTopIsAboveTheLine(String top, int found) {
        assertThat(HALL.but("operator: {stands: yes}", "operator: {stands: yes, screen: " + top + "}")
                        .findings("screen-hides-stage"))
                .hasSize(found);
    }

    @Test
    void aScreenElsewhereIsInTheWayOnlyWhereTheLineRunsThroughIt() {
        Small more = HALL.but(
                "  mic: {model: mic, at: lectern}",
                "  view: {model: screen, at: stand}\n  mic: {model: mic, at: lectern}");
        String place = "    lens: {room";
        assertThat(more.but(place, "    stand: {room: hall, at: [13 m, 5.2 m, 1.3 m]}\n" + place)
                        .lines("screen-hides-stage"))
                .singleElement()
                .asString()
                .startsWith("fix [place desk, equipment desk, equipment view] From desk view hides talk and lectern");
        assertThat(more.but(place, "    stand: {room: hall, at: [13 m, 5.4 m, 1.3 m]}\n" + place)
                        .lines("screen-hides-stage"))
                .isEmpty();
    }

    /** Seated heads are 1.32 m high; the line from 1.10 m to 2.00 m over the last row, 2.5 m away, 1.29 m. */
    @Test
    void aSeatedOperatorDoesNotSeeOverTheSeats() {
        assertThat(HALL.but("operator: {stands: yes}", "operator: {}").lines("heads-hide-stage"))
                .containsExactly(
                        "fix [place desk, equipment desk] From desk seated heads hide talk and lectern: 2.50 m away"
                                + " they stand 32 mm above the line from a seated eye 1.10 m up.");
        assertThat(HALL.but("operator: {stands: yes}", "operator: {eye: 1.16 m}")
                        .lines("heads-hide-stage"))
                .singleElement()
                .asString()
                .startsWith("note [place desk, equipment desk] While the congregation stands");
        assertThat(HALL.but("operator: {stands: yes}", "operator: {eye: 1.16 m, floor: 1 m}")
                        .lines("heads-hide-stage"))
                .isEmpty();
    }

    /** From 1.132 m the heads 2.5 m away, 32 mm above the line from 1.10 m, are level with it; a head is not known closer. */
    @ParameterizedTest
    @CsvSource({"1.120 m, fix", "1.138 m, note"})
    void aHeadWithinACentimetreIsNotInTheWay(String eye, String worst) {
        assertThat(HALL.but("operator: {stands: yes}", "operator: {eye: " + eye + "}")
                        .lines("heads-hide-stage"))
                .singleElement()
                .asString()
                .startsWith(worst);
    }

    @Test
    void whereNobodySaidHowTheOperatorWorksItIsNoMoreThanAQuestion() {
        assertThat(HALL.but(", operator: {stands: yes}", "").lines("heads-hide-stage"))
                .singleElement()
                .asString()
                .startsWith("note [place desk")
                .endsWith("nobody has said whether the operator sits or stands.");
    }

    /** Rows 1 m apart: with faces 0.8 m above the eyes C is 0.8 T / (D + T), at the last row 0.8 / 9.5 = 84 mm less nothing. */
    @Test
    void aRowSeesByItsCValue() {
        Small tight = HALL.but(
                "project: {name: Small, stage: live}",
                "project: {name: Small, stage: live, rules: {set: metric-eu, tighten: {row-behind-row: 90 mm}}}");
        assertThat(tight.findings("row-behind-row")
                        .getFirst()
                        .evidence()
                        .getFirst()
                        .found())
                .isCloseTo(84.2, within(0.1));
        assertThat(HALL.but("height: 2 m, facing", "height: 1.7 m, facing").lines("row-behind-row"))
                .singleElement()
                .asString()
                .contains("row 8 sees talk only 53 mm above the eyes in front; 60 mm sees between heads");
    }

    /** 6 times for reading; 200 times the picture's height times the part of it (3.5 % of 1500 mm reaches 10 500 mm). */
    @Test
    void aPictureIsReadUpToSixTimesItsHeight() {
        assertThat(HALL.but("height: 2 m\n    width", "height: 1.9 m\n    width")
                        .lines("words-too-small"))
                .containsExactly(
                        "note [equipment cloth, room hall] The seat that is worst off sits 11.9 m from cloth, 6.3"
                                + " times the height of its picture; up to 6 is good for reading.");
        assertThat(100 * (10_500.0 / 1500) / 200).isCloseTo(3.5, within(1e-9));
        assertThat(HALL.but("height: 2 m\n    width", "height: 1.9 m\n    width")
                        .findings("words-too-small")
                        .getFirst()
                        .fixes()
                        .getFirst()
                        .words())
                .startsWith("Set words at least 3.1 % of the picture's height");
    }

    @ParameterizedTest
    @CsvSource({"5.0 m, 0", "1.2 m, 1"})
    void aLowProjectorHasPeopleInItsBeam(String lens, int found) {
        assertThat(HALL.but(
                                "lens: {room: hall, at: [9 m, 5 m, 5.0 m]",
                                "lens: {room: hall, at: [9 m, 5 m, " + lens + "]")
                        .findings("stands-in-projection"))
                .hasSize(found);
    }

    /** 4 m off: 25 degrees are 1.87 m up, 60 degrees 6.93 m. */
    @ParameterizedTest
    @CsvSource({"3.80 m, 1", "3.90 m, 0", "8.90 m, 0", "8.95 m, 1"})
    void lightInFrontComesFrom25To60Degrees(String bar, int found) {
        assertThat(HALL.but("bar: {room: hall, at: [6 m, 5 m, 5.0 m]", "bar: {room: hall, at: [6 m, 5 m, " + bar + "]")
                        .findings("light-angle-on-faces"))
                .hasSize(found);
    }

    @Test
    void aSteepLampDoesNotMatterBesideOneThatIsNot() {
        assertThat(HALL.but("bar: {room: hall, at: [6 m, 5 m, 5.0 m]", "bar: {room: hall, at: [6 m, 5 m, 8.95 m]")
                        .but(
                                "  mic: {model: mic, at: lectern}",
                                "  low: {model: lamp, at: more, secondary: fitted, light:"
                                        + " {universe: 1, address: 2, mode: 1ch, aim: [2 m, 5 m, 2 m]}}\n  mic: {model: mic, at: lectern}")
                        .but("    lens: {room", "    more: {room: hall, at: [6 m, 5 m, 5 m]}\n    lens: {room")
                        .findings("light-angle-on-faces"))
                .isEmpty();
    }

    @Test
    void aLampAimedAtTheSeatsIsInTheirEyes() {
        assertThat(HALL.but("aim: [2 m, 5 m, 2 m]", "aim: [11.5 m, 5 m, 1.2 m]").lines("light-in-seats"))
                .singleElement()
                .asString()
                .startsWith("note [equipment lamp, place bar] lamp at bar shines into the eyes of about");
        assertThat(HALL.but("aim: [2 m, 5 m, 2 m]", "aim: [6.5 m, 5 m, 1.2 m]").lines("light-in-seats"))
                .as("from above")
                .isEmpty();
    }

    /** Approved Document M, 4.30: not above 1200 mm. 2010 ADA Standards, 308.2.1: 15 in to 48 in. */
    @ParameterizedTest
    @CsvSource({
        "metric-eu, 1.2 m, 0",
        "metric-eu, 1.21 m, 1",
        "us, 48 in, 0",
        "us, 49 in, 1",
        "us, 15 in, 0",
        "us, 14 in, 1"
    })
    void aButtonIsWithinReach(String set, String height, int found) {
        assertThat(HALL.but("stage: live}", "stage: live, rules: {set: " + set + "}}")
                        .but(
                                "door: {room: hall, at: [19 m, 1 m, 1.2 m]",
                                "door: {room: hall, at: [19 m, 1 m, " + height + "]")
                        .findings("control-out-of-reach"))
                .hasSize(found);
    }

    /** EN 527-1, as a trade page quotes it: seated 650 to 850 mm, standing 950 to 1250 mm. */
    @ParameterizedTest
    @CsvSource({
        "yes, 0.95 m, 0",
        "yes, 0.94 m, 1",
        "yes, 1.25 m, 0",
        "yes, 1.26 m, 1",
        "no, 0.65 m, 0",
        "no, 0.64 m, 1",
        "no, 0.85 m, 0",
        "no, 0.86 m, 1"
    })
    void aWorkSurfaceSuitsWhoeverWorksAtIt(String stands, String height, int found) {
        assertThat(HALL.but(
                                "[14 m, 5 m, 1.0 m], operator: {stands: yes}",
                                "[14 m, 5 m, " + height + "], operator: {stands: " + stands + "}")
                        .findings("work-surface-height"))
                .hasSize(found);
    }

    /** NIOSH Publication 98-126, table on cdc.gov: 85 dBA for 8 h, 88 for 4 h, 91 for 2 h, 94 for 60 min, 97 for 30, 100 for 15. */
    @ParameterizedTest
    @CsvSource({"85, 480", "88, 240", "91, 120", "94, 60", "97, 30", "100, 15", "103, 7.5"})
    void theTimesAreThoseOfTheTable(double level, double minutes) {
        assertThat(HearingExposure.minutes(level)).isCloseTo(minutes, within(1e-9));
    }

    private static Small with(String section) {
        return new Small(HALL.text() + section);
    }

    /** By the same table 94 dBA for 30 min and 88 dBA for 2 h are 100 % together. */
    @Test
    void theDosesOfADayAddUp() {
        String day = """
                events:
                  band: {from: 2027-03-07 09:00, to: 2027-03-07 09:30, level: 94 dBA}
                  service: {from: 2027-03-07 10:00, to: 2027-03-07 12:00, level: 88 dBA}
                """;
        assertThat(with(day).lines("hearing-exposure")).isEmpty();
        assertThat(with(day.replace("12:00", "12:30")).lines("hearing-exposure"))
                .containsExactly(
                        "fix [event band, event service] Whoever is there on 2027-03-07 for band and service takes"
                                + " 113 % of a day's dose of sound; 100 % is the most.");
        assertThat(with(day.replace("2027-03-07 09", "2027-03-06 09").replace("12:00", "12:30"))
                        .lines("hearing-exposure"))
                .as("on two days")
                .isEmpty();
        assertThat(with(day.replace(", to: 2027-03-07 09:30", "")).lines("hearing-exposure"))
                .containsExactly("fix [event band] band is planned at 94 dBA, and nobody has said how long it lasts:"
                        + " whether that harms hangs on it.");
        assertThat(with(day.replace(", to: 2027-03-07 09:30", "").replace("94 dBA", "85 dBA"))
                        .lines("hearing-exposure"))
                .isEmpty();
        assertThat(with(day.replace("94 dBA", "101 dBA")).lines("hearing-exposure"))
                .containsExactly("stop [event band] band is planned at 101 dBA: above 100 dBA the"
                        + " hearing of all who listen is at risk within minutes.");
    }

    @Test
    void aLiftIsDrivenByWhoeverIsTrainedOrByNobody() {
        String lift = """
                hires:
                  lift: {kind: aerial-lift, offered: [2027-03-02, 2027-03-03], skill: lift-operator}
                tasks:
                  hang: {name: Hang the bar, who: [lead], needs: [lift]}
                """;
        assertThat(with(lift).lines("lift-without-operator"))
                .containsExactly(
                        "stop [hire lift] Nobody on the job is trained for lift (lift operator), so nobody may use"
                                + " it: \"Hang the bar\" waits.");
        Small trained = with(lift)
                .but(
                        "skills: [general]}",
                        "skills: [general]}\n  driver: {skills: [lift-operator], free: [{days: thu,"
                                + " from: \"08:00\", to: \"17:00\", between: [2027-03-01, 2027-03-05]}]}");
        assertThat(trained.lines("lift-without-operator")).isEmpty();
        assertThat(trained.lines("task-without-skill"))
                .containsExactly(
                        "stop [task hang, hire lift] hang needs lift, and lead is not trained for it (lift operator).");
        assertThat(trained.lines("lift-operator-not-free")).hasSize(1);
        Small free = trained.but("days: thu", "days: wed");
        assertThat(free.lines("lift-operator-not-free")).isEmpty();
        assertThat(free.but("who: [lead]", "who: [lead, driver]").lines("task-without-skill"))
                .isEmpty();
        assertThat(with(lift.replace(", skill: lift-operator", "")).lines("lift-without-operator"))
                .singleElement()
                .asString()
                .startsWith("stop [hire lift] Nobody has said what the operator of lift must be trained in");
    }

    @Test
    void workOverheadNeedsAWayUp() {
        Small hung = HALL.but("lamp: {model: lamp, at: bar,", "lamp: {model: lamp, at: bar, life: new,");
        assertThat(hung.lines("no-way-up")).hasSize(1);
        assertThat(new Small(hung.text() + "hires: {tower: {kind: access-tower, skill: general}}\n").lines("no-way-up"))
                .isEmpty();
        Small low = hung.but("[6 m, 5 m, 5.0 m]", "[6 m, 5 m, 3.2 m]");
        assertThat(hung.but("[6 m, 5 m, 5.0 m]", "[6 m, 5 m, 3.5 m]").lines("no-way-up"))
                .isEmpty();
        assertThat(low.lines("no-way-up")).isEmpty();
        assertThat(new Small(low.text() + "practice: {steps: 3 m}\n").lines("no-way-up"))
                .as("by a company that goes no higher on its steps")
                .hasSize(1);
        for (String no : List.of("{kind: ladder}", "{kind: stage-platform}")) {
            assertThat(new Small(hung.text() + "hires: {one: " + no + "}\n").lines("no-way-up"))
                    .as(no)
                    .hasSize(1);
        }
    }

    /** An address is set at the display up there, unless the type is known to take it over the cable. */
    @Test
    void anotherAddressOverheadNeedsAWayUpOrIsAskedFor() {
        Small set = HALL.but(
                "lamp: {model: lamp, at: bar,",
                "lamp: {model: lamp, at: bar, was: {light: {universe: 1, address: 301}},");
        assertThat(set.lines("no-way-up"))
                .containsExactly(
                        "fix [place bar] lamp gets another address 5.00 m above the floor, at bar; nobody has said"
                                + " that it can be set from the floor, and nothing is entered that gets anybody up there.");
        assertThat(set.but("beam: 20 deg", "beam: 20 deg, rdm: yes").lines("no-way-up"))
                .isEmpty();
        assertThat(set.but("beam: 20 deg", "beam: 20 deg, rdm: no").lines("no-way-up"))
                .hasSize(1);
        assertThat(new Small(set.text() + "hires: {lift: {kind: aerial-lift, skill: general}}\n").lines("no-way-up"))
                .isEmpty();
        assertThat(set.but("[6 m, 5 m, 5.0 m]", "[6 m, 5 m, 3.5 m]").lines("no-way-up"))
                .isEmpty();
        Small secured =
                HALL.but("lamp: {model: lamp, at: bar,", "lamp: {model: lamp, at: bar, was: {secondary: missing},");
        assertThat(secured.lines("no-way-up"))
                .singleElement()
                .asString()
                .startsWith("fix [place bar] 1 thing is to be hung, moved, secured or taken down 5.00 m");
    }

    @Test
    void wiringInIsForAnElectrician() {
        Small wired = HALL.but(
                "  mic: {model: mic, at: lectern}",
                "  outlet: {model: outlet, at: bar, life: new}\n  mic: {model: mic, at: lectern}");
        assertThat(wired.lines("mains-without-electrician")).hasSize(1);
        assertThat(wired.but("skills: [general]", "skills: [general, mains]").lines("mains-without-electrician"))
                .isEmpty();
        assertThat(wired.but("role: lead", "role: Electrician").lines("mains-without-electrician"))
                .isEmpty();
        assertThat(wired.but("outlet, at: bar, life: new", "outlet, at: bar").lines("mains-without-electrician"))
                .isEmpty();
        assertThat(wired.but("outlet, at: bar, life: new", "outlet, at: bar, was: {at: lectern}")
                        .lines("mains-without-electrician"))
                .as("kept, and elsewhere today")
                .hasSize(1);
        assertThat(HALL.but("{model: beamer, at: lens}", "{model: beamer, at: lens, was: {model: outlet}}")
                        .lines("mains-without-electrician"))
                .as("taken off its terminals, and a plug afterwards")
                .hasSize(1);
        assertThat(HALL.but("{model: beamer, at: lens}", "{model: beamer, at: lens, was: {model: desk}}")
                        .lines("mains-without-electrician"))
                .isEmpty();
    }

    @Test
    void aDeskInAnotherRoomWantsAPicture() {
        Small out = HALL.but("  places:", "    control: {}\n  places:")
                .but("desk: {room: hall, at: [14 m", "desk: {room: control, at: [14 m");
        assertThat(out.lines("desk-out-of-sight")).hasSize(1);
        Small screen = out.but(
                        "  mic: {model: mic, at: lectern}",
                        "  view: {model: eye-view, at: desk}\n  eye: {model: eye, at: lectern}\n  mic: {model: mic, at: lectern}")
                .but("  screen:\n", """
                          eye: {kind: camera, ports: {out: {out: sdi, connector: BNC}}, points: [lens], routes: ["lens -> out:v"]}
                          eye-view: {kind: display, ports: {in: {in: sdi, connector: BNC}}, points: [picture], routes: ["in:v -> picture"]}
                          screen:
                        """.indent(-2).indent(2));
        assertThat(screen.lines("desk-out-of-sight"))
                .hasSize(1); // a screen with no camera on it shows nothing of the hall
        assertThat(new Small(screen.text() + "cables: {V1: {from: eye.out, to: view.in}}\n").lines("desk-out-of-sight"))
                .isEmpty();
    }

    /** One that is not made for a rack wants somebody at it, wherever somebody has drawn it. */
    @Test
    void aDeskInTheRackOfAnotherRoomIsOutOfSight() {
        Small racked = HALL.but(
                        "  places:",
                        "    closet: {}\n  places:\n    rack: {room: closet, at: [1 m, 1 m, 0.2 m], rack: {units: 12}}")
                .but("desk: {model: desk, at: desk}", "desk: {model: desk, at: rack}");
        assertThat(racked.lines("desk-out-of-sight"))
                .singleElement()
                .asString()
                .startsWith("note [place rack, equipment desk] desk stands in closet and all microphones are in hall");
        assertThat(racked.but(
                                "kind: mixer",
                                "rack: 3 U\n                kind: mixer".replace("                ", "    "))
                        .lines("desk-out-of-sight"))
                .isEmpty();
        assertThat(racked.but("rack: {room: closet", "rack: {room: hall").lines("desk-out-of-sight"))
                .isEmpty();
    }
}
