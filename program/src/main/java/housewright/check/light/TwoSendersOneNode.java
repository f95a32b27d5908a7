package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Two controllers that send the same universe to a node over the network. */
public final class TwoSendersOneNode implements Rule {
    private static final Card CARD = new Card(
            "two-senders-one-node",
            "Where two controllers send one universe, is it settled which of them wins?",
            Set.of(Severity.NOTE),
            new Source.Published("ANSI E1.31-2018 (streaming DMX), as quoted", "priority 0 to 200"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.lights().clashes().stream()
                .map(each -> CARD.finding(
                        Severity.NOTE,
                        Said.equipment(List.of(each.node(), each.one(), each.other())),
                        Words.said(each.one()) + " and " + Words.said(each.other()) + " both send the same universe to "
                                + Words.said(each.node())
                                + ": unless it is set which wins, a fader left up holds the light against the wall"
                                + " panel.",
                        List.of(),
                        List.of(Fix.of(
                                "Give one the higher priority, or let one call the looks of the other; write down"
                                        + " which."))));
    }
}
