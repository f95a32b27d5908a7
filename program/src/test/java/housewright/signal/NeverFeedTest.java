package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** A never-feed claims no more than is known: what keeps it out is said, and where nobody knows it is not shown. */
class NeverFeedTest {
    private static final Library LIBRARY = BuiltInLibrary.of(1);
    private static final String HALL = """
            housewright: 1
            project: {name: One loudspeaker}
            models:
              mic:  {kind: microphone, ports: {out: {out: analog-audio, connector: XLR-3M}}, points: [pickup], routes: [pickup -> out],
                     switches: {talk: {default: off, gates: [pickup]}}}
              desk: {kind: mixer, ports: {"in-{1..2}": {in: analog-audio, connector: XLR-3F}, out: {out: analog-audio, connector: XLR-3M}},
                     points: [main], patch: free, latency: 1 ms}
              box:  {kind: loudspeaker, ports: {in: {in: analog-audio, connector: XLR-3F}, line: {in: analog-audio, connector: XLR-3F}},
                     points: [sound], routes: [in -> sound, line -> sound], latency: 0 ms}
            equipment:
              mic:  {model: mic, set: {talk: %s}}
              desk: {model: desk}
              box:  {model: box}
            cables:
              C1: {type: mic-cable, from: mic.out, to: desk.in-1}
              C2: {type: mic-cable, from: desk.out, to: box.in}
            %s
            patch:
              desk: [%s]
            feeds:
              quiet: {never: yes, from: mic.pickup, to: box.sound}
            """;

    @Test
    void itSaysWhichSwitchKeepsItOut() {
        PairProof kept = proof(HALL.formatted("off", "", "in-1 -> main, main -> out"));
        assertThat(kept.state()).isEqualTo(FeedState.PROVEN);
        assertThat(kept.assumed()).containsExactly("the switch talk of mic stays off");
        assertThat(proof(HALL.formatted("on", "", "in-1 -> main, main -> out")).state())
                .isEqualTo(FeedState.ARRIVES);
    }

    @Test
    void itSaysNothingOfASwitchBehindWhichNothingLeadsOn() {
        assertThat(proof(HALL.formatted("off", "", "in-2 -> main, main -> out")).assumed())
                .isEmpty();
    }

    @Test
    void aCableFromNobodyKnowsWhereIntoTheForbiddenPlaceLeavesItUnshown() {
        String cable = "  C3: {from: unknown, to: box.line}";
        PairProof doubt = proof(HALL.formatted("on", cable, "main -> out"));
        assertThat(doubt.state()).isEqualTo(FeedState.BROKEN);
        assertThat(doubt.stop().why()).contains("cannot be shown").contains("C3");
        assertThat(proof(HALL.formatted("on", "", "main -> out")).state()).isEqualTo(FeedState.PROVEN);
    }

    private static PairProof proof(String text) {
        ReadResult read = ProjectReader.read("hall.yaml", text.getBytes(StandardCharsets.UTF_8), LIBRARY);
        if (read instanceof ReadResult.Refused refused) {
            throw new AssertionError(refused.errors().toString());
        }
        return Signals.of(((ReadResult.Loaded) read).project(), LIBRARY, Moment.target())
                .proofs()
                .getFirst()
                .pairs()
                .getFirst();
    }
}
