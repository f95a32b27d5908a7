package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Stage;
import housewright.signal.Contested;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Several sources patched to one output: only one of them can hold, and nobody knows which. */
public final class TwoSourcesOneOutput implements Rule {
    private static final Card CARD = new Card(
            "two-sources-one-output",
            "Is every output patched from one source only?",
            Set.of(Severity.STOP),
            new Source.TheProject(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.signals().contested().stream().map(TwoSourcesOneOutput::finding);
    }

    private static Finding finding(Contested contested) {
        String device = contested.at().thing();
        String sources = contested.sources().stream()
                .map(patch -> patch.from().toString())
                .distinct()
                .collect(Collectors.joining(" and "));
        return CARD.finding(
                Severity.STOP,
                List.of(Subject.at("patch." + device), Subject.equipment(device)),
                contested.at().said() + " is patched from " + sources + "; only one of them can hold.",
                List.of(),
                List.of(Fix.of("Keep one of these entries, or sum them at a point and patch that.")));
    }
}
