package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Model;
import housewright.model.RuleSet;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.power.Supplies;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** A rack that gives off more heat than goes out of it by itself. */
public final class RackHeat implements Rule {
    static final Limit MOST = Limit.most("heat of a rack without a fan", 500, "W");

    /** Air, m3/h for each W and kelvin: 3600 s / (1.2 kg/m3 x 1005 J/(kg K)). */
    static final double AIR = 3600 / (1.2 * 1005);

    private static final double RISE_K = 10;

    /** In a cubic metre: 1 / 0.3048^3. */
    private static final double CUBIC_FEET = 35.3147;

    private static final Card CARD = new Card(
            "rack-heat",
            "Does the heat of every rack get out?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(MOST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, MOST);
        List<Finding> findings = new ArrayList<>();
        for (Racks.Rack rack : Racks.all(evidence)) {
            double watts = 0;
            List<String> hot = new ArrayList<>();
            for (Present each : rack.all()) {
                Model model = each.model();
                if (model != null && model.power() != null && model.power().watts() > 0) {
                    watts += model.power().watts();
                    hot.add(each.id());
                }
            }
            if (watts > most) {
                findings.add(CARD.finding(
                        Severity.NOTE,
                        Said.subjects(Said.place(rack.place().id()), hot),
                        String.format(
                                        Locale.ROOT,
                                        "%s gives off %.0f W (%.0f BTU/h): for air ",
                                        Words.said(rack.place().id()),
                                        watts,
                                        watts * Supplies.BTU_PER_HOUR)
                                + air(evidence, watts * AIR / RISE_K),
                        List.of(new Value("heat", watts, most, "W")),
                        List.of(Fix.of(
                                "Leave free units over what is hot, and a way out at the top; a fan that is not heard"
                                        + " in the room, or another place."))));
            }
        }
        return findings.stream();
    }

    private static String air(Evidence evidence, double cubicMetresAnHour) {
        return evidence.ruleSet() == RuleSet.US
                ? String.format(
                        Locale.ROOT,
                        "%.0f degF warmer than the room it wants %.0f cubic feet of it a minute.",
                        RISE_K * 1.8,
                        cubicMetresAnHour * CUBIC_FEET / 60)
                : String.format(
                        Locale.ROOT,
                        "%.0f K warmer than the room it wants %.0f m3 of it an hour.",
                        RISE_K,
                        cubicMetresAnHour);
    }
}
