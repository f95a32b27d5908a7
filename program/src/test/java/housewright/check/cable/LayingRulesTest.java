package housewright.check.cable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How cable is laid: each rule on a job that is sound and on one that is not, each figure just kept and just passed. */
class LayingRulesTest {
    private static final String US = "rules: {set: us}";

    /** Two things at the two ends of one pathway, and cables between them as given. */
    private static String along(String pathway, String types, String cables) {
        return """
                venue:
                  places:
                    here: {at: [0 m, 0 m, 0 m]}
                    there: {at: [20 m, 0 m, 0 m]}
                  pathways:
                    p: {from: here, to: there, length: 20 m%s}
                %s
                models:
                  box:
                    kind: other
                    ports:
                      "mic-{1..9}": {out: analog-audio, connector: XLR-3M, level: mic}
                      "line-{1..9}": {out: analog-audio, connector: XLR-3M, level: line}
                      "in-{1..9}": {in: analog-audio, connector: XLR-3F}
                      "net-{1..9}": {both: ethernet, connector: RJ45}
                      "sdi-{1..9}": {out: sdi, connector: BNC}
                      "sdi-in-{1..9}": {in: sdi, connector: BNC}
                      "amp-{1..9}": {out: speaker, connector: speaker-4}
                      "speaker-{1..9}": {in: speaker, connector: speaker-4}
                      "mains-{1..9}": {in: mains, connector: C14}
                      "mains-out-{1..9}": {out: mains, connector: C13}
                equipment:
                  one: {model: box, at: here}
                  two: {model: box, at: there}
                cables:
                %s
                """.formatted(
                        pathway.isEmpty() ? "" : ", " + pathway,
                        types.isEmpty() ? "" : "cable-types:\n" + types.indent(2),
                        cables.indent(2));
    }

    private static String mic(int n) {
        return "A" + n + ": {type: own, from: one.mic-" + n + ", to: two.in-" + n + ", via: [p], life: new}\n";
    }

    private static String net(int n) {
        return "N" + n + ": {type: own, from: one.net-" + n + ", to: two.net-" + n
                + ", via: [p], life: new, terminated: bought}\n";
    }

    /** A type whose diameter fills a bore of 100 mm to so many percent, all cables together. */
    private static String filling(double percent, int cables) {
        double diameter = 100 * Math.sqrt(percent / 100 / cables);
        return String.format(
                Locale.ROOT, "own: {carries: [ethernet], ends: [RJ45, RJ45], diameter: %.6f mm}", diameter);
    }

    /** NEC chapter 9 table 1, as quoted: 53, 31, 40 %; UK space factor 45 % (IET On-Site Guide, as read). */
    @ParameterizedTest
    @CsvSource({
        "us, 1, 53",
        "us, 2, 31",
        "us, 3, 40",
        "us, 6, 40",
        "metric-eu, 1, 45",
        "metric-eu, 2, 45",
        "metric-eu, 6, 45"
    })
    void conduitFill(String set, int cables, double limit) {
        StringBuilder all = new StringBuilder();
        for (int n = 1; n <= cables; n++) {
            all.append(net(n));
        }
        String about = "rules: {set: " + set + "}";
        String bore = "kind: conduit, bore: 100 mm";
        assertThat(Job.lines("conduit-overfull", about, along(bore, filling(limit - 0.1, cables), all.toString())))
                .isEmpty();
        assertThat(Job.lines("conduit-overfull", about, along(bore, filling(limit + 0.1, cables), all.toString())))
                .singleElement()
                .asString()
                .startsWith("fix p is too full: ");
    }

    /** NEC chapter 9, note 4 to table 1, as quoted on public pages: up to 24 in between boxes 60 %. */
    @ParameterizedTest
    @CsvSource({
        "24 in, conduit, us, 0",
        "25 in, conduit, us, 1",
        "24 in, trunking, us, 1",
        "600 mm, conduit, metric-eu, 1"
    })
    void aShortPieceBetweenBoxesMayBeFuller(String length, String kind, String set, int found) {
        String bore = "kind: " + kind + ", bore: 100 mm";
        String about = "rules: {set: " + set + "}";
        String three = net(1) + net(2) + net(3);
        String full = along(bore, filling(59.9, 3), three).replace("length: 20 m", "length: " + length);
        assertThat(Job.lines("conduit-overfull", about, full)).hasSize(found);
        String over = along(bore, filling(60.1, 3), three).replace("length: 20 m", "length: " + length);
        assertThat(Job.lines("conduit-overfull", about, over)).hasSize(1);
    }

    /** A finding names the rules that apply where the hall is. */
    @Test
    void whatAFindingRestsOnIsWhatAppliesThere() {
        String low = along("kind: tray", sheath("Eca"), net(1));
        assertThat(Job.findings(Job.project("rules: {set: metric-eu}", low), "fire-class-too-low"))
                .isNotEmpty()
                .allMatch(finding -> finding.source().text().equals("EN 50575 with BS 6701 (from memory)"));
        String air = along("air-handling: yes", sheath("CMR"), net(1));
        assertThat(Job.findings(Job.project(US, air), "fire-class-too-low"))
                .isNotEmpty()
                .allMatch(finding -> finding.source().text().equals("NFPA 70 (NEC), as quoted, 800.113 and 800.154"));
    }

    @Test
    void conduitFillCountsWhatLiesThereAlready() {
        String kept = net(1) + net(2).replace("life: new", "life: keep") + net(3).replace("life: new", "life: strike");
        String type = "own: {carries: [ethernet], ends: [RJ45, RJ45], diameter: 12.5 mm}";
        assertThat(Job.lines("conduit-overfull", along("kind: conduit, bore: 25 mm", type, kept)))
                .containsExactly(
                        "fix p is too full: 2 cables take 50 % of its 25 mm bore, 45 % is the limit (N1 and N2).");
    }

    /** Pulling guides, from memory: 2.8 to 3.2 jams; 26.65 by 8.9 mm is 2.99. */
    @ParameterizedTest
    @CsvSource({"8.9, 3, 1", "9.6, 3, 0", "8.3, 3, 0", "8.9, 2, 0"})
    void jamRatio(double diameter, int cables, int found) {
        StringBuilder all = new StringBuilder();
        for (int n = 1; n <= cables; n++) {
            all.append(net(n));
        }
        String type = "own: {carries: [ethernet], ends: [RJ45, RJ45], diameter: " + diameter + " mm}";
        assertThat(Job.lines("conduit-may-jam", along("kind: conduit, bore: 26.65 mm", type, all.toString())))
                .hasSize(found);
    }

    /** ANSI/TIA-568.0-D, as reported: four diameters for twisted pair; an SDI equipment manual: ten for coax. */
    @ParameterizedTest
    @CsvSource({
        "'ends: [RJ45, RJ45], diameter: 6 mm', 24",
        "'ends: [BNC, BNC], attenuation: {a: 1, b: 0}, diameter: 7 mm', 70",
        "'ends: [RJ45, RJ45], diameter: 6 mm, bend: 48 mm', 48"
    })
    void bendRadius(String type, double least) {
        String own = "own: {" + type + "}";
        assertThat(Job.lines("bend-too-tight", along("bend: " + least + " mm", own, net(1))))
                .isEmpty();
        assertThat(Job.lines("bend-too-tight", along("bend: " + (least - 1) + " mm", own, net(1))))
                .singleElement()
                .asString()
                .startsWith("fix p bends too tightly for N1: ");
        assertThat(Job.lines("bend-too-tight", along("", own, net(1)))).isEmpty();
    }

    private static String sheath(String fireClass) {
        return "own: {carries: [ethernet], ends: [RJ45, RJ45]"
                + (fireClass.isEmpty() ? "" : ", fire-class: [\"" + fireClass + "\"]") + "}";
    }

    /** NEC 800.113 and 800.154, as quoted: plenum cable in air-handling spaces, riser from floor to floor; never lesser. */
    @ParameterizedTest
    @CsvSource({
        "air-handling: yes, CMP, 0", "air-handling: yes, OFNP, 0", "air-handling: yes, CMR, 1",
                "air-handling: yes, CM, 1",
        "'air-handling: yes, kind: conduit', CMR, 0", "kind: riser, CMP, 0", "kind: riser, CMR, 0",
                "kind: riser, CMG, 1",
        "air-handling: no, CM, 0", "air-handling: yes, '', 0"
    })
    void fireClassInTheUs(String pathway, String fireClass, int found) {
        assertThat(Job.lines("fire-class-too-low", US, along(pathway, sheath(fireClass), net(1))))
                .hasSize(found);
    }

    @Test
    void fireClassInTheUsIsMendedByPlenumCable() {
        String job = along("air-handling: yes", sheath("CMR"), net(1));
        assertThat(Job.lines("fire-class-too-low", US, job))
                .containsExactly(
                        "fix N1 must not run in p, which air is moved through: marked CMR, CMP or better is asked"
                                + " for.");
        assertThat(Job.afterFix("fire-class-too-low", US, job)).isEmpty();
        assertThat(Job.lines("fire-class-too-low", US, job.replace("life: new", "life: keep")))
                .singleElement()
                .asString()
                .startsWith("note ");
    }

    /** EN 50575 with BS 6701, from memory: Cca-s1b,d2,a2 or better. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Cca-s1b,d2,a2 | 0
            B2ca-s1a,d1,a1 | 0
            Aca | 0
            Cca-s2,d2,a2 | 1
            Dca-s1,d1,a1 | 1
            Eca | 1
            CMP | 0
            """)
    void fireClassInEurope(String fireClass, int found) {
        assertThat(Job.lines("fire-class-too-low", along("kind: tray", sheath(fireClass), net(1))))
                .hasSize(found)
                .allMatch(line -> line.startsWith("note "));
    }

    @Test
    void fireClassNotStated() {
        assertThat(Job.lines("fire-class-unknown", along("kind: tray", sheath(""), net(1) + net(2))))
                .containsExactly(
                        "note The fire class is not known of own, a type that 2 new cables in the building are of"
                                + " (N1 and N2).");
        assertThat(Job.lines("fire-class-unknown", along("kind: tray", sheath("Eca"), net(1))))
                .isEmpty();
        assertThat(Job.lines("fire-class-unknown", along("kind: underground", sheath(""), net(1))))
                .isEmpty();
        assertThat(Job.lines("fire-class-unknown", US, along("kind: tray", sheath(""), net(1))))
                .isEmpty();
        assertThat(Job.lines("fire-class-unknown", US, along("kind: riser", sheath(""), net(1))))
                .containsExactly(
                        "fix The fire class is not known of own, a type that one new cable in the building is of (N1), where"
                                + " air is moved through or from floor to floor: only cable marked for it may lie there.");
        assertThat(Job.lines("fire-class-unknown", US, along("kind: conduit, air-handling: yes", sheath(""), net(1))))
                .isEmpty();
    }

    @Test
    void whetherAVoidMovesAirIsAskedInTheUs() {
        String rule = "fire-class-too-low";
        assertThat(Job.lines(rule, US, along("kind: ceiling-void", sheath("CMR"), net(1) + net(2))))
                .containsExactly(
                        "note Nobody has said whether p moves the building's air, and N1 and N2 go there: if it"
                                + " does, CMP is asked for.");
        assertThat(Job.lines(rule, US, along("kind: ceiling-void", sheath("CMP"), net(1))))
                .isEmpty();
        assertThat(Job.lines(rule, US, along("kind: ceiling-void, air-handling: no", sheath("CMR"), net(1))))
                .isEmpty();
        assertThat(Job.lines(rule, along("kind: ceiling-void", sheath("Cca-s1b,d2,a2"), net(1))))
                .isEmpty();
    }

    private static final String UNSCREENED =
            "own: {carries: [ethernet], ends: [RJ45, RJ45], impedance: 100 ohm, screened: no}";
    private static final String SCREENED =
            "own: {carries: [ethernet], ends: [RJ45, RJ45], impedance: 100 ohm, screened: yes}";

    /** EN 50174-2:2000 table 1, as quoted: 200 mm unscreened, 50 mm screened; 50 mm in BS 6701 and NEC 800.133(A)(2). */
    @ParameterizedTest
    @CsvSource({"metric-eu, no, 200", "metric-eu, yes, 50", "us, no, 50", "us, yes, 50"})
    void besideMains(String set, String screened, double least) {
        String type = screened.equals("no") ? UNSCREENED : SCREENED;
        String about = "rules: {set: " + set + "}";
        assertThat(Job.lines(
                        "mains-beside-signal", about, along("beside: mains, apart: " + least + " mm", type, net(1))))
                .isEmpty();
        assertThat(Job.lines(
                        "mains-beside-signal",
                        about,
                        along("beside: mains, apart: " + (least - 1) + " mm", type, net(1))))
                .singleElement()
                .asString()
                .startsWith("fix p is too near the mains for N1: ");
    }

    /** The same table leaves out the last 15 m of a run. */
    @Test
    void besideMainsForShort() {
        String shorter =
                along("beside: mains, apart: 60 mm", UNSCREENED, net(1)).replace("length: 20 m", "length: 15 m");
        assertThat(Job.lines("mains-beside-signal", shorter)).isEmpty();
    }

    @Test
    void besideMainsAtADistanceNobodyKnowsIsNotGuessed() {
        assertThat(Job.lines("mains-beside-signal", along("beside: mains", UNSCREENED, net(1))))
                .containsExactly("note Nobody has said how far p is from the mains beside it, so it is not judged.");
    }

    private static final String MAINS = "M1: {type: mains-3x1.5, from: one.mains-out-1, to: two.mains-1, via: [p]}\n";
    private static final String LOUD = "L1: {type: speaker-2x4, from: one.amp-1, to: two.speaker-1, via: [p]}\n";

    @Test
    void mainsInOneConduitStops() {
        assertThat(Job.lines("mains-with-signal", along("kind: conduit", UNSCREENED, net(1) + MAINS)))
                .containsExactly("stop p has mains in one conduit with signal: M1 with N1.");
        assertThat(Job.lines("mains-with-signal", along("kind: trunking", UNSCREENED, net(1) + MAINS)))
                .singleElement()
                .asString()
                .startsWith("fix ");
        assertThat(Job.lines("mains-with-signal", along("kind: tray", UNSCREENED, net(1) + MAINS)))
                .isEmpty();
        assertThat(Job.lines("mains-with-signal", along("kind: conduit", UNSCREENED, MAINS)))
                .isEmpty();
        String loose = "M1: {type: mains-3x1.5, from: unknown, to: unknown, via: [p]}\n";
        assertThat(Job.lines("mains-with-signal", along("kind: conduit", UNSCREENED, net(1) + loose)))
                .as("found in the wall, nobody knows where it goes")
                .containsExactly("stop p has mains in one conduit with signal: M1 with N1.");
        String unknown = "X1: {from: unknown, to: unknown, via: [p]}\n";
        assertThat(Job.lines("mains-with-signal", along("kind: conduit", UNSCREENED, MAINS + unknown)))
                .as("nobody knows what it carries")
                .isEmpty();
    }

    /** Handbook practice, from memory (SEP-11): 300 mm from microphone to loudspeaker and mains, 150 mm from line to mains. */
    @Test
    void microphoneBesideLoudspeakerAndMains() {
        String type = "own: {carries: [analog-audio]}";
        assertThat(Job.lines("microphone-beside-power", along("kind: tray", type, mic(1) + LOUD)))
                .containsExactly(
                        "note Microphone cable runs beside loudspeaker cable in p (A1 and L1): microphone lines want"
                                + " 300 mm between.");
        assertThat(Job.lines("microphone-beside-power", along("kind: tray", type, mic(1) + MAINS)))
                .hasSize(1);
        String line = mic(1).replace("one.mic-1", "one.line-1");
        assertThat(Job.lines("microphone-beside-power", along("kind: tray", type, line + LOUD)))
                .isEmpty();
        assertThat(Job.lines("microphone-beside-power", along("beside: mains, apart: 300 mm", type, mic(1))))
                .isEmpty();
        assertThat(Job.lines("microphone-beside-power", along("beside: mains, apart: 299 mm", type, mic(1))))
                .hasSize(1);
        assertThat(Job.lines("microphone-beside-power", along("beside: mains, apart: 150 mm", type, line)))
                .isEmpty();
        assertThat(Job.lines("microphone-beside-power", along("beside: mains, apart: 149 mm", type, line)))
                .hasSize(1);
    }

    @Test
    void lengthUnknown() {
        String nobody = net(1).replace("via: [p], ", "").replace("type: own", "type: cat6");
        assertThat(Job.lines("cable-length-unknown", along("", "", nobody)))
                .containsExactly(
                        "note The length of one cable is not known, so nothing that depends on it is checked: N1.");
        assertThat(Job.lines("cable-length-unknown", along("", "", nobody.replace("cat6", "own-lead"))))
                .isEmpty();
        assertThat(Job.lines("cable-length-unknown", along("", "", nobody.replace("two.net-1", "unknown"))))
                .isEmpty();
        assertThat(Job.lines("cable-length-unknown", along("", "", net(1).replace("type: own", "type: cat6"))))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"new, 22, ''", "new, 21.9, note", "new, 20, note", "new, 19.9, fix", "keep, 20, ''", "keep, 19.9, fix"})
    void shorterThanItsWay(String life, double length, String severity) {
        String cable = net(1).replace("type: own", "type: cat6")
                .replace("life: new", "life: " + life + ", length: " + length + " m");
        assertThat(Job.lines("cable-shorter-than-its-way", along("", "", cable)))
                .hasSize(severity.isEmpty() ? 0 : 1)
                .allMatch(line -> line.startsWith(severity + " N1 "));
        if (!severity.isEmpty() && life.equals("new")) {
            assertThat(Job.afterFix("cable-shorter-than-its-way", "", along("", "", cable)))
                    .isEmpty();
        }
    }

    private static String way(String via) {
        return along("", "", net(1).replace("type: own", "type: cat6").replace("[p]", via))
                .replace(
                        "    p: {",
                        "    back: {from: there, to: side, length: 5 m}\n    last: {from: beyond, to: here, length: 9 m}\n    p: {")
                .replace(
                        "    here: {",
                        "    side: {at: [20 m, 5 m, 0 m]}\n    beyond: {at: [20 m, 7.5 m, 0 m]}\n    here: {");
    }

    @Test
    void wayWithAGap() {
        assertThat(Job.lines("cable-way-broken", way("[p]"))).isEmpty();
        assertThat(Job.lines("cable-way-broken", way("[p, back]")))
                .containsExactly("fix The way of N1 ends at side, 5 m from two, which is at there; 3 m is what slack"
                        + " reaches.");
        assertThat(Job.lines(
                        "cable-way-broken",
                        way("[p, last]").replace("{from: beyond, to: here", "{from: beyond, to: side")))
                .containsExactly(
                        "fix The way of N1 has a gap: p (here to there) does not lead to last (beyond to side).");
        assertThat(Job.lines("cable-way-broken", way("[p, back, p]")))
                .as("the second time it runs along p")
                .containsExactly(
                        "fix The way of N1 has a gap: back (there to side) does not lead to p (here to there).");
        assertThat(Job.lines(
                        "cable-way-broken",
                        way("[p, back, last]").replace("two: {model: box, at: there}", "two: {model: box, at: here}")))
                .as("2.5 m from side to beyond are within slack")
                .isEmpty();
    }

    private static String impedance(String from, String to, String type) {
        return """
                cable-types:
                  c50: {ends: [BNC, BNC], impedance: 50 ohm}
                  c75: {carries: [sdi], ends: [BNC, BNC], impedance: 75 ohm}
                  c84: {impedance: 84 ohm}
                  c85: {impedance: 85 ohm}
                  c88: {impedance: 88 ohm}
                  c132: {impedance: 132 ohm}
                  c133: {impedance: 133 ohm}
                  c150: {impedance: 150 ohm}
                  c151: {impedance: 151 ohm}
                  c87: {impedance: 87 ohm}
                models:
                  a: {kind: other, ports: {out: {out: %s}}}
                  b: {kind: other, ports: {in: {in: %s}}}
                equipment:
                  a: {model: a}
                  b: {model: b}
                cables:
                  C1: {type: %s, from: a.out, to: b.in, life: new, length: 1 m}
                """.formatted(from, to, type);
    }

    /** SDI 75 ohm; DMX 85 to 150 ohm (USITT, as quoted); AES3 110 ohm within 20 % (from memory). */
    @ParameterizedTest
    @CsvSource({
        "sdi, c75, 0",
        "sdi, c50, 1",
        "dmx, c85, 0",
        "dmx, c84, 1",
        "dmx, c150, 0",
        "dmx, c151, 1",
        "'aes3, impedance: 110 ohm', c88, 0",
        "'aes3, impedance: 110 ohm', c87, 1",
        "'aes3, impedance: 110 ohm', c132, 0",
        "'aes3, impedance: 110 ohm', c133, 1",
        "'aes3, connector: XLR-3M', c75, 1",
        "'aes3, connector: BNC', c75, 0",
        "ethernet, c50, 0"
    })
    void characteristicImpedance(String signal, String type, int found) {
        assertThat(Job.lines("wrong-cable-impedance", impedance(signal, signal, type)))
                .hasSize(found);
    }

    @Test
    void characteristicImpedanceIsMended() {
        String job = impedance("sdi", "sdi", "c50");
        assertThat(Job.lines("wrong-cable-impedance", job))
                .containsExactly(
                        "fix C1 carries sdi on cable of 50 ohm, c50, and wants 75 ohm: the mismatch sends part of"
                                + " the signal back.");
        assertThat(Job.afterFix("wrong-cable-impedance", "", job)).isEmpty();
    }

    @Test
    void runInPieces() {
        String job = """
                models:
                  a: {kind: converter, ports: {out: {out: hdmi, connector: HDMI-A}}}
                  b: {kind: display, ports: {in: {in: hdmi, connector: HDMI-A}}}
                  plate: {kind: panel, ties: [front = rear]}
                equipment:
                  a: {model: a}
                  b: {model: b}
                  plate: {model: plate}
                cables:
                  C1: {type: hdmi, from: a.out, to: plate.front, length: 1 m}
                  C2: {type: hdmi, from: plate.rear, to: b.in, length: 4 m}
                """;
        assertThat(Job.lines("run-in-pieces", job))
                .containsExactly(
                        "note C1 and C2 make one hdmi run with one joint in panels, and each joint takes from its"
                                + " reach.");
        assertThat(Job.lines("run-in-pieces", job.replace("plate.front", "b.in").replace("  C2:", "  #")))
                .isEmpty();
    }

    private static final String PANEL = """
            models:
              mic: {kind: microphone, ports: {out: {out: analog-audio, connector: XLR-3M}}}
              desk: {kind: mixer, ports: {"in-{1..2}": {in: analog-audio, connector: XLR-3F}}}
              panel: {kind: panel, ties: ["front-{1..2} = rear-{1..2}"]}
            equipment:
              mic: {model: mic}
              desk: {model: desk}
              panel: {model: panel}
            cables:
              C1: {type: mic-cable, from: mic.out, to: panel.front-1, length: 5 m}
              C2: {type: mic-cable, from: panel.rear-1, to: desk.in-1, length: 5 m, life: strike}
            """;

    @Test
    void struckCableThatAnotherNeeds() {
        assertThat(Job.lines("struck-cable-needed", PANEL))
                .containsExactly("fix C2 is to go, and C1 stays plugged into the other side of its panel, where nothing"
                        + " follows then.");
        assertThat(Job.afterFix("struck-cable-needed", "", PANEL)).isEmpty();
        assertThat(Job.lines(
                        "struck-cable-needed",
                        PANEL + "  C3: {type: mic-cable, from: panel.rear-1, to: desk.in-2, length: 5 m, life: new}\n"))
                .isEmpty();
        assertThat(Job.lines(
                        "struck-cable-needed",
                        PANEL.replace(
                                "to: panel.front-1, length: 5 m", "to: panel.front-1, length: 5 m, life: strike")))
                .isEmpty();
    }

    @Test
    void spare() {
        assertThat(Job.lines("no-spare-pulled", along("kind: conduit", UNSCREENED, net(1))))
                .containsExactly(
                        "note Nothing spare is pulled through p, where new cable goes in and the next will be hard"
                                + " to add.");
        assertThat(Job.lines(
                        "no-spare-pulled", along("kind: conduit", UNSCREENED, net(1) + "S: {type: own, via: [p]}\n")))
                .isEmpty();
        assertThat(Job.lines("no-spare-pulled", along("kind: conduit", UNSCREENED, net(1).replace("new", "keep"))))
                .isEmpty();
        String open = along("kind: tray", UNSCREENED, net(1));
        assertThat(Job.lines("no-spare-pulled", open)).hasSize(1);
        assertThat(Job.lines("no-spare-pulled", open.replace("length: 20 m", "length: 14.9 m")))
                .isEmpty();
    }

    @Test
    void plugsAndTests() {
        String bare = along("", "", net(1).replace("type: own", "type: cat6"));
        String open = bare.replace(", terminated: bought", "");
        assertThat(Job.lines("termination-not-foreseen", bare)).isEmpty();
        assertThat(Job.lines("termination-not-foreseen", open))
                .containsExactly("note Nobody has said who puts the plugs on one new cable: N1.");
        assertThat(Job.lines("termination-not-foreseen", open.replace("cat6", "own-lead")))
                .isEmpty();
        assertThat(Job.lines("cable-not-tested", bare)).isEmpty();
        String site = bare.replace("terminated: bought", "terminated: site");
        assertThat(Job.lines("cable-not-tested", site))
                .containsExactly("note No test is noted of one cable that gets its plugs on site: N1.");
        assertThat(Job.lines(
                        "cable-not-tested", site.replace("terminated: site", "terminated: site, tested: rung through")))
                .isEmpty();
    }

    @Test
    void labels() {
        String cables = net(1).replace("type: own", "type: cat6, label: Desk")
                + net(2).replace("type: own", "type: cat6, label: desk");
        assertThat(Job.lines("label-twice", along("", "", cables)))
                .containsExactly("fix N2 and N1 both say \"desk\" at their ends.");
        assertThat(Job.afterFix("label-twice", "", along("", "", cables))).isEmpty();
        assertThat(Job.lines("label-twice", along("", "", cables.replace("label: desk", "label: Box"))))
                .isEmpty();
        assertThat(Job.lines("label-twice", along("", "", cables.replace("label: desk", "label: N1"))))
                .hasSize(1);
        assertThat(Job.lines("cable-not-labelled", along("", "", cables))).isEmpty();
        assertThat(Job.lines("cable-not-labelled", along("", "", cables.replace(", label: desk", ""))))
                .containsExactly("note No label is entered for one new cable: N2.");
    }
}
