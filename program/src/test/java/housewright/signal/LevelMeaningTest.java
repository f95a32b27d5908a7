package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.model.Carries;
import housewright.model.Kind;
import housewright.model.Signal;
import housewright.unit.Level;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** FORMAT "Meaning": level, loop; where sound and picture meet. */
class LevelMeaningTest {
    private static Hall chain(String nominal, @Nullable String deskMax, @Nullable String boxMax, String ampMax) {
        Kit.Plug deskIn = Kit.Plug.in(Signal.ANALOG_AUDIO);
        Kit.Plug boxOut = Kit.Plug.out(Signal.ANALOG_AUDIO);
        return new Hall()
                .type(new Kit("source")
                        .port("out", Kit.Plug.out(Signal.ANALOG_AUDIO).nominal(nominal)))
                .type(new Kit("desk", Kind.MIXER)
                        .port("in", deskMax == null ? deskIn : deskIn.max(deskMax))
                        .both("link", Signal.STAGE_LINK)
                        .points("ch")
                        .patchFree()
                        .latency("1 ms"))
                .type(new Kit("box", Kind.STAGE_BOX)
                        .both("link", Signal.STAGE_LINK)
                        .port("out", boxMax == null ? boxOut : boxOut.max(boxMax))
                        .routes("link -> out")
                        .latency("1 ms"))
                .type(new Kit("amp").port("in", Kit.Plug.in(Signal.ANALOG_AUDIO).max(ampMax)))
                .things("source", "source")
                .things("desk", "desk")
                .things("box", "box")
                .things("amp", "amp")
                .cable("C1", "source.out", "desk.in")
                .cable("C2", "desk.link", "box.link")
                .cable("C3", "box.out", "amp.in")
                .patch("desk", "in -> ch", "ch -> link")
                .feed("f", "source.out", "amp.in");
    }

    private static LevelAt at(Hall hall, String place) {
        Signals signals = hall.target();
        PairProof pair = signals.findProof("f").orElseThrow().pairs().getFirst();
        return signals.levels(pair).stream()
                .filter(level -> level.at().toString().equals(place))
                .findFirst()
                .orElseThrow();
    }

    /**
     * EBU R 68: alignment -18 dBFS is 0 dBu, so 0 dBFS is +18 dBu. SMPTE RP 155: reference -20 dBFS is +4 dBu, so 0 dBFS
     * is +24 dBu. Set to different ones, two devices are 6 dB apart.
     */
    @ParameterizedTest(name = "{0} into a converter whose 0 dBFS is {1} is {2} dBFS, and {4} dBu out of one of {3}")
    @CsvSource({
        "0 dBu, 18 dBu, -18, 18 dBu, 0",
        "4 dBu, 24 dBu, -20, 24 dBu, 4",
        "4 dBu, 18 dBu, -14, 18 dBu, 4",
        "0 dBu, 18 dBu, -18, 24 dBu, 6",
        "4 dBu, 24 dBu, -20, 18 dBu, -2",
        "0 dBV, 18 dBu, -15.782, 18 dBu, 2.218"
    })
    void theHighestLevelOfAConverterIsZeroDbfs(String nominal, String in, double dbfs, String out, double dbu) {
        Hall hall = chain(nominal, in, out, "30 dBu");
        Level inside = at(hall, "desk.link").level();
        assertThat(inside.unit().toString()).contains("DBFS");
        assertThat(inside.value()).isCloseTo(dbfs, within(0.0005));
        Level outside = at(hall, "amp.in").level();
        assertThat(outside.in(housewright.unit.Unit.DBU)).isCloseTo(dbu, within(0.0005));
    }

    /** A console lined up to EBU R 68 at 0 dBFS into an input that clips at +16 dBu: 2 dB too much. */
    @Test
    void headroomIsWhatIsLeftBelowClipping() {
        assertThat(at(chain("18 dBu", "18 dBu", "18 dBu", "16 dBu"), "amp.in")
                        .headroom()
                        .decibels())
                .isCloseTo(-2, within(1e-9));
        assertThat(at(chain("0 dBu", "18 dBu", "18 dBu", "16 dBu"), "amp.in")
                        .headroom()
                        .decibels())
                .isCloseTo(16, within(1e-9));
        assertThat(at(chain("0 dBu", "18 dBu", "18 dBu", "16 dBu"), "desk.link")
                        .headroom()
                        .decibels())
                .isCloseTo(18, within(1e-9));
    }

    @Test
    void gainOnTheWayMovesTheLevel() {
        Hall hall = chain("0 dBu", "18 dBu", "18 dBu", "30 dBu").set("desk", "ch", "-10 dB");
        assertThat(at(hall, "desk.link").level().value()).isCloseTo(-28, within(1e-9));
        assertThat(at(hall, "amp.in").level().value()).isCloseTo(-10, within(1e-9));
    }

    @Test
    void whereAConverterDoesNotSayTheLevelIsLostAndNotGuessed() {
        Hall blind = chain("0 dBu", null, "18 dBu", "30 dBu");
        assertThat(at(blind, "desk.in").lacking()).contains("desk.in");
        assertThat(at(blind, "desk.link").level()).isNull();
        assertThat(at(blind, "amp.in").level()).isNull();

        Hall mute = chain("0 dBu", "18 dBu", null, "30 dBu");
        assertThat(at(mute, "desk.link").level()).isNotNull();
        assertThat(at(mute, "box.out").lacking()).contains("box.out");
        assertThat(at(mute, "amp.in").level()).isNull();
    }

    private static Hall returning(String gain) {
        return new Hall()
                .type(new Kit("desk", Kind.MIXER)
                        .in("in", Signal.ANALOG_AUDIO)
                        .out("out", Signal.ANALOG_AUDIO)
                        .points("ch", "mix")
                        .patchFree())
                .things("desk", "desk")
                .cable("C1", "desk.out", "desk.in")
                .patch("desk", "in -> ch", "mix -> out")
                .patch("desk", "ch -> mix", gain, null, null);
    }

    @Test
    void aCycleThatLosesNothingIsALoop() {
        assertThat(returning("-0.5 dB").target().loops()).isEmpty();
        assertThat(returning("0 dB").target().loops()).singleElement().satisfies(loop -> {
            assertThat(loop.hops()).hasSize(4);
            assertThat(loop.gainDb()).isZero();
        });
        assertThat(returning("3 dB").target().loops())
                .singleElement()
                .satisfies(loop -> assertThat(loop.gainDb()).isEqualTo(3));
        assertThat(returning("3 dB").set("desk", "ch", "mute").target().loops()).isEmpty();
    }

    private static List<SoundToPicture> meetings(String soundLatency, String pictureLatency) {
        return new Hall()
                .type(new Kit("mic", Kind.MICROPHONE)
                        .out("out", Signal.ANALOG_AUDIO)
                        .points("pickup")
                        .routes("pickup -> out")
                        .latency(soundLatency))
                .type(new Kit("camera", Kind.CAMERA)
                        .out("sdi", Signal.SDI)
                        .points("picture")
                        .routes("picture -> sdi:v")
                        .latency(pictureLatency))
                .type(new Kit("encoder", Kind.ENCODER)
                        .in("sdi", Signal.SDI)
                        .in("line", Signal.ANALOG_AUDIO)
                        .points("sound", "picture")
                        .routes("sdi:v -> picture", "line -> sound")
                        .latency("0 ms"))
                .things("mic", "mic")
                .things("camera", "camera")
                .things("encoder", "encoder")
                .cable("C1", "mic.out", "encoder.line")
                .cable("C2", "camera.sdi", "encoder.sdi")
                .feed("speech", false, Carries.AUDIO, "mic.pickup", "encoder.sound", null, null)
                .feed("face", false, Carries.PICTURE, "camera.picture", "encoder.picture", null, null)
                .target()
                .soundToPicture();
    }

    /** ITU-R BT.1359-1: sound early is positive (up to +45 ms is not noticed), sound late negative (to -125 ms). */
    @Test
    void soundEarlyIsPositiveAndSoundLateNegative() {
        assertThat(meetings("5 ms", "50 ms")).singleElement().satisfies(meeting -> {
            assertThat(meeting.equipment()).isEqualTo("encoder");
            assertThat(meeting.soundEarlyMs()).isEqualTo(45);
        });
        assertThat(meetings("165 ms", "40 ms"))
                .singleElement()
                .satisfies(meeting -> assertThat(meeting.soundEarlyMs()).isEqualTo(-125));
    }
}
