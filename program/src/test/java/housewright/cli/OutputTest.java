package housewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.testing.Golden;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What people read, word by word, on the examples. */
class OutputTest {
    private static final Path GOLDEN = Path.of("src/test/resources/housewright/cli");

    static Stream<String> commands() {
        return """
                check ../examples/one-microphone.yaml
                check ../examples/stage-box.yaml
                check ../examples/stream.yaml --all
                check ../examples/broken-converter.yaml
                check ../examples/broken-wrong-pair.yaml
                check ../examples/broken-never-feed.yaml
                check ../examples/survey.yaml
                check ../examples/survey.yaml --all
                check src/test/resources/housewright/halls/chapel-survey.yaml
                check src/test/resources/housewright/halls/chapel-survey.yaml --all
                check ../examples/refit.yaml
                check ../examples/refit.yaml --today
                trace ../examples/stage-box.yaml lectern
                trace ../examples/stream.yaml sound-to-stream
                trace ../examples/in-ears.yaml click-stays-out
                trace ../examples/broken-wrong-pair.yaml sound-to-stream
                trace ../examples/broken-never-feed.yaml click-stays-out
                trace ../examples/survey.yaml speech-to-loop
                trace ../examples/refit.yaml speech-to-foyer --today
                mend ../examples/broken-converter.yaml camera-to-foyer
                mend ../examples/broken-wrong-pair.yaml sound-to-stream
                mend ../examples/broken-never-feed.yaml click-stays-out
                mend ../examples/stage-box.yaml lectern
                mend ../examples/survey.yaml speech-to-hall
                mend ../examples/survey.yaml speech-to-loop
                library personal-mixer
                library dmx-terminator
                library mixxer
                library personal --write nowhere.yaml
                check ../examples/nosuch.yaml
                check ../examples
                trace ../examples/stage-box.yaml lecturn
                trace ../examples/stage-box.yaml organ
                work ../examples/refit.yaml
                work ../examples/one-microphone.yaml
                work src/test/resources/housewright/halls/village-hall.yaml
                work src/main/resources/housewright/demo/carrowfenn-hall.yaml
                work src/main/resources/housewright/demo/carrowfenn-hall.yaml --all
                work src/main/resources/housewright/demo/carrowfenn-hall.yaml move-main-left
                work src/main/resources/housewright/demo/carrowfenn-hall.yaml pull-C51
                orders ../examples/refit.yaml
                orders ../examples/one-microphone.yaml
                orders src/main/resources/housewright/demo/carrowfenn-hall.yaml
                orders src/main/resources/housewright/demo/carrowfenn-hall.yaml --all
                orders ../examples/nosuch.yaml
                plan ../examples/refit-plan.yaml --quick --now 2027-05-01T08:00
                plan ../examples/refit-plan.yaml --quick --now 2027-05-08T12:00 --person lead
                plan ../examples/refit-plan.yaml --quick --now 2027-05-01T08:00 --person leed
                plan ../examples/refit.yaml --quick --now 2027-05-01T08:00
                chek
                check
                """.lines().map(String::strip);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commands")
    void readsAsItDid(String command) {
        Terminal.Ran ran = Terminal.plain().run(command.split(" "));
        Golden.hold(GOLDEN.resolve(file(command)), "$ housewright " + command + "\n" + ran.all());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commands")
    void keepsToTheWidth(String command) {
        Terminal.Ran ran = Terminal.plain().run(command.split(" "));
        // what is quoted stays in one piece: lines of a file, commands to copy
        assertThat(ran.all()
                        .lines()
                        .filter(line -> line.length() > Page.WIDTH)
                        .filter(line -> !line.startsWith("  +") && !line.startsWith("  -"))
                        .filter(line -> !line.contains("housewright ") && !command.equals("library dmx-terminator")))
                .isEmpty();
    }

    private static String file(String command) {
        return command.replace("../", "")
                        .replace("examples/", "")
                        .replace("src/test/resources/housewright/", "")
                        .replace("src/main/resources/housewright/", "")
                        .replace(".yaml", "")
                        .replaceAll("[^A-Za-z0-9]+", "-")
                + ".txt";
    }
}
