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

/** New cables of which nobody has entered what is printed at their ends: one note for all, since they print in one go. */
public final class CableNotLabelled implements Rule {
    private static final Card CARD = new Card(
            "cable-not-labelled",
            "Is it entered of every new cable what is printed at both its ends?",
            Set.of(Severity.NOTE),
            new Source.Published("INFOCOMM F501.01:2015, as described", "scope"),
            Stage.INSTALL);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<String> without = evidence.cabling().leads().stream()
                .filter(lead -> lead.cable().life() == Life.NEW
                        && (lead.cable().label() == null || lead.cable().label().isBlank())
                        && Bought.is(lead))
                .map(Lead::id)
                .toList();
        return without.isEmpty()
                ? Stream.empty()
                : Stream.of(
                        CARD.finding(
                                Severity.NOTE,
                                Said.subjects(without),
                                "No label is entered for " + Said.count(without.size(), "new cable") + ": "
                                        + Said.some(without) + ".",
                                List.of(new Value("cables without a label", without.size(), 0.0, "")),
                                List.of(
                                        Fix.of(
                                                "Print the number of each on both its ends, or what people call it, and enter that."))));
    }
}
