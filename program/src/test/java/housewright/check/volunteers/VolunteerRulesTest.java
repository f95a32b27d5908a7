package housewright.check.volunteers;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.check.Rule;
import housewright.check.Small;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each rule about volunteers on a hall that breaks it in one place, and on the nearest one that does not. */
class VolunteerRulesTest {
    private static final Small EASY = new Small("""
            housewright: 1
            project: {name: Small, stage: live}
            models:
              amp:
                kind: amplifier
                ports: {mains: {in: mains, connector: C14}}
              pc:
                kind: computer
                ports: {mains: {in: mains, connector: C14}}
              sequencer:
                kind: power-distributor
                ports: {mains: {in: mains, connector: C14}, start: {in: contact, connector: terminals}, "out-{1..8}": {out: mains, connector: C13}}
              strip:
                kind: power-distributor
                ports: {mains: {in: mains, connector: C14}, "out-{1..20}": {out: mains, connector: C13}}
              pack:
                kind: radio-transmitter
                ports: {radio: {out: radio, connector: antenna}}
                battery: {type: AA, count: 2, runs: 8 h}
              panel:
                kind: control-panel
                points: ["button-{1..4}"]
            venue:
              rooms: {hall: {floor: 0.5 m}}
              places:
                rack: {room: hall, at: [1 m, 1 m, 1 m]}
                wall: {room: hall, at: [1 m, 1 m, 2.5 m], hang: {limit: 50 kg, stated-by: somebody}}
            equipment:
              strip: {model: strip, at: rack}
              seq: {model: sequencer, at: rack}
              amp: {model: amp, at: wall, powered-by: strip.out-1}
              pc: {model: pc, at: rack, powered-by: strip.out-2}
              pack: {model: pack, at: rack}
              panel: {model: panel, at: rack}
            lighting: {looks: {talk: {levels: {amp: 50 %}}, dark: {levels: {}}}}
            controls:
              talk: {press: panel.button-1, calls: talk}
              dark: {press: panel.button-2, calls: dark}
            events:
              sunday: {from: 2027-03-07 09:00, to: 2027-03-07 13:00}
              evening: {from: 2027-03-07 18:00, to: 2027-03-07 22:00}
            """);

    @Test
    void anEasyHallIsLeftAlone() {
        assertThat(VolunteerRules.all().stream()
                        .map(Rule::card)
                        .map(Rule.Card::id)
                        .flatMap(id -> EASY.lines(id).stream()))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"8, 0", "9, 1"})
    void twelveThingsAreEnough(int more, int found) {
        StringBuilder amps = new StringBuilder();
        for (int i = 1; i <= more; i++) {
            amps.append("  amp-")
                    .append(i)
                    .append(": {model: amp, at: rack, powered-by: strip.out-")
                    .append(i + 2)
                    .append("}\n");
        }
        Small many = EASY.but("  strip: {model: strip, at: rack}\n", "  strip: {model: strip, at: rack}\n" + amps);
        assertThat(many.findings("many-things-to-start")).hasSize(found);
        if (found == 1) {
            assertThat(many.lines("many-things-to-start").getFirst())
                    .endsWith(
                            "To start a service a volunteer touches 13 things in 2 places of 1 room, 11 power switches, 1"
                                    + " thing on batteries and 1 button for the light; to stop it 13; while it runs 0 desks want"
                                    + " hands and 2 buttons are there.");
            assertThat(many.findings("many-things-to-start")
                            .getFirst()
                            .fixes()
                            .getFirst()
                            .words())
                    .startsWith("One switched distributor or sequencer behind strip makes it 9 fewer");
        }
    }

    /** Above the floor, not above the building's zero. */
    @ParameterizedTest
    @CsvSource({"2.5 m, 0", "2.6 m, 1"})
    void aSwitchIsWithinReach(String height, int found) {
        assertThat(EASY.but("[1 m, 1 m, 2.5 m]", "[1 m, 1 m, " + height + "]").findings("switched-on-overhead"))
                .hasSize(found);
    }

    @Test
    void aComputerIsNotSwitchedWithAGroup() {
        assertThat(EASY.but("powered-by: strip.out-2", "powered-by: seq.out-2").lines("cut-while-running"))
                .containsExactly(
                        "fix [equipment pc, equipment seq] Whoever switches seq off cuts pc while it runs: files are"
                                + " lost, lamps are not cooled.");
        assertThat(EASY.but("powered-by: strip.out-1", "powered-by: seq.out-1").lines("cut-while-running"))
                .isEmpty();
        assertThat(EASY.but("powered-by: strip.out-2", "powered-by: ups.out-1")
                        .but("  seq: {", "  ups: {model: ups, at: rack, powered-by: seq.out-2}\n  seq: {")
                        .but(
                                "  amp:\n    kind: amplifier",
                                "  ups: {kind: ups, ports: {mains: {in: mains, connector: C14}, \"out-{1..4}\": {out: mains, connector: C13}}}\n  amp:\n    kind: amplifier")
                        .lines("cut-while-running"))
                .as("a UPS holds it until somebody has shut it down")
                .isEmpty();
    }

    @Test
    void oneButtonTakesTheLightAway() {
        Small light = EASY.but("  dark: {press: panel.button-2, calls: dark}\n", "");
        assertThat(light.lines("no-button-ends-it")).hasSize(1);
        Small fader = new Small(light.text().replace("button-", "playback-").replace("\"playback-", "\"playback-"));
        assertThat(fader.lines("no-button-ends-it")).isEmpty(); // what is pushed up is pulled down
    }

    @ParameterizedTest
    @CsvSource({"13:00, 22:00, 0", "13:01, 22:00, 1", "17:01, 22:00, 1"})
    void batteriesLastThroughTheDay(String one, String two, int found) {
        Small day = EASY.but("2027-03-07 13:00", "2027-03-07 " + one).but("2027-03-07 22:00", "2027-03-07 " + two);
        assertThat(day.findings("battery-too-short")).hasSize(found);
        assertThat(day.lines("battery-too-short"))
                .allMatch(line -> line.startsWith(one.equals("17:01") ? "fix" : "note"));
    }
}
