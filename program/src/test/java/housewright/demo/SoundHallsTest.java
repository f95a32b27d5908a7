package housewright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.finding.Findings;
import housewright.finding.Severity;
import housewright.model.Project;
import housewright.model.RuleSet;
import housewright.model.Rules;
import housewright.model.Stage;
import housewright.signal.FeedProof;
import housewright.study.Study;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No rule cries wolf: the demo, the examples that are not broken on purpose, and a row of small halls of many kinds,
 * each as a technician of many years would draw it, give no stop and no fix, due or not.
 */
class SoundHallsTest {
    private static final Path HALLS = Path.of("src/test/resources/housewright/halls");
    private static final Path EXAMPLES = Path.of("../examples");

    /** Entered by half, as a survey is, and the feeds of it that are proven nevertheless. */
    private static final Map<String, Set<String>> HALF_ENTERED = Map.of("chapel-survey", Set.of());

    /** A handful: what a person still reads on the evening of the survey. */
    private static final int HANDFUL = 8;

    /** @param half entered by half */
    private record Hall(String name, Path file, boolean half) {
        Project project() {
            try {
                return Demo.read(Files.readString(file));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Hall> halls() {
        return in(HALLS);
    }

    static List<Hall> whole() {
        List<Hall> whole =
                new ArrayList<>(halls().stream().filter(hall -> !hall.half()).toList());
        whole.add(new Hall("demo", Path.of("src/main/resources/housewright/demo", Demo.FILE), false));
        in(EXAMPLES).stream()
                .filter(each ->
                        !each.name().startsWith("broken-") && !each.name().equals("survey"))
                .forEach(whole::add);
        return whole;
    }

    static List<Hall> half() {
        return halls().stream().filter(Hall::half).toList();
    }

    private static List<Hall> in(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .map(file -> {
                        String name = file.getFileName().toString().replace(".yaml", "");
                        return new Hall(name, file, HALF_ENTERED.containsKey(name));
                    })
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("whole")
    void nothingStopsOrIsToFix(Hall hall) {
        Findings findings = Study.of(hall.project(), Demo.LIBRARY).findings();
        assertThat(findings.failures()).isEmpty();
        assertThat(Mistake.everything(findings).filter(each -> each.severity() != Severity.NOTE))
                .as(() -> said(findings))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("whole")
    void everyFeedIsProven(Hall hall) {
        List<FeedProof> proofs = Study.of(hall.project(), Demo.LIBRARY).proofs();
        assertThat(proofs).isNotEmpty();
        assertThat(proofs.stream()
                        .filter(proof -> !proof.proven())
                        .map(proof -> proof.feed().id() + " " + proof.pairs()))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("whole")
    void atMostOneNoteOfARuleOnAThing(Hall hall) {
        Findings findings = Study.of(hall.project(), Demo.LIBRARY).findings();
        List<String> notes = Mistake.everything(findings)
                .map(each -> each.rule() + " on " + each.subjects().getFirst())
                .toList();
        assertThat(notes).as(() -> said(findings)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("half")
    void whatIsEnteredByHalfIsCountedAndNotShouted(Hall hall) {
        Project project = hall.project();
        Study study = Study.of(project, Demo.LIBRARY);
        Findings findings = study.findings();
        assertThat(project.about().stage()).isEqualTo(Stage.SURVEY);
        assertThat(findings.failures()).isEmpty();
        assertThat(findings.due().stream().filter(each -> each.severity() != Severity.NOTE))
                .as(() -> said(findings))
                .isEmpty();
        assertThat(findings.due()).as(() -> said(findings)).hasSizeLessThanOrEqualTo(HANDFUL);
        assertThat(study.proofs().stream()
                        .filter(FeedProof::proven)
                        .map(proof -> proof.feed().id()))
                .containsExactlyInAnyOrderElementsOf(HALF_ENTERED.get(hall.name()));
        assertThat(study.verdict().unfinished()).isPositive();
        assertThat(project.questions()).isNotEmpty();
    }

    @Test
    void theHallsAreOfManyKinds() {
        List<Project> projects = halls().stream().map(Hall::project).toList();
        assertThat(projects).hasSizeGreaterThanOrEqualTo(12);
        assertThat(projects).extracting(each -> each.about().stage()).contains(Stage.values());
        assertThat(sets(projects)).containsExactlyInAnyOrder(RuleSet.values());
        assertThat(projects)
                .allSatisfy(each -> assertThat(each.equipment().size())
                        .as(each.about().name())
                        .isBetween(15, 80));
    }

    private static Set<RuleSet> sets(List<Project> projects) {
        Set<RuleSet> sets = new HashSet<>();
        for (Project project : projects) {
            Rules rules = project.about().rules();
            sets.add(rules == null ? RuleSet.METRIC_EU : rules.set());
        }
        return sets;
    }

    private static String said(Findings findings) {
        return Mistake.everything(findings)
                .map(each -> each.severity().word() + " " + each.rule() + " " + each.subjects() + " " + each.message())
                .collect(Collectors.joining("\n"));
    }
}
