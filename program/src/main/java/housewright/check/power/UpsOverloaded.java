package housewright.check.power;

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
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** More on a UPS than it gives, or than leaves it something in hand. */
public final class UpsOverloaded implements Rule {
    static final Limit PLANNED = Limit.most("load of a UPS, of its rating,", 80, "%");
    static final Limit MOST = Limit.most("load of a UPS in all", 100, "%");

    private static final Card CARD = new Card(
            "ups-overloaded",
            "Is every UPS loaded to four fifths at most?",
            Set.of(Severity.STOP, Severity.FIX),
            new Source.FromMemory("Planning practice for UPSs, 80 % of the rating in W"),
            Stage.DESIGN,
            List.of(PLANNED, MOST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double planned = evidence.limit(CARD, PLANNED) / 100;
        List<Finding> findings = new ArrayList<>();
        for (Upses.Ups each : Upses.all(evidence)) {
            if (each.rating() > 0 && each.watts() > each.rating() * planned) {
                boolean over = each.watts() > each.rating() * MOST.value() / 100;
                double limit = each.rating() * (over ? 1 : planned);
                findings.add(CARD.finding(
                        over ? Severity.STOP : Severity.FIX,
                        Said.subjects(Subject.equipment(each.thing().id()), Said.ids(each.on())),
                        Words.said(each.thing().id()) + " is to give " + Said.watts(each.watts()) + " to "
                                + Said.things(Said.ids(each.on())) + ", "
                                + (over
                                        ? Said.watts(each.watts() - limit) + " more than it has: it switches off."
                                        : "and should be planned for " + Said.watts(limit) + " of its "
                                                + Said.watts(each.rating()) + "."),
                        List.of(new Value("load", each.watts(), limit, "W")),
                        List.of(Fix.of(
                                "Leave on it what must not stop, such as desk, switch and stream, or take a larger"
                                        + " one."))));
            }
        }
        return findings.stream();
    }
}
