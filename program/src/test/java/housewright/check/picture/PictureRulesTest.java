package housewright.check.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.check.Small;
import housewright.unit.VideoFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule about pictures on a hall that breaks it in one place, and on the nearest one that does not. */
class PictureRulesTest {
    private static final Small CLEAN = new Small("""
            housewright: 1
            project: {name: Small pictures, stage: design, picture: 1080p50}
            models:
              camera:
                kind: camera
                ports: {sdi: {out: sdi, connector: BNC, formats: [1080i50, 1080p50]}, serial: {both: serial, connector: terminals}}
                points: [lens, move]
                routes: ["lens -> sdi:v", serial -> move]
              panel:
                kind: control-panel
                ports: {serial: {both: serial, connector: terminals}}
                points: [joystick]
                routes: [joystick -> serial]
              player:
                kind: other
                ports: {hdmi: {out: hdmi, connector: HDMI-A, formats: [1080p50]}}
                points: [play]
                routes: ["play -> hdmi:v"]
              mixer:
                kind: vision-mixer
                ports:
                  "sdi-{1..2}": {in: sdi, connector: BNC, formats: [1080i50, 1080p50, 1080p59.94]}
                  hdmi: {in: hdmi, connector: HDMI-A}
                  "out-{1..2}": {out: sdi, connector: BNC, formats: [1080i50, 1080p50, 1080p59.94]}
                points: [programme]
                patch: free
                latency: {video: 1 frame}
              embed:
                kind: embedder
                ports:
                  sdi-in: {in: sdi, connector: BNC, formats: [1080i50, 1080p50]}
                  "in-{1..2}": {in: analog-audio, connector: XLR-3F}
                  sdi-out: {out: sdi, connector: BNC, formats: [1080i50, 1080p50]}
                routes: ["sdi-in:v -> sdi-out:v"]
                patch: free
              to-hdmi:
                kind: converter
                ports:
                  sdi: {in: sdi, connector: BNC, formats: [720p50, 1080p50]}
                  hdmi: {out: hdmi, connector: HDMI-A, formats: [720p50, 1080p50]}
                routes: [sdi -> hdmi]
              splitter:
                kind: splitter
                ports:
                  in: {in: hdmi, connector: HDMI-A, formats: [720p50, 1080p50], hdcp: yes}
                  "out-{1..2}": {out: hdmi, connector: HDMI-A, formats: [720p50, 1080p50]}
                routes: ["in -> out-{1..2}"]
              screen:
                kind: display
                ports: {"hdmi-{1..2}": {in: hdmi, connector: HDMI-A, formats: [720p50, 1080p50], hdcp: yes}}
                points: [picture]
                patch: ["hdmi-{1..2}:v -> picture"]
              old-screen:
                kind: display
                ports: {hdmi-1: {in: hdmi, connector: HDMI-A, formats: [720p50, 1080p50, 2160p50]}}
                points: [picture]
                patch: ["hdmi-1:v -> picture"]
            equipment:
              cam: {model: camera}
              panel: {model: panel}
              film: {model: player}
              mixer: {model: mixer}
              embed: {model: embed}
              box: {model: to-hdmi}
              split: {model: splitter}
              left: {model: screen}
              right: {model: screen}
            cables:
              C1: {from: cam.sdi, to: mixer.sdi-1}
              C2: {from: film.hdmi, to: mixer.hdmi}
              C3: {from: mixer.out-1, to: embed.sdi-in}
              C4: {from: embed.sdi-out, to: box.sdi}
              C5: {from: box.hdmi, to: split.in}
              C6: {from: split.out-1, to: left.hdmi-1}
              C7: {from: split.out-2, to: right.hdmi-1}
              C8: {from: panel.serial, to: cam.serial}
            patch:
              mixer: ["sdi-1:v -> programme", "hdmi:v -> programme", "programme -> out-1:v"]
              embed: ["in-1 -> sdi-out:1", "in-2 -> sdi-out:2"]
              left: ["hdmi-1:v -> picture"]
              right: ["hdmi-1:v -> picture"]
            pairs: {programme: ["embed.sdi-out:1", "embed.sdi-out:2"]}
            feeds:
              camera: {from: cam.lens, to: left.picture, carries: picture}
              film: {from: film.play, to: right.picture, carries: picture}
            """);

    static List<String> rules() {
        return PictureRules.all().stream().map(rule -> rule.card().id()).toList();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void cleanPicturesHaveNoFinding(String rule) {
        assertThat(CLEAN.lines(rule)).isEmpty();
    }

    private static Small camera(String formats) {
        return CLEAN.but("formats: [1080i50, 1080p50]}, serial", "formats: [" + formats + "]}, serial");
    }

    @Test
    void nothingInCommon() {
        assertThat(camera("2160p50").lines("no-common-picture-format"))
                .containsExactly(
                        "stop [equipment mixer, equipment cam, feed camera] mixer, sdi 1 takes none of the formats in"
                                + " which the picture of cam, sdi can come that far (2160p50 against 1080i50, 1080p50 and 1080p59.94; that needs a link of 11.9"
                                + " Gbit/s and this one ends at 2.97): camera stays dark.");
        assertThat(camera("2160p50, 1080p50").lines("no-common-picture-format")).isEmpty();
    }

    @Test
    void aFeedThatDoesNotSayThatItIsAPicture() {
        Small silent = camera("2160p50").but("to: left.picture, carries: picture}", "to: left.picture}");
        assertThat(silent.lines("no-common-picture-format"))
                .isEqualTo(camera("2160p50").lines("no-common-picture-format"));
    }

    @Test
    void theBreakMayLieBehindWhatBothTakeOneByOne() {
        assertThat(CLEAN.but(
                                "sdi: {in: sdi, connector: BNC, formats: [720p50, 1080p50]}",
                                "sdi: {in: sdi, connector: BNC, formats: [720p50, 1080i50]}")
                        .lines("no-common-picture-format"))
                .singleElement()
                .asString()
                .startsWith(
                        "stop [equipment box, equipment mixer, feed camera, feed film] box, hdmi takes none of the formats in which"
                                + " the picture of mixer, out 1 can come that far (1080i50 against 720p50 and 1080p50)");
    }

    @Test
    void aPathBelowTheHouse() {
        Small low = CLEAN.but(
                        "sdi: {in: sdi, connector: BNC, formats: [720p50, 1080p50]}",
                        "sdi: {in: sdi, connector: BNC, formats: [1080i50]}")
                .but(
                        "hdmi: {out: hdmi, connector: HDMI-A, formats: [720p50, 1080p50]}",
                        "hdmi: {out: hdmi, connector: HDMI-A, formats: [1080i50]}")
                .but(
                        "in: {in: hdmi, connector: HDMI-A, formats: [720p50, 1080p50], hdcp: yes}",
                        "in: {in: hdmi, connector: HDMI-A, formats: [1080i50], hdcp: yes}")
                .but(
                        "{out: hdmi, connector: HDMI-A, formats: [720p50, 1080p50]}\n    routes: [\"in",
                        "{out: hdmi, connector: HDMI-A, formats: [1080i50]}\n    routes: [\"in")
                .but(
                        "formats: [720p50, 1080p50], hdcp: yes}}\n    points: [picture]",
                        "formats: [1080i50], hdcp: yes}}\n    points: [picture]");
        assertThat(low.lines("path-below-house-format"))
                .containsExactly(
                        "fix [equipment box, equipment mixer, feed camera, feed film] box, sdi does not take the house"
                                + " format 1080p50 (1.49 Gbit/s at most, 2.97 needed): camera and film get through only as 1080i50.");
        assertThat(low.but(", picture: 1080p50", "").lines("path-below-house-format"))
                .isEmpty();
    }

    /** SMPTE ST 292-1 and ST 424: the two links of the message. */
    @ParameterizedTest
    @CsvSource({"1080i50, 1.485", "720p59.94, 1.485", "1080p29.97, 1.485", "1080p50, 2.97", "1080p60, 2.97"})
    void linkRatesAreThoseOfTheStandards(String format, double gigabits) {
        assertThat(LinkRates.least(List.of(VideoFormat.parse(format)))).isEqualTo(gigabits, within(1e-9));
        assertThat(LinkRates.most(List.of(VideoFormat.parse(format), VideoFormat.parse("1920x1200p60"))))
                .isEqualTo(gigabits, within(1e-9));
    }

    @Test
    void aMixerBelowTheHouseIsItselfToBlame() {
        Small above = CLEAN.but("picture: 1080p50", "picture: 2160p50")
                .but("formats: [1080i50, 1080p50]}, serial", "formats: [1080p50, 2160p50]}, serial");
        assertThat(above.lines("mixer-source-off-format")).isEmpty();
        assertThat(above.lines("path-below-house-format"))
                .singleElement()
                .asString()
                .contains(
                        "mixer, sdi 1 does not take the house format 2160p50 (2.97 Gbit/s at most, 11.9 needed): camera");
    }

    @Test
    void aSourceOfTheMixerInAnotherScan() {
        assertThat(camera("1080i50").lines("mixer-source-off-format"))
                .containsExactly(
                        "fix [equipment cam, feed camera] cam, sdi does not do 1080p50, in which mixer works, and that"
                                + " input has no scaler: cam could come in only as 1080i50.");
        assertThat(camera("1080i50").lines("frame-rate-not-house")).isEmpty();
        assertThat(CLEAN.but(
                                "HDMI-A, formats: [1080p50]}}\n    points: [play]",
                                "HDMI-A, formats: [720p50]}}\n    points: [play]")
                        .lines("mixer-source-off-format"))
                .as("that input has a scaler")
                .isEmpty();
    }

    @Test
    void aSourceOfTheMixerAtAnotherRate() {
        assertThat(camera("1080p59.94").lines("frame-rate-not-house"))
                .containsExactly(
                        "fix [equipment cam, feed camera] cam, sdi can reach mixer only as 1080p59.94, and mixer works in"
                                + " 1080p50 and has no scaler there.");
        assertThat(camera("1080p59.94").lines("mixer-source-off-format")).isEmpty();
    }

    @Test
    void withoutAHouseFormatTheMixerTakesWhatMostSend() {
        Small two = camera("1080p59.94")
                .but(", picture: 1080p50", "")
                .but("film: {model: player}", "film: {model: player}\n  cam-2: {model: other}\n  cam-3: {model: other}")
                .but(
                        "models:\n",
                        "models:\n  other: {kind: camera, ports: {sdi: {out: sdi, connector: BNC, formats: [1080p50]}}, points: [lens], routes: [\"lens -> sdi:v\"]}\n")
                .but("\"sdi-{1..2}\"", "\"sdi-{1..3}\"")
                .but(
                        "cables:\n",
                        "cables:\n  C11: {from: cam-2.sdi, to: mixer.sdi-2}\n  C12: {from: cam-3.sdi, to: mixer.sdi-3}\n")
                .but("[\"sdi-1:v -> programme\"", "[\"sdi-{1..3}:v -> programme\"")
                .but("from: cam.lens,", "from: [cam.lens, cam-2.lens, cam-3.lens],");
        assertThat(two.lines("frame-rate-not-house"))
                .singleElement()
                .asString()
                .startsWith("fix [equipment cam, feed camera]");
    }

    @Test
    void aMixerThatHoldsNoFrame() {
        assertThat(CLEAN.but("latency: {video: 1 frame}", "latency: {video: 0.9 frames}")
                        .lines("mixer-without-synchroniser"))
                .containsExactly(
                        "fix [equipment mixer, equipment cam, equipment film] mixer holds no picture back for a frame, so"
                                + " it does not synchronise its inputs, and cam and film each run by their own clock: the picture"
                                + " rolls at every cut.");
        assertThat(CLEAN.but("latency: {video: 1 frame}", "latency: {video: 19.9 ms}")
                        .lines("mixer-without-synchroniser"))
                .hasSize(1);
        assertThat(CLEAN.but("latency: {video: 1 frame}", "latency: {video: 20 ms}")
                        .lines("mixer-without-synchroniser"))
                .isEmpty();
        assertThat(CLEAN.but("    latency: {video: 1 frame}\n", "").lines("mixer-without-synchroniser"))
                .as("not known: nothing is claimed")
                .isEmpty();
    }

    @Test
    void aProtectedPicture() {
        Small on = CLEAN.but(
                "HDMI-A, formats: [1080p50]}}\n    points: [play]",
                "HDMI-A, formats: [1080p50], hdcp: yes}}\n    points: [play]");
        assertThat(on.lines("protected-picture"))
                .containsExactly(
                        "stop [equipment mixer, equipment film, feed film] film sends a protected picture (HDCP) into"
                                + " mixer, out 1, which is SDI and carries no protected picture: film stays black.");
        assertThat(on.but("hdmi: {in: hdmi, connector: HDMI-A}", "hdmi: {in: hdmi, connector: HDMI-A, hdcp: no}")
                        .lines("protected-picture"))
                .singleElement()
                .asString()
                .contains("into mixer, hdmi, which refuses it");
        assertThat(on.but("C2: {from: film.hdmi, to: mixer.hdmi}", "C2: {from: film.hdmi, to: right.hdmi-2}")
                        .but("right: [\"hdmi-1:v", "right: [\"hdmi-2:v")
                        .lines("protected-picture"))
                .as("straight to a screen")
                .isEmpty();
        assertThat(on.but("hdmi: {in: hdmi, connector: HDMI-A}", "hdmi: {in: hdmi, connector: HDMI-A, hdcp: no}")
                        .but("  film: {from: film.play, to: right.picture, carries: picture}\n", "")
                        .lines("protected-picture"))
                .as("plugged in, and no feed asks for it")
                .containsExactly(
                        "fix [equipment mixer, equipment film] film sends a protected picture (HDCP) into mixer,"
                                + " hdmi, which refuses it: it stays black there.");
    }

    @Test
    void conversionsCounted() {
        assertThat(CLEAN.but("stage: design,", "stage: design, rules: {tighten: {picture-converted-often: \"1\"}},")
                        .lines("picture-converted-often"))
                .containsExactly(
                        "note [feed film, equipment mixer, equipment box] film is converted 2 times on the way: in mixer"
                                + " and box.");
    }

    /** SMPTE ST 299-1 puts 16 channels into SDI; HDMI 1.x has 8. */
    @Test
    void aChannelThatHdmiHasNot() {
        assertThat(CLEAN.but("in-2 -> sdi-out:2", "in-2 -> sdi-out:8").lines("embedded-channel-lost"))
                .isEmpty();
        assertThat(CLEAN.but("in-2 -> sdi-out:2", "in-2 -> sdi-out:9").lines("embedded-channel-lost"))
                .containsExactly(
                        "note [equipment embed, equipment box] Sound that embed puts on channel 9 ends at box, hdmi, which"
                                + " carries 8 channels, and no feed says where it is heard.");
    }

    @Test
    void aPairThatIsNone() {
        assertThat(CLEAN.but("[\"embed.sdi-out:1\", \"embed.sdi-out:2\"]", "[\"embed.sdi-out:4\", \"embed.sdi-out:5\"]")
                        .lines("embedded-pair-split"))
                .containsExactly(
                        "note [pair programme, equipment embed] The pair programme lies on channels 4 and 5 of embed, sdi"
                                + " out, in groups 1 and 2: what takes the sound in pairs takes it apart.");
        assertThat(CLEAN.but(
                                "[\"embed.sdi-out:1\", \"embed.sdi-out:2\"]",
                                "[\"embed.sdi-out:15\", \"embed.sdi-out:16\"]")
                        .lines("embedded-pair-split"))
                .isEmpty();
    }

    /** SMPTE ST 299-1: four groups of four channels. */
    @ParameterizedTest
    @CsvSource({"1, 1", "4, 1", "5, 2", "8, 2", "9, 3", "12, 3", "13, 4", "16, 4"})
    void groupsOfEmbeddedSound(int channel, int group) {
        assertThat(EmbeddedPairSplit.group(channel)).isEqualTo(group);
    }

    @Test
    void aScreenSetToNothing() {
        Small idle = CLEAN.but("  film: {from: film.play, to: right.picture, carries: picture}\n", "")
                .but("  right: [\"hdmi-1:v -> picture\"]\n", "");
        assertThat(idle.lines("screen-input-not-set"))
                .containsExactly(
                        "fix [equipment right] right is plugged in at hdmi 1 and set to no input: it shows nothing.");
        assertThat(CLEAN.but("  right: [\"hdmi-1:v -> picture\"]\n", "").lines("screen-input-not-set"))
                .as("a feed asks for it and says so")
                .isEmpty();
    }

    @Test
    void aScreenSetToTwoInputs() {
        assertThat(CLEAN.but("right: [\"hdmi-1:v", "right: [\"hdmi-{1..2}:v").lines("screen-set-to-two-inputs"))
                .containsExactly(
                        "fix [equipment right, patch right] right is set to hdmi 1 and hdmi 2 at once; it shows one of"
                                + " them.");
    }

    @Test
    void aSplitterBeforeUnlikeScreens() {
        assertThat(CLEAN.but("right: {model: screen}", "right: {model: old-screen}")
                        .lines("split-to-unlike-screens"))
                .containsExactly(
                        "note [equipment split, equipment left, equipment right] The screens behind split do not take the"
                                + " same formats (left and right) and have 1080p50 and 720p50 in common: the source is told of one"
                                + " screen's only.");
        Small behindTheMixer = CLEAN.but("C2: {from: film.hdmi, to: mixer.hdmi}", "C2: {from: film.hdmi, to: early.in}")
                .but("  C3:", "  C9: {from: early.out-1, to: mixer.hdmi}\n  C3:")
                .but(
                        "  split: {model: splitter}",
                        "  split: {model: splitter}\n  early: {model: splitter}\n  desk-screen: {model: old-screen}")
                .but("  C4:", "  C10: {from: early.out-2, to: desk-screen.hdmi-1}\n  C4:")
                .but("  left: [\"hdmi-1:v", "  desk-screen: [\"hdmi-1:v -> picture\"]\n  left: [\"hdmi-1:v")
                .but("feeds:\n", "feeds:\n  desk: {from: film.play, to: desk-screen.picture, carries: picture}\n");
        assertThat(behindTheMixer.lines("split-to-unlike-screens"))
                .as("the mixer asks for itself, not for what is behind it")
                .isEmpty();
    }

    @Test
    void aCameraThatNothingMoves() {
        assertThat(CLEAN.but("  C8: {from: panel.serial, to: cam.serial}\n", "").lines("camera-not-controlled"))
                .containsExactly("note [equipment cam] cam is a remote camera that nothing in the project moves.");
    }
}
