package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Figures;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.RuleSet;
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

    /** That the library's figures are for. */
    private static final double LIBRARY_VOLTS = 230;

    /** Up to here a supply is one of 100 to 127 V. */
    private static final double LOW_VOLTS = 130;

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
                double limit = carries(evidence, id, model, port.power().watts()) * most;
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

    /** Through its inlet goes more than it may carry: then its plug is not spoken of as well. */
    static boolean isInletOver(Evidence evidence, Supply supply) {
        Model model = supply.thing().model();
        if (model == null
                || model.kind() == Kind.UPS
                || evidence.supplies().below(supply.id()).isEmpty()) {
            return false;
        }
        double most = evidence.limit(CARD, MOST) / 100;
        double watts = evidence.supplies().through(supply.id());
        return model.ports().values().stream()
                .anyMatch(port -> port.in() == Signal.MAINS
                        && port.power() != null
                        && watts
                                > carries(
                                                evidence,
                                                supply.id(),
                                                model,
                                                port.power().watts())
                                        * most);
    }

    /**
     * What it may carry, in W. The library's strips and distributors are typical ones for 230 V; what limits them is the
     * current, so at 120 V they carry the watts of their US kin: 15 A in place of 10 A, 20 A in place of 13 and 16 A.
     */
    private static double carries(Evidence evidence, String id, Model model, double watts) {
        Double volts =
                evidence.supplies().find(id).map(evidence.supplies()::volts).orElse(null);
        if (!Supplies.handsOn(model)
                || model.figures() != Figures.TYPICAL
                || evidence.project().models().containsKey(model.id())
                || volts == null
                || volts > LOW_VOLTS) {
            return watts;
        }
        double amperes = watts / LIBRARY_VOLTS;
        return volts * (evidence.ruleSet() == RuleSet.US ? inTheUs(amperes) : amperes);
    }

    /** Rated currents of plugs and receptacles by NEMA WD 6; from memory. */
    private static double inTheUs(double amperes) {
        return amperes <= 10 ? 15 : amperes <= 16 ? 20 : amperes <= 32 ? 30 : amperes;
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
