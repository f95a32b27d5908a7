package housewright;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Opening;
import housewright.app.ProjectFile;
import housewright.app.ProjectFiles;
import housewright.finding.Finding;
import housewright.finding.Severity;
import housewright.library.BuiltInLibrary;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Moment;
import housewright.study.Study;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples are what their comments say: each has a table of its feeds on top. */
class ExamplesTest {
    private static final Path EXAMPLES = Path.of("../examples");
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(1);
    private static final Pattern ROW = Pattern.compile(
            "#   ([a-z0-9-]+) +(proven|broken|late|crossed|arrives)(?: +(proven|broken|late|crossed|arrives))?");

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static Study study(Path example) {
        ProjectFiles files = new ProjectFiles(LIBRARY, InputStream.nullInputStream());
        return switch (files.open(example.toString())) {
            case Opening.Opened(ProjectFile file) -> Study.of(file.project(), LIBRARY);
            case Opening other -> throw new AssertionError(other);
        };
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void feedsAreAsItsTableSays(Path example) throws IOException {
        Map<String, String> today = new LinkedHashMap<>();
        Map<String, String> after = new LinkedHashMap<>();
        for (String line : Files.readAllLines(example)) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                boolean both = row.group(3) != null;
                today.put(row.group(1), both ? row.group(2) : "");
                after.put(row.group(1), both ? row.group(3) : row.group(2));
            }
        }
        Study study = study(example);
        assertThat(states(study)).isNotEmpty().isEqualTo(after);
        if (!today.containsValue("")) {
            assertThat(states(study.at(Moment.today()))).isEqualTo(today);
        }
    }

    private static Map<String, String> states(Study study) {
        Map<String, String> states = new LinkedHashMap<>();
        for (FeedProof proof : study.proofs()) {
            states.put(proof.feed().id(), proof.state().word());
        }
        return states;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void soundOnesHaveNothingToStopOrFix(Path example) {
        Study study = study(example);
        boolean broken = example.getFileName().toString().startsWith("broken-");
        assertThat(study.findings().due().stream().map(Finding::severity).anyMatch(each -> each == Severity.STOP))
                .isEqualTo(broken);
        assertThat(study.findings().failures()).isEmpty();
        if (!broken) {
            assertThat(study.findings().count(Severity.FIX)).isZero();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void brokenOnesHaveAMend(Path example) {
        Study study = study(example);
        for (FeedProof proof : study.proofs()) {
            boolean broken =
                    example.getFileName().toString().startsWith("broken-") && proof.state() != FeedState.PROVEN;
            assertThat(study.mends(proof).isEmpty()).as(proof.feed().id()).isEqualTo(!broken);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void isAPageThatSaysWhatToTry(Path example) throws IOException {
        List<String> lines = Files.readAllLines(example);
        assertThat(lines.size()).isLessThan(70);
        assertThat(lines).allMatch(line -> line.length() <= 130);
        String text = String.join("\n", lines);
        Matcher command =
                Pattern.compile("\\./housewright \\w+ examples/(\\S+)").matcher(text);
        assertThat(command.results().map(match -> match.group(1)).distinct())
                .containsExactly(example.getFileName().toString());
    }

    @Test
    void thereAreSoundOnesAndBrokenOnes() throws IOException {
        assertThat(examples()).hasSizeGreaterThanOrEqualTo(10);
        assertThat(examples().stream()
                        .filter(file -> file.getFileName().toString().startsWith("broken-")))
                .hasSizeGreaterThanOrEqualTo(3);
    }
}
