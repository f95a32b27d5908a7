package housewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What {@code check} says beside proofs and findings: what is open, what is not due yet, what is switched off. */
class CheckTextTest {
    private static final String SURVEY = """
            housewright: 1
            project: {name: A survey, stage: survey}
            equipment:
              mic:  {model: mic-dynamic-vocal}
              desk: {model: sketch-desk}
              left: {model: loudspeaker-powered-8}
            cables:
              C1: {type: mic-cable, from: mic.out, to: desk.in-1, length: 5 m}
              C2: {from: desk.out-1, to: unknown}
            feeds:
              speech: {from: mic.pickup, to: left.sound, carries: audio}
              song:   {from: mic.pickup, to: left.sound, carries: audio}
            people: {lead: {role: lead}}
            """;

    private static String check(String text, String... more) {
        String[] arguments = new String[2 + more.length];
        arguments[0] = "check";
        arguments[1] = "-";
        System.arraycopy(more, 0, arguments, 2, more.length);
        return Terminal.typing(text).run(arguments).out();
    }

    @Test
    void aSurveySaysInALineWhyFeedsAreNotProvenYet() {
        String said = check(SURVEY);
        assertThat(said)
                .contains("Not proven yet\n  speech, song: it goes on into desk, whose sockets are not known yet.\n");
        assertThat(said).doesNotContain("■", "▲", "Mend");
        assertThat(check(SURVEY, "--all")).contains("■ speech does not arrive at left, sound.");
        assertThat(check(SURVEY.replace("stage: survey", "stage: design")))
                .contains("■ speech does not arrive at left, sound.")
                .doesNotContain("Not proven yet");
    }

    @Test
    void whatIsNotYetDueIsCountedByStageAndNotShown() {
        assertThat(check(SURVEY)).contains("Not yet due: 1 from order on; --all shows it.\n");
        assertThat(check(SURVEY)).doesNotContain("It is not known where C2 ends");
        assertThat(check(SURVEY, "--all"))
                .contains("Not yet due: 1 from order on:\n▲ fix   It is not known where C2 ends.");
        assertThat(check(SURVEY.replace("stage: survey", "stage: order")))
                .contains("▲ fix   It is not known where C2 ends.")
                .doesNotContain("Not yet due");
    }

    @Test
    void aNarrowTerminalGetsLinesOfItsOwnWidth() {
        String text = SURVEY.replace("stage: survey", "stage: order");
        String wide = check(text, "--all");
        String narrow = Terminal.narrow(text, 44).run("check", "-", "--all").out();
        assertThat(narrow.lines().filter(line -> !line.startsWith("Next: ")))
                .allMatch(line -> line.length() <= 44, "is at most 44 wide");
        assertThat(narrow.replaceAll("\\s+", " ")).isEqualTo(wide.replaceAll("\\s+", " "));
        assertThat(Terminal.narrow(text, 3).run("check", "-", "--all").out())
                .isEqualTo(Terminal.narrow(text, Page.LEAST_WIDTH)
                        .run("check", "-", "--all")
                        .out());
        assertThat(Terminal.narrow(text, 400).run("check", "-", "--all").out()).isEqualTo(wide);
    }

    @Test
    void openQuestionsAreListedTheMostUrgentFirst() {
        String asked = SURVEY + """
                questions:
                  q1: {to: lead, asks: "Which way round?"}
                  q2: {to: lead, about: cables.C2, asks: "Where does it end?", due: 2027-04-09}
                  q3: {asks: "Who has the key?", due: 2027-04-02}
                  q4: {to: lead, asks: "Old or new?", answer: Old}
                """;
        assertThat(check(asked)).contains("""
                3 questions are open
                  q3, due 2027-04-02: Who has the key?
                  q2 to lead, due 2027-04-09: Where does it end? [cables.C2]
                  q1 to lead: Which way round?
                """);
        String many = SURVEY
                + IntStream.rangeClosed(1, 7)
                        .mapToObj(i -> "  q" + i + ": {asks: \"Question " + i + "?\"}\n")
                        .collect(Collectors.joining("", "questions:\n", ""));
        assertThat(check(many))
                .contains("7 questions are open", "q5: Question 5?", "  … and 2 more; --all shows them.")
                .doesNotContain("Question 6");
        assertThat(check(many, "--all")).contains("q7: Question 7?");
        assertThat(check(SURVEY)).doesNotContain("question");
    }

    @Test
    void whatIsSwitchedOffIsPrintedWithTheReason() {
        String two = SURVEY.replace(
                "C2: {from: desk.out-1, to: unknown}",
                "C2: {type: mic-cable, from: mic.out, to: left.in, length: 9 m}");
        assertThat(check(two)).contains("■ stop  mic, out has 2 cables in it: C1, C2.");
        assertThat(
                        check(
                                two
                                        + "exempt: [{rule: two-cables-one-port, subject: equipment.mic, why: A Y lead until Friday}]\n"))
                .contains(
                        "Switched off: mic, out has 2 cables in it: C1, C2. [two-cables-one-port] Because: A Y lead until\n"
                                + "              Friday.")
                .doesNotContain("■");
    }
}
