package housewright.operation;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.check.Small;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OperationTest {
    private static final String TYPES = """
            housewright: 1
            project: {name: Small, stage: live}
            models:
              amp:
                kind: amplifier
                ports: {mains: {in: mains, connector: C14}}
              pc:
                kind: computer
                ports: {mains: {in: mains, connector: C14}}
              strip:
                kind: power-distributor
                ports: {mains: {in: mains, connector: C14}, "out-{1..8}": {out: mains, connector: C13}}
              sequencer:
                kind: power-distributor
                ports: {mains: {in: mains, connector: C14}, start: {in: contact, connector: terminals}, "out-{1..8}": {out: mains, connector: C13}}
              screen:
                kind: display
                ports: {mains: {in: mains, connector: C14}, control: {in: contact, connector: terminals}}
              panel:
                kind: control-panel
                ports: {contact: {out: contact, connector: terminals}}
                points: [button-1]
                routes: [button-1 -> contact]
              pack:
                kind: radio-transmitter
                ports: {radio: {out: radio, connector: antenna}}
                battery: {type: AA, count: 2, runs: 8 h}
            """;

    private static List<String> start(String rest) {
        return new Small(TYPES + rest)
                .study().operation().start().stream()
                        .map(touch -> touch.how() + " " + touch.thing())
                        .toList();
    }

    @Test
    void aMasterIsTouchedForAllBehindItButForWhatMustBeShutDown() {
        assertThat(start("""
                equipment:
                  master: {model: sequencer}
                  strip: {model: strip, powered-by: master.out-1}
                  amp-1: {model: amp, powered-by: master.out-2}
                  amp-2: {model: amp, powered-by: strip.out-1}
                  amp-3: {model: amp}
                  pc: {model: pc, powered-by: strip.out-2}
                  pack: {model: pack}
                """)).containsExactly("SWITCH amp-3", "SWITCH pc", "BATTERY pack", "MASTER master");
    }

    @Test
    void whatIsReachedByAControlPathIsNotTouched() {
        String rest = """
                equipment:
                  screen: {model: screen}
                  panel: {model: panel}
                """;
        assertThat(start(rest)).containsExactly("SWITCH screen");
        assertThat(start(rest + "cables: {C1: {from: panel.contact, to: screen.control}}\n"))
                .isEmpty();
        assertThat(start(rest + "controls: {on: {press: panel.button-1, does: screen.control}}\n"))
                .isEmpty();
    }

    @Test
    void theLightIsOneButtonOrNoneWhereAClockCallsIt() {
        String rest = """
                equipment:
                  panel: {model: panel}
                lighting: {looks: {on: {levels: {}}, talk: {levels: {panel: 80 %}}}}
                controls:
                  one: {press: panel.button-1, calls: talk}
                """;
        assertThat(start(rest)).containsExactly("BUTTON panel");
        assertThat(start(rest + "  clock: {at: sunday, before: 30 min, calls: talk}\nevents: {sunday: {}}\n"))
                .isEmpty();
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    /** Random trees of strips and sequencers, each amplifier walked up by itself. */
    @ParameterizedTest
    @MethodSource("seeds")
    void agreesWithAWalkUpFromEachThing(long seed) {
        Random random = new Random(seed);
        int count = 3 + random.nextInt(12);
        int[] up = new int[count];
        boolean[] sequencer = new boolean[count];
        StringBuilder text = new StringBuilder("equipment:\n");
        for (int i = 0; i < count; i++) {
            up[i] = i == 0 || random.nextInt(4) == 0 ? -1 : random.nextInt(i);
            sequencer[i] = random.nextInt(3) == 0;
            text.append("  d%d: {model: %s%s}\n"
                    .formatted(
                            i,
                            sequencer[i] ? "sequencer" : "strip",
                            up[i] < 0 ? "" : ", powered-by: d" + up[i] + ".out-1"));
        }
        List<String> switches = new ArrayList<>();
        boolean[] touched = new boolean[count];
        for (int i = 0; i < count; i++) {
            int from = random.nextInt(count);
            text.append("  amp%d: {model: amp, powered-by: d%d.out-2}\n".formatted(i, from));
            boolean grouped = false;
            for (int at = from; at >= 0; at = up[at]) {
                grouped |= sequencer[at];
                touched[at] |= sequencer[at];
            }
            if (!grouped) {
                switches.add("SWITCH amp" + i);
            }
        }
        for (int i = 0; i < count; i++) {
            if (touched[i]) {
                switches.add("MASTER d" + i);
            }
        }
        assertThat(start(text.toString())).as(text.toString()).containsExactlyInAnyOrderElementsOf(switches);
    }
}
