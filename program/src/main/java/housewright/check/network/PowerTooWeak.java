package housewright.check.network;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.network.PowerClass;
import housewright.network.Powered;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A thing that takes more power over the network than its port gives, the loss in the cable counted by its class. */
public final class PowerTooWeak implements Rule {
    private static final Card CARD = new Card(
            "network-power-too-weak",
            "Does every port give the power class that hangs on it?",
            Set.of(Severity.STOP),
            new Source.Published(
                    "IEEE 802.3af, 802.3at and 802.3bt, as quoted on public pages", "power classes 1 to 8"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.networks().powered().stream()
                .filter(each -> each.gives() > 0 && !each.otherwise())
                .filter(each -> PowerClass.of(each.takes()).atPort() > each.gives())
                .map(PowerTooWeak::finding);
    }

    private static Finding finding(Powered each) {
        String thing = each.thing().id();
        PowerClass needs = PowerClass.of(each.takes());
        String port = each.by() == null ? "" : each.by().at().saidPort();
        String hub = each.by() == null ? thing : each.by().at().thing();
        return CARD.finding(
                Severity.STOP,
                List.of(Subject.equipment(thing), Subject.equipment(hub)),
                Words.said(thing) + " takes " + Said.watts(each.takes()) + ", which is class " + needs.number()
                        + " and needs " + Said.watts(needs.atPort()) + " at the port; " + port + " gives "
                        + Said.watts(each.gives()) + ".",
                List.of(new Value("power needed at the port", needs.atPort(), each.gives(), "W")),
                List.of(Fix.of("Take a port or a power injector that gives " + Said.watts(needs.atPort())
                        + (each.inlet() ? ", or its own supply." : "."))));
    }
}
