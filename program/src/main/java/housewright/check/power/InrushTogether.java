package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.Stage;
import housewright.power.CircuitLoad;
import housewright.power.Supply;
import housewright.unit.Current;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Many electronic supplies that start together on one breaker. */
public final class InrushTogether implements Rule {
    static final Limit MOST = Limit.most("electronic lamps for each ampere of the breaker", 1, "");

    private static final Card CARD = new Card(
            "inrush-together",
            "Do few enough lamps with electronic supplies start together on one breaker?",
            Set.of(Severity.NOTE),
            new Source.FromMemory("Practice: a supply draws 20 to 100 times its current for under a millisecond"),
            Stage.DESIGN,
            List.of(MOST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, MOST);
        List<Finding> findings = new ArrayList<>();
        for (CircuitLoad load : evidence.supplies().circuits()) {
            List<String> lamps = load.on().stream()
                    .filter(each -> each.thing().model() != null
                            && each.thing().model().kind() == Kind.FIXTURE
                            && (each.thing().model().light() == null
                                    || !each.thing().model().light().dimmed()))
                    .map(Supply::id)
                    .toList();
            Current rating = load.circuit().rating();
            if (rating != null && lamps.size() > rating.amperes() * most) {
                findings.add(CARD.finding(
                        Severity.NOTE,
                        Said.subjects(Said.circuit(load.circuit().id()), lamps),
                        lamps.size() + " lamps with electronic supplies start together on "
                                + load.circuit().id() + ", a " + Said.amperes(rating.amperes())
                                + " breaker that may trip at that, though it carries them once they burn.",
                        List.of(new Value("electronic lamps", lamps.size(), rating.amperes() * most, "")),
                        List.of(Fix.of(
                                "Ask the makers how many one breaker takes and of which curve; switch them on in two"
                                        + " steps. " + Said.ELECTRICIAN))));
            }
        }
        return findings.stream();
    }
}
