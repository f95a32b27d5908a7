package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Signal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** FORMAT "Meaning": route, patch, switch, point, tie, life. */
class InsideMeaningTest {
    private static Hall desk() {
        return new Hall()
                .type(new Kit("desk", Kind.MIXER)
                        .in("in-{1..2}", Signal.ANALOG_AUDIO)
                        .out("out-{1..2}", Signal.ANALOG_AUDIO)
                        .points("ch-{1..2}", "main")
                        .patchFree()
                        .gate("talkback", false, "ch-2"))
                .things("desk", "desk");
    }

    private static PairProof pair(Hall hall, String from, String to) {
        return hall.feed("f", from, to).proof("f").pairs().getFirst();
    }

    @Test
    void pointsSumAndALeavingChannelTakesOneSource() {
        Hall hall = desk().patch("desk", "ch-1 -> main", "ch-2 -> main", "main -> out-1")
                .set("desk", "talkback", "on");
        assertThat(pair(hall, "desk.ch-1", "desk.main").proven()).isTrue();
        assertThat(pair(hall, "desk.ch-2", "desk.main").proven()).isTrue();
        assertThat(hall.target().contested()).isEmpty();
    }

    private static Hall contested() {
        return desk().type(new Kit("amp").in("in", Signal.ANALOG_AUDIO))
                .things("amp", "amp")
                .cable("C1", "desk.out-1", "amp.in")
                .patch("desk", "ch-1 -> out-1", "ch-2 -> out-1")
                .set("desk", "talkback", "on");
    }

    @Test
    void ofTwoSourcesPatchedToOneOutputNeitherIsProven() {
        PairProof stopped = pair(contested(), "desk.ch-1", "amp.in");
        assertThat(stopped.proven()).isFalse();
        assertThat(stopped.stop().at()).hasToString("desk.ch-1");
        assertThat(stopped.stop().why()).contains("desk.out-1", "ch-1", "ch-2");
        assertThat(contested().target().contested()).singleElement().satisfies(each -> {
            assertThat(each.at()).hasToString("desk.out-1");
            assertThat(each.sources()).hasSize(2);
        });
    }

    @Test
    void forANeverFeedEitherOfThemArrives() {
        assertThat(contested().never("n", "desk.ch-2", "amp.in").proof("n").state())
                .isEqualTo(FeedState.ARRIVES);
    }

    @Test
    void aMutedSourceIsPatchedAllTheSame() {
        Hall hall = contested().set("desk", "ch-2", "mute");
        assertThat(pair(hall, "desk.ch-1", "amp.in").proven()).isFalse();
        assertThat(hall.target().contested()).hasSize(1);
    }

    @Test
    void anEntryWrittenTwiceIsOneEntry() {
        Hall hall = desk().patch("desk", "ch-1 -> out-1", "ch-1 -> out-1")
                .type(new Kit("amp").in("in", Signal.ANALOG_AUDIO))
                .things("amp", "amp")
                .cable("C1", "desk.out-1", "amp.in");
        PairProof proof = pair(hall, "desk.ch-1", "amp.in");
        assertThat(proof.proven()).isTrue();
        assertThat(proof.others()).isEmpty();
    }

    @Test
    void fixedRoutesMayMerge() {
        Hall hall = new Hall()
                .type(new Kit("mix")
                        .in("in-{1..2}", Signal.ANALOG_AUDIO)
                        .out("out", Signal.ANALOG_AUDIO)
                        .routes("in-{1..2} -> out"))
                .type(new Kit("amp").in("in", Signal.ANALOG_AUDIO))
                .type(new Kit("mic").out("out-{1..2}", Signal.ANALOG_AUDIO))
                .things("mix", "mix")
                .things("amp", "amp")
                .things("mic", "mic")
                .multicore("M", Life.KEEP, "mic.out-{1..2} -> mix.in-{1..2}")
                .cable("C", "mix.out", "amp.in");
        assertThat(pair(hall, "mic.out-1", "amp.in").proven()).isTrue();
        assertThat(pair(hall, "mic.out-2", "amp.in").proven()).isTrue();
    }

    @Test
    void aListAllowsThosePairsAndNoPatchNone() {
        Hall hall = new Hall()
                .type(new Kit("matrix")
                        .in("in-{1..2}", Signal.ANALOG_AUDIO)
                        .points("a", "b")
                        .patchList("in-1 -> a"))
                .type(new Kit("fixed").in("in", Signal.ANALOG_AUDIO).points("a"))
                .type(new Kit("mic").out("out-{1..3}", Signal.ANALOG_AUDIO))
                .things("matrix", "matrix")
                .things("fixed", "fixed")
                .things("mic", "mic")
                .cable("C1", "mic.out-1", "matrix.in-1")
                .cable("C2", "mic.out-2", "matrix.in-2")
                .cable("C3", "mic.out-3", "fixed.in")
                .patch("matrix", "in-1 -> a", "in-2 -> b")
                .patch("fixed", "in -> a");
        assertThat(pair(hall, "mic.out-1", "matrix.a").proven()).isTrue();
        assertThat(pair(hall, "mic.out-2", "matrix.b").proven()).isFalse();
        assertThat(pair(hall, "mic.out-3", "fixed.a").proven()).isFalse();
        assertThat(hall.target().unjoined()).hasSize(2);
    }

    @Test
    void aSwitchGatesByItsDefaultAndAsSet() {
        Hall off = desk().patch("desk", "ch-2 -> main");
        PairProof stopped = pair(off, "desk.ch-2", "desk.main");
        assertThat(stopped.proven()).isFalse();
        assertThat(stopped.stop().at()).hasToString("desk.ch-2");
        assertThat(stopped.stop().why()).contains("talkback", "off");

        assertThat(pair(off.set("desk", "talkback", "on"), "desk.ch-2", "desk.main")
                        .proven())
                .isTrue();
        assertThat(pair(off.wasSet("desk", "talkback", "off"), "desk.ch-2", "desk.main")
                        .proven())
                .isTrue();
        assertThat(off.today().findProof("f").orElseThrow().proven())
                .as("off before")
                .isFalse();
    }

    @Test
    void aSwitchThatIsOnByDefaultMayBeTurnedOff() {
        Hall hall = new Hall()
                .type(new Kit("box").points("a", "b").patchFree().gate("live", true, "b"))
                .things("box", "box")
                .patch("box", "a -> b");
        assertThat(pair(hall, "box.a", "box.b").proven()).isTrue();
        assertThat(pair(hall.set("box", "live", "off"), "box.a", "box.b").proven())
                .isFalse();
    }

    @Test
    void whatIsMutedPassesNothing() {
        Hall hall = desk().patch("desk", "ch-1 -> main").set("desk", "ch-1", "mute");
        assertThat(pair(hall, "desk.ch-1", "desk.main").stop().why()).contains("mute");
    }

    private static Hall panels() {
        return new Hall()
                .type(new Kit("panel", Kind.PANEL).ties("front-{1..2} = rear-{1..2}"))
                .type(new Kit("mic").out("out", Signal.ANALOG_AUDIO))
                .type(new Kit("amp").in("in", Signal.ANALOG_AUDIO))
                .type(new Kit("cam").out("sdi", Signal.SDI))
                .type(new Kit("screen").in("sdi", Signal.SDI))
                .things("panel", "left", "right")
                .things("mic", "mic")
                .things("amp", "amp")
                .things("cam", "cam")
                .things("screen", "screen")
                .multicore("M", Life.KEEP, "left.rear-{1..2} -> right.rear-{1..2}");
    }

    @Test
    void aTieRunsStraightThroughBothWays() {
        Hall there = panels().cable("C1", "mic.out", "left.front-1").cable("C2", "right.front-1", "amp.in");
        assertThat(pair(there, "mic.out", "amp.in").proven()).isTrue();
        Hall back = panels().cable("C1", "mic.out", "right.front-2").cable("C2", "left.front-2", "amp.in");
        assertThat(pair(back, "mic.out", "amp.in").proven()).isTrue();
        Hall askew = panels().cable("C1", "mic.out", "left.front-1").cable("C2", "right.front-2", "amp.in");
        assertThat(pair(askew, "mic.out", "amp.in").proven()).isFalse();
    }

    @Test
    void aTieKeepsWhatItIsGiven() {
        Hall hall = panels().cable("C1", "cam.sdi", "left.front-1")
                .cable("C2", "right.front-1", "amp.in")
                .cable("C3", "right.front-1", "screen.sdi");
        assertThat(pair(hall, "cam.sdi:1", "amp.in:1").proven())
                .as("sound in a picture signal does not come out as analogue sound")
                .isFalse();
        assertThat(pair(hall, "cam.sdi:1", "screen.sdi:1").proven()).isTrue();
        assertThat(pair(hall, "cam.sdi:v", "screen.sdi:v").proven()).isTrue();
    }

    @Test
    void lifeSaysWhatIsThereTodayAndAfter() {
        Hall hall = new Hall()
                .type(new Kit("mic").out("out-{1..5}", Signal.ANALOG_AUDIO))
                .type(new Kit("amp").in("in-{1..5}", Signal.ANALOG_AUDIO))
                .things("mic", "mic")
                .things("amp", "amp")
                .cable("C1", "mic.out-1", "amp.in-1", Life.KEEP)
                .cable("C2", "mic.out-2", "amp.in-2", Life.MOVE)
                .cable("C3", "mic.out-3", "amp.in-3", Life.STRIKE)
                .cable("C4", "mic.out-4", "amp.in-4", Life.NEW)
                .cable("C5", "mic.out-5", "amp.in-5", Life.HIRE)
                .feed("f", "mic.out-{1..5}", "amp.in-{1..5}");
        assertThat(proven(hall.today())).containsExactly(true, true, true, false, false);
        assertThat(proven(hall.target())).containsExactly(true, true, false, true, false);
    }

    private static List<Boolean> proven(Signals signals) {
        return signals.findProof("f").orElseThrow().pairs().stream()
                .map(PairProof::proven)
                .toList();
    }

    @Test
    void whatWasHoldsToday() {
        Hall hall = new Hall()
                .type(new Kit("mic").out("out", Signal.ANALOG_AUDIO))
                .type(new Kit("amp").in("in-{1..2}", Signal.ANALOG_AUDIO))
                .things("mic", "mic")
                .things("amp", "amp")
                .cable("C1", "mic.out", "amp.in-1")
                .cableWas("C1", "amp.in-2")
                .feed("now", "mic.out", "amp.in-1")
                .feed("before", "mic.out", "amp.in-2");
        assertThat(hall.target().findProof("now").orElseThrow().proven()).isTrue();
        assertThat(hall.target().findProof("before").orElseThrow().proven()).isFalse();
        assertThat(hall.today().findProof("now").orElseThrow().proven()).isFalse();
        assertThat(hall.today().findProof("before").orElseThrow().proven()).isTrue();
    }

    @Test
    void aPatchThatTheTypeOfTodayCannotTakeStopsNothingElse() {
        Hall hall = desk().type(new Kit("old")
                        .in("in-1", Signal.ANALOG_AUDIO)
                        .points("ch-1", "main")
                        .patchFree())
                .was("desk", "old")
                .patch("desk", "ch-2 -> main", "ch-1 -> main")
                .feed("f", "desk.ch-1", "desk.main");
        assertThat(hall.today().findProof("f").orElseThrow().proven()).isTrue();
        assertThat(hall.today().unjoined())
                .singleElement()
                .satisfies(each -> assertThat(each.why()).contains("ch-2"));
    }
}
