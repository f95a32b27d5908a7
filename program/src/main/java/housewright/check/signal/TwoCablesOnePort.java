package housewright.check.signal;

import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Connector;
import housewright.model.Ref.Address;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A socket takes one plug. Terminals take several wires, so they are left alone. */
public final class TwoCablesOnePort implements Rule {
    private static final Card CARD = new Card(
            "two-cables-one-port",
            "Does every socket have one plug in it at most?",
            Set.of(Severity.STOP),
            new Source.CommonPractice(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.cabling().shared().stream()
                .filter(each -> each.plug().port() != null
                        && takesOnePlug(each.plug().port().connector()))
                .map(each -> finding(each.plug(), each.cables()));
    }

    private static Finding finding(Plug plug, List<String> cables) {
        Address port = plug.at();
        boolean mains = plug.port() != null && plug.port().signal() == Signal.MAINS;
        List<Subject> subjects = new ArrayList<>();
        cables.forEach(cable -> subjects.add(Subject.cable(cable)));
        subjects.add(Subject.equipment(port.thing()));
        return CARD.finding(
                Severity.STOP,
                subjects,
                port.saidPort() + " has " + cables.size() + " cables in it: " + String.join(", ", cables) + ".",
                List.of(new Value("plugs in one socket", cables.size(), 1.0, "")),
                List.of(Fix.of(
                        mains
                                ? "Plug one of them into another outlet; never two leads on one plug."
                                : "Plug one of them elsewhere, or put a splitter between.")));
    }

    private static boolean takesOnePlug(@Nullable Connector connector) {
        return connector != Connector.TERMINALS && connector != Connector.NONE && connector != Connector.ANTENNA;
    }
}
