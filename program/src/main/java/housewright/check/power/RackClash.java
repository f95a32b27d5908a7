package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Two things in the same units of a rack. */
public final class RackClash implements Rule {
    private static final Card CARD = new Card(
            "rack-clash",
            "Has everything in a rack units of its own?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Racks.Rack rack : Racks.all(evidence)) {
            Map<Integer, Racks.Racked> taken = new LinkedHashMap<>();
            for (Racks.Racked each : rack.things()) {
                Integer unit = each.unit();
                if (unit == null) {
                    continue;
                }
                Racks.Racked before = null;
                for (int at = unit; at <= each.top(); at++) {
                    Racks.Racked there = taken.putIfAbsent(at, each);
                    before = before == null ? there : before;
                }
                if (before != null) {
                    findings.add(finding(evidence, rack, before, each));
                }
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Racks.Rack rack, Racks.Racked before, Racks.Racked each) {
        return CARD.finding(
                Severity.FIX,
                List.of(
                        Subject.equipment(each.id()),
                        Subject.equipment(before.id()),
                        Said.place(rack.place().id())),
                Words.said(each.id()) + " is drawn in " + Racks.units(each) + " of "
                        + Words.said(rack.place().id()) + ", where " + Words.said(before.id()) + " is ("
                        + Racks.units(before) + ").",
                List.of(),
                List.of(Racks.move(evidence, rack, each)));
    }
}
