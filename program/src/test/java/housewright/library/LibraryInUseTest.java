package housewright.library;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.model.Project;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import housewright.signal.Signals;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Built-in types joined into chains as halls use them. */
class LibraryInUseTest {
    private static final Signals SIGNALS = signals(text());

    private static String text() {
        try (InputStream in = LibraryInUseTest.class.getResourceAsStream("in-use.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Signals signals(String text) {
        BuiltInLibrary library = BuiltInLibrary.of(1);
        ReadResult result = ProjectReader.read("in-use.yaml", text.getBytes(StandardCharsets.UTF_8), library);
        if (result instanceof ReadResult.Refused refused) {
            throw new AssertionError(refused.errors());
        }
        Project project = ((ReadResult.Loaded) result).project();
        return Signals.of(project, library, Moment.target());
    }

    static List<String> feeds() {
        return List.copyOf(SIGNALS.project().feeds().keySet());
    }

    @ParameterizedTest
    @MethodSource("feeds")
    void theFeedIsProvenAndNoFigureIsMissing(String feed) {
        FeedProof proof = SIGNALS.findProof(feed).orElseThrow();

        assertThat(proof.pairs()).isNotEmpty().allSatisfy(pair -> {
            assertThat(pair.stop()).as(pair.from() + " -> " + pair.to()).isNull();
            assertThat(pair.lacking()).as(pair.from() + " -> " + pair.to()).isEmpty();
        });
        assertThat(proof.state()).isEqualTo(FeedState.PROVEN);
    }

    @Test
    void everyCableJoinsSomething() {
        assertThat(SIGNALS.unjoined()).isEmpty();
    }

    @Test
    void noTypeFeedsItselfBack() {
        assertThat(SIGNALS.loops()).isEmpty();
    }

    /** Added up by hand from the types; a frame of 1080p50 is 20 ms. */
    @ParameterizedTest(name = "{0}: {1} ms, {2} dB")
    @CsvSource({
        // box 0.3, desk 0.8, processor 1.5; amplifier 32 dB
        "pulpit-to-hall, 2.6, 32",
        // transmitter and receiver 1.5 each, box 0.3, desk 0.8, processor 1.5
        "headset-to-hall, 5.6, 32",
        // box 0.3, desk 0.8, boxes 0.3 three times on the way out, loudspeaker 1
        "pulpit-to-rear, 3.0, 0",
        // transmitter and receiver 1.5 each, box 0.3, desk 0.8, box 0.3
        "vocal-to-ears, 4.4, 0",
        // camera 2 frames, monitor 1
        "camera-1-to-monitor, 60, 0",
        // camera 2 frames, mixer 1, embedder 0.1, encoder 4 frames, router 10
        "camera-1-to-internet, 150.1, 0",
        // box 0.3, desk 0.8, embedder 1, encoder 4 frames, router 10
        "pulpit-to-internet, 92.1, 0",
    })
    void delaysAndGainsAddUp(String feed, double milliseconds, double decibels) {
        PairProof pair = SIGNALS.findProof(feed).orElseThrow().pairs().getFirst();

        assertThat(pair.delayNanos()).isEqualTo(Math.round(milliseconds * 1e6));
        assertThat(pair.gainDb()).isEqualTo(decibels);
    }

    @Test
    void noMendRunsACableIntoAMachineWhereThereIsNoSocket() {
        Signals broken = signals("""
                housewright: 1
                project: {name: No capture, picture: 1080p50}
                equipment:
                  camera: {model: camera-box-sdi}
                  pc: {model: computer-stream}
                patch:
                  pc: ["inner-1:v -> programme"]
                feeds:
                  camera-to-stream: {from: camera.lens, to: pc.programme, carries: picture}
                """);
        FeedProof proof = broken.findProof("camera-to-stream").orElseThrow();

        assertThat(proof.state()).isEqualTo(FeedState.BROKEN);
        assertThat(broken.mends(proof)).flatExtracting(Mend::steps).noneMatch(step -> step.contains("inner"));
    }
}
