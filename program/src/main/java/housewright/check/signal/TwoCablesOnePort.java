package housewright.check.signal;

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
import housewright.finding.Value;
import housewright.model.Connector;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
        Map<String, Plug> sockets = new LinkedHashMap<>();
        Map<String, Set<String>> plugged = new LinkedHashMap<>();
        for (Lead lead : evidence.cabling().leads()) {
            for (Joint joint : lead.joints()) {
                for (Plug plug : joint.plugs()) {
                    if (plug.port() != null && takesOnePlug(plug.port().connector())) {
                        sockets.putIfAbsent(plug.socket(), plug);
                        plugged.computeIfAbsent(plug.socket(), key -> new LinkedHashSet<>(2))
                                .add(lead.id());
                    }
                }
            }
        }
        return plugged.entrySet().stream()
                .filter(each -> each.getValue().size() > 1)
                .map(each -> finding(
                        Objects.requireNonNull(sockets.get(each.getKey())).at(), List.copyOf(each.getValue())));
    }

    private static Finding finding(Address port, List<String> cables) {
        List<Subject> subjects = new ArrayList<>();
        cables.forEach(cable -> subjects.add(Subject.cable(cable)));
        subjects.add(Subject.equipment(port.thing()));
        return CARD.finding(
                Severity.STOP,
                subjects,
                port.saidPort() + " has " + cables.size() + " cables in it: " + String.join(", ", cables) + ".",
                List.of(new Value("plugs in one socket", cables.size(), 1.0, "")),
                List.of(Fix.of("Plug one of them elsewhere, or put a splitter between.")));
    }

    private static boolean takesOnePlug(@Nullable Connector connector) {
        return connector != Connector.TERMINALS && connector != Connector.NONE && connector != Connector.ANTENNA;
    }
}
