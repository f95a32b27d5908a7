package housewright.check.complete;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.Model;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** New things without a price, so that the sum of the orders is too low. */
public final class PriceMissing implements Rule {
    private static final Card CARD = new Card(
            "price-missing",
            "Has everything that is to be bought a price?",
            Set.of(Severity.NOTE),
            new Source.TheProject(),
            Stage.ORDER);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Set<String> models = new LinkedHashSet<>();
        List<Subject> subjects = new ArrayList<>();
        for (Equipment each : evidence.project().equipment().values()) {
            Model model = each.life() == Life.NEW
                    ? evidence.types().findModel(each.model()).orElse(null)
                    : null;
            if (model != null && model.price() == null) {
                models.add(model.id());
                subjects.add(Subject.equipment(each.id()));
            }
        }
        return subjects.isEmpty()
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        Severity.NOTE,
                        subjects,
                        Wording.some(models, 5) + (models.size() == 1 ? " has" : " have") + " no price: "
                                + Wording.counted(subjects.size(), "new thing is", "new things are")
                                + " missing from every sum.",
                        List.of(new Value("without a price", subjects.size(), null, "")),
                        List.of(Fix.of("Ask for a quote and enter the price in the model; 0 where it is given."))));
    }
}
