package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.CableType;
import housewright.model.Feed;
import housewright.model.Kind;
import housewright.model.Library;
import housewright.model.Life;
import housewright.model.Project;
import housewright.model.Remarks;
import housewright.model.Signal;
import housewright.model.change.Change;
import housewright.signal.SlowMend.Found;
import housewright.signal.SlowMend.Price;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The cheapest mend against trying every small set of changes, on tiny systems made at random. */
class MendPropertyTest {
    private static final int SEEDS = Integer.getInteger("housewright.seeds", 250);
    /** Sets of more than this many are not tried: the cheapest of them is not known. */
    private static final int MOST_CHANGES = 3;

    private static final Library CONVERTERS = Hall.library(List.of(
            new Kit("sdi-to-hdmi", Kind.CONVERTER)
                    .port("in", Kit.Plug.in(Signal.SDI).channels(1, 1))
                    .port("out", Kit.Plug.out(Signal.HDMI).channels(1, 1))
                    .routes("in:v -> out:v", "in:1 -> out:1")
                    .latency("1 ms")
                    .price(120)
                    .model(),
            new Kit("sound-to-hdmi", Kind.CONVERTER)
                    .in("in", Signal.ANALOG_AUDIO)
                    .port("out", Kit.Plug.out(Signal.HDMI).channels(1, 1))
                    .routes("in -> out:1")
                    .price(150)
                    .model()));

    private static CableType cableType(String id, Signal signal, int perMetre, int perPair) {
        return new CableType(
                id,
                null,
                null,
                List.of(signal),
                List.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(),
                null,
                BigDecimal.valueOf(perMetre),
                BigDecimal.valueOf(perPair),
                null,
                Remarks.NONE);
    }

    /** A tiny system with something missing. */
    private static final class Tiny {
        private final Random random;
        private final Hall hall = new Hall();
        private final List<String> middles = new ArrayList<>();

        Tiny(long seed) {
            random = new Random(seed);
        }

        private boolean chance(int percent) {
            return random.nextInt(100) < percent;
        }

        private <T> T pick(List<T> list) {
            return list.get(random.nextInt(list.size()));
        }

        Project project() {
            hall.type(new Kit("mic", Kind.MICROPHONE)
                            .out("out", Signal.ANALOG_AUDIO)
                            .points("pickup")
                            .routes("pickup -> out"))
                    .type(new Kit("desk", Kind.MIXER)
                            .in("in-{1..2}", Signal.ANALOG_AUDIO)
                            .out("out-{1..2}", Signal.ANALOG_AUDIO)
                            .points("main")
                            .patchFree()
                            .latency("1 ms")
                            .gate("live", false, "out-2"))
                    .type(new Kit("listed", Kind.MATRIX)
                            .in("in-{1..2}", Signal.ANALOG_AUDIO)
                            .out("out-{1..2}", Signal.ANALOG_AUDIO)
                            .points("sum")
                            .patchList("in-{1..2} -> sum", "sum -> out-{1..2}", "in-1 -> out-1")
                            .latency("2 ms"))
                    .type(new Kit("speaker", Kind.LOUDSPEAKER)
                            .in("in", Signal.ANALOG_AUDIO)
                            .points("sound")
                            .routes("in -> sound")
                            .latency("1 ms"))
                    .type(new Kit("camera", Kind.CAMERA)
                            .port("sdi", Kit.Plug.out(Signal.SDI).channels(1, 1))
                            .points("picture", "sound")
                            .routes("picture -> sdi:v", "sound -> sdi:1"))
                    .type(new Kit("screen", Kind.DISPLAY)
                            .port("hdmi", Kit.Plug.in(Signal.HDMI).channels(1, 1))
                            .port("sdi", Kit.Plug.in(Signal.SDI).channels(1, 1))
                            .points("picture", "sound")
                            .routes("hdmi:v -> picture", "sdi:v -> picture", "hdmi:1 -> sound", "sdi:1 -> sound"))
                    .type(new Kit("box", Kind.STAGE_BOX)
                            .in("in", Signal.ANALOG_AUDIO)
                            .out("out", Signal.ANALOG_AUDIO)
                            .both("link", Signal.STAGE_LINK)
                            .routes("in -> link", "link -> out"))
                    .cableType(cableType("sound-cable", Signal.ANALOG_AUDIO, 2, 5))
                    .cableType(cableType("sdi-cable", Signal.SDI, 3, 4))
                    .cableType(cableType("hdmi-cable", Signal.HDMI, 4, 0))
                    .cableType(cableType("link-cable", Signal.STAGE_LINK, 1, 2));
            List<String> begins = new ArrayList<>();
            List<String> ends = new ArrayList<>();
            if (chance(75)) {
                sound(begins, ends);
            } else {
                picture(begins, ends);
            }
            feeds(begins, ends);
            return hall.project();
        }

        private void sound(List<String> begins, List<String> ends) {
            hall.things("mic", "mic-1").things("speaker", "speaker-1");
            begins.add("mic-1.pickup");
            ends.add("speaker-1.sound");
            List<String> outs = new ArrayList<>(List.of("mic-1.out"));
            List<String> ins = new ArrayList<>(List.of("speaker-1.in"));
            if (chance(50)) {
                hall.things("mic", "mic-2");
                begins.add("mic-2.pickup");
                outs.add("mic-2.out");
            }
            if (chance(50)) {
                hall.things("speaker", "speaker-2");
                ends.add("speaker-2.sound");
                ins.add("speaker-2.in");
            }
            String device = pick(List.of("desk", "listed", "desk", "listed", "box"));
            List<String> all = new ArrayList<>(List.of("a"));
            hall.things(device, "a");
            if (device.equals("box") || chance(15)) {
                hall.things(device, "b");
                all.add("b");
            }
            for (String each : all) {
                if (device.equals("box")) {
                    outs.add(each + ".out");
                    ins.add(each + ".in");
                } else {
                    outs.addAll(List.of(each + ".out-1", each + ".out-2"));
                    ins.addAll(List.of(each + ".in-1", each + ".in-2"));
                }
            }
            if (device.equals("box") && chance(60)) {
                hall.cable("L1", "a.link", "b.link", chance(70) ? Life.KEEP : Life.STRIKE);
            }
            cables(outs, ins);
            if (!device.equals("box")) {
                String point = device.equals("desk") ? "main" : "sum";
                for (String each : all) {
                    middles.addAll(List.of(each + "." + point, each + ".in-1", each + ".out-1"));
                    for (String join : List.of(
                            "in-1 -> " + point,
                            "in-2 -> " + point,
                            point + " -> out-1",
                            point + " -> out-2",
                            "in-1 -> out-1")) {
                        if (chance(45)) {
                            hall.patch(each, join);
                        }
                    }
                    if (chance(25)) {
                        hall.set(each, point, "mute");
                    }
                    if (chance(25)) { // in a row with the other
                        hall.set(each, pick(List.of("in-1", "out-1")), "mute");
                    }
                    if (device.equals("desk") && chance(40)) {
                        hall.set(each, "live", "on");
                    }
                    if (chance(25)) {
                        ends.add(each + "." + point);
                    }
                }
            }
        }

        private void picture(List<String> begins, List<String> ends) {
            hall.things("camera", "cam").things("screen", "left", "right").things("mic", "mic-1");
            boolean seen = chance(40);
            begins.addAll(seen ? List.of("cam.picture") : List.of("cam.sound", "mic-1.pickup"));
            ends.addAll(seen ? List.of("left.picture", "right.picture") : List.of("left.sound", "right.sound"));
            cables(List.of("cam.sdi"), List.of("left.sdi"));
        }

        private void cables(List<String> outs, List<String> ins) {
            List<String> free = new ArrayList<>(ins);
            int number = 1;
            for (String out : outs) {
                if (!free.isEmpty() && chance(50)) {
                    String in = pick(free);
                    if (in.startsWith(out.substring(0, out.indexOf('.') + 1))) {
                        continue;
                    }
                    free.remove(in);
                    hall.cable("C" + number++, out, chance(4) ? "unknown" : in, chance(85) ? Life.KEEP : Life.STRIKE);
                }
            }
        }

        private void feeds(List<String> begins, List<String> ends) {
            List<String> pairs = new ArrayList<>();
            begins.forEach(from -> ends.forEach(to -> pairs.add(from + " " + to)));
            for (int i = 0; i < 2; i++) {
                String within = chance(20) ? pick(List.of("1.5 ms", "3 ms", "3 ms")) : null;
                String from = pick(begins);
                Set<String> to = new LinkedHashSet<>(List.of(pick(ends)));
                if (chance(35)) {
                    to.add(pick(ends));
                }
                to.forEach(each -> pairs.remove(from + " " + each));
                hall.feed("F" + i, from, String.join(", ", to), within, chance(15) ? through() : null);
            }
            for (int i = 0; i < 2 && !pairs.isEmpty(); i++) {
                if (chance(45)) {
                    String[] pair = pick(pairs).split(" ");
                    hall.never("N" + i, pair[0], pair[1]);
                }
            }
        }

        private @Nullable String through() {
            return middles.isEmpty() ? null : pick(middles);
        }
    }

    private final Map<String, Integer> seen = new TreeMap<>();

    @Tag("slow")
    @Test
    void noSmallSetOfChangesMendsForLess() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Project project = new Tiny(seed).project();
            Signals signals = Signals.of(project, CONVERTERS, Moment.target());
            for (FeedProof proof : signals.proofs()) {
                if (!proof.proven()) {
                    compare(project, signals, proof, "seed " + seed + " " + proof.feed());
                }
            }
        }
        assertThat(count("one pair, 1 changes")).isGreaterThan(SEEDS / 4);
        assertThat(count("one pair, 3 changes")).isGreaterThan(SEEDS / 10);
        assertThat(count("one pair, no mend")).isGreaterThan(SEEDS / 10);
        assertThat(count("never, 1 changes")).isGreaterThan(SEEDS / 50);
        assertThat(count("several pairs, 2 changes")).isPositive();
    }

    private int count(String kind) {
        return seen.getOrDefault(kind, 0);
    }

    private void compare(Project project, Signals signals, FeedProof proof, String what) {
        List<Mend> mends = signals.mends(proof);
        assertThat(mends).as(what).hasSizeLessThanOrEqualTo(2);
        Mend mend = mends.isEmpty() ? null : mends.getFirst();
        for (Mend each : mends) {
            holds(project, signals, proof, each, what);
        }
        Price price = mend == null ? null : Price.of(mend);
        String kind;
        Set<Price> expected = new LinkedHashSet<>();
        if (proof.feed().never()) {
            if (proof.state() != FeedState.ARRIVES) {
                assertThat(mend).as(what).isNull();
                return;
            }
            kind = "never";
            SlowMend slow = new SlowMend(project, CONVERTERS);
            slow.cheapest(slow.cutting(), MOST_CHANGES, price, (after, chosen) -> isOut(after, proof.feed()))
                    .forEach(found -> expected.add(found.price()));
        } else {
            List<Integer> broken = broken(signals, proof.feed());
            kind = broken.size() == 1 ? "one pair" : "several pairs";
            for (List<Integer> order : orders(broken)) {
                inOrder(project, proof.feed(), order, Price.NOTHING, price, expected);
            }
        }
        seen.merge(kind + (mend == null ? ", no mend" : ", " + mend.changes().size() + " changes"), 1, Integer::sum);
        Price least = expected.stream().min(Price::compareTo).orElse(null);
        if (price != null && changesOf(mend) <= MOST_CHANGES && !kind.equals("several pairs")) {
            assertThat(least).as(what + " is found by trying, too: " + mend).isNotNull();
        }
        if (price == null) {
            assertThat(least)
                    .as(what + " has a mend of at most " + MOST_CHANGES)
                    .isNull();
        } else if (kind.equals("several pairs")) {
            boolean longer = least != null
                    && price.compareTo(least) < 0
                    && mend.changes().size() > MOST_CHANGES;
            // of mends of one pair that cost the same one may serve the next pair better: that is said
            boolean saysSo = mend.assumed().stream().anyMatch(word -> word.contains("all at once may cost less"));
            assertThat(least == null || longer || price.compareTo(least) == 0 || (saysSo && expected.contains(price)))
                    .as("%s %s is one of %s", what, price, expected)
                    .isTrue();
        } else if (least != null) {
            assertThat(price).as(what + "\n" + mend).isEqualTo(least);
        }
    }

    private static int changesOf(Mend mend) {
        return Price.of(mend).changes();
    }

    /** All the sums that mending the pairs one after the other can come to, each in a cheapest way. */
    private static void inOrder(
            Project now, Feed feed, List<Integer> order, Price sum, @Nullable Price limit, Set<Price> sums) {
        Signals signals = Signals.of(now, CONVERTERS, Moment.target());
        int at = 0;
        while (at < order.size() && SlowMend.pair(signals, feed, order.get(at)).proven()) {
            at++;
        }
        if (at == order.size()) {
            if (signals.findProof(feed.id()).orElseThrow().proven()) {
                sums.add(sum);
            }
            return;
        }
        int pair = order.get(at);
        SlowMend slow = new SlowMend(now, CONVERTERS);
        for (Found found : slow.cheapest(slow.joining(), MOST_CHANGES, limit, SlowMend.proves(feed, pair))) {
            inOrder(found.after(), feed, order.subList(at + 1, order.size()), sum.plus(found.price()), limit, sums);
        }
    }

    private static boolean isOut(Signals after, Feed feed) {
        return after.findProof(feed.id()).orElseThrow().pairs().stream()
                .noneMatch(pair -> pair.state() == FeedState.ARRIVES);
    }

    private static void holds(Project project, Signals before, FeedProof proof, Mend mend, String what) {
        Signals after = Signals.of(Change.apply(project, mend.changes()), CONVERTERS, Moment.target());
        FeedProof mended = after.findProof(proof.feed().id()).orElseThrow();
        assertThat(proof.feed().never() ? isOut(after, proof.feed()) : mended.proven())
                .as(what + " is mended by " + mend)
                .isTrue();
        assertThat(SlowMend.harmsNothing(before, after))
                .as(what + " harmed by " + mend)
                .isTrue();
        assertThat(mend.steps()).as(what).isNotEmpty();
        assertThat(todaysStates(after.project()))
                .as(what + ": nobody has touched the hall yet")
                .isEqualTo(todaysStates(project));
    }

    private static List<FeedState> todaysStates(Project project) {
        return Signals.of(project, CONVERTERS, Moment.today()).proofs().stream()
                .flatMap(proof -> proof.pairs().stream())
                .map(PairProof::state)
                .toList();
    }

    private static List<Integer> broken(Signals signals, Feed feed) {
        List<Integer> broken = new ArrayList<>();
        List<PairProof> pairs = signals.findProof(feed.id()).orElseThrow().pairs();
        for (int i = 0; i < pairs.size(); i++) {
            if (!pairs.get(i).proven()) {
                broken.add(i);
            }
        }
        return broken;
    }

    private static List<List<Integer>> orders(List<Integer> items) {
        if (items.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Integer>> orders = new ArrayList<>();
        for (Integer first : items) {
            List<Integer> rest = new ArrayList<>(items);
            rest.remove(first);
            for (List<Integer> order : orders(rest)) {
                List<Integer> whole = new ArrayList<>(List.of(first));
                whole.addAll(order);
                orders.add(whole);
            }
        }
        return orders;
    }
}
