package housewright.check.light;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.check.Small;
import housewright.finding.Finding;
import housewright.light.Lights;
import housewright.light.Receiver;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The rules about light, each with a good and a bad case, and their limits against what is published. */
class LightRulesTest {
    private static final Small HALL = new Small("""
            housewright: 1
            project: {name: Small hall, stage: install}
            venue:
              circuits:
                c1: {rating: 16 A, voltage: 230 V}
                c2: {rating: 16 A, voltage: 230 V, dimmed: yes}
            models:
              controller:
                kind: control-panel
                ports:
                  "dmx-{1..2}": {out: dmx, connector: XLR-5F}
                  net: {both: ethernet, connector: RJ45}
                points: ["button-{1..4}", looks]
                routes: ["button-{1..4} -> looks", "looks -> dmx-{1..2}", "looks -> net:u{1..2}"]
              node:
                kind: dmx-node
                ports: {net: {both: ethernet, connector: RJ45}, dmx: {out: dmx, connector: XLR-5F}}
                routes: ["net:u1 -> dmx"]
              splitter:
                kind: dmx-splitter
                ports: {dmx-in: {in: dmx, connector: XLR-5M}, "dmx-{1..2}": {out: dmx, connector: XLR-5F}}
                routes: ["dmx-in -> dmx-{1..2}"]
              end:
                kind: other
                ports: {dmx-in: {in: dmx, connector: XLR-5M}}
              led:
                kind: fixture
                ports:
                  dmx-in: {in: dmx, connector: XLR-5M}
                  dmx-out: {out: dmx, connector: XLR-5F}
                  mains: {in: mains, connector: C14}
                points: [lamp]
                routes: ["dmx-in -> lamp, dmx-out"]
                power: 100 W
                light: {modes: {1ch: 1, 8ch: 8}, peak: 10000 cd}
              dimmer:
                kind: dimmer
                ports:
                  dmx-in: {in: dmx, connector: XLR-5M}
                  mains: {in: mains, connector: terminals}
                  "out-{1..6}": {out: mains, connector: mains-socket}
                routes: ["dmx-in -> out-{1..6}"]
                power: 60 W
              tungsten:
                kind: fixture
                ports: {mains: {in: mains, connector: mains-plug}}
                points: [lamp]
                routes: [mains -> lamp]
                power: 500 W
                light: {peak: 20000 cd, white: 3200 K, dimmed: yes}
            equipment:
              desk: {model: controller}
              one: {model: led, circuit: c1, light: {universe: 1, address: 1, mode: 8ch}}
              two: {model: led, circuit: c1, terminator: fitted, light: {universe: 1, address: 9, mode: 8ch}}
              pack: {model: dimmer, circuit: c1, terminator: fitted, light: {universe: 2, address: 100}}
              old: {model: tungsten, powered-by: pack.out-1}
            cables:
              D1: {from: desk.dmx-1, to: one.dmx-in}
              D2: {from: one.dmx-out, to: two.dmx-in}
              D3: {from: desk.dmx-2, to: pack.dmx-in}
              M1: {from: pack.out-1, to: old.mains}
            lighting:
              looks: {scene: {levels: {one: 80 %, two: 50 %, old: 70 %}}}
            controls: {scene: {press: desk.button-1, calls: scene}}
            """);

    private static Small but(String... pairs) {
        Small hall = HALL;
        for (int i = 0; i < pairs.length; i += 2) {
            hall = hall.but(pairs[i], pairs[i + 1]);
        }
        return hall;
    }

    @Test
    void aSoundHallIsSilent() {
        for (var rule : LightRules.all()) {
            assertThat(HALL.findings(rule.card().id())).as(rule.card().id()).isEmpty();
        }
    }

    /** ANSI E1.11, as quoted in reference guides: 512 slots, so eight channels may begin at 505 and not at 506. */
    @Test
    void aUniverseEndsAt512() {
        assertThat(Receiver.SLOTS).isEqualTo(512);
        assertThat(but("address: 9,", "address: 505,").findings("dmx-address-past-512"))
                .isEmpty();
        assertThat(but("address: 9,", "address: 506,").lines("dmx-address-past-512"))
                .containsExactly(
                        "fix [equipment two] two begins at 506 of universe 1 and takes 8, so its channels run to 513;"
                                + " 512 is the last there is.");
        assertThat(but("address: 9,", "address: 0,").findings("dmx-address-past-512"))
                .hasSize(1);
    }

    /** A dimmer without modes takes a channel for each outlet: six from 100 on are 100 to 105. */
    @Test
    void aDimmerTakesAChannelForEachOutlet() {
        String next = "two: {model: led, circuit: c1, terminator: fitted, light: {universe: 1, address: 9, mode: 8ch}}";
        assertThat(but(next, next.replace("universe: 1, address: 9", "universe: 2, address: 106"))
                        .findings("dmx-address-clash"))
                .isEmpty();
        assertThat(but(next, next.replace("universe: 1, address: 9", "universe: 2, address: 105"))
                        .lines("dmx-address-clash"))
                .containsExactly(
                        "fix [equipment pack, equipment two] pack and two both answer to channel 105 of universe 2:"
                                + " what is meant for one moves the other.");
    }

    @Test
    void whatIsGangedMayShareAnAddressAndNothingElse() {
        assertThat(but("address: 9,", "address: 1,").findings("dmx-address-clash"))
                .hasSize(1);
        Small ganged = but(
                "address: 9,",
                "address: 1,",
                "terminator: fitted, light: {universe: 1",
                "terminator: fitted, gang: one, light: {universe: 1");
        assertThat(ganged.findings("dmx-address-clash")).isEmpty();
        assertThat(ganged.findings("gang-apart")).isEmpty();
        Small ring = ganged.but("one: {model: led,", "one: {model: led, gang: two,");
        assertThat(ring.findings("dmx-address-clash")).isEmpty();
        assertThat(ganged.but("address: 1, mode: 8ch}}\n  two", "address: 2, mode: 8ch}}\n  two")
                        .findings("gang-apart"))
                .hasSize(1);
    }

    /** Nobody wrote a universe, and a splitter sends the same to both: one line or two, they are one universe. */
    @Test
    void whatHangsOnOneSenderIsInOneUniverse() {
        Small split = but(
                "desk: {model: controller}",
                "desk: {model: controller}\n  split: {model: splitter}",
                "D1: {from: desk.dmx-1, to: one.dmx-in}",
                "D1: {from: desk.dmx-1, to: split.dmx-in}\n  D4: {from: split.dmx-1, to: one.dmx-in}",
                "D2: {from: one.dmx-out, to: two.dmx-in}",
                "D2: {from: split.dmx-2, to: two.dmx-in}",
                "one: {model: led, circuit: c1, light: {universe: 1, ",
                "one: {model: led, circuit: c1, light: {");
        Small unsaid = split.but("light: {universe: 1, address: 9", "light: {address: 9");
        assertThat(unsaid.findings("dmx-address-clash")).isEmpty();
        assertThat(unsaid.but("address: 9,", "address: 8,").lines("dmx-address-clash"))
                .containsExactly(
                        "fix [equipment one, equipment two] one and two both answer to channel 8: what is meant"
                                + " for one moves the other.");
        assertThat(split.findings("dmx-address-clash")).isEmpty();
        assertThat(split.but("address: 9,", "address: 8,").findings("dmx-address-clash"))
                .as("one says its universe, the other is on its line")
                .hasSize(1);
    }

    /** One in the middle of two is the one to move; and an address that there is none of is another rule's. */
    @Test
    void asFewAsCanBeAreMoved() {
        Finding clash = but(
                        "equipment:\n",
                        "equipment:\n  mid: {model: led, light: {universe: 1, address: 5, mode: 8ch}}\n")
                .findings("dmx-address-clash")
                .getFirst();
        assertThat(clash.message())
                .isEqualTo("one, mid and two share channels 5 to 12 of universe 1 among them: what is meant for one"
                        + " moves the other.");
        assertThat(clash.fixes().getFirst().words())
                .isEqualTo("Give mid the next free address, and set it on the display before it is hung.");
        assertThat(but("address: 9,", "address: 0,").findings("dmx-address-clash"))
                .isEmpty();
    }

    /** White from warm to cold is no red, in a mode of however many channels. */
    @Test
    void aTunableWhiteGivesNoColour() {
        String scene = "scene: {levels: {one: 80 %, two: 50 %, old: 70 %}";
        Small red = but(scene, scene + ", colours: {one: red}");
        assertThat(red.findings("look-colour-not-possible")).isEmpty();
        Small tunable = red.but("peak: 10000 cd}", "peak: 10000 cd, tunable-white: yes}");
        assertThat(tunable.lines("look-colour-not-possible"))
                .containsExactly(
                        "fix [look scene, equipment one] The look scene asks one for red, and it gives white only.");
        assertThat(tunable.but("one: red", "one: warm white").findings("look-colour-not-possible"))
                .isEmpty();
    }

    @Test
    void aLampGoesFromOffToFull() {
        assertThat(but("one: 80 %", "one: 100 %").findings("look-level-past-full"))
                .isEmpty();
        assertThat(but("one: 80 %", "one: 120 %").lines("look-level-past-full"))
                .containsExactly(
                        "fix [look scene, equipment one] The look scene asks one for 120 %; 100 % is the most a"
                                + " lamp gives.");
    }

    /** A dimmer is electronics, too: on another's outlet it burns; on its own dimmed circuit it may be what dims it. */
    @Test
    void aDimmerHangsOnNoDimmer() {
        String more = "pack: {model: dimmer, circuit: c1,";
        assertThat(but(more, "second: {model: dimmer, powered-by: pack.out-2}\n  " + more)
                        .lines("not-for-a-dimmer"))
                .singleElement()
                .asString()
                .startsWith("stop [equipment second, equipment pack] second is on the dimmer pack");
        assertThat(but(more, "pack: {model: dimmer, circuit: c2,").findings("not-for-a-dimmer"))
                .isEmpty();
    }

    /** Every clash is found, and nothing else: against a table of which fixture holds which channel. */
    @Test
    void clashesAreThoseOfATableOfChannels() {
        Random random = new Random(20261126);
        for (int round = 0; round < 60; round++) {
            StringBuilder fixtures = new StringBuilder();
            List<Set<String>> table = new ArrayList<>();
            for (int slot = 0; slot <= 80; slot++) {
                table.add(new TreeSet<>());
            }
            for (int i = 0; i < 8; i++) {
                int address = 1 + random.nextInt(60);
                boolean small = random.nextBoolean();
                fixtures.append("  f%d: {model: led, light: {universe: 7, address: %d, mode: %s}}\n"
                        .formatted(i, address, small ? "1ch" : "8ch"));
                for (int slot = address; slot < address + (small ? 1 : 8); slot++) {
                    table.get(slot).add("f" + i);
                }
            }
            Set<String> expected = new TreeSet<>();
            table.stream().filter(each -> each.size() > 1).forEach(expected::addAll);
            Set<String> found = new TreeSet<>();
            for (Finding finding :
                    but("equipment:\n", "equipment:\n" + fixtures).findings("dmx-address-clash")) {
                finding.subjects().forEach(subject -> found.add(subject.id()));
            }
            assertThat(found).as(fixtures.toString()).isEqualTo(expected);
        }
    }

    @Test
    void aModeLeftOutMattersOnlyWhereThereAreSeveral() {
        assertThat(but("address: 9, mode: 8ch", "address: 9").lines("dmx-mode-missing"))
                .containsExactly(
                        "fix [equipment two] two of type led has an address and no mode: it may be 1ch or 8ch, so"
                                + " nobody knows which channels are taken.");
        assertThat(but("address: 9, mode: 8ch", "address: 9", "modes: {1ch: 1, 8ch: 8}", "modes: {8ch: 8}")
                        .findings("dmx-mode-missing"))
                .isEmpty();
    }

    /** EIA-485 and ANSI E1.11, as quoted: 32 unit loads to a driver; 32 on a line pass, 33 do not. */
    @Test
    void aLineFeedsThirtyTwo() {
        assertThat(line(32).findings("dmx-line-overloaded")).isEmpty();
        assertThat(line(33).findings("dmx-line-overloaded")).hasSize(1);
        Small tightened =
                line(17).but("stage: install", "stage: install, rules: {tighten: {dmx-line-overloaded: \"16\"}}");
        assertThat(tightened.findings("dmx-line-overloaded")).hasSize(1); // as some makers advise
    }

    /** So many fixtures one after the other, those of the hall among them. */
    private static Small line(int count) {
        StringBuilder fixtures = new StringBuilder();
        StringBuilder cables = new StringBuilder();
        for (int i = 3; i <= count; i++) {
            fixtures.append(
                    "  f%d: {model: led, light: {universe: 1, address: %d, mode: 1ch}}\n".formatted(i, 200 + i));
            cables.append(
                    "  X%d: {from: %s.dmx-out, to: f%d.dmx-in}\n".formatted(i, i == 3 ? "two" : "f" + (i - 1), i));
        }
        return but("equipment:\n", "equipment:\n" + fixtures, "cables:\n", "cables:\n" + cables);
    }

    @Test
    void aLineEndsInATerminatorAndHasNoneBefore() {
        assertThat(but("circuit: c1, terminator: fitted, light: {universe: 1", "circuit: c1, light: {universe: 1")
                        .lines("dmx-terminator-missing"))
                .containsExactly(
                        "fix [equipment two] The DMX line from desk, dmx 1 ends at two without a terminator: echoes on"
                                + " it make lamps flicker, most of all on a long line.");
        Small drawn = but(
                "circuit: c1, terminator: fitted, light: {universe: 1",
                "circuit: c1, light: {universe: 1",
                "equipment:\n",
                "equipment:\n  plug: {model: end}\n",
                "cables:\n",
                "cables:\n  D9: {from: two.dmx-out, to: plug.dmx-in}\n");
        assertThat(drawn.findings("dmx-terminator-missing")).isEmpty();
        assertThat(but("one: {model: led,", "one: {model: led, terminator: fitted,")
                        .findings("dmx-terminator-mid-line"))
                .hasSize(1);
    }

    @Test
    void aUniverseIsFollowedBackThroughSplittersAndNodes() {
        Small split = but(
                "equipment:\n",
                "equipment:\n  split: {model: splitter}\n  remote: {model: node}\n",
                "D1: {from: desk.dmx-1, to: one.dmx-in}",
                "D0: {from: remote.dmx, to: split.dmx-in}\n  D1: {from: split.dmx-1, to: one.dmx-in}",
                "cables:\n",
                "cables:\n  N1: {from: desk.net, to: remote.net}\n");
        assertThat(split.findings("universe-not-fed")).hasSize(1);
        Small sent = split.but(
                "cables:\n",
                "network-sends:\n  u: {from: \"desk.net:u1\", to: \"remote.net:u1\", as: lighting-data}\ncables:\n");
        assertThat(sent.findings("universe-not-fed")).isEmpty();
        assertThat(sent.but("desk.net:u1", "desk.net:u2").lines("universe-not-fed"))
                .containsExactly(
                        "fix [equipment one, equipment two, equipment split] Universe 2 is sent into the line from split,"
                                + " dmx 1, and one and two are set to universe 1.");
    }

    @Test
    void aFixtureWithoutACableStaysDarkAndWhatFollowsIt() {
        assertThat(but("  D2: {from: one.dmx-out, to: two.dmx-in}\n", "").lines("universe-not-fed"))
                .containsExactly("fix [equipment two] No DMX cable ends in two: it stays dark.");
        assertThat(but("  D1: {from: desk.dmx-1, to: one.dmx-in}\n", "").lines("universe-not-fed"))
                .containsExactly(
                        "fix [equipment one, equipment two] No DMX cable ends in one: it stays dark, and so does"
                                + " two further on.");
    }

    @Test
    void oneLineCarriesOneUniverse() {
        assertThat(but("light: {universe: 1, address: 9", "light: {universe: 2, address: 9")
                        .findings("two-universes-one-line"))
                .hasSize(1);
    }

    @Test
    void aLeadThatForksIsFound() {
        assertThat(but(
                                "D2: {from: one.dmx-out, to: two.dmx-in}",
                                "D2: {ways: [\"one.dmx-out -> two.dmx-in\", \"one.dmx-out -> pack.dmx-in\"]}",
                                "  D3: {from: desk.dmx-2, to: pack.dmx-in}\n",
                                "")
                        .findings("dmx-line-forked"))
                .hasSize(1);
        assertThat(but(
                                "D1: {from: desk.dmx-1, to: one.dmx-in}",
                                "D1: {ways: [\"desk.dmx-1 -> one.dmx-in\", \"desk.dmx-2 -> one.dmx-in\"]}",
                                "  D3: {from: desk.dmx-2, to: pack.dmx-in}\n",
                                "")
                        .lines("dmx-line-forked"))
                .singleElement()
                .asString()
                .contains("puts desk, dmx 1 and desk, dmx 2 together on one line");
    }

    @Test
    void onlyWhatIsMadeForItHangsOnADimmer() {
        assertThat(but("one: {model: led, circuit: c1", "one: {model: led, powered-by: pack.out-2")
                        .lines("not-for-a-dimmer"))
                .containsExactly(
                        "stop [equipment one, equipment pack] one is on the dimmer pack, and not made for chopped mains:"
                                + " electronics there flicker, fail or burn.");
        assertThat(but("one: {model: led, circuit: c1", "one: {model: led, circuit: c2")
                        .findings("not-for-a-dimmer"))
                .hasSize(1);
        assertThat(but("old: {model: tungsten,", "old: {").lines("not-for-a-dimmer"))
                .singleElement()
                .asString()
                .contains("nobody has written what it is");
        assertThat(but(
                                "old: {model: tungsten, powered-by: pack.out-1}",
                                "old: {model: tungsten, circuit: c2}",
                                "  M1: {from: pack.out-1, to: old.mains}\n",
                                "")
                        .findings("not-for-a-dimmer"))
                .isEmpty();
    }

    @Test
    void whatNeedsADimmerHasOne() {
        Small plain = but(
                "old: {model: tungsten, powered-by: pack.out-1}",
                "old: {model: tungsten, circuit: c1}",
                "  M1: {from: pack.out-1, to: old.mains}\n",
                "");
        assertThat(plain.lines("needs-a-dimmer")).singleElement().asString().startsWith("fix");
        assertThat(plain.but("old: 70 %", "old: 100 %").lines("needs-a-dimmer"))
                .singleElement()
                .asString()
                .startsWith("note");
    }

    @Test
    void looksUseLampsThatAreThere() {
        assertThat(but("one: {model: led,", "one: {model: led, life: strike,").findings("look-fixture-not-there"))
                .hasSize(1);
        assertThat(but("{one: 80 %", "{desk: 10 %, one: 80 %").lines("look-fixture-not-there"))
                .containsExactly("fix [look scene, equipment desk] The look scene uses desk, which is no lamp.");
    }

    @Test
    void aWhiteLampShowsNoBlue() {
        Small white = but(
                "modes: {1ch: 1, 8ch: 8}, peak",
                "modes: {1ch: 1, 8ch: 8}, white: 3200 K, peak",
                "address: 9, mode: 8ch",
                "address: 9, mode: 1ch");
        assertThat(white.but("old: 70 %}", "old: 70 %}, colours: {two: blue}").findings("look-colour-not-possible"))
                .hasSize(1);
        assertThat(white.but("old: 70 %}", "old: 70 %}, colours: {two: warm white}")
                        .findings("look-colour-not-possible"))
                .isEmpty();
        assertThat(white.but("old: 70 %}", "old: 70 %}, colours: {one: blue}").findings("look-colour-not-possible"))
                .isEmpty(); // eight channels have room for colour
    }

    /** Two lamps alike at the same distance: the saturated share is the share of their levels. */
    @Test
    void theShareOfSaturatedLightIsThatOfItsIntensity() {
        Small faces = but(
                "venue:\n",
                "venue:\n  places: {bar: {at: [5 m, 0 m, 5 m]}}\n",
                "one: {model: led,",
                "one: {model: led, at: bar,",
                "two: {model: led,",
                "two: {model: led, at: bar,",
                "address: 1, mode: 8ch",
                "address: 1, mode: 8ch, aim: [1 m, 0 m, 1.6 m]",
                "address: 9, mode: 8ch",
                "address: 9, mode: 8ch, aim: [1 m, 0 m, 1.6 m]",
                "lighting:\n",
                "lighting:\n  targets: {face: {area: [[0 m, -1 m], [2 m, -1 m], [2 m, 1 m], [0 m, 1 m]], facing: 0 deg, camera: yes}}\n",
                "old: 70 %}",
                "old: 70 %}, colours: {two: blue}");
        String rule = "saturated-colour-on-faces";
        assertThat(faces.but("one: 80 %, two: 50 %", "one: 71 %, two: 29 %").findings(rule))
                .isEmpty();
        assertThat(faces.but("one: 80 %, two: 50 %", "one: 69 %, two: 31 %").findings(rule))
                .singleElement()
                .satisfies(
                        each -> assertThat(each.evidence().getFirst().found()).isEqualTo(31));
        assertThat(faces.but("one: 80 %, two: 50 %", "one: 20 %, two: 80 %").lines(rule))
                .singleElement()
                .asString()
                .startsWith("fix");
        assertThat(faces.but("facing: 0 deg", "facing: 180 deg").findings(rule)).isEmpty(); // it comes from behind
        assertThat(faces.but("camera: yes", "camera: no").findings(rule)).isEmpty();
        assertThat(faces.but("colours: {two: blue}", "colours: {two: pale blue}")
                        .findings(rule))
                .isEmpty();
    }

    @Test
    void aButtonReachesTheLampsOfItsLook() {
        assertThat(but(
                                "D3: {from: desk.dmx-2", "D3: {from: other.dmx-2",
                                "  desk: {model: controller}",
                                        "  desk: {model: controller}\n  other: {model: controller}")
                        .lines("control-reaches-nothing"))
                .containsExactly(
                        "fix [control scene, equipment old, equipment desk] desk, button 1 calls the look scene, and old"
                                + " of it is not reached.");
        assertThat(but("\"button-{1..4} -> looks\", ", "").lines("control-reaches-nothing"))
                .singleElement()
                .asString()
                .contains("nothing leads from it to any lamp of it");
        assertThat(but("calls: scene", "does: old.lamp").findings("control-reaches-nothing"))
                .isEmpty();
        assertThat(but("calls: scene", "does: old.lamp", "  D3: {from: desk.dmx-2, to: pack.dmx-in}\n", "")
                        .findings("control-reaches-nothing"))
                .hasSize(1);
    }

    private static final String FEEDS = """
            feeds:
              scene: {from: desk.button-1, to: [two.lamp, old.lamp], carries: light}
            """;

    /** One line pulled: the feed says where it stops and how to mend it; without a feed, what is on the line says it. */
    @Test
    void aBrokenLineIsToldOnce() {
        for (String cable : List.of(
                "  D1: {from: desk.dmx-1, to: one.dmx-in}\n",
                "  D2: {from: one.dmx-out, to: two.dmx-in}\n",
                "  D3: {from: desk.dmx-2, to: pack.dmx-in}\n")) {
            Small pulled = but(cable, "");
            assertThat(pulled.findings("universe-not-fed")).as(cable).hasSize(1);
            assertThat(pulled.findings("control-reaches-nothing")).as(cable).isEmpty();
            Small asked = new Small(pulled.text() + FEEDS);
            assertThat(asked.findings("feed-does-not-arrive")).as(cable).hasSize(1);
            assertThat(asked.findings("universe-not-fed")).as(cable).isEmpty();
            assertThat(asked.findings("control-reaches-nothing")).as(cable).isEmpty();
            Small exempt = asked.but(
                    "cables:\n", "exempt: [{rule: feed-does-not-arrive, subject: feeds.scene, why: later}]\ncables:\n");
            assertThat(exempt.findings("universe-not-fed")).as(cable).hasSize(1);
        }
    }

    /** A feed that stops before it is light says nothing of a line that is pulled as well. */
    @Test
    void twoGapsAreToldTwice() {
        Small both = new Small(but("\"button-{1..4} -> looks\", ", "", "  D1: {from: desk.dmx-1, to: one.dmx-in}\n", "")
                        .text()
                + FEEDS);
        assertThat(both.findings("feed-does-not-arrive")).hasSize(1);
        assertThat(both.findings("universe-not-fed")).hasSize(1);
        assertThat(both.findings("control-reaches-nothing")).isEmpty();
    }

    @Test
    void buttonsThatStopAtTheSameSocketAreToldTogether() {
        String more =
                "controls: {scene: {press: panel.button-1, calls: scene}, other: {press: panel.button-2, calls: scene},"
                        + " third: {press: panel.button-3, calls: scene}}";
        Small panel = but(
                "controls: {scene: {press: desk.button-1, calls: scene}}", more,
                "models:\n", """
                        models:
                          panel:
                            kind: control-panel
                            ports:
                              serial: {out: serial, connector: terminals, channels: 2}
                              contact: {out: contact, connector: terminals}
                            points: ["button-{1..3}"]
                            routes: ["button-{1..2} -> serial:{1..2}", "button-3 -> contact"]
                        """,
                "equipment:\n", "equipment:\n  panel: {model: panel}\n");
        assertThat(panel.lines("control-reaches-nothing"))
                .containsExactly(
                        "fix [control scene, control other, equipment one, equipment two, equipment old, equipment panel]"
                                + " panel, button 1 calls the look scene, and nothing leads from it to any lamp of it; so"
                                + " it is with scene.",
                        "fix [control third, equipment one, equipment two, equipment old, equipment panel] panel,"
                                + " button 3 calls the look scene, and nothing leads from it to any lamp of it.");
    }

    @Test
    void aControlSaysWhatAndWhen() {
        assertThat(but(", calls: scene", "").lines("control-does-nothing")).hasSize(1);
        assertThat(but("press: desk.button-1, ", "").lines("control-does-nothing"))
                .hasSize(1);
    }

    @Test
    void aButtonCallsOneLook() {
        Small two = but(
                "scene: {levels", "other: {levels: {one: 10 %}}, scene: {levels",
                "controls: {", "controls: {other: {press: desk.button-1, calls: other}, ");
        assertThat(two.findings("button-with-two-looks")).hasSize(1);
        assertThat(two.but("other: {press: desk.button-1", "other: {press: desk.button-2")
                        .findings("button-with-two-looks"))
                .isEmpty();
        assertThat(two.but("other: {press: desk.button-1, calls: other}, ", "").lines("look-not-called"))
                .containsExactly(
                        "note [look other] No button and no time calls other: only whoever programmed it will find it.");
    }

    @Test
    void twoButtonsDoNotCloseOneContact() {
        Small contacts = but(
                "scene: {levels", "other: {levels: {one: 10 %}}, scene: {levels",
                "controls: {scene: {press: desk.button-1",
                        "controls: {other: {press: panel.button-2, calls: other}, scene: {press: panel.button-1",
                "  controller:\n", """
                          panel: {kind: control-panel, ports: {"contact-{1..2}": {out: contact, connector: terminals}}, points: ["button-{1..2}"], routes: ["button-{1..2} -> contact-{1..2}"]}
                          controller:
                        """.indent(-2).indent(2),
                "  desk: {model: controller}", "  desk: {model: controller}\n  panel: {model: panel}",
                "net: {both: ethernet, connector: RJ45}\n    points: [\"button",
                        "net: {both: ethernet, connector: RJ45}\n      \"contact-{1..2}\": {in: contact, connector: terminals}\n    points: [\"button",
                "\"button-{1..4} -> looks\"", "\"button-{1..4} -> looks\", \"contact-{1..2} -> looks\"",
                "cables:\n",
                        "cables:\n  K1: {from: panel.contact-1, to: desk.contact-1}\n  K2: {from: panel.contact-2, to: desk.contact-2}\n");
        assertThat(contacts.findings("button-with-two-looks")).isEmpty();
        assertThat(contacts.but("to: desk.contact-2", "to: desk.contact-1").lines("button-with-two-looks"))
                .containsExactly(
                        "fix [control other, control scene, equipment desk] panel, button 2 and panel, button 1 close"
                                + " the same contact, desk, contact 1, and call other and scene: whichever is pressed, the same look"
                                + " comes.");
    }

    @Test
    void anAddressThatNobodyWroteDownIsAskedFor() {
        assertThat(but("universe: 2, address: 100", "universe: 2").lines("dmx-address-missing"))
                .containsExactly(
                        "note [equipment pack] No address is written down of pack: whoever stands on the lift will ask"
                                + " for it.");
    }

    @Test
    void twoControllersOnOneNodeAreTold() {
        Small two = but(
                "equipment:\n",
                "equipment:\n  remote: {model: node}\n  spare: {model: controller}\n  hub: {model: switch}\n",
                "models:\n",
                "models:\n  switch: {kind: switch, ports: {\"port-{1..4}\": {both: ethernet, connector: RJ45}}}\n",
                "cables:\n",
                "network-sends:\n  a: {from: \"desk.net:u1\", to: \"remote.net:u1\"}\n  b: {from: \"spare.net:u1\", to: \"remote.net:u1\"}\n"
                        + "cables:\n  N1: {from: desk.net, to: hub.port-1}\n  N2: {from: spare.net, to: hub.port-2}\n"
                        + "  N3: {from: remote.net, to: hub.port-3}\n");
        assertThat(two.findings("two-senders-one-node")).hasSize(1);
        assertThat(two.but("  b: {from: \"spare.net:u1\", to: \"remote.net:u1\"}\n", "")
                        .findings("two-senders-one-node"))
                .isEmpty();
    }

    @Test
    void whatIsOnALineAndWhichChannelsItTakes() {
        Lights lights = HALL.study().lights();
        assertThat(lights.findReceiver("pack").orElseThrow().last()).isEqualTo(105);
        assertThat(lights.findLine("two").orElseThrow().loads()).containsExactly("one", "two");
    }
}
