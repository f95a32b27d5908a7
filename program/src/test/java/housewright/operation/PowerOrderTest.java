package housewright.operation;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.check.Small;
import housewright.operation.PowerOrder.Must;
import housewright.operation.PowerOrder.Why;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against every order there is, on small systems drawn at random; the rule of the thumb itself is common practice. */
class PowerOrderTest {
    private static final String TYPES = """
            housewright: 1
            project: {name: Small, stage: live}
            models:
              amp:
                kind: amplifier
                ports: {mains: {in: mains}, "in-{1..9}": {in: analog-audio}, "out-{1..9}": {out: analog-audio}}
              pc:
                kind: computer
                ports: {mains: {in: mains}, "in-{1..9}": {in: analog-audio}, "out-{1..9}": {out: analog-audio}, net: {both: ethernet}, usb: {both: usb-audio, channels: 2}}
                points: [play]
                patch: free
              desk:
                kind: mixer
                ports: {mains: {in: mains}, "in-{1..9}": {in: analog-audio}, "out-{1..9}": {out: analog-audio}, usb: {both: usb-audio, channels: 2}}
                points: [main]
                patch: free
              box:
                kind: processor
                ports: {mains: {in: mains}, "in-{1..9}": {in: analog-audio}, "out-{1..9}": {out: analog-audio}}
              net-switch:
                kind: switch
                ports: {mains: {in: mains}, "port-{1..4}": {both: ethernet}}
              words:
                kind: program
              sequencer:
                kind: power-distributor
                ports: {mains: {in: mains}, start: {in: contact}, "out-{1..8}": {out: mains}}
            """;

    private static PowerOrder order(String rest) {
        return new Small(TYPES + rest).study().operation().order();
    }

    private static List<String> things(PowerOrder order) {
        return order.steps().stream().map(PowerOrder.Step::thing).toList();
    }

    @Test
    void sourcesComeFirstAndAmplifiersLast() {
        PowerOrder order = order("""
                equipment:
                  amp: {model: amp}
                  desk: {model: desk}
                  box: {model: box}
                  player: {model: pc}
                cables:
                  C1: {from: player.out-1, to: box.in-1}
                  C2: {from: box.out-1, to: desk.in-1}
                  C3: {from: desk.out-1, to: amp.in-1}
                """);
        // without a route in the box a cable in and a cable out still say which way it goes
        assertThat(things(order)).containsExactly("player", "desk", "amp");
        assertThat(order.kept())
                .contains(new Must("player", "desk", Why.SIGNAL), new Must("player", "amp", Why.AMPLIFIER));
        assertThat(order.broken()).isEmpty();
        assertThat(order.shutDown().stream().map(PowerOrder.Step::thing)).containsExactly("amp", "desk", "player");
    }

    @Test
    void aLinkBothWaysGoesTheWayOfTheFeeds() {
        String hall = """
                equipment:
                  desk: {model: desk}
                  player: {model: pc}
                cables: {C1: {from: desk.usb, to: player.usb}}
                patch: {player: ["play -> usb:1"], desk: ["usb:1 -> main"]}
                """;
        assertThat(things(order(hall))).containsExactly("desk", "player");
        PowerOrder order = order(hall + "feeds: {music: {from: player.play, to: desk.main}}\n");
        assertThat(things(order)).containsExactly("player", "desk");
        assertThat(order.kept()).containsExactly(new Must("player", "desk", Why.SIGNAL));
    }

    @Test
    void aComputerComesBeforeItsProgramAndASequencerBeforeTheComputer() {
        PowerOrder order = order("""
                equipment:
                  words: {model: words, runs-on: pc}
                  pc: {model: pc, powered-by: master.out-1}
                  amp: {model: amp, powered-by: master.out-2}
                  master: {model: sequencer}
                """);
        assertThat(things(order)).containsExactly("master", "pc", "words");
        assertThat(order.steps().getFirst().wakes()).containsExactly("master", "amp");
        assertThat(order.broken())
                .as("the amplifier behind the computer's own sequencer cannot wait for the computer")
                .containsExactlyInAnyOrder(
                        new Must("pc", "master", Why.AMPLIFIER), new Must("words", "master", Why.AMPLIFIER));
    }

    @Test
    void aNetworkSwitchComesBeforeWhatTalksOverIt() {
        PowerOrder order = order("""
                equipment:
                  pc: {model: pc}
                  near: {model: net-switch, powered-by: one.out-1}
                  far: {model: net-switch, powered-by: two.out-1}
                  one: {model: sequencer}
                  two: {model: sequencer}
                cables:
                  N1: {from: pc.net, to: near.port-1}
                  N2: {from: near.port-2, to: far.port-1}
                """);
        assertThat(things(order)).containsExactly("one", "two", "pc");
        assertThat(order.kept())
                .containsExactlyInAnyOrder(new Must("one", "pc", Why.NETWORK), new Must("two", "pc", Why.NETWORK));
    }

    @Test
    void aCircleIsBrokenAtItsLastAndSaid() {
        PowerOrder order = order("""
                equipment:
                  a: {model: desk}
                  b: {model: pc}
                cables: {C1: {from: a.out-1, to: b.in-1}, C2: {from: b.out-1, to: a.in-1}}
                """);
        assertThat(things(order)).containsExactly("a", "b");
        assertThat(order.broken()).containsExactly(new Must("b", "a", Why.SIGNAL));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 150);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isOneOfAllOrdersThatObey(long seed) {
        Drawn drawn = new Drawn(new Random(seed));
        PowerOrder order = order(drawn.text());
        assertThat(things(order)).as(drawn.text()).containsExactlyInAnyOrderElementsOf(drawn.fewest());

        Set<Must> musts = drawn.musts();
        Set<Must> said = new HashSet<>(order.kept());
        said.addAll(order.broken());
        assertThat(said).as(drawn.text()).isEqualTo(musts);

        List<List<String>> all = permutations(drawn.fewest());
        boolean possible = all.stream().anyMatch(each -> obeys(each, musts));
        assertThat(order.broken().isEmpty()).as(drawn.text()).isEqualTo(possible);
        assertThat(obeys(things(order), order.kept())).as(drawn.text()).isTrue();
        for (Must broken : order.broken()) {
            Set<Must> more = new HashSet<>(order.kept());
            more.add(broken);
            assertThat(all)
                    .as("%s need not be given up in %s", broken, drawn.text())
                    .noneMatch(each -> obeys(each, more));
        }
    }

    private static boolean obeys(List<String> order, Collection<Must> musts) {
        return musts.stream().allMatch(must -> order.indexOf(must.before()) < order.indexOf(must.after()));
    }

    private static List<List<String>> permutations(List<String> of) {
        if (of.isEmpty()) {
            return List.of(List.of());
        }
        List<List<String>> all = new ArrayList<>();
        for (String first : of) {
            List<String> rest = new ArrayList<>(of);
            rest.remove(first);
            for (List<String> tail : permutations(rest)) {
                List<String> one = new ArrayList<>(List.of(first));
                one.addAll(tail);
                all.add(one);
            }
        }
        return all;
    }

    /** A few things, some behind sequencers, joined at random, circles included. */
    private static final class Drawn {
        private static final List<String> KINDS = List.of("amp", "pc", "desk", "box", "words");
        final List<String> kinds = new ArrayList<>();
        /** Which thing a program runs on, or which sequencer feeds a thing; -1 for none. */
        final int[] up;

        final int[] sequencerUp;
        final boolean[][] sends;

        Drawn(Random random) {
            int count = 3 + random.nextInt(3);
            int sequencers = random.nextInt(3);
            sequencerUp = IntStream.range(0, sequencers)
                    .map(i -> i > 0 && random.nextBoolean() ? i - 1 : -1)
                    .toArray();
            up = new int[count];
            sends = new boolean[count][count];
            for (int i = 0; i < count; i++) {
                String kind = KINDS.get(random.nextInt(KINDS.size()));
                int computer = kinds.indexOf("pc");
                kinds.add(kind.equals("words") && computer < 0 ? "pc" : kind);
                up[i] = kinds.get(i).equals("words") ? computer : random.nextInt(sequencers + 1) - 1;
            }
            for (int i = 0; i < count; i++) {
                for (int j = 0; j < count; j++) {
                    boolean carry =
                            !kinds.get(i).equals("words") && !kinds.get(j).equals("words");
                    sends[i][j] = i != j && carry && random.nextInt(4) == 0;
                }
            }
        }

        String text() {
            StringBuilder text = new StringBuilder("equipment:\n");
            for (int i = 0; i < kinds.size(); i++) {
                String from = kinds.get(i).equals("words")
                        ? ", runs-on: d" + up[i]
                        : up[i] < 0 ? "" : ", powered-by: s" + up[i] + ".out-1";
                text.append("  d%d: {model: %s%s}\n".formatted(i, kinds.get(i), from));
            }
            for (int i = 0; i < sequencerUp.length; i++) {
                text.append("  s%d: {model: sequencer%s}\n"
                        .formatted(i, sequencerUp[i] < 0 ? "" : ", powered-by: s" + sequencerUp[i] + ".out-2"));
            }
            text.append("cables:\n  C0: {}\n");
            for (int i = 0; i < kinds.size(); i++) {
                for (int j = 0; j < kinds.size(); j++) {
                    if (sends[i][j]) {
                        text.append(
                                "  C%d-%d: {from: d%d.out-%d, to: d%d.in-%d}\n".formatted(i, j, i, j + 1, j, i + 1));
                    }
                }
            }
            return text.toString();
        }

        /**
         * Of all sets of touches the smallest by which the hall is dark before and wholly on after: nothing may be left
         * on all week but a switch that a sequencer above it cuts, a computer comes on by its own button only, and a
         * sequencer that lost its supply, or was switched off, waits to be pressed.
         */
        List<String> fewest() {
            List<String> could = new ArrayList<>();
            for (int i = 0; i < kinds.size(); i++) {
                if (!kinds.get(i).equals("box")) {
                    could.add("d" + i);
                }
            }
            IntStream.range(0, sequencerUp.length).forEach(i -> could.add("s" + i));
            List<String> best = null;
            for (int bits = 0; bits < 1 << could.size(); bits++) {
                List<String> touched = new ArrayList<>();
                for (int i = 0; i < could.size(); i++) {
                    if ((bits >> i & 1) == 1) {
                        touched.add(could.get(i));
                    }
                }
                if ((best == null || touched.size() < best.size()) && works(touched)) {
                    best = touched;
                }
            }
            return best == null ? List.of() : best;
        }

        private boolean works(List<String> touched) {
            for (int i = 0; i < kinds.size(); i++) {
                boolean own = touched.contains("d" + i);
                boolean cut = false;
                boolean supplied = true;
                for (int at = kinds.get(i).equals("words") ? -1 : up[i]; at >= 0; at = sequencerUp[at]) {
                    cut = true;
                    supplied &= touched.contains("s" + at);
                }
                boolean after = supplied
                        && switch (kinds.get(i)) {
                            case "pc", "words" -> own;
                            case "box" -> true;
                            default -> own || cut;
                        };
                if (!after) {
                    return false;
                }
            }
            return true;
        }

        Set<Must> musts() {
            List<String> touched = fewest();
            int count = kinds.size();
            String[] wakes = new String[count];
            for (int i = 0; i < count; i++) {
                wakes[i] = touched.contains("d" + i) ? "d" + i : up[i] >= 0 ? "s" + up[i] : null;
            }
            Set<Must> musts = new LinkedHashSet<>();
            for (int i = 0; i < count; i++) {
                if (kinds.get(i).equals("words")) {
                    add(musts, wakes[up[i]], wakes[i], Why.COMPUTER);
                } else {
                    for (int at = up[i]; at >= 0; at = sequencerUp[at]) {
                        add(musts, "s" + at, wakes[i], Why.SUPPLY);
                    }
                }
            }
            for (int i = 0; i < sequencerUp.length; i++) {
                for (int at = sequencerUp[i]; at >= 0 && touched.contains("s" + i); at = sequencerUp[at]) {
                    add(musts, "s" + at, "s" + i, Why.SUPPLY);
                }
            }
            Set<String> loud = new HashSet<>();
            for (int i = 0; i < count; i++) {
                if (kinds.get(i).equals("amp")) {
                    loud.add(wakes[i]);
                }
            }
            for (String each : touched) {
                for (String other : touched) {
                    if (loud.contains(other) && !loud.contains(each)) {
                        add(musts, each, other, Why.AMPLIFIER);
                    }
                }
            }
            boolean[][] reach = new boolean[count][];
            for (int i = 0; i < count; i++) {
                reach[i] = sends[i].clone();
            }
            for (int k = 0; k < count; k++) { // only through what nobody wakes
                for (int i = 0; i < count && wakes[k] == null; i++) {
                    for (int j = 0; j < count; j++) {
                        reach[i][j] |= reach[i][k] && reach[k][j];
                    }
                }
            }
            for (int i = 0; i < count; i++) {
                for (int j = 0; j < count; j++) {
                    if (reach[i][j]) {
                        add(musts, wakes[i], wakes[j], Why.SIGNAL);
                    }
                }
            }
            return musts;
        }

        private static void add(Set<Must> musts, String before, String after, Why why) {
            if (before != null && after != null && !before.equals(after)) {
                musts.add(new Must(before, after, why));
            }
        }
    }
}
