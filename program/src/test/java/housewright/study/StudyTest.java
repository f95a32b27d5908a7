package housewright.study;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.signal.Hall;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudyTest {

    /** A rule of a test: what it does is given. */
    private record Given(String id, java.util.function.Function<Evidence, Stream<Finding>> does) implements Rule {
        @Override
        public Card card() {
            return new Card(id, "Is it so?", Set.of(Severity.values()), new Source.CommonPractice(), Stage.SURVEY);
        }

        @Override
        public Stream<Finding> check(Evidence evidence) {
            return does.apply(evidence);
        }

        Finding finding(Severity severity, String cable) {
            return card().finding(
                            severity,
                            List.of(Subject.cable(cable)),
                            "It is so.",
                            List.of(),
                            List.of(Fix.of("Undo it.")));
        }
    }

    @Test
    void ruleThatThrowsIsReportedApartAndTheOthersStillRun() {
        Given sound = new Given("sound", evidence -> Stream.empty());
        Given finds = new Given("finds", evidence -> Stream.of(sound.finding(Severity.NOTE, "C1")));
        Given fails = new Given("fails", evidence -> {
            throw new IllegalStateException("no such thing");
        });
        Given failsLate = new Given(
                "fails-late", evidence -> Stream.of("C1", "").map(cable -> sound.finding(Severity.FIX, cable)));
        Findings findings = Study.of(Hall.CLEAN.project(), Hall.NO_TYPES, List.of(fails, failsLate, finds))
                .findings();
        assertThat(findings.due()).hasSize(1);
        assertThat(findings.failures()).extracting(failure -> failure.rule()).containsExactly("fails", "fails-late");
        assertThat(findings.failures().getFirst().what()).contains("no such thing", "StudyTest");
    }

    @Test
    void reportIsWorstFirstThenBySubjectThenByRule() {
        Given one = new Given("one", evidence -> Stream.empty());
        Given two = new Given("two", evidence -> Stream.empty());
        List<Finding> wanted = List.of(
                two.finding(Severity.STOP, "C9"),
                one.finding(Severity.FIX, "C1"),
                two.finding(Severity.FIX, "C1"),
                one.finding(Severity.FIX, "C2"),
                one.finding(Severity.NOTE, "C0"));
        List<Finding> shuffled = new ArrayList<>(wanted).reversed();
        Given all = new Given("all", evidence -> shuffled.stream());
        assertThat(Study.of(Hall.CLEAN.project(), Hall.NO_TYPES, List.of(all))
                        .findings()
                        .due())
                .isEqualTo(wanted);
    }

    @Test
    void everythingIsWorkedOutOnceHoweverManyAsk() throws Exception {
        AtomicInteger runs = new AtomicInteger();
        Given counts = new Given("counts", evidence -> {
            runs.incrementAndGet();
            return Stream.empty();
        });
        Study study = Study.of(Hall.CLEAN.project(), Hall.NO_TYPES, List.of(counts));
        List<Callable<Object>> asks = new ArrayList<>();
        for (int i = 0; i < 64; i++) {
            asks.add(i % 2 == 0 ? study::verdict : study::signals);
        }
        try (var threads = Executors.newFixedThreadPool(8)) {
            Set<Object> answers = new java.util.HashSet<>();
            for (Future<Object> answer : threads.invokeAll(asks)) {
                answers.add(answer.get());
            }
            assertThat(answers).hasSize(2);
        }
        assertThat(runs).hasValue(1);
    }

    @ParameterizedTest(name = "{3}")
    @CsvSource(delimiter = '|', textBlock = """
            stage: design               | stage: live              | false | All 4 feeds are proven in the target, 1 never-feed among them
            desk.out-1, to: left.in     | desk.out-4, to: left.in  | true  | 3 of 4 feeds proven in the target; speech does not arrive
            within: 5 ms                | within: 0.5 ms           | false | 3 of 4 feeds proven in the target; speech is late
            to: screen.line             | to: screen.hdmi          | true  | 3 of 4 feeds proven in the target; the side room has no sound
            - ch-1 -> main, out-3       | - in-2 -> out-3          | true  | 1 of 4 feeds proven in the target; quiet arrives where it must not; the side room has no sound; and 1 more feed is not
            {never: yes, from           | {from                    | true  | 3 of 4 feeds proven in the target; quiet does not arrive
            {never: yes, from: mic-2.pickup, to: screen.sound} | {from: mic-2.pickup} | false | All 3 feeds are proven in the target; one feed is not finished
            """)
    void verdictSaysWhatIsWorst(String passage, String other, boolean fails, String sentence) {
        Hall hall = Hall.CLEAN
                .plus("venue: {rooms: {side-room: {}}, places: {wall: {room: side-room}}}")
                .but("screen: {model: screen}", "screen: {model: screen, at: wall}")
                .but(passage, other);
        Verdict verdict = Study.of(hall.project(), Hall.NO_TYPES).verdict();
        assertThat(verdict.sentence()).isEqualTo(sentence);
        assertThat(verdict.fails()).isEqualTo(fails);
    }

    @Test
    void projectWithoutFeedsHasNothingToProve() {
        String text = Hall.CLEAN.text();
        Hall none = Hall.CLEAN.but(text.substring(text.indexOf("\nfeeds:")), "\n");
        Verdict verdict = Study.of(none.project(), Hall.NO_TYPES).verdict();
        assertThat(verdict.sentence()).isEqualTo("No feeds are entered yet, so there is nothing to prove");
        assertThat(verdict.fails()).isFalse();
    }
}
