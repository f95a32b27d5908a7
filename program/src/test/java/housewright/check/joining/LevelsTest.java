package housewright.check.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.model.Clock;
import housewright.model.Equipment;
import housewright.model.Setting;
import housewright.model.change.Change;
import housewright.unit.Level;
import housewright.unit.Sensitivity;
import housewright.unit.Unit;
import org.junit.jupiter.api.Test;

/** Level, balance and phantom power where a sound cable joins two things. */
class LevelsTest {
    /** A trade body's training exercise (W-21 of the reference values) and the same reckoning for 2 mV/Pa (W-23). */
    @Test
    void aMicrophonesLevelFollowsFromItsSensitivity() {
        assertThat(Levels.microphoneDbu(Sensitivity.ofMillivoltsPerPascal(1.884), 72))
                .isCloseTo(-74.28, within(0.01));
        assertThat(Levels.microphoneDbu(Sensitivity.ofMillivoltsPerPascal(17.78), 72))
                .isCloseTo(-54.78, within(0.01));
        assertThat(Levels.microphoneDbu(Sensitivity.ofMillivoltsPerPascal(2), 104))
                .isCloseTo(-41.76, within(0.01));
    }

    /** The two working levels in use are 11.78 dB apart (LVL-06 and LVL-07: -10 dBV is 0.3162 V, +4 dBu is 1.2277 V). */
    @Test
    void consumerLevelIsTwelveDecibelsLow() {
        assertThat(Levels.LINE_DBU - Levels.CONSUMER_DBU).isCloseTo(11.78, within(0.005));
        assertThat(20 * Math.log10(1.2277 / 0.3162)).isCloseTo(11.78, within(0.005));
    }

    private static Joined line(String maximum, String gain) {
        return Joined.of("""
                models:
                  source: {ports: {out: {out: analog-audio, connector: XLR-3M, level: line, nominal: 4 dBu, max: 24 dBu, balanced: yes}}}
                  box:    {ports: {in: {in: analog-audio, connector: XLR-3F, level: mic, max: %s, balanced: yes}}}
                equipment:
                  player: {model: source}
                  box:    {model: box, set: {in: {gain: %s}}}
                cables:
                  C1: {type: mic-cable, from: player.out, to: box.in, length: 3 m}
                """.formatted(maximum, gain));
    }

    /** Programme peaks stand 9 dB above alignment level (EBU R68, LVL-11), so +4 dBu wants an input up to +13 dBu. */
    @Test
    void anInputTakesThePeaksOfWhatIsPluggedIn() {
        String rule = "input-overdriven";
        assertThat(InputOverdriven.HEADROOM.value()).isEqualTo(9);
        assertThat(line("13 dBu", "0 dB").lines(rule)).isEmpty();
        assertThat(line("12.9 dBu", "0 dB").lines(rule)).hasSize(1);
        assertThat(line("10 dBu", "0 dB").lines(rule))
                .containsExactly("fix: player, out gives 4 dBu, and box, in clips at 10 dBu: 6 dB is left for peaks,"
                        + " 9 dB is wanted.");
        assertThat(line("0 dBu", "0 dB").lines(rule))
                .containsExactly(
                        "fix: player, out gives 4 dBu, and box, in clips at 0 dBu: 4 dB over before anybody is loud.");
        assertThat(line("20 dBu", "7 dB").lines(rule)).isEmpty();
        assertThat(line("20 dBu", "8 dB").lines(rule)).hasSize(1);
        assertThat(line("20 dBu", "30 dB")
                        .findings(rule)
                        .getFirst()
                        .fixes()
                        .getFirst()
                        .words())
                .startsWith("Turn the gain");
    }

    @Test
    void anOutputThatCannotGoSoHighOverdrivesNothing() {
        assertThat(line("10 dBu", "0 dB").but("max: 24 dBu", "max: 10 dBu").lines("input-overdriven"))
                .isEmpty();
    }

    @Test
    void aProjectMayWantMoreHeadroom() {
        Joined tight = line("20 dBu", "0 dB")
                .but("currency: EUR", "currency: EUR, rules: {tighten: {input-overdriven: 18 dB}}");
        assertThat(tight.lines("input-overdriven")).hasSize(1);
    }

    private static Joined microphone(String sensitivity, String input) {
        return Joined.of("""
                models:
                  mic:  {kind: microphone, sensitivity: %s,
                         ports: {out: {out: analog-audio, connector: XLR-3M, level: mic, balanced: yes}}}
                  desk: {ports: {in: {in: analog-audio, connector: XLR-3F, balanced: yes, %s}}}
                equipment:
                  mic:  {model: mic}
                  desk: {model: desk}
                cables:
                  C1: {type: mic-cable, from: mic.out, to: desk.in, length: 3 m}
                """.formatted(sensitivity, input));
    }

    /** -20 dBu is 77.5 mV; at 1 Pa a microphone of 77.4 mV/Pa stays just below, one of 77.5 reaches it. */
    @Test
    void aMicrophoneGoesIntoAMicrophoneInput() {
        String rule = "mic-into-line";
        assertThat(new Level(-20, Unit.DBU).toVoltage().volts()).isCloseTo(0.07746, within(0.00001));
        assertThat(microphone("8 mV/Pa", "level: mic, max: 20 dBu").lines(rule)).isEmpty();
        assertThat(microphone("8 mV/Pa", "level: line, nominal: 4 dBu").lines(rule))
                .containsExactly(
                        "fix: mic, out gives -39.7 dBu when it is loud (94 dB SPL), and desk, in is a line input"
                                + " without a microphone amplifier, 44 dB short.");
        assertThat(microphone("77.4 mV/Pa", "level: line, nominal: 4 dBu").lines(rule))
                .hasSize(1);
        assertThat(microphone("77.5 mV/Pa", "level: line, nominal: 4 dBu").lines(rule))
                .isEmpty();
        assertThat(microphone("8 mV/Pa", "level: line, nominal: 4 dBu")
                        .but("desk: {model: desk}", "desk: {model: desk, set: {in: {gain: 40 dB}}}")
                        .lines(rule))
                .isEmpty();
    }

    @Test
    void aPadMakesALineFitAMicrophoneInput() {
        Joined pad = Joined.of("""
                equipment:
                  player: {model: player-media}
                  pad:    {model: pad-20db}
                  loop:   {model: hearing-loop-amplifier}
                cables:
                  C1: {type: mic-cable, from: player.out-L, to: pad.in, length: 1 m}
                  C2: {type: mic-cable, from: pad.out, to: loop.mic-in, length: 1 m}
                """);
        assertThat(pad.lines("input-overdriven")).isEmpty();
        assertThat(pad.but("to: pad.in", "to: loop.mic-in")
                        .but("  C2: {type: mic-cable, from: pad.out, to: loop.mic-in, length: 1 m}\n", "")
                        .lines("input-overdriven"))
                .hasSize(1);
    }

    private static final Joined BASS = Joined.of("""
            equipment:
              bass:   {model: bass-guitar}
              guitar: {model: guitar-electroacoustic}
              di:     {model: di-active}
              pack:   {model: radio-beltpack-fm}
              desk:   {model: desk-digital-16-stage-a}
            cables:
              C1: {type: instrument-cable, from: bass.out, to: di.in, length: 5 m}
              C2: {type: instrument-cable, ends: [TS, TRS-3.5], from: guitar.out, to: pack.in, length: 1 m}
              C3: {type: mic-cable, from: di.out, to: desk.mic-1, length: 5 m}
            """);

    @Test
    void anInstrumentGoesThroughADiBox() {
        String rule = "instrument-without-di";
        assertThat(BASS.lines(rule)).isEmpty();
        assertThat(BASS.but("to: di.in", "to: desk.line-1").lines(rule))
                .containsExactly("fix: bass, out goes into desk, line 1 without a DI box: the input loads it, and it"
                        + " sounds dull and thin.");
        assertThat(BASS.but("to: pack.in", "to: desk.line-1").lines(rule))
                .singleElement()
                .asString()
                .startsWith("note: guitar, out");
    }

    /** From memory of sound handbooks, 5 to 10 m: CAB-40. */
    @Test
    void anUnbalancedRunIsTenMetresLongAtMost() {
        String rule = "unbalanced-too-long";
        assertThat(UnbalancedTooLong.LENGTH.value()).isEqualTo(10);
        assertThat(BASS.but("to: di.in, length: 5 m", "to: di.in, length: 10 m").lines(rule))
                .isEmpty();
        assertThat(BASS.but("to: di.in, length: 5 m", "to: di.in, length: 10.1 m")
                        .lines(rule))
                .containsExactly(
                        "fix: C1 runs 10.1 m from bass, out to di, in, and bass, out is not balanced: beyond 10"
                                + " m it hums.");
        assertThat(BASS.but("to: desk.mic-1, length: 5 m", "to: desk.mic-1, length: 80 m")
                        .lines(rule))
                .isEmpty();
    }

    private static final Joined COMPUTER = Joined.of("""
            equipment:
              pc:   {model: computer-media}
              di:   {model: di-computer}
              desk: {model: desk-digital-16-stage-a}
            cables:
              C1: {type: stereo-minijack, from: pc.phones, to: di.in, length: 2 m}
            """);

    @Test
    void aStereoJackIsSplitOrGoesIntoStereo() {
        String rule = "stereo-into-mono";
        assertThat(COMPUTER.lines(rule)).isEmpty();
        assertThat(COMPUTER.but("stereo-minijack", "line-cable-trs")
                        .but("to: di.in", "to: desk.line-1")
                        .lines(rule))
                .containsExactly("fix: pc, phones is a stereo jack on the mono input desk, line 1: the input takes left"
                        + " minus right, so the voice in the middle is gone.");
        assertThat(COMPUTER.but(
                                "{type: stereo-minijack, from: pc.phones, to: di.in",
                                "{type: minijack-to-2-xlr-m, ways: [\"pc.phones -> desk.mic-{1..2}\"]")
                        .lines(rule))
                .isEmpty();
    }

    @Test
    void consumerAndHeadphoneOutputsOnLineInputsAreNotes() {
        String rule = "consumer-into-line";
        assertThat(COMPUTER.lines(rule)).isEmpty();
        assertThat(COMPUTER.but("to: di.in", "to: desk.line-1").lines(rule))
                .containsExactly(
                        "note: pc, phones gives -7.8 dBu, and desk, line 1 works at 4 dBu: it comes in 11.8 dB low.");
        assertThat(COMPUTER.but("pc:   {model: computer-media}", "pc:   {model: in-ear-beltpack}")
                        .but("to: di.in", "to: desk.line-1")
                        .lines(rule))
                .singleElement()
                .asString()
                .contains("volume knob");
    }

    private static final Joined CONDENSER = Joined.of("""
            equipment:
              mic:   {model: condenser-gooseneck}
              split: {model: mic-splitter-1x2}
              desk:  {model: desk-digital-16-stage-a, set: {mic-1: {gain: 30 dB}}}
              proc:  {model: dsp-4x8}
            cables:
              C1: {type: mic-cable, from: mic.out, to: desk.mic-1, length: 5 m}
            """);

    @Test
    void phantomPowerIsWhereItIsNeeded() {
        String rule = "phantom-missing";
        assertThat(CONDENSER.lines(rule)).isEmpty();
        Joined off = CONDENSER.but("gain: 30 dB", "gain: 30 dB, phantom: off");
        assertThat(off.lines(rule))
                .containsExactly("fix: mic, out needs phantom power, and it is set off at desk, mic 1.");
        assertThat(off.afterFix(rule)).isEmpty();
        assertThat(CONDENSER.but("to: desk.mic-1", "to: proc.in-1").lines(rule))
                .containsExactly("fix: mic, out needs phantom power, and proc, in 1 gives none.");
        assertThat(CONDENSER
                        .but("set: {mic-1: {gain: 30 dB}}", "set: {\"mic-{1..4}\": {phantom: off}}")
                        .findings(rule))
                .singleElement()
                .satisfies(each -> assertThat(each.fixes().getFirst().changes()).isEmpty());
    }

    @Test
    void aSplitterMayPassPhantomPowerOn() {
        String rule = "phantom-missing";
        Joined split = CONDENSER.but("to: desk.mic-1", "to: split.in");
        assertThat(split.lines(rule)).containsExactly("fix: mic, out needs phantom power, and split, in gives none.");
        assertThat(new Joined(split.text()
                                + "  C2: {type: mic-cable, from: split.direct, to: desk.mic-1, length: 1 m}\n")
                        .lines(rule))
                .isEmpty();
    }

    @Test
    void aMicrophoneInputWhoseTypeDoesNotSayIsANote() {
        assertThat(microphone("8 mV/Pa", "level: mic")
                        .but("level: mic, balanced: yes}}}", "level: mic, balanced: yes, phantom: needs}}}")
                        .lines("phantom-missing"))
                .containsExactly(
                        "note: mic, out needs phantom power, and the type of desk, in does not say that it gives"
                                + " any.");
    }

    @Test
    void phantomPowerIsOffWhereItHarms() {
        String rule = "phantom-harms";
        Joined ribbon = CONDENSER.but("model: condenser-gooseneck", "model: mic-ribbon");
        assertThat(ribbon.lines(rule)).isEmpty();
        Joined on = ribbon.but("gain: 30 dB", "gain: 30 dB, phantom: on");
        assertThat(on.lines(rule))
                .containsExactly("stop: Phantom power is set on at desk, mic 1, and mic, out is harmed by it.");
        assertThat(on.afterFix(rule)).isEmpty();
        assertThat(on.but("model: mic-ribbon", "model: mic-dynamic-vocal").lines(rule))
                .isEmpty();
        assertThat(on.but("model: mic-ribbon", "model: bass-guitar").lines(rule))
                .containsExactly("fix: Phantom power is set on at desk, mic 1, and mic, out is not balanced, so its"
                        + " output gets the whole of it.");
        assertThat(on.but("model: mic-ribbon", "model: radio-receiver-digital-1")
                        .lines(rule))
                .containsExactly(
                        "fix: Phantom power is set on at desk, mic 1, and mic, out is a line output, which has no"
                                + " use for it; not every one stands it.");
    }

    @Test
    void switchingPhantomPowerLeavesWhatElseIsSet() {
        String rule = "phantom-harms";
        Joined on = CONDENSER
                .but("model: condenser-gooseneck", "model: mic-ribbon")
                .but("gain: 30 dB", "gain: 30 dB, phantom: on, sample-rate: 48 kHz, clock: master");
        Setting was = ((Equipment) ((Change.Put) on.findings(rule)
                                .getFirst()
                                .fixes()
                                .getFirst()
                                .changes()
                                .getFirst())
                        .entity())
                .set()
                .values()
                .iterator()
                .next();
        assertThat(was.phantom()).isFalse();
        assertThat(was.sampleRate()).isNotNull();
        assertThat(was.clock()).isEqualTo(Clock.MASTER);
    }
}
