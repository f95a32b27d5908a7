package housewright.check.joining;

import housewright.cable.SoundRun;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.model.LevelClass;
import housewright.model.Phantom;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Phantom power set on where it tears a ribbon or goes into an output that was never made for 48 V. Where the project
 * does not set it, it is off for such sources.
 */
public final class PhantomHarms implements Rule {
    private static final Card CARD = new Card(
            "phantom-harms",
            "Is phantom power off wherever it would harm what is plugged in?",
            Set.of(Severity.STOP, Severity.FIX),
            new Source.CommonPractice(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Sets sets = new Sets();
        List<Finding> findings = new ArrayList<>();
        for (SoundRun run : evidence.cabling().soundRuns()) {
            boolean harmed = run.out().phantom() == Phantom.HARMED;
            boolean unbalanced = Boolean.FALSE.equals(run.out().balanced());
            boolean line = run.out().level() == LevelClass.LINE;
            if ((harmed || unbalanced || line)
                    && run.in().phantom() == Phantom.GIVES
                    && Boolean.TRUE.equals(sets.phantom(run.input()))) {
                findings.add(finding(evidence, run, harmed, unbalanced));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, SoundRun run, boolean harmed, boolean unbalanced) {
        String why = harmed
                ? " is harmed by it."
                : unbalanced
                        ? " is not balanced, so its output gets the whole of it."
                        : " is a line output, which has no use for it; not every one stands it.";
        return CARD.finding(
                harmed ? Severity.STOP : Severity.FIX,
                Subjects.of(run),
                "Phantom power is set on at " + run.input().at().saidPort() + ", and "
                        + run.source().at().saidPort()
                        + why,
                List.of(),
                List.of(PhantomSetting.fix(evidence, run.input(), false)));
    }
}
