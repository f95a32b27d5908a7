package housewright.check.joining;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Connector;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A cable with mains at one end and a socket for something else at the other. Terminals in a panel say nothing of
 * themselves: what they are tied to within it does, such as an outlet. Where nobody knows what the other end is for, it
 * says nothing.
 */
public final class MainsIntoSignal implements Rule {
    private static final Card CARD = new Card(
            "mains-into-signal",
            "Does every cable with mains at one end have nothing but mains at the other?",
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
            for (Joint joint : lead.joints()) {
                Plug from = joint.from();
                Plug to = joint.to();
                if (from != null && to != null && isMains(from) && isSignal(to)) {
                    findings.add(finding(lead, from, to));
                } else if (from != null && to != null && isMains(to) && isSignal(from)) {
                    findings.add(finding(lead, to, from));
                }
            }
        }
        return findings.stream();
    }

    private static boolean isMains(Plug plug) {
        Signal signal = plug.port() == null ? null : plug.port().signal();
        if (signal != null) {
            return signal == Signal.MAINS;
        }
        return plug.model() != null
                && plug.isPassive()
                && Shape.of(plug.model()).isMains(plug.at().spot().name());
    }

    private static boolean isSignal(Plug plug) {
        Signal signal = plug.port() == null ? null : plug.port().signal();
        return signal != null ? signal != Signal.MAINS : isForSignal(Ends.socket(plug)) && !isMains(plug);
    }

    private static boolean isForSignal(@Nullable Connector connector) {
        return connector != null
                && connector != Connector.TERMINALS
                && connector != Connector.NONE
                && connector != Connector.ADAPTER
                && !connector.isMains();
    }

    private static Finding finding(Lead lead, Plug mains, Plug signal) {
        return CARD.finding(
                Severity.STOP,
                List.of(
                        Subject.cable(lead.id()),
                        Subject.equipment(signal.at().thing()),
                        Subject.equipment(mains.at().thing())),
                lead.id() + " leads from the mains of " + mains.at().saidPort() + " into "
                        + signal.at().saidPort()
                        + ", which is no mains socket: whoever touches what is plugged in there touches mains.",
                List.of(),
                List.of(Fix.of("Take the cable out. Mains in a panel is a licensed electrician's work, under local"
                        + " code.")));
    }
}
