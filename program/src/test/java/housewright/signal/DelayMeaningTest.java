package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Kind;
import housewright.model.Signal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** FORMAT "Meaning": latency, within, through. */
class DelayMeaningTest {
    private static Hall chain() {
        return new Hall()
                .type(new Kit("mic", Kind.MICROPHONE)
                        .out("out", Signal.ANALOG_AUDIO)
                        .points("pickup")
                        .routes("pickup -> out")
                        .latency("0.1 ms"))
                .type(new Kit("desk", Kind.MIXER)
                        .in("in-{1..2}", Signal.ANALOG_AUDIO)
                        .out("out-{1..2}", Signal.ANALOG_AUDIO)
                        .points("ch-{1..2}", "main")
                        .patchFree()
                        .latency("0.7 ms"))
                .type(new Kit("speaker", Kind.LOUDSPEAKER)
                        .in("in", Signal.ANALOG_AUDIO)
                        .points("sound")
                        .route("in -> sound", null, "2 ms")
                        .latency("0.2 ms"))
                .things("mic", "mic")
                .things("desk", "desk")
                .things("speaker", "speaker")
                .cable("C1", "mic.out", "desk.in-1")
                .cable("C2", "desk.out-1", "speaker.in")
                .patch("desk", "in-1 -> ch-1", "ch-1 -> main", "main -> out-1");
    }

    private static PairProof pair(Hall hall) {
        return hall.proof("f").pairs().getFirst();
    }

    @Test
    void latencyCountsOncePerPassAndOnceWhereTheFeedBegins() {
        Hall hall = chain().feed("f", "mic.pickup", "speaker.sound");
        assertThat(pair(hall).delayNanos()).isEqualTo(100_000 + 700_000 + 200_000 + 2_000_000);
    }

    @Test
    void aFeedThatBeginsAtAPortHasLeftTheDevice() {
        Hall hall = chain().feed("f", "mic.out", "desk.main");
        assertThat(pair(hall).delayNanos()).isEqualTo(700_000);
    }

    @Test
    void twoPassesThroughADeviceCountTwice() {
        Hall hall = chain().cable("C3", "desk.out-2", "desk.in-2")
                .patch("desk", "ch-1 -> out-2", "in-2 -> ch-2")
                .feed("f", "mic.pickup", "desk.ch-2");
        assertThat(pair(hall).delayNanos()).isEqualTo(100_000 + 2 * 700_000);
    }

    @Test
    void anEntryMayAddDelayAndGain() {
        Hall hall =
                chain().patch("desk", "ch-1 -> ch-2", "-6 dB", "1.5 ms", null).feed("f", "mic.pickup", "desk.ch-2");
        assertThat(pair(hall).delayNanos()).isEqualTo(100_000 + 700_000 + 1_500_000);
        assertThat(pair(hall).gainDb()).isEqualTo(-6);
    }

    @Test
    void thePathOfLeastDelayIsTakenAndTheOtherIsNamedWhereTheyMeet() {
        Hall hall = chain().patch("desk", "ch-1 -> ch-2", "0 dB", "1 ms", null)
                .patch("desk", "ch-2 -> main", "-3 dB", null, null)
                .feed("f", "mic.pickup", "speaker.sound");
        assertThat(pair(hall).hops()).hasSize(7);
        assertThat(pair(hall).others()).singleElement().satisfies(other -> {
            assertThat(other.meetsAt()).hasToString("desk.main");
            assertThat(other.laterNanos()).isEqualTo(1_000_000);
            assertThat(other.louderDb()).isEqualTo(-3);
        });
    }

    @Test
    void soundAndPictureHaveLatenciesOfTheirOwn() {
        Hall hall = new Hall()
                .picture("1080p50")
                .type(new Kit("out").out("sdi", Signal.SDI))
                .type(new Kit("screen", Kind.DISPLAY)
                        .in("sdi", Signal.SDI)
                        .points("picture", "sound")
                        .routes("sdi:v -> picture", "sdi:1 -> sound")
                        .latency("3 ms", "2 frames"))
                .things("out", "out")
                .things("screen", "screen")
                .cable("C1", "out.sdi", "screen.sdi")
                .feed("f", "out.sdi:v, out.sdi:1", "screen.picture, screen.sound");
        assertThat(hall.proof("f").pairs().get(0).delayNanos()).isEqualTo(40_000_000);
        assertThat(hall.proof("f").pairs().get(1).delayNanos()).isEqualTo(3_000_000);
    }

    /** A frame is 1/25 s, 1/50 s or 1001/60000 s; interlaced pictures have two fields to a frame (SMPTE ST 274). */
    @ParameterizedTest(name = "output {0}, house {1}: {2} ns")
    @CsvSource({
        "1080p25, 1080p50, 40000000",
        "'', 1080p50, 20000000",
        "'1080p25,1080p50', 1080p50, 20000000",
        "'', 1080i50, 40000000",
        "'', 1080p59.94, 16683333",
    })
    void aFrameIsOneOfTheOutputsFormatElseOfTheHouse(String output, String house, long nanos) {
        String[] formats = output.isEmpty() ? new String[0] : output.split(",");
        Hall hall = new Hall()
                .picture(house)
                .type(new Kit("source").out("sdi", Signal.SDI))
                .type(new Kit("converter", Kind.CONVERTER)
                        .in("in", Signal.SDI)
                        .port("out", Kit.Plug.out(Signal.HDMI).formats(formats))
                        .routes("in:v -> out:v")
                        .latency(null, "1 frame"))
                .type(new Kit("screen").in("hdmi", Signal.HDMI))
                .type(new Kit("camera", Kind.CAMERA)
                        .port("out", Kit.Plug.out(Signal.HDMI).formats(formats))
                        .points("picture")
                        .routes("picture -> out:v")
                        .latency(null, "1 frame"))
                .things("source", "source")
                .things("converter", "converter")
                .things("camera", "camera")
                .things("screen", "screen", "screen-2")
                .cable("C1", "source.sdi", "converter.in")
                .cable("C2", "converter.out", "screen.hdmi")
                .cable("C3", "camera.out", "screen-2.hdmi")
                .feed("through", "source.sdi:v", "screen.hdmi:v")
                .feed("start", "camera.picture", "screen-2.hdmi:v");
        assertThat(hall.proof("through").pairs().getFirst().delayNanos()).isEqualTo(nanos);
        assertThat(hall.proof("start").pairs().getFirst().delayNanos()).isEqualTo(nanos);
    }

    @Test
    void whereNoFormatIsNamedTheFrameIsLackingAndNotGuessed() {
        Hall hall = new Hall()
                .type(new Kit("source").out("sdi", Signal.SDI))
                .type(new Kit("screen")
                        .in("sdi", Signal.SDI)
                        .points("picture")
                        .routes("sdi:v -> picture")
                        .latency("1 frame"))
                .things("source", "source")
                .things("screen", "screen")
                .cable("C1", "source.sdi", "screen.sdi")
                .feed("f", "source.sdi:v", "screen.picture");
        assertThat(pair(hall).lacking()).singleElement().asString().contains("frame", "screen");
    }

    @Test
    void aDeviceWithoutLatencyIsSaidToLackIt() {
        Hall hall = chain().type(new Kit("plain")
                        .in("in", Signal.ANALOG_AUDIO)
                        .points("sound")
                        .routes("in -> sound"))
                .things("plain", "plain")
                .cable("C3", "desk.out-2", "plain.in")
                .patch("desk", "main -> out-2")
                .feed("f", "mic.pickup", "plain.sound");
        assertThat(pair(hall).lacking()).singleElement().asString().contains("latency", "plain");
    }

    @Test
    void withinLimitsTheDelayToTheNanosecond() {
        assertThat(chain().feed("f", "mic.pickup", "speaker.sound", "3 ms", null)
                        .proof("f")
                        .state())
                .isEqualTo(FeedState.PROVEN);
        FeedProof late = chain().feed("f", "mic.pickup", "speaker.sound", "2.999999 ms", null)
                .proof("f");
        assertThat(late.state()).isEqualTo(FeedState.LATE);
        assertThat(late.pairs().getFirst().stop().why()).contains("3 ms", "2.999999 ms");
        assertThat(late.pairs().getFirst().hops()).isNotEmpty();
    }

    @Test
    void thePathMustPassWhatItIsLedThrough() {
        Hall hall = chain().patch("desk", "ch-1 -> ch-2", "0 dB", "1 ms", null).patch("desk", "ch-2 -> main");
        assertThat(pair(hall.feed("f", "mic.pickup", "speaker.sound", null, "desk.ch-2"))
                        .delayNanos())
                .as("the longer way round")
                .isEqualTo(4_000_000);
        assertThat(pair(hall.feed("f", "mic.pickup", "speaker.sound", null, "desk.ch-2, desk.ch-1"))
                        .proven())
                .as("in this order")
                .isFalse();
        assertThat(pair(hall.feed("f", "mic.pickup", "speaker.sound", null, "desk.in-1, desk.out-1"))
                        .proven())
                .as("a channel on either side of its device")
                .isTrue();
    }

    @Test
    void aLinkThatWorksBothWaysIsPassedLeavingOrArriving() {
        Hall hall = new Hall()
                .type(new Kit("box").both("link", Signal.STAGE_LINK).points("a").patchFree())
                .things("box", "x", "y")
                .cable("C", "x.link", "y.link")
                .patch("x", "a -> link")
                .patch("y", "link -> a");
        assertThat(hall.feed("f", "x.a", "y.a", null, "x.link, y.link")
                        .proof("f")
                        .proven())
                .isTrue();
    }
}
