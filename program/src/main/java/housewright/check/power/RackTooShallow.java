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
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Things deeper than their rack, or so deep that no plug goes in behind. */
public final class RackTooShallow implements Rule {
    static final Limit BEHIND = Limit.least("room behind a thing for its plugs", 75, "mm");

    private static final Card CARD = new Card(
            "rack-too-shallow",
            "Is every rack deep enough for what is in it and for the plugs behind?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(BEHIND));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double behind = evidence.limit(CARD, BEHIND);
        List<Finding> findings = new ArrayList<>();
        for (Racks.Rack rack : Racks.all(evidence)) {
            if (rack.space().depth() == null) {
                continue;
            }
            double space = rack.space().depth().metres() * 1000;
            List<Racks.Racked> deep = new ArrayList<>();
            double deepest = 0;
            for (Racks.Racked each : rack.things()) {
                Model model = each.thing().model();
                double depth = model == null || model.depth() == null
                        ? 0
                        : model.depth().metres() * 1000;
                if (depth > 0 && space - depth < behind - 1e-9) {
                    deep.add(each);
                    deepest = Math.max(deepest, depth);
                }
            }
            if (!deep.isEmpty()) {
                findings.add(finding(evidence, rack, deep, space, deepest, behind));
            }
        }
        return findings.stream();
    }

    private static Finding finding(
            Evidence evidence, Racks.Rack rack, List<Racks.Racked> deep, double space, double depth, double behind) {
        boolean over = depth > space + 1e-9;
        List<String> ids = deep.stream().map(Racks.Racked::id).toList();
        String where = Words.said(rack.place().id());
        String which = ids.size() == 1 ? Said.things(ids) + " is" : "The deepest of " + Said.things(ids) + " is";
        return CARD.finding(
                over ? Severity.FIX : Severity.NOTE,
                Said.subjects(Said.place(rack.place().id()), ids),
                which + " " + length(evidence, depth) + " deep and "
                        + (over
                                ? where + " has " + length(evidence, space) + ": it does not go in."
                                : "leaves " + length(evidence, space - depth) + " behind it in " + where
                                        + "; its plugs want " + length(evidence, behind) + "."),
                List.of(new Value("room behind it", space - depth, behind, "mm")),
                List.of(Fix.of(
                        over
                                ? "Take a deeper rack, or put it on a shelf outside."
                                : "Take a deeper rack, right-angled plugs, or put it on a shelf outside.")));
    }

    /** Millimetres, as racks are sold by, or inches. */
    private static String length(Evidence evidence, double millimetres) {
        return evidence.ruleSet() == RuleSet.US
                ? Said.number(millimetres / 25.4) + " in"
                : String.format(Locale.ROOT, "%.0f mm", millimetres);
    }
}
