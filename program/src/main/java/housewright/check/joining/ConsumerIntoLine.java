package housewright.check.joining;

import housewright.cable.SoundRun;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.LevelClass;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A consumer or headphone output on a professional line input. -10 dBV is 11.8 dB below +4 dBu, so it comes out quiet;
 * a headphone output's level hangs on a knob that somebody turns. Left and right are one note.
 */
public final class ConsumerIntoLine implements Rule {
    static final Limit GAP = Limit.most("working level of the output below that of the input", 10, "dB");

    private static final Card CARD = new Card(
            "consumer-into-line",
            "Do the outputs on professional line inputs give professional line level?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(GAP));

    private record Between(String source, String input) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, GAP);
        Map<Between, List<SoundRun>> between = new LinkedHashMap<>();
        for (SoundRun run : evidence.cabling().soundRuns()) {
            if (run.in().level() == LevelClass.LINE && !run.isBothWays() && (isPhones(run) || gap(run) > most)) {
                between.computeIfAbsent(
                                new Between(
                                        run.source().at().thing(),
                                        run.input().at().thing()),
                                key -> new ArrayList<>())
                        .add(run);
            }
        }
        return between.values().stream().map(runs -> finding(runs, most));
    }

    private static boolean isPhones(SoundRun run) {
        return run.out().level() == LevelClass.PHONES && run.out().nominal() == null;
    }

    private static double gap(SoundRun run) {
        OptionalDouble gives = Levels.working(run.out());
        OptionalDouble wants = Levels.working(run.in());
        return gives.isPresent() && wants.isPresent() ? wants.getAsDouble() - gives.getAsDouble() : 0;
    }

    private static Finding finding(List<SoundRun> runs, double most) {
        SoundRun run = runs.getFirst();
        Set<Subject> subjects = new LinkedHashSet<>();
        runs.forEach(each -> subjects.addAll(Subjects.of(each)));
        String from = run.source().at().saidPort();
        String to = run.input().at().saidPort();
        if (isPhones(run)) {
            return CARD.finding(
                    Severity.NOTE,
                    List.copyOf(subjects),
                    from + " is a headphone output on the line input " + to
                            + ": its level hangs on a volume knob that somebody will turn.",
                    List.of(),
                    List.of(Fix.of("Use a line output, or mark where the knob belongs.")));
        }
        double gap = gap(run);
        return CARD.finding(
                Severity.NOTE,
                List.copyOf(subjects),
                String.format(
                        Locale.ROOT,
                        "%s gives %s, and %s works at %s: it comes in %.1f dB low.",
                        from,
                        Levels.said(Levels.working(run.out()).orElseThrow()),
                        to,
                        Levels.said(Levels.working(run.in()).orElseThrow()),
                        gap),
                List.of(new Value("level low by", gap, most, "dB")),
                List.of(Fix.of(
                        "Make it up with gain behind the input, or put a DI box or a level converter between.")));
    }
}
