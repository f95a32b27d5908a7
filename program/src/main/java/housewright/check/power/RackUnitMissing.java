package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Things that go into a rack, and nobody has said at which height. */
public final class RackUnitMissing implements Rule {
    private static final Card CARD = new Card(
            "rack-unit-missing",
            "Is it said of everything in a rack at which unit it goes?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.ORDER);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Racks.Rack rack : Racks.all(evidence)) {
            List<Racks.Racked> missing =
                    rack.things().stream().filter(each -> each.unit() == null).toList();
            if (!missing.isEmpty()) {
                List<String> ids = missing.stream().map(Racks.Racked::id).toList();
                List<Fix> fixes = new ArrayList<>();
                if (missing.size() == 1 && Racks.free(rack, missing.getFirst()) != null) {
                    fixes.add(Racks.move(evidence, rack, missing.getFirst()));
                }
                fixes.add(Fix.of("Draw the rack: heavy and hot things low, what is touched at eye height."));
                findings.add(CARD.finding(
                        Severity.NOTE,
                        Said.subjects(Said.place(rack.place().id()), ids),
                        Said.things(ids) + " " + (ids.size() == 1 ? "goes" : "go") + " into "
                                + Words.said(rack.place().id()) + ", and no unit is said.",
                        List.of(new Value("without a unit", ids.size(), 0.0, "")),
                        fixes));
            }
        }
        return findings.stream();
    }
}
