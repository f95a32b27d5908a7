package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Carries;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Signal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** FORMAT "Meaning": feed, never; where a feed stops and why. */
class FeedMeaningTest {
    private static Hall stereo(String left, String right) {
        return new Hall()
                .type(new Kit("player").out("out-{L,R}", Signal.ANALOG_AUDIO))
                .type(new Kit("speaker").in("in", Signal.ANALOG_AUDIO))
                .things("player", "player")
                .things("speaker", "left", "right")
                .cable("C1", "player.out-L", left)
                .cable("C2", "player.out-R", right);
    }

    private static List<FeedState> states(Hall hall, String feed) {
        return hall.proof(feed).pairs().stream().map(PairProof::state).toList();
    }

    @Test
    void listsOfEqualLengthPairUpInOrder() {
        Hall hall = stereo("left.in", "right.in").feed("f", "player.out-{L,R}", "left.in, right.in");
        assertThat(states(hall, "f")).containsExactly(FeedState.PROVEN, FeedState.PROVEN);
    }

    @Test
    void whereLeftComesOutOnTheRightThePairIsCrossed() {
        Hall hall = stereo("right.in", "left.in").feed("f", "player.out-{L,R}", "left.in, right.in");
        assertThat(states(hall, "f")).containsExactly(FeedState.CROSSED, FeedState.CROSSED);
        assertThat(hall.proof("f").pairs().getFirst().stop().why()).contains("another source of the feed belongs");
    }

    @Test
    void whatArrivesWhereItShouldOnlyNotThroughWhatItShouldIsNotCrossed() {
        Hall hall = stereo("left.in", "right.in")
                .type(new Kit("split").in("in", Signal.ANALOG_AUDIO))
                .things("split", "split")
                .cable("C3", "player.out-L", "right.in")
                .feed("f", "player.out-{L,R}", "left.in, right.in", null, "split.in");
        assertThat(states(hall, "f")).containsExactly(FeedState.BROKEN, FeedState.BROKEN);
    }

    @Test
    void otherwiseEverySourceMustReachEveryDestination() {
        Hall one = stereo("left.in", "right.in").feed("f", "player.out-L", "left.in, right.in");
        assertThat(states(one, "f")).containsExactly(FeedState.PROVEN, FeedState.BROKEN);
        Hall shared = one.cable("C3", "player.out-L", "right.in");
        assertThat(states(shared, "f")).containsExactly(FeedState.PROVEN, FeedState.PROVEN);
        assertThat(shared.proof("f").pairs().getFirst().assumed()).anyMatch(words -> words.contains("shares"));
    }

    @Test
    void aFeedWithNoDestinationIsLegalAndNotProven() {
        Hall hall = stereo("left.in", "right.in").feed("f", "player.out-L", "");
        assertThat(hall.proof("f").state()).isEqualTo(FeedState.BROKEN);
    }

    @Test
    void aNeverFeedHoldsForEverySourceAndDestinationWhateverTheGain() {
        Hall hall = new Hall()
                .type(new Kit("box").points("a", "b", "c", "d").patchFree())
                .things("box", "box")
                .patch("box", "a -> d", "-60 dB", null, null)
                .never("n", "box.a, box.b", "box.c, box.d");
        assertThat(states(hall, "n"))
                .containsExactly(FeedState.PROVEN, FeedState.ARRIVES, FeedState.PROVEN, FeedState.PROVEN);
        assertThat(hall.proof("n").state()).isEqualTo(FeedState.ARRIVES);
        assertThat(hall.proof("n").pairs().get(1).hops()).hasSize(1);
    }

    private static Hall unknown() {
        return new Hall()
                .type(new Kit("mic").out("out", Signal.ANALOG_AUDIO))
                .type(new Kit("stream").in("in", Signal.ANALOG_AUDIO))
                .type(new Kit("sketch").sketch())
                .type(new Kit("panel", Kind.PANEL).ties("front-1 = rear-1"))
                .type(new Kit("player", Kind.COMPUTER)
                        .both("net", Signal.ETHERNET)
                        .points("click")
                        .patchFree())
                .things("mic", "mic")
                .things("stream", "stream")
                .things("panel", "panel")
                .things("player", "player")
                .things("sketch", "amp");
    }

    @Test
    void aNeverFeedThatLeadsIntoTheUnknownIsNotProven() {
        Hall hall = unknown().cable("C1", "mic.out", "amp.socket").never("n", "mic.out", "stream.in");
        assertThat(hall.proof("n").state()).isEqualTo(FeedState.BROKEN);
        assertThat(hall.proof("n").pairs().getFirst().stop().at()).hasToString("mic.out");
        assertThat(hall.proof("n").pairs().getFirst().stop().why()).contains("cannot be shown", "amp");
    }

    @Test
    void norThroughAPanelIntoACableThatNobodyHasFollowed() {
        Hall hall = unknown()
                .cable("C1", "mic.out", "panel.front-1")
                .cable("C2", "panel.rear-1", "unknown")
                .never("n", "mic.out", "stream.in");
        assertThat(hall.proof("n").state()).isEqualTo(FeedState.BROKEN);
        assertThat(hall.proof("n").pairs().getFirst().stop().why()).contains("C2");
    }

    @Test
    void norByNetworkIntoADeviceWhoseInsideIsNotKnown() {
        Hall hall = unknown()
                .cable("C1", "player.net", "amp.net")
                .patch("player", "click -> net:1")
                .send("S", "player.net:1", "amp.net:1")
                .never("n", "player.click", "stream.in");
        assertThat(hall.proof("n").state()).isEqualTo(FeedState.BROKEN);
        assertThat(hall.proof("n").pairs().getFirst().stop().why()).contains("amp");
    }

    @Test
    void nothingArrivesAtWhatIsNotThere() {
        Hall hall = unknown().thing("old", "stream", Life.STRIKE).never("n", "mic.out", "old.in");
        assertThat(hall.proof("n").state()).isEqualTo(FeedState.PROVEN);
        assertThat(hall.proof("n").pairs().getFirst().assumed())
                .singleElement()
                .asString()
                .contains("old", "not there");
        assertThat(hall.today().findProof("n").orElseThrow().state()).isEqualTo(FeedState.PROVEN);
    }

    @Test
    void whatAFeedCarriesIsCheckedAndSteersNothing() {
        Hall hall = new Hall()
                .type(new Kit("camera").out("sdi", Signal.SDI))
                .type(new Kit("screen").in("sdi", Signal.SDI).points("picture").routes("sdi:1 -> picture"))
                .things("camera", "camera")
                .things("screen", "screen")
                .cable("C1", "camera.sdi", "screen.sdi")
                .feed("f", false, Carries.PICTURE, "camera.sdi:1", "screen.picture", null, null)
                .feed("g", false, Carries.AUDIO, "camera.sdi:1", "screen.picture", null, null);
        assertThat(hall.proof("f").state()).isEqualTo(FeedState.BROKEN);
        assertThat(hall.proof("f").pairs().getFirst().stop().why()).contains("sound", "picture");
        assertThat(hall.proof("g").state()).isEqualTo(FeedState.PROVEN);
    }

    private static Hall desk() {
        return new Hall()
                .type(new Kit("mic")
                        .out("out", Signal.ANALOG_AUDIO)
                        .points("pickup")
                        .routes("pickup -> out"))
                .type(new Kit("desk", Kind.MIXER)
                        .in("in-{1..2}", Signal.ANALOG_AUDIO)
                        .out("out-{1..2}", Signal.ANALOG_AUDIO)
                        .points("ch-{1..2}", "main")
                        .patchFree())
                .type(new Kit("speaker")
                        .in("in", Signal.ANALOG_AUDIO)
                        .points("sound")
                        .routes("in -> sound"))
                .things("mic", "mic")
                .things("desk", "desk")
                .things("speaker", "speaker")
                .feed("f", "mic.pickup", "speaker.sound");
    }

    private static Stop stop(Hall hall) {
        return hall.proof("f").pairs().getFirst().stop();
    }

    @Test
    void itStopsAtAPortWithNothingInItAndNamesTheOneThatWaits() {
        Stop stop = stop(desk().cable("C2", "desk.out-1", "speaker.in")
                .patch("desk", "in-1 -> ch-1", "ch-1 -> main", "main -> out-1"));
        assertThat(stop.at()).hasToString("mic.out");
        assertThat(stop.why()).contains("nothing is plugged into mic, out");
    }

    @Test
    void itStopsWhereThePatchIsMissing() {
        Stop stop = stop(desk().cable("C1", "mic.out", "desk.in-1")
                .cable("C2", "desk.out-1", "speaker.in")
                .patch("desk", "in-1 -> ch-1", "ch-2 -> main", "main -> out-1"));
        assertThat(stop.at()).hasToString("desk.ch-1");
        assertThat(stop.why()).contains("desk", "patched", "ch-1", "main");
    }

    @Test
    void itStopsWhereACableEndsNobodyKnowsWhere() {
        Stop stop = stop(desk().cable("C1", "mic.out", "unknown"));
        assertThat(stop.at()).hasToString("mic.out");
        assertThat(stop.why()).contains("C1", "not known");
    }

    @Test
    void itDoesNotBeginInWhatIsNotThere() {
        Hall hall = desk().thing("mic", "mic", Life.STRIKE);
        assertThat(stop(hall).at()).isNull();
        assertThat(stop(hall).why()).contains("mic is not there in the target");
    }

    @Test
    void aPlaceThatTheTypeDoesNotHaveIsSaidSo() {
        Hall hall = desk().feed("f", "mic.pickup", "speaker.picture");
        assertThat(stop(hall).why()).contains("speaker has no picture");
    }
}
