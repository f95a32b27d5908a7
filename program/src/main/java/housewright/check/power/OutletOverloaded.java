package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.power.Supplies;
import housewright.power.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** More through an outlet, or through the inlet of a strip, than it says it may carry. */
public final class OutletOverloaded implements Rule {
    static final Limit MOST = Limit.most("load, of what the outlet or strip may carry,", 100, "%");

    private static final Card CARD = new Card(
            "outlet-overloaded",
            "Does every strip, distributor and dimmer outlet carry what hangs on it?",
            Set.of(Severity.STOP),
            new Source.TheProject(),
            Stage.DESIGN,
            List.of(MOST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, MOST) / 100;
        Supplies supplies = evidence.supplies();
        List<Finding> findings = new ArrayList<>();
        supplies.things().forEach((id, thing) -> {
            List<Supply> below = supplies.below(id);
            Model model = thing.model();
            if (below.isEmpty() || model == null || model.kind() == Kind.UPS) {
                return;
            }
            model.ports().forEach((names, port) -> {
                if (port.power() == null) {
                    return;
                }
                double limit = port.power().watts() * most;
                if (port.in() == Signal.MAINS && supplies.through(id) > limit) {
                    findings.add(finding(id, Words.said(id), Said.ids(below), supplies.through(id), limit));
                } else if (port.out() == Signal.MAINS) {
                    for (String name : names.names()) {
                        outlet(evidence, id, name, limit, findings);
                    }
                }
            });
        });
        return findings.stream();
    }

    private static void outlet(Evidence evidence, String id, String name, double limit, List<Finding> findings) {
        List<Supply> plugs = evidence.supplies().byOutlet().getOrDefault(id + "." + name, List.of());
        double watts = plugs.stream()
                .mapToDouble(each -> evidence.supplies().through(each.id()))
                .sum();
        if (watts > limit) {
            findings.add(finding(id, Words.said(id) + ", " + Words.said(name) + ",", Said.ids(plugs), watts, limit));
        }
    }

    private static Finding finding(String id, String said, List<String> things, double watts, double limit) {
        return CARD.finding(
                Severity.STOP,
                Said.subjects(Subject.equipment(id), things),
                said + " carries " + Said.watts(watts) + " for " + Said.things(things) + ", "
                        + Said.watts(watts - limit) + " more than it is made for: it gets hot.",
                List.of(new Value("load", watts, limit, "W")),
                List.of(Fix.of("Share it out over another outlet that goes back to the breaker by itself. "
                        + Said.ELECTRICIAN)));
    }
}
