package housewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

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
        assertThat(first.out()).contains("all 17 tasks are done by Sat 8 May").contains("no plan does better");
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
                .contains("cannot be done as wished")
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
        assertThat(Terminal.typing(text).run("plan", "-", "--now", "tomorrow").status())
                .isEqualTo(2);
        Terminal.Ran never = plan(text, "--seconds", "0");
        assertThat(never.status()).isEqualTo(2);
        assertThat(never.err()).contains("1 to 3600");
    }
}
