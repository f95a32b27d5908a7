package housewright.check.cable;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Life;
import housewright.model.Stage;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** New cables of which nobody has said whether they are bought made up or get their plugs on site: hours or money. */
public final class TerminationNotForeseen implements Rule {
    private static final Card CARD = new Card(
            "termination-not-foreseen",
            "Is it said of every new cable who puts its plugs on?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.ORDER);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<String> open = evidence.cabling().leads().stream()
                .filter(lead -> lead.cable().life() == Life.NEW && lead.cable().terminated() == null && Bought.is(lead))
                .map(Lead::id)
                .toList();
        return open.isEmpty()
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        Severity.NOTE,
                        Said.subjects(open),
                        "Nobody has said who puts the plugs on " + Said.count(open.size(), "new cable") + ": "
                                + Said.some(open) + ".",
                        List.of(new Value("cables without it", open.size(), 0.0, "")),
                        List.of(Fix.of("Enter terminated: bought, or site and plan the hours and the connectors."))));
    }
}
