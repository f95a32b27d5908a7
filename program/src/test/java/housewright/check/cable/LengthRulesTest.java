package housewright.check.cable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long a cable may be: each limit just kept and just passed, with where the figure is from. */
class LengthRulesTest {
    private static final String ENDS_OF_SDI = """
            cable-types:
              rg-6: {carries: [sdi], ends: [BNC, BNC], impedance: 75 ohm, attenuation: {a: 0.61, b: 0.0013}, per-metre: 1}
              rg-59: {carries: [sdi], ends: [BNC, BNC], impedance: 75 ohm, attenuation: {a: 0.78, b: 0.0014}, per-metre: 0.5}
            models:
              sender: {kind: camera, ports: {out: {out: sdi, connector: BNC, formats: [FORMATS]}}}
              screen: {kind: display, ports: {in: {in: sdi, connector: BNC, formats: [FORMATS]}}}
            equipment:
              camera: {model: sender}
              screen: {model: screen}
            cables:
              C1: {type: TYPE, from: camera.out, to: screen.in, length: LENGTH m, life: new, terminated: bought}
            """;

    private static String sdi(String formats, String type, double length) {
        return ENDS_OF_SDI.replace("FORMATS", formats).replace("TYPE", type).replace("LENGTH", Double.toString(length));
    }

    /** Reach of W-2: 20 dB at half the clock for HD and 3G, 40 dB for 6G and 12G, 30 dB for SD. */
    @ParameterizedTest
    @CsvSource({
        "576i50, rg-6, 413.1",
        "1080i50, rg-6, 113.7",
        "1080p50, rg-6, 78.6",
        "2160p25, rg-6, 107.8",
        "2160p50, rg-6, 73.1",
        "1080i50, rg-59, 89.7",
        "1080p50, rg-59, 62.2",
        "2160p25, rg-59, 85.7",
        "2160p50, rg-59, 58.5"
    })
    void reachOfSdi(String format, String type, double reach) {
        assertThat(Job.lines("cable-too-long-for-sdi", "picture: " + format, sdi(format, type, reach - 0.2)))
                .isEmpty();
        assertThat(Job.lines("cable-too-long-for-sdi", "picture: " + format, sdi(format, type, reach + 0.2)))
                .singleElement()
                .asString()
                .startsWith("fix ");
    }

    @Test
    void sdiSaysHowMuchTooLongForWhatAndHowLongItIs() {
        assertThat(Job.lines("cable-too-long-for-sdi", "picture: 2160p50", sdi("2160p50", "rg-59", 66)))
                .containsExactly(
                        "fix C1 is 8 m too long for 12G-SDI (2160p50, the house picture format) on rg-59: the loss"
                                + " at half the clock is 45.2 dB, 40 dB is the limit; 66 m as stated.");
    }

    @Test
    void sdiGoesByTheHousePictureThoughThePortsCouldDoMore() {
        String both = sdi("1080p50, 2160p50", "rg-6", 75);
        assertThat(Job.lines("cable-too-long-for-sdi", "picture: 1080p50", both))
                .isEmpty();
        assertThat(Job.lines("cable-too-long-for-sdi", "picture: 2160p50", both))
                .hasSize(1);
    }

    @Test
    void sdiOfAnUnknownHousePictureIsANoteWhereTheLeastFormatWouldDo() {
        assertThat(Job.lines("cable-too-long-for-sdi", sdi("1080p25, 1080p50", "rg-6", 90)))
                .singleElement()
                .asString()
                .startsWith("note C1 is 12 m too long for 3G-SDI (1080p50, the highest that both ends do)");
        assertThat(Job.lines("cable-too-long-for-sdi", sdi("1080p25, 1080p50", "rg-6", 115)))
                .singleElement()
                .asString()
                .startsWith("fix ");
    }

    @Test
    void aFormatThatIsNotTheHousesIsNamedForWhatItIs() {
        assertThat(Job.lines("cable-too-long-for-sdi", "picture: 1080p50", sdi("1080p59.94, 2160p60", "rg-6", 90)))
                .singleElement()
                .asString()
                .contains("(1080p59.94, the lowest that both ends do)");
        assertThat(Job.lines(
                        "cable-too-long-for-sdi", "picture: 1080p60", sdi("1080p25, 1080p50, 2160p50", "rg-6", 90)))
                .singleElement()
                .asString()
                .contains("(1080p50, the highest not above the house's that both ends do)");
    }

    @Test
    void sdiIsMendedByBetterCoax() {
        assertThat(Job.afterFix("cable-too-long-for-sdi", "picture: 1080p50", sdi("1080p50", "rg-59", 70)))
                .isEmpty();
    }

    @Test
    void sdiLimitCanBeTightened() {
        String tighter = "picture: 1080p50, rules: {tighten: {cable-too-long-for-sdi: 15 dB}}";
        assertThat(Job.lines("cable-too-long-for-sdi", tighter, sdi("1080p50", "rg-6", 58)))
                .isEmpty();
        assertThat(Job.lines("cable-too-long-for-sdi", tighter, sdi("1080p50", "rg-6", 60)))
                .hasSize(1);
    }

    @Test
    void sdiLossAddsUpOverAPanel() {
        String panel = sdi("1080p50", "rg-6", 50)
                .replace("models:\n", "models:\n  panel: {kind: panel, ties: [a = b]}\n")
                .replace("equipment:\n", "equipment:\n  panel: {model: panel}\n")
                .replace("to: screen.in", "to: panel.a")
                .concat("  C2: {type: rg-59, from: panel.b, to: screen.in, length: 30 m}\n");
        assertThat(Job.lines("cable-too-long-for-sdi", "picture: 1080p50", panel))
                .singleElement()
                .asString()
                .startsWith("fix C1 and C2 are ");
        assertThat(Job.lines("cable-too-long-for-sdi", "picture: 1080p50", panel.replace("30 m", "20 m")))
                .isEmpty();
    }

    private static String hdmi(String formats, String type, double length) {
        return """
                models:
                  player: {kind: computer, ports: {out: {out: hdmi, connector: HDMI-A, formats: [%s]}}}
                  screen: {kind: display, ports: {in: {in: hdmi, connector: HDMI-A, formats: [%s]}}}
                equipment:
                  player: {model: player}
                  screen: {model: screen}
                cables:
                  C1: {type: %s, from: player.out, to: screen.in, length: %s m, life: new, terminated: bought}
                """.formatted(formats, formats, type, length);
    }

    /** A maker's manual of extenders (CAB-21 to CAB-24): 15 m at 1080p60, 5 m at 2160p30, 3 m at 2160p60; certified 5 m. */
    @ParameterizedTest
    @CsvSource({
        "1080p60, hdmi, 15",
        "1080p50, hdmi, 15",
        "720p50, hdmi, 15",
        "1920x1200p60, hdmi, 10",
        "2160p30, hdmi, 5",
        "2160p25, hdmi, 5",
        "2160p60, hdmi, 3",
        "2160p60, hdmi-premium, 5",
        "1080p60, hdmi-premium, 15",
        "2160p60, hdmi-active, 50"
    })
    void reachOfHdmi(String format, String type, double reach) {
        assertThat(Job.lines("cable-too-long-for-hdmi", "picture: " + format, hdmi(format, type, reach)))
                .isEmpty();
        assertThat(Job.lines("cable-too-long-for-hdmi", "picture: " + format, hdmi(format, type, reach + 0.5)))
                .singleElement()
                .asString()
                .startsWith("fix ");
    }

    @Test
    void hdmiSaysWhat() {
        assertThat(Job.lines("cable-too-long-for-hdmi", "picture: 1080p50", hdmi("1080p50, 2160p60", "hdmi", 18)))
                .containsExactly("fix C1 is 3 m too long for HDMI (1080p50, the house picture format) on hdmi: 18 m as"
                        + " stated, 15 m is the limit.");
        assertThat(Job.lines("cable-too-long-for-hdmi", hdmi("1080p50, 2160p60", "hdmi", 10)))
                .singleElement()
                .asString()
                .startsWith("note ");
    }

    /** The house runs at 1080p50, and both ends would rather have 2160p60, which 3 m of copper carry (CAB-24). */
    @Test
    void whatBothEndsChooseByThemselvesIsTooMuchForTheRun() {
        String house = "picture: 1080p50";
        assertThat(Job.lines("cable-too-long-for-hdmi", house, hdmi("1080p50, 2160p60", "hdmi", 3)))
                .isEmpty();
        assertThat(Job.lines("cable-too-long-for-hdmi", house, hdmi("1080p50, 2160p60", "hdmi", 8)))
                .containsExactly("note C1 is good for 1080p50 and too long for 2160p60, which both its ends do: 8 m as"
                        + " stated, 3 m is the limit on hdmi. Left to themselves they choose the most that both do, and"
                        + " the picture drops out.");
        assertThat(Job.lines("cable-too-long-for-hdmi", house, hdmi("1080p50, 2160p60", "hdmi-active", 30)))
                .isEmpty();
        assertThat(Job.lines("cable-too-long-for-hdmi", house, hdmi("1080p50, 1080p60", "hdmi", 15)))
                .isEmpty();
    }

    @Test
    void aTightenedLimitHoldsAtEveryRate() {
        String hdmi = "rules: {tighten: {cable-too-long-for-hdmi: 2 m}}, picture: ";
        for (String format : List.of("1080p50", "1920x1200p60", "2160p30", "2160p60")) {
            assertThat(Job.lines("cable-too-long-for-hdmi", hdmi + format, hdmi(format, "hdmi", 2)))
                    .isEmpty();
            assertThat(Job.lines("cable-too-long-for-hdmi", hdmi + format, hdmi(format, "hdmi", 2.5)))
                    .hasSize(1);
        }
        String usb = "rules: {tighten: {cable-too-long-for-usb: 2 m}}";
        assertThat(Job.lines("cable-too-long-for-usb", usb, usb(", rate: 5 Gbit/s", "usb-3", 2)))
                .isEmpty();
        assertThat(Job.lines("cable-too-long-for-usb", usb, usb(", rate: 5 Gbit/s", "usb-3", 2.5)))
                .hasSize(1);
    }

    private static String usb(String rate, String type, double length) {
        return """
                models:
                  computer: {kind: computer, ports: {usb: {both: usb, connector: USB-A%s}}}
                  thing: {kind: other, ports: {usb: {both: usb, connector: USB-A%s}}}
                equipment:
                  computer: {model: computer}
                  thing: {model: thing}
                cables:
                  C1: {type: %s, from: computer.usb, to: thing.usb, length: %s m}
                """.formatted(rate, rate, type, length);
    }

    /** USB 2.0: 26 ns at 5.2 ns a metre is 5 m (CAB-30); 3 m at 5 and 1 m at 10 Gbit/s by makers' tables (CAB-32, 33). */
    @ParameterizedTest
    @CsvSource({
        "480 Mbit/s, usb-2, 5, fix",
        "480 Mbit/s, usb-3, 5, fix",
        "5 Gbit/s, usb-3, 3, fix",
        "10 Gbit/s, usb-3, 1, fix",
        "'', usb-2, 5, fix",
        "'', usb-3, 3, note",
        "'', usb-3-active, 30, fix"
    })
    void reachOfUsb(String rate, String type, double reach, String severity) {
        String written = rate.isEmpty() ? "" : ", rate: " + rate;
        assertThat(Job.lines("cable-too-long-for-usb", usb(written, type, reach)))
                .isEmpty();
        assertThat(Job.lines("cable-too-long-for-usb", usb(written, type, reach + 0.5)))
                .singleElement()
                .asString()
                .startsWith(severity + " C1 is 0.5 m too long for USB");
    }

    private static String network(double cord, double link, String link2) {
        return """
                models:
                  switch: {kind: switch, ports: {"port-{1..2}": {both: ethernet, connector: RJ45}}}
                  panel: {kind: panel, ports: {"front-{1..2}": {passive: yes, connector: RJ45}, "rear-{1..2}": {passive: yes, connector: RJ45}}, ties: ["front-{1..2} = rear-{1..2}"]}
                equipment:
                  one: {model: switch}
                  other: {model: switch}
                  near: {model: panel}
                  far: {model: panel}
                cables:
                  C1: {type: cat6, from: one.port-1, to: near.front-1, length: %s m}
                  C2: {type: %s, from: near.rear-1, to: far.rear-1, length: %s m}
                  C3: {type: cat6, from: far.front-1, to: other.port-1, length: 3 m}
                """.formatted(cord, link2, link);
    }

    /** ANSI/TIA-568.2-D, as quoted: 84 + 5 + 3 = 92 m pass; 92 + 3 m fail on the 90 m of the fixed part (worked example). */
    @Test
    void networkOverPanels() {
        assertThat(Job.lines("network-run-too-long", network(5, 84, "cat6"))).isEmpty();
        assertThat(Job.lines("network-run-too-long", network(7, 90, "cat6"))).isEmpty();
        assertThat(Job.lines("network-run-too-long", network(0.5, 92, "cat6")))
                .containsExactly(
                        "fix C1, C2 and C3 are 2 m too long in the fixed part, of which 90 m are allowed; in all"
                                + " 95.5 m as stated.");
        assertThat(Job.lines("network-run-too-long", network(7.5, 90, "cat6")))
                .containsExactly(
                        "fix C1, C2 and C3 are 0.5 m too long for a twisted-pair channel: 100.5 m as stated, 100 m"
                                + " is the limit.");
    }

    @Test
    void thinNetworkCableUsesUpTheChannelFaster() {
        assertThat(Job.lines("network-run-too-long", network(2, 66, "cat5e-touring")))
                .isEmpty();
        assertThat(Job.lines("network-run-too-long", network(2, 67, "cat5e-touring")))
                .singleElement()
                .asString()
                .contains("lose as much as 100.7 m of fixed cable");
    }

    private static String dmx(double second, String conductor) {
        return """
                cable-types:
                  own: {carries: [dmx], ends: [XLR-5F, XLR-5M], conductor: %s}
                models:
                  lamp: {kind: fixture, ports: {in: {in: dmx, connector: XLR-5M}, out: {out: dmx, connector: XLR-5F}}, points: [lamp], routes: ["in -> lamp, out"]}
                  split: {kind: dmx-splitter, ports: {in: {in: dmx, connector: XLR-5M}, out: {out: dmx, connector: XLR-5F}}, routes: [in -> out]}
                equipment:
                  node: {model: dmx-node-2}
                  split: {model: split}
                  a: {model: lamp}
                  b: {model: lamp}
                cables:
                  C0: {type: own, from: node.dmx-1, to: split.in, length: 200 m}
                  C1: {type: own, from: split.out, to: a.in, length: 150 m}
                  C2: {type: own, from: a.out, to: b.in, length: %s m}
                """.formatted(conductor, second);
    }

    /** USITT recommended practice, as quoted (DMX-12, DMX-13): 300 m on 24 AWG, 500 m on 22 AWG. A splitter begins anew. */
    @Test
    void dmxLineOverAllLamps() {
        assertThat(Job.lines("dmx-line-too-long", dmx(150, "24 AWG"))).isEmpty();
        assertThat(Job.lines("dmx-line-too-long", dmx(151, "24 AWG")))
                .containsExactly(
                        "fix The DMX line from split, out is 1 m too long: 301 m as stated over 2 cables; 300 m"
                                + " is the limit.");
        assertThat(Job.lines("dmx-line-too-long", dmx(350, "22 AWG"))).isEmpty();
        assertThat(Job.lines("dmx-line-too-long", dmx(351, "22 AWG"))).hasSize(1);
    }

    private static String aes(String type, double length) {
        return """
                models:
                  a: {kind: processor, ports: {out: {out: aes3, connector: BNC, channels: 2}}}
                  b: {kind: processor, ports: {in: {in: aes3, connector: BNC, channels: 2}}}
                equipment:
                  a: {model: a}
                  b: {model: b}
                cables:
                  C1: {type: %s, from: a.out, to: b.in, length: %s m}
                """.formatted(type, length);
    }

    /** AES3 and AES-3id guidance, from memory (CAB-34, CAB-36): 100 m of pair, 300 m of coax without care. */
    @ParameterizedTest
    @CsvSource({"aes-cable, 100", "multicore-8, 100", "coax-75-rg59, 300"})
    void aes3(String type, double reach) {
        assertThat(Job.lines("cable-too-long-for-aes3", aes(type, reach))).isEmpty();
        assertThat(Job.lines("cable-too-long-for-aes3", aes(type, reach + 1)))
                .singleElement()
                .asString()
                .startsWith("fix C1 is 1 m too long for AES3");
    }

    private static String analogue(String port, String type, double length) {
        return """
                cable-types:
                  cable-100: {carries: [analog-audio], capacitance: 100 pF/m}
                models:
                  source: {kind: processor, ports: {out: {out: analog-audio, connector: XLR-3M, %s}}}
                  desk: {kind: mixer, ports: {in: {in: analog-audio, connector: XLR-3F}}}
                equipment:
                  source: {model: source}
                  desk: {model: desk}
                cables:
                  C1: {type: %s, from: source.out, to: desk.in, length: %s m}
                """.formatted(port, type, length);
    }

    /** W-1: 600 ohm on 200 m of 100 pF/m is 3 dB down at 13.26 kHz; 150 ohm on 100 m passes. 20 kHz is 132.6 m at 600 ohm. */
    @Test
    void capacitanceOfLines() {
        assertThat(Job.lines("line-loses-treble", analogue("level: line, impedance: 600 ohm", "cable-100", 200)))
                .containsExactly(
                        "fix C1 loses treble: 200 m as stated of cable-100 on what source, out gives through 600"
                                + " ohm are 3 dB down at 13.3 kHz already; 20 kHz is the limit.");
        assertThat(Job.lines("line-loses-treble", analogue("level: mic, impedance: 150 ohm", "cable-100", 100)))
                .isEmpty();
        assertThat(Job.lines("line-loses-treble", analogue("level: line, impedance: 600 ohm", "cable-100", 132.5)))
                .isEmpty();
        assertThat(Job.lines("line-loses-treble", analogue("level: line, impedance: 600 ohm", "cable-100", 132.7)))
                .hasSize(1);
        assertThat(Job.lines("line-loses-treble", analogue("level: instrument, impedance: 10 kohm", "cable-100", 10)))
                .singleElement()
                .asString()
                .startsWith("note ");
        assertThat(Job.lines("line-loses-treble", analogue("level: line", "cable-100", 900)))
                .isEmpty();
    }

    /** Handbook practice, from memory: unbalanced 10 m (CAB-40), microphones 150 m with care, balanced line 300 m (CAB-39). */
    @ParameterizedTest
    @CsvSource({
        "'level: consumer', rca-pair, 10",
        "'level: mic', mic-cable, 150",
        "'level: line, balanced: yes', mic-cable, 300",
        "'level: line, balanced: no', instrument-cable, 10"
    })
    void otherCableByItsType(String port, String type, double reach) {
        assertThat(Job.lines("cable-too-long", analogue(port, type, reach))).isEmpty();
        assertThat(Job.lines("cable-too-long", analogue(port, type, reach + 1)))
                .singleElement()
                .asString()
                .startsWith("fix C1 is 1 m too long for " + type);
    }

    @Test
    void hdbasetByItsType() {
        String run = """
                models:
                  a: {kind: converter, ports: {out: {out: hdbaset, connector: RJ45}}}
                  b: {kind: converter, ports: {in: {in: hdbaset, connector: RJ45}}}
                equipment:
                  a: {model: a}
                  b: {model: b}
                cables:
                  C1: {type: cat6a-screened, from: a.out, to: b.in, length: 101 m}
                """;
        assertThat(Job.lines("cable-too-long", run))
                .containsExactly("fix C1 is 1 m too long for cat6a-screened, which reaches 100 m with hdbaset: 101 m as"
                        + " stated.");
        assertThat(Job.lines("cable-too-long", run.replace("101 m", "100 m"))).isEmpty();
    }

    private static String loudspeaker(String conductor, double length, double ohms) {
        return """
                cable-types:
                  cord: {carries: [speaker], ends: [speaker-4, speaker-4], conductor: %s, per-metre: 1}
                  thick: {carries: [speaker], ends: [speaker-4, speaker-4], conductor: 10 mm2, per-metre: 2}
                models:
                  amp: {kind: amplifier, ports: {out: {out: speaker, connector: speaker-4}}}
                  box: {kind: loudspeaker, ports: {in: {in: speaker, connector: speaker-4, impedance: %s ohm}, link: {out: speaker, connector: speaker-4}}, points: [sound], routes: ["in -> sound, link"]}
                equipment:
                  amp: {model: amp}
                  one: {model: box}
                  two: {model: box}
                cables:
                  C1: {type: cord, from: amp.out, to: one.in, length: %s m, life: new, terminated: site}
                """.formatted(conductor, ohms, length);
    }

    /** W-8, 20 log: at 8 ohm 45.5 m of 12 AWG, 28.6 m of 14 AWG, 18.0 m of 16 AWG lose 0.5 dB; at 4 ohm half of that. */
    @ParameterizedTest
    @CsvSource({"12 AWG, 45.5, 8", "14 AWG, 28.6, 8", "16 AWG, 18.0, 8", "12 AWG, 22.7, 4", "14 AWG, 14.3, 4"})
    void loudspeakerCable(String conductor, double metres, double ohms) {
        assertThat(Job.lines("speaker-cable-loses-level", loudspeaker(conductor, metres - 0.2, ohms)))
                .isEmpty();
        assertThat(Job.lines("speaker-cable-loses-level", loudspeaker(conductor, metres + 0.2, ohms)))
                .hasSize(1);
    }

    @Test
    void loudspeakerCableCountsWhatHangsOnTheNext() {
        String one = loudspeaker("12 AWG", 30, 8);
        assertThat(Job.lines("speaker-cable-loses-level", one)).isEmpty();
        String two = one + "  C2: {type: cord, from: one.link, to: two.in, length: 1 m}\n";
        assertThat(Job.lines("speaker-cable-loses-level", two))
                .singleElement()
                .asString()
                .startsWith("fix C1 is too thin for its length: two, in gets 0.66 dB less");
        assertThat(Job.afterFix("speaker-cable-loses-level", "", two)).isEmpty();
    }

    /** W-11: 100 V, 200 W (50 ohm), 100 m of 1.5 mm2 lose 4.4 % of the power; 10 % by the sizing formula of W-10. */
    @Test
    void lineOfHundredVolts() {
        String line =
                loudspeaker("1.5 mm2", 100, 100) + "  C2: {type: cord, from: one.link, to: two.in, length: 0.01 m}\n";
        assertThat(Job.lines("speaker-cable-loses-level", line)).isEmpty();
        assertThat(Job.lines("speaker-cable-loses-level", line.replace("length: 100.0 m", "length: 240 m")))
                .isEmpty();
        assertThat(Job.lines("speaker-cable-loses-level", line.replace("length: 100.0 m", "length: 243 m")))
                .singleElement()
                .asString()
                .contains("10 % of its power less, 10 % is the limit");
    }

    @Test
    void loudspeakerOfUnknownImpedanceIsNotJudged() {
        assertThat(Job.lines(
                        "speaker-cable-loses-level",
                        loudspeaker("18 AWG", 100, 8).replace(", impedance: 8.0 ohm", "")))
                .isEmpty();
    }
}
