package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Kind;
import housewright.model.Signal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** FORMAT "Meaning": channel, both, cable, radio. */
class ChannelMeaningTest {
    private static boolean arrives(Hall hall, String from, String to) {
        return hall.feed("f", from, to).proof("f").proven();
    }

    private static Hall lineOf(Signal signal) {
        return new Hall()
                .type(new Kit("sender").out("out", signal))
                .type(new Kit("taker").in("in", signal))
                .things("sender", "a")
                .things("taker", "b")
                .cable("C1", "a.out", "b.in");
    }

    /**
     * SMPTE ST 299-1: HD-SDI carries 16 channels of sound in four groups of four; channel n is number (n - 1) mod 4 + 1
     * of group (n - 1) / 4 + 1. Picture apart.
     */
    @Test
    void sdiHasThePictureAndFourGroupsOfFourChannelsOfSound() {
        assertThat(arrives(lineOf(Signal.SDI), "a.out:v", "b.in:v")).isTrue();
        for (int group = 1; group <= 4; group++) {
            for (int number = 1; number <= 4; number++) {
                int channel = (group - 1) * 4 + number;
                assertThat(arrives(lineOf(Signal.SDI), "a.out:" + channel, "b.in:" + channel))
                        .as("channel %d, number %d of group %d", channel, number, group)
                        .isTrue();
            }
        }
        assertThat(arrives(lineOf(Signal.SDI), "a.out:17", "b.in:17")).isFalse();
        assertThat(arrives(lineOf(Signal.SDI), "a.out:5", "b.in:1"))
                .as("the first of the second group is not the first of the first")
                .isFalse();
    }

    /** HDMI carries up to 8 channels of linear PCM beside the picture (HDMI 1.x). */
    @ParameterizedTest(name = "{0} has {1}: {2}")
    @CsvSource({
        "HDMI, v, true",
        "HDMI, 1, true",
        "HDMI, 8, true",
        "HDMI, 9, false",
        "HDBASET, v, true",
        "HDBASET, 8, true",
        "HDBASET, 9, false",
        "DMX, c, true",
        "DMX, 1, false",
        "ANALOG_AUDIO, 1, true",
        "ANALOG_AUDIO, 2, false",
        "AES3, 1, true",
        "AES3, 2, false"
    })
    void otherSignalsHaveTheChannelsOfTheFormat(Signal signal, String channel, boolean has) {
        assertThat(arrives(lineOf(signal), "a.out:" + channel, "b.in:" + channel))
                .isEqualTo(has);
    }

    @Test
    void aPortAloneMeansItsOnlyChannel() {
        assertThat(arrives(lineOf(Signal.ANALOG_AUDIO), "a.out", "b.in")).isTrue();
        assertThat(arrives(lineOf(Signal.SDI), "a.out", "b.in"))
                .as("which of 17")
                .isFalse();
    }

    @Test
    void aCableJoinsTheChannelsThatBothEndsHave() {
        Hall hall = new Hall()
                .type(new Kit("box")
                        .port("link", Kit.Plug.out(Signal.STAGE_LINK).channels(0, 8)))
                .type(new Kit("desk")
                        .port("link", Kit.Plug.in(Signal.STAGE_LINK).channels(4, 0)))
                .things("box", "box")
                .things("desk", "desk")
                .cable("C1", "desk.link", "box.link"); // the way a cable is written does not matter
        assertThat(arrives(hall, "box.link:4", "desk.link:4")).isTrue();
        assertThat(arrives(hall, "box.link:5", "desk.link:5")).isFalse();
    }

    private static Hall linked(String one, String other) {
        return new Hall()
                .type(new Kit("p").port("link", Kit.Plug.both(Signal.STAGE_LINK).protocol(one)))
                .type(new Kit("q").port("link", Kit.Plug.both(Signal.STAGE_LINK).protocol(other)))
                .things("p", "a")
                .things("q", "b")
                .cable("C1", "a.link", "b.link");
    }

    @Test
    void aPortThatWorksBothWaysIsJoinedLeavingToArriving() {
        assertThat(arrives(linked("stage-a", "stage-a"), "a.link", "b.link")).isTrue();
        assertThat(arrives(linked("stage-a", "stage-a"), "b.link", "a.link")).isTrue();
    }

    @Test
    void whatArrivesAtAPortThatWorksBothWaysDoesNotLeaveByIt() {
        Hall hall = linked("stage-a", "stage-a").things("p", "c").cable("C2", "b.link", "c.link");
        assertThat(arrives(hall, "a.link", "c.link")).isFalse();
    }

    @Test
    void protocolsMustAgreeAndOneThatIsNotSaidIsTakenToAgree() {
        Hall clash = linked("stage-a", "stage-b").feed("f", "a.link", "b.link");
        PairProof stopped = clash.proof("f").pairs().getFirst();
        assertThat(stopped.proven()).isFalse();
        assertThat(stopped.stop().at()).hasToString("a.link");
        assertThat(stopped.stop().why()).contains("cable C1", "stage-a", "stage-b");
        assertThat(clash.target().unjoined())
                .singleElement()
                .extracting(Unjoined::cause)
                .isEqualTo(new Cause.ByCable("C1"));

        FeedProof silent = linked("stage-a", null).feed("f", "a.link", "b.link").proof("f");
        assertThat(silent.proven()).isTrue();
        assertThat(silent.pairs().getFirst().assumed())
                .singleElement()
                .asString()
                .contains("C1", "protocol");
    }

    @Test
    void signalsMustAgree() {
        Hall hall = lineOf(Signal.SDI)
                .type(new Kit("screen").in("hdmi", Signal.HDMI))
                .things("screen", "c")
                .cable("C2", "a.out", "c.hdmi")
                .feed("f", "a.out:v", "c.hdmi:v");
        PairProof stopped = hall.proof("f").pairs().getFirst();
        assertThat(stopped.proven()).isFalse();
        assertThat(stopped.stop().why()).contains("C2", "sdi", "hdmi");
    }

    @Test
    void aRadioLinkJoinsAsACableDoes() {
        Hall hall = new Hall()
                .type(new Kit("tx", Kind.RADIO_TRANSMITTER).out("radio", Signal.RADIO))
                .type(new Kit("rx", Kind.RADIO_RECEIVER).in("radio", Signal.RADIO))
                .things("tx", "tx")
                .things("rx", "rx");
        assertThat(arrives(hall, "tx.radio", "rx.radio")).isFalse();
        assertThat(arrives(hall.radio("R1", "tx.radio", "rx.radio"), "tx.radio", "rx.radio"))
                .isTrue();
    }

    /** FORMAT: numbered ways of a multicore pair up in order. */
    @Test
    void theWaysOfAMulticorePairUp() {
        Hall hall = new Hall()
                .type(new Kit("s").out("out-{1..4}", Signal.ANALOG_AUDIO))
                .type(new Kit("t").in("in-{1..4}", Signal.ANALOG_AUDIO))
                .things("s", "s")
                .things("t", "t")
                .multicore("M1", housewright.model.Life.KEEP, "s.out-{1..2} -> t.in-{3..4}");
        assertThat(arrives(hall, "s.out-1", "t.in-3")).isTrue();
        assertThat(arrives(hall, "s.out-2", "t.in-4")).isTrue();
        assertThat(arrives(hall, "s.out-1", "t.in-1")).isFalse();
    }
}
