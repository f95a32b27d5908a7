package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Model;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A heavy thing high up in a rack. */
public final class RackTopHeavy implements Rule {
    static final Limit HEAVY = Limit.most("weight of a thing in the upper half of a rack", 15, "kg");

    private static final Card CARD = new Card(
            "rack-top-heavy",
            "Are the heavy things in the lower half of every rack?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(HEAVY));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double heavy = evidence.limit(CARD, HEAVY);
        List<Finding> findings = new ArrayList<>();
        for (Racks.Rack rack : Racks.all(evidence)) {
            for (Racks.Racked each : rack.things()) {
                Model model = each.thing().model();
                double kilograms = model == null || model.weight() == null
                        ? 0
                        : model.weight().kilograms();
                if (each.unit() != null && each.unit() > rack.space().units() / 2 && kilograms > heavy) {
                    findings.add(CARD.finding(
                            Severity.NOTE,
                            List.of(
                                    Subject.equipment(each.id()),
                                    Said.place(rack.place().id())),
                            Words.said(each.id()) + " weighs " + Wording.weight(evidence, kilograms)
                                    + " and is at unit "
                                    + each.unit() + " of " + rack.space().units() + " in "
                                    + Words.said(rack.place().id())
                                    + ": a free-standing rack tips over when it is drawn"
                                    + " out.",
                            List.of(new Value("weight", kilograms, heavy, "kg")),
                            List.of(Fix.of("Put it at the bottom with two people, or fix the rack to the wall."))));
                }
            }
        }
        return findings.stream();
    }
}
