package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Look;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.unit.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Lamps that a look wants brighter than full. */
public final class LookLevelPastFull implements Rule {
    static final Limit FULL = Limit.most("level of a lamp", 100, "%");

    private static final Card CARD = new Card(
            "look-level-past-full",
            "Is no lamp in a look asked for more than full?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(FULL));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double full = evidence.limit(CARD, FULL) / 100;
        return Looks.all(evidence).values().stream().flatMap(look -> finding(look, full).stream());
    }

    private static Optional<Finding> finding(Look look, double full) {
        Map<String, Ratio> levels = new LinkedHashMap<>(look.levels());
        List<String> past = new ArrayList<>();
        Ratio asked = null;
        for (Map.Entry<String, Ratio> each : look.levels().entrySet()) {
            if (each.getValue().fraction() > full + 1e-9) {
                past.add(each.getKey());
                levels.put(each.getKey(), Ratio.ofFraction(full));
                asked = asked == null ? each.getValue() : asked;
            }
        }
        if (asked == null) {
            return Optional.empty();
        }
        String most = Ratio.ofFraction(full).text();
        return Optional.of(CARD.finding(
                Severity.FIX,
                Said.subjects(Said.look(look.id()), Said.equipment(past)),
                "The look " + Words.said(look.id()) + " asks " + Said.things(past) + " for " + asked.text() + "; "
                        + most + " is the most a lamp gives.",
                List.of(new Value("level", asked.fraction() * 100, full * 100, "%")),
                List.of(new Fix(
                        "Set " + Said.things(past) + " to " + most + ".",
                        List.of(Looks.put(look, levels, look.colours()))))));
    }
}
