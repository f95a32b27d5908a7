package housewright.check.sound;

import static housewright.check.sound.Halls.HALL;
import static housewright.check.sound.Halls.but;
import static housewright.check.sound.Halls.find;
import static housewright.check.sound.Halls.mended;
import static housewright.check.sound.Halls.said;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule on a hall that breaks it in one place, on the nearest hall that does not, and at its limit. */
class SoundRulesTest {
    private static final String VOICE = "voice: {model: mic-dynamic-vocal, at: platform}";
    private static final String SPEECH = "speech: {model: condenser-gooseneck, at: platform}";

    static java.util.List<Rule> rules() {
        return SoundRules.all();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void soundHallHasNoFindings(Rule rule) {
        assertThat(said(rule, HALL)).isEmpty();
    }

    private static String speechAt(String pressure) {
        return but(
                SPEECH, "speech: {model: condenser-gooseneck, at: platform, set: {pickup: {level: " + pressure + "}}}");
    }

    /** 8 mV/Pa is -41.94 dBV = -39.72 dBu at 94 dB SPL; behind 46 dB of gain, where 20 dBu is full scale, -13.72 dBFS. */
    @Test
    void microphoneHasLessThanEighteenDecibelsLeft() {
        MicrophoneClips rule = new MicrophoneClips();
        assertThat(said(rule, speechAt("89 dB SPL"))).isEmpty(); // 18.7 dB left
        assertThat(said(rule, speechAt("90 dB SPL")))
                .containsExactly("note speech has only 17.7 dB left at box, link channel 2 with 90 dB SPL at it;"
                        + " 18 dB is usual, for peaks.");
        assertThat(find(rule, speechAt("98 dB SPL")).getFirst().severity()).isEqualTo(Severity.NOTE); // 9.7
        assertThat(find(rule, speechAt("99 dB SPL")).getFirst().severity()).isEqualTo(Severity.FIX); // 8.7
        assertThat(said(rule, speechAt("110 dB SPL")).getFirst()).startsWith("fix speech clips at box, link channel 2");
        assertThat(mended(rule, speechAt("110 dB SPL"))).isEmpty();
        assertThat(find(rule, but("in-2: {gain: 46 dB}", "in-2: {gain: 64 dB}"))
                        .getFirst()
                        .message())
                .contains("72 dB SPL (assumed: a talker)");
        Finding assumed =
                find(rule, but("in-2: {gain: 46 dB}", "in-2: {gain: 80 dB}")).getFirst();
        assertThat(assumed.evidence().getFirst().found()).isLessThan(MicrophoneClips.PEAKS_DB);
        assertThat(assumed.severity()).isEqualTo(Severity.NOTE); // nobody has said how loud it is there
    }

    /** Without its channel a microphone gets as far as the desk's link, and what is wrong up to there is told. */
    @Test
    void aWayThatStopsIsFollowedAsFarAsItLeads() {
        String link = "    - link:%d -> ch-%d\n";
        String loud = but(
                SPEECH,
                "speech: {model: condenser-gooseneck, at: platform, set: {pickup: {level: 90 dB SPL}}}",
                link.formatted(2, 2),
                "");
        assertThat(said(new MicrophoneClips(), loud)).isEqualTo(said(new MicrophoneClips(), speechAt("90 dB SPL")));
        String quiet = "voice: {model: mic-dynamic-vocal, at: platform, set: {pickup: {level: 58 dB SPL}}}";
        String broken = but(VOICE, quiet, link.formatted(1, 1), "");
        for (Rule rule : java.util.List.of(new MicrophoneInNoise(), new PreampGainShort())) {
            assertThat(said(rule, broken)).hasSize(1).isEqualTo(said(rule, but(VOICE, quiet)));
        }
        String loop = but(
                "C4: {from: box.out-1, to: main.in}",
                "",
                "C5: {from: box.out-2, to: fill.in}",
                "",
                "- \"ch-{1..2} -> mix-3\"\n",
                "- ch-2 -> mix-3\n");
        assertThat(said(new LoopLacksVoice(), loop))
                .contains("fix voice of hall is missing from the hearing loop, where speech is heard.");
        assertThat(mended(new LoopLacksVoice(), loop)).isEmpty();
        assertThat(find(new LoopLacksVoice(), but("C1: {from: voice.out, to: box.in-1}", "")))
                .as("that it does not arrive anywhere is told by its feed")
                .isEmpty();
    }

    /** 1.8 mV/Pa is -52.68 dBu at 94 dB SPL; the box's noise is -126 dBu. 40 dB over it is reached at 60.68 dB SPL. */
    @Test
    void microphoneIsInTheNoise() {
        MicrophoneInNoise rule = new MicrophoneInNoise();
        String quiet = "voice: {model: mic-dynamic-vocal, at: platform, set: {pickup: {level: %s dB SPL}}}";
        assertThat(said(rule, but(VOICE, quiet.formatted("61")))).isEmpty();
        assertThat(said(rule, but(VOICE, quiet.formatted("60"))))
                .containsExactly("fix voice arrives at box, in 1 only 39.3 dB above the noise of that input with 60 dB"
                        + " SPL at it; 40 dB keeps the noise out of pauses.");
    }

    /**
     * Worked example of a trade body's training: -54.5 dBV/Pa with 72 dB SPL needs 74.3 dB to reach 0 dBu, and 60 dB are
     * not enough; -35 dBV/Pa needs 54.8 dB, and they are.
     */
    @Test
    void preamplifierHasTooLittleGain() {
        PreampGainShort rule = new PreampGainShort();
        String mic = """
                models:
                  mic:
                    kind: microphone
                    ports: {out: {out: analog-audio, connector: XLR-3M, level: mic}}
                    points: [pickup]
                    routes: [pickup -> out]
                    latency: 0 ms
                    sensitivity: %s dBV/Pa
                equipment:
                """;
        String stated = "voice: {model: mic, at: platform, set: {pickup: {level: 72 dB SPL}}}";
        Finding short74 = find(rule, but(VOICE, stated, "equipment:\n", mic.formatted("-54.5")))
                .getFirst();
        assertThat(short74.evidence().getFirst().found()).isCloseTo(74.3, within(0.05));
        assertThat(short74.evidence().getFirst().limit()).isEqualTo(60);
        assertThat(find(rule, but(VOICE, stated, "equipment:\n", mic.formatted("-35.0"))))
                .isEmpty();
        assertThat(find(rule, but("in-1: {gain: 40 dB}", "in-1: {gain: 60 dB}")))
                .isEmpty();
        assertThat(said(rule, but("in-1: {gain: 40 dB}", "in-1: {gain: 61 dB}")))
                .containsExactly("fix box, in 1 is set to a gain of 61 dB; it has 60 dB at most.");
        assertThat(mended(rule, but("in-1: {gain: 40 dB}", "in-1: {gain: 61 dB}")))
                .isEmpty();
    }

    @Test
    void gainIsSetAtTheBoxAndAtTheDesk() {
        GainSetTwice rule = new GainSetTwice();
        String desk = "desk: {model: desk-digital-32-stage-a}";
        String trim = "desk: {model: desk-digital-32-stage-a, set: {\"ch-{1..2}\": {gain: %s dB}}}";
        assertThat(find(rule, but(desk, trim.formatted("20")))).isEmpty();
        assertThat(said(rule, but(desk, trim.formatted("40"))))
                .containsExactly(
                        "fix The gain of voice is set twice: 40 dB at box, in 1 and 40 dB at desk, ch 1.",
                        "fix The gain of speech is set twice: 46 dB at box, in 2 and 40 dB at desk, ch 2.");
        assertThat(find(rule, but(desk, trim.formatted("40")))
                        .getFirst()
                        .fixes()
                        .getFirst()
                        .changes())
                .hasSize(1);
    }

    /**
     * The desk gives 22 dBu and the recorder clips at 20 dBu, so 2 dB must come off, as in the worked example of EBU's
     * 18 dBu into an input that clips at 16 dBu. EBU R 68 and SMPTE RP 155 are 6 dB apart. A consumer output at -10 dBV
     * is 11.8 dB under one at 4 dBu.
     */
    @Test
    void fullScaleDoesNotFitTheNextInput() {
        FullScaleDiffers rule = new FullScaleDiffers();
        String set = "{gain: -2 dB}";
        assertThat(said(rule, but(set, "{gain: -1.9 dB}")))
                .containsExactly("note desk, out 1 (and 1 more) comes to as much as 20.1 dBu at recorder, in L, which"
                        + " clips at 20 dBu: its peaks clip by 0.1 dB.");
        assertThat(mended(rule, but(set, "{gain: 0 dB}"))).isEmpty();
        assertThat(find(rule, but(set, "{gain: 4 dB}")).getFirst().severity()).isEqualTo(Severity.NOTE); // 6 dB
        assertThat(find(rule, but(set, "{gain: 4.1 dB}")).getFirst().severity()).isEqualTo(Severity.FIX);
        assertThat(mended(rule, but(set, "{gain: 4.1 dB}"))).isEmpty();
        assertThat(find(rule, but(set, "{gain: -14 dB}"))).isEmpty(); // 12 dB of it unused
        assertThat(said(rule, but(set, "{gain: -14.1 dB}")))
                .singleElement()
                .asString()
                .endsWith("even at full scale it arrives 12.1 dB too low.");
        String unlike = but("\"in-{L,R}\": {gain: -2 dB}", "in-L: {gain: 1 dB}, in-R: {gain: 6 dB}");
        Finding worst = find(rule, unlike).getFirst();
        assertThat(worst.severity())
                .as("by 3 dB on the left, 8 dB on the right")
                .isEqualTo(Severity.FIX);
        assertThat(worst.message()).endsWith("its peaks clip by 8 dB.");
        assertThat(mended(rule, unlike)).isEmpty();
    }

    /** An analogue desk is counted with 18 dB over its nominal 4 dBu, not with the 24 dBu at which it clips. */
    @Test
    void analogueOutputIsNotDrivenToWhereItClips() {
        FullScaleDiffers rule = new FullScaleDiffers();
        String old = "recorder: {model: recorder-usb-stick, set: {\"in-{L,R}\": {gain: %s dB}}}";
        String hall = """
                housewright: 1
                project: {name: Old desk, stage: live}
                equipment:
                  mic: {model: mic-dynamic-vocal}
                  desk: {model: analog-8}
                  %s
                cables:
                  C1: {from: mic.out, to: desk.mic-1}
                  C2: {from: desk.main-out-L, to: recorder.in-L}
                patch: {desk: [ch-1 -> main-L]}
                feeds: {keep: {from: mic.pickup, to: recorder.record-L, carries: audio}}
                """;
        assertThat(find(rule, hall.formatted(old.formatted("-2")))).isEmpty();
        assertThat(find(rule, hall.formatted(old.formatted("-1.9")))).hasSize(1);
    }

    @Test
    void channelHasTwoInputs() {
        ChannelTwoInputs rule = new ChannelTwoInputs();
        String twice = but("- link:2 -> ch-2\n", "- link:2 -> ch-2\n    - mic-1 -> ch-2\n");
        assertThat(said(rule, twice))
                .containsExactly("fix desk, ch 2 is patched from link:2 and mic-1; a channel takes one input.");
        assertThat(mended(rule, twice)).isEmpty();
        assertThat(find(rule, but("- link:2 -> ch-2\n", "- link:2 -> ch-2\n    - mic-1 -> ch-3\n")))
                .isEmpty();
    }

    @Test
    void linkLosesWhatTheOtherEndDoesNotHave() {
        LinkChannelsLost rule = new LinkChannelsLost();
        String interfaceOn = "card: {model: audio-interface-8x8}\n  recorder: {";
        String cable = "  C12: {from: desk.usb, to: card.usb}\nradio:\n";
        String sent = "- \"link:{1..2} -> usb:{%s}\"\n    - link:1 -> ch-1\n";
        String fits = but("recorder: {", interfaceOn, "radio:\n", cable, "- link:1 -> ch-1\n", sent.formatted("7..8"));
        String beyond =
                but("recorder: {", interfaceOn, "radio:\n", cable, "- link:1 -> ch-1\n", sent.formatted("8..9"));
        assertThat(said(rule, fits)).isEmpty();
        assertThat(said(rule, beyond))
                .containsExactly("fix desk, usb sends channel 9 to card, which takes 8 channels there: what is on them"
                        + " is lost.");
    }

    @Test
    void pluggedMicrophoneHasNoChannel() {
        SourceGoesNowhere rule = new SourceGoesNowhere();
        String nowhere = but("    - link:2 -> ch-2\n", "");
        assertThat(said(rule, nowhere))
                .containsExactly("fix speech is plugged in and gets as far as desk, link channel 2, where no channel"
                        + " takes it.");
        assertThat(find(rule, but("    - link:2 -> ch-2\n", "", "  C2: {from: speech.out, to: box.in-2}\n", "")))
                .as("it is not plugged in")
                .isEmpty();
    }

    @Test
    void oneSideOfAPairIsMissing() {
        StereoOneSide rule = new StereoOneSide();
        assertThat(said(rule, but("    - \"ch-{1..2} -> main-R\"\n", "")))
                .containsExactly("fix The pair hall has one side only: nothing is patched to desk, main R.");
        assertThat(said(rule, but("  C7: {from: box.out-4, to: transmitter.in-R}\n", "")))
                .containsExactly("fix transmitter has a cable in in L and none in in R, so one side stays silent.");
    }

    @Test
    void pairsAreCrossed() {
        StereoCrossed rule = new StereoCrossed();
        String pairs = "pairs: {hall: [desk.main-L, desk.main-R]}";
        String two = "pairs: {hall: [desk.main-L, desk.main-R], kept: [recorder.record-L, recorder.record-R]}";
        assertThat(find(rule, but(pairs, two))).isEmpty();
        String crossed = but(
                pairs,
                two,
                "{from: main-L, to: out-1",
                "{from: main-L, to: out-2",
                "{from: main-R, to: out-2",
                "{from: main-R, to: out-1");
        assertThat(said(rule, crossed))
                .containsExactly("fix Left and right are swapped between the pairs hall and kept: desk, main L arrives"
                        + " at recorder, record R.");
        assertThat(mended(rule, crossed)).isEmpty();
        String mono = but(pairs, two, "{from: main-R, to: out-2", "{from: main-L, to: out-2");
        assertThat(find(rule, mono)).as("the left one on both sides is mono").isEmpty();
    }

    @Test
    void monoSumIsNotTurnedDown() {
        StereoFold rule = new StereoFold();
        String sum =
                "- {from: main-L, to: mono, gain: %1$s dB}\n    - {from: main-R, to: mono, gain: %1$s dB}\n    - link:1 -> ch-1\n";
        assertThat(find(rule, but("- link:1 -> ch-1\n", sum.formatted("-3")))).isEmpty();
        String loud = but("- link:1 -> ch-1\n", sum.formatted("-2.9"));
        assertThat(find(rule, loud))
                .singleElement()
                .extracting(Finding::severity)
                .isEqualTo(Severity.NOTE);
        assertThat(mended(rule, loud)).isEmpty();
        String again = "pairs: {hall: [desk.main-L, desk.main-R], stream: [desk.main-L, desk.main-R]}";
        assertThat(find(rule, loud.replaceFirst("pairs: \\{[^}]*}", again)))
                .as("one sum is said once, however many pairs name its sides")
                .hasSize(1);
    }

    /** Desk and box: 0.3 + 0.8 + 0.3 ms; the rest is the delay that is set. */
    @Test
    void ownVoiceIsLate() {
        PerformerHearsLate rule = new PerformerHearsLate();
        String late = "- {from: ch-1, to: [mix-1, mix-2], delay: %s ms}\n";
        assertThat(find(rule, but("- ch-1 -> mix-1, mix-2\n", late.formatted("8.6"))))
                .isEmpty();
        assertThat(said(rule, but("- ch-1 -> mix-1, mix-2\n", late.formatted("8.7"))))
                .singleElement()
                .asString()
                .startsWith("fix voice comes back from ears 10.1 ms late");
        assertThat(find(rule, but("- main-L -> link:1\n", "- {from: main-L, to: \"link:1\", delay: 28 ms}\n")))
                .as("30.4 ms to the loudspeaker: 1.4 and its own 1 ms")
                .isNotEmpty();
        assertThat(find(rule, but("- main-L -> link:1\n", "- {from: main-L, to: \"link:1\", delay: 27 ms}\n")))
                .isEmpty();
    }

    /** Worked example: 12 m further at 20 degC is 34.96 ms; with 10 ms for the ear 44.96 ms. */
    @Test
    void fillDoesNotWait() {
        FillDelay rule = new FillDelay();
        String wait = "{from: main-R, to: \"link:2\", delay: 45 ms}";
        String other = "{from: main-R, to: \"link:2\", delay: %s ms}";
        assertThat(find(rule, but(wait, other.formatted("32")))).isEmpty(); // 2.96 ms early
        assertThat(find(rule, but(wait, other.formatted("64")))).isEmpty(); // 29.04 ms late
        assertThat(said(rule, but(wait, other.formatted("31"))))
                .containsExactly("fix fill is heard 4.0 ms before main: it is 12.0 m further back, which sound takes"
                        + " 35.0 ms for, and it plays 31.0 ms later.");
        assertThat(find(rule, but(wait, other.formatted("65")))).hasSize(1);
        String none = but(wait, "main-R -> link:2");
        Finding found = find(rule, none).getFirst();
        assertThat(found.evidence().getFirst().found()).isCloseTo(34.96, within(0.01));
        assertThat(found.fixes().getFirst().words()).startsWith("Set the delay to desk, link channel 2 to 45 ms");
        assertThat(found.message()).endsWith("and it plays no later.");
        assertThat(mended(rule, none)).isEmpty();
        assertThat(mended(rule, but(wait, other.formatted("90")))).isEmpty();
    }

    @Test
    void aClockHasTwoMastersOrNone() {
        ClockMasters rule = new ClockMasters();
        String box = "{model: stagebox-16x8-stage-a, set: {in-1: {gain: 40 dB}, in-2: {gain: 46 dB}";
        String desk = "desk: {model: desk-digital-32-stage-a}";
        String deskSet = "desk: {model: desk-digital-32-stage-a, set: {link: {clock: %s}}}";
        assertThat(find(rule, but(desk, deskSet.formatted("master"), box, box + ", link: {clock: follows}")))
                .isEmpty();
        assertThat(find(rule, but(desk, deskSet.formatted("follows"))))
                .as("of the box nothing is said")
                .isEmpty();
        String two = but(desk, deskSet.formatted("master"), box, box + ", link: {clock: master}");
        assertThat(said(rule, two))
                .containsExactly("fix box and desk are joined digitally and each is clock master: they drift apart, and"
                        + " it clicks.");
        assertThat(mended(rule, two)).isEmpty();
        String none = but(desk, deskSet.formatted("follows"), box, box + ", link: {clock: follows}");
        assertThat(said(rule, none))
                .containsExactly("fix Nothing gives the clock where box and desk are joined: each of them follows.");
        assertThat(mended(rule, none)).isEmpty();
    }

    @Test
    void sampleRatesDiffer() {
        SampleRatesDiffer rule = new SampleRatesDiffer();
        String box = "{model: stagebox-16x8-stage-a, set: {in-1: {gain: 40 dB}, in-2: {gain: 46 dB}";
        String desk = "desk: {model: desk-digital-32-stage-a}";
        String deskSet = "desk: {model: desk-digital-32-stage-a, set: {link: {sample-rate: %s kHz}}}";
        String boxSet = box + ", link: {sample-rate: 48 kHz}";
        assertThat(find(rule, but(desk, deskSet.formatted("48"), box, boxSet))).isEmpty();
        String differ = but(desk, deskSet.formatted("96"), box, boxSet);
        assertThat(said(rule, differ))
                .containsExactly("fix desk works at 96 kHz and is joined digitally to box at 48 kHz: no sound passes"
                        + " between them.");
        assertThat(mended(rule, differ)).isEmpty();
    }

    @Test
    void callerHearsHimself() {
        FarEndHearsItself rule = new FarEndHearsItself();
        String call = "call: {model: computer-small}\n  recorder: {";
        String cable = "  C12: {from: desk.usb, to: call.usb-1}\nradio:\n";
        String feeds = "feeds:\n  far: {from: \"call.usb-1:1\", to: main.sound, carries: audio}\n"
                + "  back-to-far: {from: speech.pickup, to: \"call.usb-1:1\", carries: audio}\n";
        String patch = "- usb:1 -> ch-9\n    - ch-9 -> main-L\n    - %s -> usb:1\n    - link:1 -> ch-1\n";
        String[] base = {"recorder: {", call, "radio:\n", cable, "feeds:\n", feeds};
        String own = but(
                base[0], base[1], base[2], base[3], base[4], base[5], "- link:1 -> ch-1\n", patch.formatted("mix-3"));
        String all = but(
                base[0], base[1], base[2], base[3], base[4], base[5], "- link:1 -> ch-1\n", patch.formatted("main-L"));
        assertThat(said(rule, own)).isEmpty();
        assertThat(said(rule, all))
                .containsExactly(
                        "fix Whoever is heard from call, usb 1 channel 1 is sent their own voice again at call,"
                                + " usb 1 channel 1, and late.");
    }

    @Test
    void oneVoiceOfAFeedIsNotInTheLoop() {
        LoopLacksVoice rule = new LoopLacksVoice();
        String lacks = but("- \"ch-{1..2} -> mix-3\"\n", "- ch-2 -> mix-3\n");
        assertThat(said(rule, lacks))
                .contains("fix voice of hall is missing from the hearing loop, where speech is heard.");
        assertThat(mended(rule, lacks)).isEmpty();
        assertThat(find(rule, but("    - \"ch-{1..2} -> mix-3\"\n", "")))
                .as("none of them is")
                .isEmpty();
    }

    /** 16 inputs with fewer than 10 % free: 15 taken leaves 6.3 %, 14 leaves 12.5 %. */
    @Test
    void littleIsLeft() {
        SpareChannels rule = new SpareChannels();
        StringBuilder mics = new StringBuilder("equipment:\n");
        StringBuilder cables = new StringBuilder("cables:\n");
        for (int n = 3; n <= 14; n++) {
            mics.append("  m").append(n).append(": {model: mic-dynamic-vocal}\n");
            cables.append("  X")
                    .append(n)
                    .append(": {from: m")
                    .append(n)
                    .append(".out, to: box.in-")
                    .append(n)
                    .append("}\n");
        }
        assertThat(find(rule, but("equipment:\n", mics.toString(), "cables:\n", cables.toString())))
                .isEmpty();
        mics.append("  m15: {model: mic-dynamic-vocal}\n");
        cables.append("  X15: {from: m15.out, to: box.in-15}\n");
        assertThat(said(rule, but("equipment:\n", mics.toString(), "cables:\n", cables.toString())))
                .containsExactly(
                        "note Little is left for the next years: 1 of 16 microphone inputs of the stage boxes.");
    }
}
