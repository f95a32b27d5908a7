package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Hanging;
import housewright.model.Model;
import housewright.model.Stage;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** More weight at a point than its stated limit. */
public final class HangingOverloaded implements Rule {
    static final Limit MOST = Limit.most("weight at a point, of its stated limit,", 100, "%");

    private static final Card CARD = new Card(
            "hanging-overloaded",
            "Does everything that hangs at a point together stay within its stated limit?",
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
        List<Finding> findings = new ArrayList<>();
        for (Overhead.Point point : Overhead.points(evidence)) {
            Double limit = point.limit();
            double kilograms = 0;
            for (Present each : point.things()) {
                Model model = each.model();
                kilograms += model == null || model.weight() == null
                        ? 0
                        : model.weight().kilograms();
            }
            if (limit != null && kilograms > limit * most + 1e-9) {
                findings.add(finding(evidence, point, kilograms, limit * most));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Overhead.Point point, double kilograms, double limit) {
        Hanging hang = point.place().hang();
        String by = hang == null || hang.statedBy() == null ? "" : " (" + hang.statedBy() + ")";
        return CARD.finding(
                Severity.STOP,
                Said.subjects(Said.place(point.place().id()), point.ids()),
                Said.things(point.ids()) + (point.things().size() == 1 ? " weighs " : " weigh ")
                        + Wording.weight(evidence, kilograms) + " at "
                        + point.said() + ", " + Wording.weight(evidence, kilograms - limit) + " over the limit of "
                        + Wording.weight(evidence, limit) + by
                        + ", clamps and cables not counted. It blocks "
                        + Overhead.blocked(evidence, point.place().id()) + ".",
                List.of(new Value("weight", kilograms, limit, "kg")),
                List.of(Fix.of("Take things off it, or have another limit stated. " + Said.RIGGING)));
    }
}
