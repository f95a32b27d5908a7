package housewright.check.joining;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A mains lead with pins at both ends: as soon as one is plugged in, the pins of the other are live in somebody's hand. */
public final class MainsPinsLive implements Rule {
    private static final Card CARD = new Card(
            "mains-pins-live",
            "Has every mains lead pins at the end that takes the power only, and sockets at the end that gives it?",
            Set.of(Severity.STOP),
            new Source.CommonPractice(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Lead lead : evidence.cabling().leads()) {
            List<Connector> ends = lead.cable().ends();
            CableType type = lead.type();
            if (ends.isEmpty() && type != null) {
                ends = type.ends();
            }
            if (ends.size() == 2
                    && isPins(ends.getFirst())
                    && isPins(ends.getLast())
                    && (type == null
                            || type.carries().isEmpty()
                            || type.carries().contains(Signal.MAINS))) {
                findings.add(finding(lead, ends));
            }
        }
        return findings.stream();
    }

    private static boolean isPins(Connector connector) {
        return connector == Connector.MAINS_PLUG || connector == Connector.C14 || connector == Connector.C20;
    }

    private static Finding finding(Lead lead, List<Connector> ends) {
        return CARD.finding(
                Severity.STOP,
                List.of(Subject.cable(lead.id())),
                lead.id() + " has pins at both ends (" + ends.getFirst().word() + " and "
                        + ends.getLast().word() + "): plug one in, and the pins of the other are live.",
                List.of(),
                List.of(Fix.of(
                        "Take it out of use and cut it through. Use a lead with sockets at the end that gives.")));
    }
}
