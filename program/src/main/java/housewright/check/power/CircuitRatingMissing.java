package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.power.CircuitLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A circuit with things on it, and nobody has written what its breaker is. */
public final class CircuitRatingMissing implements Rule {
    private static final Card CARD = new Card(
            "circuit-rating-missing",
            "Are rating and voltage known of every circuit that something is on?",
            Set.of(Severity.STOP),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (CircuitLoad load : evidence.supplies().circuits()) {
            boolean rating = load.circuit().rating() != null;
            if (load.on().isEmpty() || (rating && load.volts() != null)) {
                continue;
            }
            List<String> things = Said.ids(load.on());
            String id = load.circuit().id();
            findings.add(CARD.finding(
                    Severity.STOP,
                    Said.subjects(Said.circuit(id), things),
                    "Nobody has written the " + (rating ? "voltage" : "breaker's rating") + " of " + id
                            + ", so it cannot be said whether it carries the " + Said.watts(load.watts())
                            + " on it. Until then nothing new is plugged in there: " + Said.things(things) + ".",
                    List.of(new Value("load", load.watts(), null, "W")),
                    List.of(Fix.of("Read it off the breaker, or ask the electrician. " + Said.ELECTRICIAN))));
        }
        return findings.stream();
    }
}
