package housewright.check.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.finding.Severity;
import housewright.signal.Moment;
import housewright.study.Study;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each rule on a hall that breaks it in one place, and on the nearest hall that does not. */
class SignalRulesTest {

    private static Findings check(Hall hall) {
        return Study.of(hall.project(), Hall.NO_TYPES).findings();
    }

    /** The findings in a line each, the feed rules' own consequences and all. */
    private static List<String> lines(Hall hall) {
        return check(hall).due().stream().map(SignalRulesTest::line).toList();
    }

    private static String line(Finding finding) {
        return finding.severity().word() + " " + finding.rule() + " " + finding.subjects() + " " + finding.message();
    }

    private static List<String> lines(Hall hall, String rule) {
        return lines(hall).stream()
                .filter(line -> line.contains(" " + rule + " "))
                .toList();
    }

    @Test
    void cleanHallHasNoFindings() {
        Findings findings = check(Hall.CLEAN);
        assertThat(findings.due()).isEmpty();
        assertThat(findings.notYetDue()).isEmpty();
        assertThat(findings.failures()).isEmpty();
    }

    @Test
    void feedDoesNotArrive() {
        assertThat(lines(Hall.CLEAN.but("  C4: {from: desk.out-2, to: right.in}\n", "")))
                .containsExactly(
                        "stop feed-does-not-arrive [feed speech] speech does not arrive at right, sound: nothing"
                                + " is plugged into desk, out 2; right, in waits for it (1 of its 2 ways).");
    }

    @Test
    void neverFeedArrives() {
        assertThat(lines(Hall.CLEAN
                        .but("- ch-2 -> main\n", "- ch-2 -> mix-1\n    - mix-1 -> out-4\n")
                        .but("C6: {from: desk.out-3", "C6: {from: desk.out-4")
                        .but("- ch-1 -> main, out-3", "- ch-1 -> main, mix-1")))
                .containsExactly(
                        "stop never-feed-arrives [feed quiet] quiet is broken: mic 2, pickup arrives at screen,"
                                + " sound.");
    }

    @Test
    void neverFeedCannotBeShownToHold() {
        Hall hall = Hall.CLEAN
                .with("equipment", "box: {}")
                .with("cables", "C7: {from: desk.out-4, to: box.in}")
                .but("- ch-2 -> main\n", "- ch-2 -> main, out-4\n");
        assertThat(lines(hall, "never-feed-not-shown"))
                .singleElement()
                .asString()
                .startsWith("fix ");
        assertThat(lines(hall)).hasSize(1);
    }

    @Test
    void feedIsCrossed() {
        Hall stereo = Hall.CLEAN
                .but(
                        "from: mic-1.pickup, to: [left.sound, right.sound]",
                        "from: [mic-1.pickup, mic-2.pickup], to: [left.sound, right.sound]")
                .but("- ch-1 -> main, out-3", "- ch-1 -> out-3, out-1")
                .but("- ch-2 -> main\n", "- ch-2 -> out-2\n")
                .but("    - main -> out-1\n    - main -> out-2\n", "");
        String straight = stereo.text();
        assertThat(lines(stereo)).as(straight).isEmpty();
        Hall crossed = stereo.but("to: left.in", "to: A.in")
                .but("to: right.in", "to: left.in")
                .but("to: A.in", "to: right.in");
        assertThat(lines(crossed)).singleElement().asString().startsWith("stop feed-crossed [feed speech] ");
    }

    @Test
    void feedIsLate() {
        assertThat(lines(Hall.CLEAN.but("within: 5 ms", "within: 1 ms"))).isEmpty();
        assertThat(lines(Hall.CLEAN.but("within: 5 ms", "within: 0.9 ms")))
                .containsExactly(
                        "fix feed-late [feed speech] speech arrives late at left, sound: it arrives after 1 ms;"
                                + " allowed are 0.9 ms (2 of its 2 ways).");
        Finding late =
                check(Hall.CLEAN.but("within: 5 ms", "within: 0.9 ms")).due().getFirst();
        assertThat(late.evidence().getFirst().found()).isEqualTo(1.0);
        assertThat(late.evidence().getFirst().limit()).isEqualTo(0.9);
    }

    @Test
    void feedIsUnfinished() {
        Hall unfinished = Hall.CLEAN.with("feeds", "later: {from: mic-1.pickup}");
        assertThat(lines(unfinished))
                .containsExactly(
                        "note feed-unfinished [feed later] later does not say yet where it must arrive, so nothing"
                                + " is proven of it.");
        assertThat(lines(unfinished.but("stage: design", "stage: order")))
                .singleElement()
                .asString()
                .startsWith("fix ");
        assertThat(Study.of(unfinished.project(), Hall.NO_TYPES).verdict().fails())
                .isFalse();
    }

    @Test
    void twoSourcesAreOnOneOutput() {
        Hall hall = Hall.CLEAN.but("- main -> out-2\n", "- main -> out-2\n    - ch-2 -> out-2\n");
        assertThat(lines(hall, "two-sources-one-output"))
                .containsExactly(
                        "stop two-sources-one-output [patch desk, equipment desk] desk, out 2 is patched from ch-2"
                                + " and main; only one of them can hold.");
    }

    @Test
    void cableJoinsNothing() {
        Hall hall = Hall.CLEAN.with("cables", "C7: {from: desk.out-4, to: screen.hdmi}");
        assertThat(lines(hall))
                .singleElement()
                .asString()
                .startsWith("stop cable-joins-nothing [cable C7] C7 does not join");
    }

    /** What the type joins inside already, or does not join at all, is no matter of plugs. */
    @Test
    void aPatchEntryThatHoldsNothingIsTakenOut() {
        Hall hall = Hall.CLEAN.with("equipment", "fx: {model: effects}").with("patch", "fx: [in -> out]");
        assertThat(check(hall).due())
                .singleElement()
                .satisfies(found -> assertThat(found.rule()).isEqualTo("cable-joins-nothing"))
                .satisfies(found ->
                        assertThat(found.fixes().getFirst().words()).startsWith("Take the entry out of the patch"));
    }

    @Test
    void twoCablesAreInOneSocket() {
        Hall hall = Hall.CLEAN
                .with("equipment", "mic-3: {model: mic}")
                .with("cables", "C7: {from: mic-3.out, to: desk.in-2}");
        assertThat(lines(hall))
                .containsExactly(
                        "stop two-cables-one-port [cable C7, cable C2, equipment desk] desk, in 2 has 2 cables in"
                                + " it: C7, C2.");
        assertThat(lines(hall.but(
                        "\"in-{1..4}\": {in: analog-audio, connector: XLR-3F",
                        "\"in-{1..4}\": {in: analog-audio, connector: terminals")))
                .as("terminals take several wires")
                .isEmpty();
        assertThat(lines(hall.but("to: desk.in-2}\n  C1", "to: desk.in-2, life: strike}\n  C1")))
                .isEmpty();
    }

    @Test
    void cableIsUnfinished() {
        Hall hall = Hall.CLEAN.with("cables", "C7: {from: desk.out-4, to: unknown}");
        assertThat(lines(hall)).isEmpty();
        assertThat(check(hall).notYetDue()).hasSize(1);
        assertThat(lines(hall.but("stage: design", "stage: order")))
                .containsExactly("fix cable-unfinished [cable C7] It is not known where C7 ends.");
    }

    @Test
    void soundComesRound() {
        Hall round = Hall.CLEAN
                .with("cables", "C7: {from: desk.out-4, to: unit.in}\nC8: {from: unit.out, to: desk.in-3}")
                .with("patch", "")
                .but(
                        "- main -> out-1\n",
                        "- main -> out-1\n    - in-3 -> ch-3\n    - {from: ch-3, to: mix-1, gain: 0 dB}\n    - mix-1 -> out-4\n");
        assertThat(lines(round, "loop-at-unity"))
                .singleElement()
                .asString()
                .startsWith("fix ")
                .contains("comes round");
        assertThat(lines(round.but("gain: 0 dB", "gain: -0.1 dB"), "loop-at-unity"))
                .isEmpty();
    }

    @Test
    void soundMeetsItselfLater() {
        Hall twice = Hall.CLEAN
                .but("latency: 2 ms", "latency: 2.5 ms")
                .with("cables", "C7: {from: desk.out-4, to: unit.in}\nC8: {from: unit.out, to: desk.in-3}")
                .but(
                        "- main -> out-1\n",
                        "- main -> out-1\n    - ch-1 -> out-4\n    - in-3 -> ch-3\n    - {from: ch-3, to: main, gain: -9 dB}\n");
        assertThat(lines(twice, "two-paths-comb"))
                .as("by way of a processor: it may be an effect")
                .containsExactly(
                        "note two-paths-comb [feed speech, patch desk] speech: the sound meets itself at desk, main"
                                + " 3.5 ms later, by way of unit: a comb whose first gap is at 143 Hz.");
        assertThat(lines(twice.but("kind: processor", "kind: converter"), "two-paths-comb"))
                .singleElement()
                .asString()
                .startsWith("fix ");
        assertThat(lines(twice.but("gain: -9 dB", "gain: -11 dB"), "two-paths-comb"))
                .isEmpty();
        assertThat(lines(twice.but("latency: 2.5 ms", "latency: 45 ms"), "two-paths-comb"))
                .singleElement()
                .asString()
                .contains("an echo");
    }

    @Test
    void sameDelayTwiceDoesNotComb() {
        assertThat(lines(Hall.CLEAN.but(
                        "- ch-2 -> main\n", "- ch-2 -> main\n    - ch-1 -> mix-1\n    - mix-1 -> main\n")))
                .isEmpty();
    }

    /** Limits: ITU-R BT.1359-1, considering g): +45/-125 ms noticed, +90/-185 ms refused; here a frame is 20 ms. */
    @Test
    void lipsAndWordsDisagree() {
        assertThat(lines(lips("1 frame", "0 ms"))).as("early 39 ms").isEmpty();
        assertThat(lines(lips("3 frames", "0 ms")))
                .singleElement()
                .asString()
                .startsWith("note lip-sync [equipment screen")
                .contains("79 ms early");
        assertThat(lines(lips("4 frames", "0 ms")))
                .singleElement()
                .asString()
                .startsWith("fix ")
                .contains("99 ms early", "90 ms");
        assertThat(lines(lips("0 frames", "140 ms"))).as("late 121 ms").isEmpty();
        assertThat(lines(lips("0 frames", "150 ms")))
                .singleElement()
                .asString()
                .startsWith("note ")
                .contains("131 ms late");
        assertThat(lines(lips("0 frames", "210 ms")))
                .singleElement()
                .asString()
                .startsWith("fix ")
                .contains("191 ms late", "185 ms");
    }

    private static Hall lips(String video, String audio) {
        return Hall.CLEAN.but(
                "latency: {audio: 0 ms, video: 1 frame}", "latency: {audio: " + audio + ", video: " + video + "}");
    }

    @Test
    void figuresAreMissing() {
        assertThat(lines(Hall.CLEAN.but(
                        "    routes: [in -> sound]\n    latency: 0 ms\n", "    routes: [in -> sound]\n")))
                .containsExactly(
                        "note figures-missing [feed speech] 2 figures are not known, so the delay of one feed is"
                                + " shown without: the latency of left (speaker), the latency of right (speaker).");
    }

    @Test
    void findingsThatAreNotDueAreKeptApart() {
        Findings findings = check(
                Hall.CLEAN.but("stage: design", "stage: survey").but("C3: {from: desk.out-1", "C3: {from: desk.out-4"));
        assertThat(findings.due()).isEmpty();
        assertThat(findings.notYetDue()).extracting(Finding::rule).containsExactly("feed-does-not-arrive");
    }

    @Test
    void exemptedFindingsKeepTheirReason() {
        Hall late = Hall.CLEAN.but("within: 5 ms", "within: 0.5 ms");
        Hall exempt = late.plus("exempt: [{rule: feed-late, subject: feeds.speech, why: Agreed with the organist}]");
        Findings findings = check(exempt);
        assertThat(findings.due()).isEmpty();
        assertThat(findings.exempted())
                .singleElement()
                .extracting(each -> each.by().why())
                .isEqualTo("Agreed with the organist");
        assertThat(lines(late.plus("exempt: [{rule: feed-late, subject: feeds.quiet, why: Slip}]")))
                .hasSize(1);
    }

    @Test
    void todayIsCheckedAsItStandsToday() {
        Hall moved = Hall.CLEAN.but(
                "C3: {from: desk.out-1, to: left.in}", "C3: {from: desk.out-1, to: left.in, was: {from: desk.out-4}}");
        Study study = Study.of(moved.project(), Hall.NO_TYPES);
        assertThat(study.findings().due()).isEmpty();
        assertThat(study.at(Moment.today()).findings().due()).isEmpty(); // the work itself puts it right
        assertThat(study.at(Moment.today()).at(Moment.target())).isSameAs(study);

        Hall never = Hall.CLEAN.but("C3: {from: desk.out-1, to: left.in}", "C3: {from: desk.out-4, to: left.in}");
        assertThat(Study.of(never.project(), Hall.NO_TYPES)
                        .at(Moment.today())
                        .findings()
                        .due())
                .extracting(Finding::rule)
                .containsExactly("feed-does-not-arrive");
    }

    @Test
    void rulesKeepTheirPromises() {
        for (var rule : SignalRules.all()) {
            assertThat(rule.card().id()).matches("[a-z]+(-[a-z]+)*");
            assertThat(rule.card().severities()).isNotEmpty();
        }
        assertThat(SignalRules.all()).extracting(rule -> rule.card().id()).doesNotHaveDuplicates();
        assertThat(Severity.values()).containsExactly(Severity.STOP, Severity.FIX, Severity.NOTE);
    }
}
