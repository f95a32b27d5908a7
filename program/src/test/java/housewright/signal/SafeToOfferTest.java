package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Project;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A mend never touches a loudspeaker line or a port that is taken: a guess there can burn an amplifier. */
class SafeToOfferTest {
    private static final String HALL = """
            housewright: 1
            project: {name: One line}
            models:
              source: {kind: mixer, ports: {out: {out: analog-audio, connector: XLR-3M}}, points: [play], routes: [play -> out], latency: 0 ms}
              amp: {kind: amplifier, ports: {in: {in: analog-audio, connector: XLR-3F}, "out-{1..2}": {out: speaker, connector: speaker-4}}, routes: ["in -> out-{1..2}"], latency: 0 ms}
              box: {kind: loudspeaker, ports: {in: {in: speaker, connector: speaker-4}}, points: [sound], routes: [in -> sound], latency: 0 ms}
            equipment:
              desk: {model: source}
              amp: {model: amp}
              box: {model: box}
            cables:
            %s
            feeds:
              sound: {from: desk.play, to: box.sound, carries: audio}
            """;
    private static final String LINE = "  A1: {type: mic-cable, from: desk.out, to: amp.in}\n";
    private static final String SPEAKER = "  S1: {type: speaker-2x2.5, from: amp.out-1, to: box.in}\n";

    private static final String STRUCK = "  S1: {type: speaker-2x2.5, from: amp.out-1, to: box.in, life: strike}\n";

    @Test
    void aLineCableIsOfferedWhereTheLoudspeakerIsWired() {
        assertThat(mends(SPEAKER)).isNotEmpty();
    }

    @Test
    void aLoudspeakerLineIsLeftToPeople() {
        assertThat(mends(LINE)).isEmpty();
    }

    @Test
    void aLoudspeakerCableThatIsThereTodayMayBeKept() {
        assertThat(mends(LINE + STRUCK)).hasSize(1);
    }

    @Test
    void butNotAtAnAmplifierOrALoudspeakerThatIsNew() {
        assertThat(mends(HALL.replace("amp: {model: amp}", "amp: {model: amp, life: new}"), LINE + STRUCK))
                .isEmpty();
        assertThat(mends(HALL.replace("box: {model: box}", "box: {model: box, life: new}"), LINE + STRUCK))
                .isEmpty();
    }

    private static List<Mend> mends(String cables) {
        return mends(HALL, cables);
    }

    private static List<Mend> mends(String hall, String cables) {
        Signals signals = Signals.of(project(hall.formatted(cables)), BuiltInLibrary.of(1), Moment.target());
        FeedProof proof = signals.findProof("sound").orElseThrow();
        assertThat(proof.proven()).isFalse();
        return signals.mends(proof);
    }

    private static Project project(String text) {
        ReadResult read = ProjectReader.read("hall.yaml", text.getBytes(StandardCharsets.UTF_8), BuiltInLibrary.of(1));
        assertThat(read).isInstanceOf(ReadResult.Loaded.class);
        return ((ReadResult.Loaded) read).project();
    }
}
