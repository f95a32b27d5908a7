package housewright.check.joining;

import housewright.cable.SoundRun;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.LevelClass;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A run of which one end is not balanced hums with its length. Headphones, whose source is a few ohms, and intercom are
 * left alone.
 */
public final class UnbalancedTooLong implements Rule {
    static final Limit LENGTH = Limit.most("length of an unbalanced run", 10, "m");

    private static final Card CARD = new Card(
            "unbalanced-too-long",
            "Is every sound run that is not balanced at both ends short?",
            Set.of(Severity.FIX),
            new Source.FromMemory("sound handbooks: 5 to 10 m for an unbalanced line"),
            Stage.DESIGN,
            List.of(LENGTH));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, LENGTH);
        List<Finding> findings = new ArrayList<>();
        for (SoundRun run : evidence.cabling().soundRuns()) {
            boolean unbalanced = Boolean.FALSE.equals(run.out().balanced())
                    || Boolean.FALSE.equals(run.in().balanced());
            if (unbalanced && run.out().level() != LevelClass.PHONES && !run.isBothWays()) {
                Double metres = run.line().metres();
                if (metres != null && metres > most + 1e-9) {
                    findings.add(finding(run, metres, most));
                }
            }
        }
        return findings.stream();
    }

    private static Finding finding(SoundRun run, double metres, double most) {
        String end = Boolean.FALSE.equals(run.out().balanced())
                ? run.source().at().saidPort()
                : run.input().at().saidPort();
        return CARD.finding(
                Severity.FIX,
                Subjects.of(run),
                String.format(
                        Locale.ROOT,
                        "%s runs %.1f m from %s to %s, and %s is not balanced: beyond %.0f m it hums.",
                        run.line().leads().getFirst().id(),
                        metres,
                        run.source().at().saidPort(),
                        run.input().at().saidPort(),
                        end,
                        most),
                List.of(new Value("length", metres, most, "m")),
                List.of(Fix.of(
                        "Put a DI box or a line transformer at the unbalanced end, and run the length balanced.")));
    }
}
