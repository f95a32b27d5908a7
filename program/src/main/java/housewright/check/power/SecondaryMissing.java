package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Fitted;
import housewright.model.Stage;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Something hangs over people by one fixing only. */
public final class SecondaryMissing implements Rule {
    private static final Card CARD = new Card(
            "secondary-missing",
            "Has everything that hangs overhead a secondary attachment that holds it when the first one fails?",
            Set.of(Severity.STOP),
            new Source.Published("EN 60598-2-17, as quoted, for luminaires; for the rest common practice", "17.6.6"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Overhead.Point point : Overhead.points(evidence)) {
            List<String> missing = point.things().stream()
                    .filter(each -> each.equipment().secondary() == Fitted.MISSING)
                    .map(Present::id)
                    .toList();
            if (!missing.isEmpty()) {
                findings.add(CARD.finding(
                        Severity.STOP,
                        Said.subjects(Said.place(point.place().id()), missing),
                        Said.things(missing) + " at " + point.said() + (missing.size() == 1 ? " has" : " have")
                                + " no secondary attachment to hold " + (missing.size() == 1 ? "it" : "them")
                                + " when the first one fails. It blocks "
                                + Overhead.blocked(evidence, point.place().id()) + ".",
                        List.of(new Value("without a secondary attachment", missing.size(), 0.0, "")),
                        List.of(Fix.of("Fit one that is rated for it, short, and to a point of its own; then write"
                                + " `secondary: fitted`. " + Said.RIGGING))));
            }
        }
        return findings.stream();
    }
}
