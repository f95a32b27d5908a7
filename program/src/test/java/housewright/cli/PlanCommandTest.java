package housewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plan on the command line: with the real solver in its own process, and when it cannot be kept. */
class PlanCommandTest {
    private static final Path REFIT = Path.of("../examples/refit-plan.yaml");

    private static Terminal.Ran plan(String text, String... options) {
        String[] arguments = new String[options.length + 4];
        System.arraycopy(options, 0, arguments, 4, options.length);
        arguments[0] = "plan";
        arguments[1] = "-";
        arguments[2] = "--now";
        arguments[3] = "2027-05-01T08:00";
        return Terminal.typing(text).run(arguments);
    }

    @Test
    @Tag("slow")
    void theSameSeedGivesTheSamePlanAndNothingIsBetter() throws IOException {
        String text = Files.readString(REFIT);
        Terminal.Ran first = plan(text, "--seed", "7", "--seconds", "5");
        assertThat(first.status()).isZero();
        assertThat(first.out()).contains("all 13 tasks are done by Sat 8 May").contains("no plan does better");
        assertThat(plan(text, "--seed", "7", "--seconds", "5").out()).isEqualTo(first.out());
    }

    @Test
    void aServiceThatWouldFindTheRoomInPiecesIsSaidWithWhatClashes() throws IOException {
        // the visitor, who alone can set loudspeakers, comes only after the service
        String text = Files.readString(REFIT)
                .replace(
                        "from: \"10:00\", to: \"18:00\", between: [2027-05-08, 2027-05-08]",
                        "from: \"10:00\", to: \"18:00\", between: [2027-05-15, 2027-05-15]");
        Terminal.Ran ran = plan(text, "--quick");
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out())
                .containsPattern("things? (is|are) missed\\.")
                .contains("sunday needs speech-to-foyer")
                .contains("visiting technician is free on site only on Sat 15 May");
    }

    @Test
    void whatWorksTodayIsNotTakenApartBeforeTheServiceThatNeedsIt() throws IOException {
        Terminal.Ran ran = plan(Files.readString(REFIT), "--quick", "--json");
        assertThat(ran.status()).isZero();
        // a service on Wednesday needs the old desk, which may go from then on
        assertThat(ran.out()).containsPattern("\"id\" : \"strike-old-desk\"[^}]*\"start\" : \"2027-05-08T");
    }

    @Test
    void aTimeOrALimitThatIsNoneIsRefused() throws IOException {
        String text = Files.readString(REFIT);
        for (String none : new String[] {"tomorrow", "2027-02-30T08:00", "2027-05-01T25:00", "12.02.2027"}) {
            Terminal.Ran ran = Terminal.typing(text).run("plan", "-", "--now", none);
            assertThat(ran.status()).isEqualTo(2);
            assertThat(ran.err())
                    .contains("'" + none + "' is no time. Write year")
                    .doesNotContain("java");
        }
        Terminal.Ran some = plan(text, "--seconds", "some");
        assertThat(some.status()).isEqualTo(2);
        assertThat(some.err()).contains("'some' is no number.");
        Terminal.Ran never = plan(text, "--seconds", "0");
        assertThat(never.status()).isEqualTo(2);
        assertThat(never.err()).contains("1 to 3600");
    }

    @Test
    void aDayAloneIsItsBeginningAndABlankMayStandForTheT() throws IOException {
        String text = Files.readString(REFIT);
        String begins = Terminal.typing(text)
                .run("plan", "-", "--quick", "--now", "2027-05-01T00:00")
                .out();
        assertThat(begins).contains("Sat 8 May");
        assertThat(Terminal.typing(text)
                        .run("plan", "-", "--quick", "--now", "2027-05-01")
                        .out())
                .isEqualTo(begins);
        assertThat(Terminal.typing(text)
                        .run("plan", "-", "--quick", "--now", "2027-05-01 00:00")
                        .out())
                .isEqualTo(begins);
    }

    private static Path accepted(Path folder) throws IOException {
        Path file = folder.resolve("hall.yaml");
        Files.writeString(file, Files.readString(REFIT));
        assertThat(Terminal.plain()
                        .run("plan", file.toString(), "--now", "2027-05-01T08:00", "--quick", "--accept")
                        .status())
                .isZero();
        return file;
    }

    @Test
    void theAcceptedPlanIsWrittenIntoTheFileAndTheRestStays(@TempDir Path folder) throws IOException {
        Path file = accepted(folder);

        String text = Files.readString(file);
        assertThat(text).startsWith(Files.readString(REFIT)).contains("print-labels: {from: 2027-05-03 09:00,");
        Terminal.Ran again = Terminal.plain().run("plan", file.toString(), "--now", "2027-05-01T08:00", "--quick");
        assertThat(again.out()).doesNotContain("Moved");
    }

    @Test
    void onSiteWhatHasBegunStaysAndWhatMovedIsToldWithTheReason(@TempDir Path folder) throws IOException {
        Path file = accepted(folder);
        Path log = Files.writeString(folder.resolve("log.yaml"), """
                print-labels: {state: done}
                copy-old-desk: {state: done, from: 2027-05-08 09:00, to: 2027-05-08 09:35}
                receive-desk: {state: begun, from: 2027-05-08 09:35, people: [lead], left: 15 min}
                replug-at-hall-later: {state: blocked, until: 2027-05-08 11:00, why: The key is not there}
                """);
        Terminal.Ran ran = Terminal.plain()
                .run(
                        "plan",
                        file.toString(),
                        "--now",
                        "2027-05-08T09:40",
                        "--log",
                        log.toString(),
                        "--quick",
                        "--json");

        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .containsPattern("\"id\" : \"copy-old-desk\"[^}]*\"end\" : \"2027-05-08T09:35\"")
                .containsPattern("\"id\" : \"receive-desk\"[^}]*\"end\" : \"2027-05-08T09:55\"")
                .containsPattern(
                        "\"id\" : \"replug-at-hall-later\",\\s*\"was\" : \"2027-05-08T09:45\"[^}]*\"is\" : \"2027-05-08T1[1-7]")
                .doesNotContain("no task any more");
        // it waits longer for the key than for what comes before it, so the key is the reason
        Terminal.Ran blocked =
                Terminal.plain().run("plan", "../examples/on-site.yaml", "--now", "2027-05-08T09:50", "--quick");
        assertThat(blocked.out().replaceAll("\\s+", " "))
                .contains("It is blocked until Sat 8 May 11:00. [replug-at-hall-later]")
                .contains("Made by rules of thumb alone")
                .doesNotContain("The search ended");
    }

    @Test
    void aLogThatCannotBeReadSaysWhatIsWrongWhere(@TempDir Path folder) throws IOException {
        Path log = Files.writeString(folder.resolve("log.yaml"), "log:\n  mount-disk: {state: done}\n");
        Terminal.Ran ran = plan(Files.readString(REFIT), "--log", log.toString());

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("log.yaml:2").contains("mount-disk");
        assertThat(plan(Files.readString(REFIT), "--log", "nowhere.yaml").err()).contains("There is no file");
    }

    @Test
    void aPinHoldsAndOneThatCannotBeKeptIsSaid() throws IOException {
        String text = Files.readString(REFIT)
                + "plan: {pins: {align-foyer: {from: 2027-05-08 16:00}, train-desk: {people: [visitor]}}}\n";
        Terminal.Ran ran = plan(text, "--quick", "--json");
        assertThat(ran.out())
                .containsPattern("\"id\" : \"align-foyer\"[^}]*\"start\" : \"2027-05-08T16:00\"")
                .containsPattern("\"id\" : \"train-desk\"[^}]*\"people\" : \\[\\s*\"visitor\"\\s*]");
        Terminal.Ran never =
                plan(text.replace("align-foyer: {from: 2027-05-08 16", "align-foyer: {from: 2027-05-08 18"), "--quick");
        assertThat(never.status()).isEqualTo(1);
        assertThat(never.out()).contains("Measure and set the loudspeakers of foyer");
    }

    @Test
    void whatSomebodyCanDoNowComesWithWhatMostWaitsForFirst(@TempDir Path folder) throws IOException {
        Path file = accepted(folder);
        Terminal.Ran ran =
                Terminal.plain().run("plan", file.toString(), "--now", "2027-05-08T09:00", "--ready", "lead");

        assertThat(ran.status()).isZero();
        assertThat(ran.out().indexOf("[copy-old-desk]"))
                .isPositive()
                .isLessThan(ran.out().indexOf("[print-labels]"));
        assertThat(ran.out()).doesNotContain("[mount-desk]");
        assertThat(Terminal.plain()
                        .run("plan", file.toString(), "--ready", "nobody")
                        .err())
                .contains("no person nobody");
    }

    @Test
    void aCalendarForEachPersonIsTheSameBytesEachTime(@TempDir Path folder) throws IOException {
        Path file = accepted(folder);
        for (String out : new String[] {"one", "two"}) {
            assertThat(Terminal.plain()
                            .run(
                                    "plan",
                                    file.toString(),
                                    "--now",
                                    "2027-05-01T08:00",
                                    "--quick",
                                    "--ics",
                                    folder.resolve(out).toString())
                            .status())
                    .isZero();
        }
        assertThat(folder.resolve("one/lead.ics")).hasSameBinaryContentAs(folder.resolve("two/lead.ics"));
        assertThat(Biweekly.parse(Files.readString(folder.resolve("one/visitor.ics")))
                        .first()
                        .getEvents())
                .hasSizeGreaterThan(5);
    }
}
