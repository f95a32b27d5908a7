package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import housewright.model.Project;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What mends are made of, and what they are never made of, each on a small hall. */
class MendMeaningTest {
    private static final Library LIBRARY = BuiltInLibrary.of(1);

    private static final String PLAYERS = """
            housewright: 1
            project: {name: Two rooms, currency: EUR}
            venue: {places: {table: {}}}
            models:
              player: {kind: computer, ports: {usb: {both: usb-audio, connector: %s, channels: 2}},
                       points: [play], routes: ["play -> usb:1"], latency: 0 ms}
              box:    {kind: audio-interface, ports: {usb: {both: usb-audio, connector: %s, channels: 2}},
                       points: [sound], routes: ["usb:1 -> sound"], latency: 0 ms}
            equipment:
              one:   {model: player, at: table}
              other: {model: box, at: table}
            feeds:
              sound: {from: one.play, to: other.sound, carries: audio}
            """;

    @Test
    void aHostAndADeviceAreJoinedByUsbButNotTwoHosts() {
        assertThat(steps(PLAYERS.formatted("USB-A", "USB-B")))
                .singleElement()
                .asString()
                .contains("one, usb to other, usb");
        assertThat(steps(PLAYERS.formatted("USB-A", "USB-A"))).isEmpty();
    }

    private static final String SCREENS = """
            housewright: 1
            project: {name: Screen, currency: EUR}
            models:
              player: {kind: computer, ports: {out: {out: %s, connector: %s}}, points: [picture],
                       routes: ["picture -> out:v"], latency: 0 ms}
              screen: {kind: display, ports: {in: {in: %s, connector: %s}}, points: [picture],
                       routes: ["in:v -> picture"], latency: 0 ms}
            cable-types:
              %s
            equipment:
              one:   {model: player}
              other: {model: screen}
            feeds:
              picture: {from: one.picture, to: other.picture, carries: picture}
            """;

    @Test
    void endsAreMadeUpWhereThatIsDoneOnSiteAndNotElsewhere() {
        String coax = "bulk: {carries: [sdi], ends: [BNC, RCA], per-metre: 0.1, per-pair: 1}";
        assertThat(steps(SCREENS.formatted("sdi", "BNC", "sdi", "BNC", coax)))
                .singleElement()
                .asString()
                .contains("bulk");
        String lead = "bulk: {carries: [hdmi], ends: [HDMI-A, USB-C], per-metre: 0.1, per-pair: 1}";
        assertThat(steps(SCREENS.formatted("hdmi", "HDMI-A", "hdmi", "HDMI-A", lead)))
                .singleElement()
                .asString()
                .doesNotContain("bulk");
    }

    private static final String DESK = """
            housewright: 1
            project: {name: Desk, currency: EUR}
            models:
              mic:  {kind: microphone, ports: {out: {out: analog-audio, connector: XLR-3M}}, points: [pickup], routes: [pickup -> out]}
              desk: {kind: mixer, ports: {"in-{1..2}": {in: analog-audio, connector: XLR-3F},
                     "out-{1..2}": {out: analog-audio, connector: XLR-3M}}, points: [main, talk], patch: free, latency: 1 ms}
              box:  {kind: loudspeaker, ports: {in: {in: analog-audio, connector: XLR-3F}}, points: [sound], routes: [in -> sound], latency: 0 ms}
            equipment:
              mic-1: {model: mic}
              mic-2: {model: mic}
              desk:  {model: desk, life: new}
              left:  {model: box}
              right: {model: box}
            cables:
              C1: {type: mic-cable, from: mic-1.out, to: desk.in-1}
              C2: {type: mic-cable, from: mic-2.out, to: desk.in-2}
              C3: {type: mic-cable, from: desk.out-1, to: left.in}
              C4: {type: mic-cable, from: desk.out-2, to: right.in}
            patch:
              desk:
            %s
            feeds:
            %s
            """;

    private static final String CHANNELS = DESK.replace("points: [main, talk]", "points: [\"ch-{1..2}\", main]");

    @Test
    void aChannelInUseGetsNoSecondInputAndNoInputPassesTheChannels() {
        String text = CHANNELS.formatted(
                "    - in-1 -> ch-1\n    - ch-1 -> main\n    - main -> out-1",
                "  g: {from: mic-2.pickup, to: left.sound}\n  f: {from: mic-1.pickup, to: left.sound}");
        assertThat(first(text)).containsExactly("In desk, patch in-2 to ch-2.", "In desk, patch ch-2 to main.");
    }

    @Test
    void aChannelIsNotLedIntoAnother() {
        String text = CHANNELS.formatted(
                "    - in-1 -> ch-1\n    - in-2 -> ch-2\n    - ch-1 -> main\n    - main -> out-1",
                "  g: {from: mic-2.pickup, to: left.sound}\n  f: {from: mic-1.pickup, to: left.sound}");
        assertThat(first(text)).containsExactly("In desk, patch ch-2 to main.");
    }

    private static final String SECOND = """
            housewright: 1
            project: {name: Second, currency: EUR}
            venue: {places: {table: {}}}
            equipment:
              mic:  {model: condenser-gooseneck, at: table}
              desk: {model: analog-8, at: table}
              rec:  {model: analog-8, at: table}
              box:  {model: loudspeaker-powered-8, at: table}
            cables:
              C1: {type: mic-cable, from: mic.out, to: desk.mic-1, length: 3 m}
              C2: {type: %s, from: box.in, to: rec.mic-2, length: 3 m}
            patch: {desk: [ch-1 -> main-L]}
            feeds:
              g: {from: mic.pickup, to: %s, carries: audio}
              f: {from: mic.pickup, to: desk.ch-1, carries: audio}
            """;

    @Test
    void aMicrophoneIsSplitByASplitterAndNotByADiBox() {
        String text = """
                housewright: 1
                project: {name: Second, currency: EUR}
                venue: {places: {table: {}}}
                models:
                  ear: {kind: recorder, ports: {in: {in: analog-audio, connector: XLR-3F, level: mic}}, points: [heard],
                        routes: [in -> heard], latency: 0 ms}
                equipment:
                  mic:   {model: condenser-gooseneck, at: table}
                  one:   {model: ear, at: table}
                  other: {model: ear, at: table}
                cables:
                  C1: {type: mic-cable, from: mic.out, to: one.in, length: 3 m}
                feeds:
                  g: {from: mic.pickup, to: other.heard, carries: audio}
                  f: {from: mic.pickup, to: one.heard, carries: audio}
                """;
        assertThat(first(text).getFirst()).startsWith("Add a mic-splitter-1x2");
    }

    @Test
    void aCableIsMovedWhereItFitsAndServesNotAsLoudspeakerCableToALineOutput() {
        assertThat(first(SECOND.formatted("mic-cable", "box.sound")))
                .containsExactly("Move cable C2 from rec, mic 2 to desk, main out L.");
        assertThat(steps(SECOND.formatted("speaker-2x2.5", "box.sound"))).noneMatch(step -> step.contains("cable C2"));
    }

    @Test
    void aDelayThatMakesAFeedLateIsLoweredByWhatIsTooMuch() {
        String text = DESK.formatted(
                "    - {from: in-1, to: out-1, delay: 30 ms}",
                "  f: {from: mic-1.pickup, to: left.sound, within: 11 ms}");
        assertThat(steps(text)).containsExactly("In desk, lower the delay from in-1 to out-1 from 30 ms to 10 ms.");
    }

    @Test
    void aDelayThatIsSetTodayIsLeftForTheOneEntryCannotSayBoth() {
        String text = DESK.replace("{model: desk, life: new}", "{model: desk}")
                .formatted(
                        "    - {from: in-1, to: out-1, delay: 30 ms}",
                        "  f: {from: mic-1.pickup, to: left.sound, within: 11 ms}");
        assertThat(steps(text)).noneMatch(step -> step.contains("lower the delay"));
    }

    @Test
    void aDeviceThatIsTooSlowByItselfHasNoDelayToLower() {
        String text = DESK.formatted(
                "    - {from: in-1, to: out-1, delay: 30 ms}",
                "  f: {from: mic-1.pickup, to: left.sound, within: 0.5 ms}");
        assertThat(steps(text)).noneMatch(step -> step.contains("lower the delay"));
    }

    @Test
    void noEntryIsSetByWhichASourceArrivesWhereAnotherBelongs() {
        // in-2 to main would be cheaper, but the second microphone would be heard on the left as well; and no input of
        // a
        // desk is led straight to an output, past channels and faders
        String text = DESK.formatted(
                "    - in-1 -> main\n    - main -> out-1, out-2",
                "  f: {from: [mic-1.pickup, mic-2.pickup], to: [left.sound, right.sound]}");
        assertThat(steps(text))
                .containsExactly(
                        "In desk, patch in-2 to talk.",
                        "In desk, take out the patch from main to out-2.",
                        "In desk, patch talk to out-2.");
    }

    @Test
    void whatMendsMoreFeedsIsNamedBesideTheCheapest() {
        String text = DESK.formatted("    - in-1 -> main\n    - in-2 -> main", """
                  a: {from: mic-1.pickup, to: left.sound}
                  b: {from: mic-2.pickup, to: left.sound}
                """);
        Signals signals = signals(text);
        List<Mend> mends = signals.mends(signals.findProof("a").orElseThrow());
        assertThat(mends.getFirst().steps()).containsExactly("In desk, patch main to out-1.");
        assertThat(mends.getFirst().alsoMends()).containsExactly("b");
    }

    private static List<String> steps(String text) {
        Signals signals = signals(text);
        FeedProof proof = signals.proofs().getFirst();
        assertThat(proof.proven()).isFalse();
        return signals.mends(proof).stream()
                .flatMap(mend -> mend.steps().stream())
                .toList();
    }

    private static List<String> first(String text) {
        Signals signals = signals(text);
        return signals.mends(signals.proofs().getFirst()).getFirst().steps();
    }

    private static Signals signals(String text) {
        return Signals.of(project(text), LIBRARY, Moment.target());
    }

    private static Project project(String text) {
        ReadResult read = ProjectReader.read("hall.yaml", text.getBytes(StandardCharsets.UTF_8), LIBRARY);
        if (read instanceof ReadResult.Refused refused) {
            throw new AssertionError(refused.errors().toString());
        }
        return ((ReadResult.Loaded) read).project();
    }
}
