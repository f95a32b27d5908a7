package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.power.Supply;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Things on the mains whose type does not say what they take. */
public final class PowerFigureMissing implements Rule {
    private static final Card CARD = new Card(
            "power-figure-missing",
            "Is it known what everything on the mains takes?",
            Set.of(Severity.NOTE),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<String> unknown = evidence.supplies().supplies().stream()
                .filter(each -> !each.known() && each.circuit() != null)
                .map(Supply::id)
                .toList();
        if (unknown.isEmpty()) {
            return Stream.empty();
        }
        return Stream.of(CARD.finding(
                Severity.NOTE,
                Said.equipment(unknown),
                "No figure is known of what " + Said.things(unknown) + (unknown.size() == 1 ? " takes" : " take")
                        + " from the mains; the load of the circuit is that much higher than reckoned.",
                List.of(new Value("without a figure", unknown.size(), 0.0, "")),
                List.of(Fix.of("Read it off the plate at the back, and write `power` into the type."))));
    }
}
