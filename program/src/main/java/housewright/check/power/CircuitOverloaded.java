package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Circuit;
import housewright.model.Connector;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.RuleSet;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.power.CircuitLoad;
import housewright.power.Supplies;
import housewright.power.Supply;
import housewright.unit.Current;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** More on a circuit than its breaker carries, or than it may carry for hours. */
public final class CircuitOverloaded implements Rule {
    static final Limit CONTINUOUS = Limit.most("continuous load, of the breaker's rating", 80, "%");
    static final Limit RATING = Limit.most("load, of the breaker's rating", 100, "%");

    private static final Card CARD = new Card(
            "circuit-overloaded",
            "Does every circuit carry what is on it, for as long as a service lasts?",
            Set.of(Severity.STOP, Severity.FIX, Severity.NOTE),
            new Source.ByRuleSet(
                    new Source.FromMemory("BS 7671 433.1"),
                    new Source.Published("NFPA 70 (NEC), as quoted", "210.19(A)(1) and 210.20(A)")),
            Stage.DESIGN,
            List.of(CONTINUOUS, RATING));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double continuous = evidence.limit(CARD, CONTINUOUS) / 100;
        List<Finding> findings = new ArrayList<>();
        for (CircuitLoad load : evidence.supplies().circuits()) {
            Double amperes = load.amperes();
            Current rating = load.circuit().rating();
            if (amperes != null && rating != null && amperes > rating.amperes() * continuous) {
                findings.add(finding(evidence, load, amperes, rating.amperes(), continuous));
            }
        }
        return findings.stream();
    }

    private static Finding finding(
            Evidence evidence, CircuitLoad load, double amperes, double rating, double continuous) {
        boolean over = amperes > rating * RATING.value() / 100;
        boolean us = evidence.ruleSet() == RuleSet.US;
        boolean tightened = continuous < CONTINUOUS.value() / 100;
        double limit = over ? rating : rating * continuous;
        String id = load.circuit().id();
        List<String> heaviest = load.on().stream()
                .sorted(Comparator.comparingDouble(each -> -each.own()))
                .filter(each -> each.own() > 0)
                .map(Supply::id)
                .toList();
        String unknown = load.unknown().isEmpty()
                ? ""
                : ", and " + Said.things(load.unknown()) + " on top, of which no figure is known";
        String rest = over
                ? Said.amperes(amperes - limit) + " more than its breaker carries"
                : "over the " + Said.amperes(limit) + " that a " + Said.amperes(rating)
                        + " breaker may carry for three hours and more";
        return CARD.finding(
                over ? Severity.STOP : us || tightened ? Severity.FIX : Severity.NOTE,
                Said.subjects(Said.circuit(id), heaviest),
                id + " takes " + Said.amperes(amperes) + " (" + Said.watts(load.watts()) + " at a power factor of "
                        + Supplies.POWER_FACTOR + ")" + unknown + ": " + rest + ".",
                List.of(new Value("current", amperes, limit, "A")),
                fixes(evidence, load, amperes - limit));
    }

    /** The thing that is enough by itself and no heavier than need be, onto a circuit of its place that has room. */
    private static List<Fix> fixes(Evidence evidence, CircuitLoad load, double tooMuch) {
        List<Fix> fixes = new ArrayList<>();
        Double volts = load.volts();
        if (volts != null) {
            load.on().stream()
                    .filter(each ->
                            each.outlet() == null && !isWired(each.thing().model()))
                    .filter(each -> each.thing().equipment().at() != null)
                    .sorted(Comparator.comparingDouble(
                            each -> evidence.supplies().through(each.id())))
                    .forEach(each -> {
                        double moves =
                                Supplies.amperes(evidence.supplies().through(each.id()), volts, Supplies.POWER_FACTOR);
                        Circuit other = moves < tooMuch || !fixes.isEmpty() ? null : room(evidence, load, each, moves);
                        if (other != null) {
                            Equipment equipment = evidence.getEquipment(each.id());
                            fixes.add(new Fix(
                                    "Put " + Words.said(each.id()) + " on " + other.id() + ", which has room. "
                                            + Said.ELECTRICIAN,
                                    List.of(new Change.Put(
                                            Section.EQUIPMENT, each.id(), equipment.poweredFrom(other.id(), null)))));
                        }
                    });
        }
        fixes.add(Fix.of("Take something off it, or have another circuit brought there. " + Said.ELECTRICIAN));
        return fixes;
    }

    /** What is wired in is not put elsewhere by whoever reads this. */
    private static boolean isWired(@Nullable Model model) {
        return model != null
                && model.kind() != Kind.POWER_DISTRIBUTOR
                && model.ports().values().stream()
                        .anyMatch(port -> port.in() == Signal.MAINS && port.connector() == Connector.TERMINALS);
    }

    private static @Nullable Circuit room(Evidence evidence, CircuitLoad load, Supply thing, double moves) {
        for (CircuitLoad other : evidence.supplies().circuits()) {
            Double amperes = other.amperes();
            Current rating = other.circuit().rating();
            if (!other.equals(load)
                    && amperes != null
                    && rating != null
                    && other.circuit().dimmed() == load.circuit().dimmed()
                    && other.circuit()
                            .places()
                            .contains(thing.thing().equipment().at())
                    && SoundWithDimmers.goTogether(thing, other)
                    && amperes + moves <= rating.amperes() * CONTINUOUS.value() / 100) {
                return other.circuit();
            }
        }
        return null;
    }
}
