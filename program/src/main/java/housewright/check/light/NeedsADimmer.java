package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Look;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.power.Supply;
import housewright.unit.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A lamp that is dimmed on its mains, and hangs where nothing dims it. */
public final class NeedsADimmer implements Rule {
    private static final Card CARD = new Card(
            "needs-a-dimmer",
            "Does a dimmer feed every lamp that is dimmed on its mains?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Supply each : evidence.supplies().supplies()) {
            boolean fed = each.outlet() != null || each.circuit() != null;
            if (fed && Dimmed.isMadeForIt(each.thing().model()) && Dimmed.by(evidence, each) == null) {
                String look = lookBetween(evidence, each.id());
                findings.add(CARD.finding(
                        look == null ? Severity.NOTE : Severity.FIX,
                        look == null
                                ? List.of(Subject.equipment(each.id()))
                                : List.of(Subject.equipment(each.id()), Said.look(look)),
                        Words.said(each.id()) + " is dimmed on its mains, and no dimmer feeds it: it is on or off"
                                + (look == null ? "." : ", and the look " + Words.said(look) + " wants it in between."),
                        List.of(),
                        List.of(Fix.of("Feed it from a dimmer, or hang an LED lamp with DMX in its place."))));
            }
        }
        return findings.stream();
    }

    private static @Nullable String lookBetween(Evidence evidence, String lamp) {
        for (Look look : Looks.all(evidence).values()) {
            Ratio level = look.levels().get(lamp);
            if (level != null && level.fraction() > 0 && level.fraction() < 1) {
                return look.id();
            }
        }
        return null;
    }
}
