package housewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tasks and the orders on other terminals, and what the commands return. */
class WorkAndOrdersTest {
    private static final String DEMO = "src/main/resources/housewright/demo/carrowfenn-hall.yaml";

    @ParameterizedTest
    @ValueSource(strings = {"work", "orders"})
    void aNarrowTerminalIsHonouredAndSaysTheSame(String command) throws IOException {
        String text = Files.readString(Path.of(DEMO));
        String wide = Terminal.typing(text).run(command, "-", "--all").out();
        String narrow = Terminal.narrow(text, 48).run(command, "-", "--all").out();
        // what has no blank in it stays in one piece
        assertThat(narrow.lines()
                        .filter(line -> line.length() > 48)
                        .filter(line -> line.strip().contains(" ") && !line.matches(".*\\S{30,}.*")))
                .isEmpty();
        assertThat(narrow.replaceAll("\\s+", " ")).isEqualTo(wide.replaceAll("\\s+", " "));
    }

    @Test
    void ordersThatCostMoreThanThereIsStopTheJob() throws IOException {
        String text = Files.readString(Path.of(DEMO));
        assertThat(Terminal.typing(text).run("orders", "-").status()).isZero();
        Terminal.Ran broke =
                Terminal.typing(text.replace("limit: 78000", "limit: 7800")).run("orders", "-");
        assertThat(broke.status()).isEqualTo(1);
        assertThat(broke.out()).contains("more than there is");
        Terminal.Ran late = Terminal.typing(text.replaceFirst("promised: 2027-03-03", "promised: 2027-04-03"))
                .run("orders", "-");
        assertThat(late.status()).isEqualTo(1);
        assertThat(late.out())
                .contains("is promised for 2027-04-03 and needed on 2027-03-06")
                .contains("It holds up");
    }

    @Test
    void aTaskThatIsNotThereIsRefusedWithTheNearest() {
        Terminal.Ran ran = Terminal.plain().run("work", DEMO, "pull-C51");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("did you mean");
        assertThat(Terminal.plain().run("work", "../examples/nosuch.yaml").status())
                .isEqualTo(2);
    }
}
