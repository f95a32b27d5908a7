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
import housewright.network.Powered;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A thing that lives on power over the network, on a port that gives none. */
public final class PowerNotGiven implements Rule {
    private static final Card CARD = new Card(
            "network-power-not-given",
            "Does every thing that takes its power from the network hang on a port that gives it?",
            Set.of(Severity.STOP, Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.networks().powered().stream()
                .filter(each -> each.by() != null && each.gives() == 0 && !each.otherwise())
                .map(PowerNotGiven::finding);
    }

    private static Finding finding(Powered each) {
        String thing = each.thing().id();
        String port = each.by() == null ? "" : each.by().at().saidPort();
        String hub = each.by() == null ? "" : each.by().at().thing();
        return CARD.finding(
                each.inlet() ? Severity.FIX : Severity.STOP,
                List.of(Subject.equipment(thing), Subject.equipment(hub)),
                Words.said(thing) + " takes " + Said.watts(each.takes()) + " from the network, and " + port
                        + " gives none" + (each.inlet() ? "; no other supply is entered." : ": it stays off."),
                List.of(new Value("power given", 0, each.takes(), "W")),
                List.of(Fix.of("Plug it into a port that gives " + Said.watts(each.takes())
                        + (each.inlet()
                                ? ", put a power injector between, or say which circuit or outlet feeds it."
                                : ", or put a power injector between."))));
    }
}
