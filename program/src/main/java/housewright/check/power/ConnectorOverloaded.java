package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Model;
import housewright.model.Port;
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
import org.jspecify.annotations.Nullable;

/** More current through a mains connector than its pattern is rated for: a chain of lamps, a rack on one inlet. */
public final class ConnectorOverloaded implements Rule {
    static final Limit C13 = Limit.most("C13 and C14", 10, "A");
    static final Limit C19 = Limit.most("C19, C20 and locking", 16, "A");
    static final Limit PLUG = Limit.most("mains plug", 16, "A");
    static final Limit C13_US = Limit.most("C13 and C14 (US)", 15, "A");
    static final Limit C19_US = Limit.most("C19, C20 and locking (US)", 20, "A");
    static final Limit PLUG_US = Limit.most("mains plug (US)", 15, "A");

    private static final Card CARD = new Card(
            "mains-connector-overloaded",
            "Does every mains connector carry what goes through it to all that follows?",
            Set.of(Severity.STOP),
            new Source.ByRuleSet(
                    new Source.FromMemory("IEC 60320-1, rated currents of its standard sheets; 16 A plugs of CEE 7"),
                    new Source.FromMemory("UL 60320-1; NEMA WD 6, 15 A at a 5-15 plug")),
            Stage.DESIGN,
            List.of(C13, C19, PLUG, C13_US, C19_US, PLUG_US));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Supplies supplies = evidence.supplies();
        List<Finding> findings = new ArrayList<>();
        for (Supply each : supplies.supplies()) {
            Double volts = supplies.volts(each);
            Double rating = rating(evidence, each);
            if (volts == null || rating == null) {
                continue;
            }
            double amperes = Supplies.amperes(supplies.through(each.id()), volts, Supplies.POWER_FACTOR);
            if (amperes > rating
                    && !hasHotterBelow(evidence, each, volts)
                    && !OutletOverloaded.isInletOver(evidence, each)) {
                findings.add(finding(supplies, each, amperes, rating));
            }
        }
        return findings.stream();
    }

    /** What follows is over its rating by itself: that is where it is said. */
    private static boolean hasHotterBelow(Evidence evidence, Supply supply, double volts) {
        for (Supply below : evidence.supplies().below(supply.id())) {
            Double rating = rating(evidence, below);
            double amperes = Supplies.amperes(evidence.supplies().through(below.id()), volts, Supplies.POWER_FACTOR);
            if (rating != null && amperes > rating) {
                return true;
            }
        }
        return false;
    }

    private static @Nullable Double rating(Evidence evidence, Supply supply) {
        Model model = supply.thing().model();
        if (model == null) {
            return null;
        }
        boolean us = evidence.ruleSet() == RuleSet.US;
        for (Port port : model.ports().values()) {
            if (port.in() == Signal.MAINS && port.connector() != null) {
                return switch (port.connector()) {
                    case C13, C14 -> us ? C13_US.value() : evidence.limit(CARD, C13);
                    case C19, C20, MAINS_INLET_LOCKING -> us ? C19_US.value() : C19.value();
                    case MAINS_PLUG -> us ? PLUG_US.value() : PLUG.value();
                    default -> null;
                };
            }
        }
        return null;
    }

    private static Finding finding(Supplies supplies, Supply supply, double amperes, double rating) {
        List<String> after = new ArrayList<>();
        List<Supply> row = supplies.below(supply.id());
        while (!row.isEmpty() && after.size() < 100) {
            List<Supply> next = new ArrayList<>();
            for (Supply each : row) {
                after.add(each.id());
                next.addAll(supplies.below(each.id()));
            }
            row = next;
        }
        return CARD.finding(
                Severity.STOP,
                Said.subjects(Subject.equipment(supply.id()), after),
                "The mains inlet of " + Words.said(supply.id()) + " carries " + Said.amperes(amperes)
                        + (after.isEmpty() ? "" : " with the " + after.size() + " after it") + " and is rated for "
                        + Said.amperes(rating) + ".",
                List.of(new Value("current", amperes, rating, "A")),
                List.of(Fix.of("Feed the second half from an outlet of its own instead of handing it on. "
                        + Said.ELECTRICIAN)));
    }
}
