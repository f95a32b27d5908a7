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
import housewright.model.Termination;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Cables with plugs put on by hand of which nobody has noted a test from end to end: one note for all. */
public final class CableNotTested implements Rule {
    private static final Card CARD = new Card(
            "cable-not-tested",
            "Is a test noted of every cable that gets its plugs on site?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.INSTALL);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<String> open = evidence.cabling().leads().stream()
                .filter(lead -> lead.cable().tested() == null && isMadeHere(lead))
                .map(Lead::id)
                .toList();
        return open.isEmpty()
                ? Stream.empty()
                : Stream.of(
                        CARD.finding(
                                Severity.NOTE,
                                Said.subjects(open),
                                "No test is noted of " + Said.count(open.size(), "cable") + " that get"
                                        + (open.size() == 1 ? "s its" : " their") + " plugs on site: " + Said.some(open)
                                        + ".",
                                List.of(new Value("cables not tested", open.size(), 0.0, "")),
                                List.of(
                                        Fix.of(
                                                "Ring each through, or certify it, before the wall is closed, and enter when and by whom."))));
    }

    private static boolean isMadeHere(Lead lead) {
        Termination terminated = lead.cable().terminated();
        return terminated == Termination.SITE
                || (terminated == null && lead.cable().life() == Life.NEW && Bought.is(lead));
    }
}
