package housewright.check.power;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.power.Supplies;
import housewright.power.Supply;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Mains leads so long or thin that what hangs at the end of them gets too little voltage. */
public final class MainsVoltageDrop implements Rule {
    static final Limit MOST = Limit.most("voltage lost in leads and extensions", 3, "%");

    private static final Card CARD = new Card(
            "mains-voltage-drop",
            "Does enough voltage arrive at the end of every row of mains leads?",
            Set.of(Severity.NOTE),
            new Source.ByRuleSet(
                    new Source.FromMemory("BS 7671 appendix 4: 3 % for lighting"),
                    new Source.FromMemory("NEC 210.19, note: 3 % for a branch circuit")),
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
        Map<String, Double> lost = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Supply each : supplies.supplies()) {
            Double volts = supplies.volts(each);
            double drop = volts == null ? 0 : lost(supplies, each, volts, lost, 0);
            String above = each.outlet() == null ? "" : each.outlet().thing();
            boolean before = volts != null && lost.getOrDefault(above, 0.0) > volts * most;
            if (volts != null && drop > volts * most && !before && told.add(each.id())) {
                findings.add(finding(each, drop, volts, most));
            }
        }
        return findings.stream();
    }

    private static double lost(Supplies supplies, Supply supply, double volts, Map<String, Double> lost, int depth) {
        Double known = lost.get(supply.id());
        if (known != null || depth > 100) {
            return known == null ? 0 : known;
        }
        Supply above = supply.outlet() == null
                ? null
                : supplies.find(supply.outlet().thing()).orElse(null);
        double drop = above == null ? 0 : lost(supplies, above, volts, lost, depth + 1);
        if (supply.lead() != null) {
            double amperes = Supplies.amperes(supplies.through(supply.id()), volts, Supplies.POWER_FACTOR);
            for (Lead lead : supply.lead().leads()) {
                CableType type = lead.type();
                if (type != null && type.conductor() != null && lead.span() != null) {
                    drop += Supplies.drop(
                            amperes, lead.span().metres(), type.conductor().squareMillimetres());
                }
            }
        }
        lost.put(supply.id(), drop);
        return drop;
    }

    private static Finding finding(Supply supply, double drop, double volts, double most) {
        double share = drop / volts * 100;
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(supply.id()));
        if (supply.lead() != null) {
            supply.lead().ids().forEach(each -> subjects.add(Subject.cable(each)));
        }
        return CARD.finding(
                Severity.NOTE,
                subjects,
                String.format(
                        Locale.ROOT,
                        "%s and what follows it lose %.1f V in their leads, %.1f %% of %.0f V; %s %% is the limit.",
                        Words.said(supply.id()),
                        drop,
                        share,
                        volts,
                        Said.number(most * 100)),
                List.of(new Value("voltage lost", share, most * 100, "%")),
                List.of(Fix.of("Take thicker leads, or an outlet nearer to it.")));
    }
}
