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

/** Things above the top of a rack, or more units in it than it has. */
public final class RackTooSmall implements Rule {
    private static final Card CARD = new Card(
            "rack-too-small",
            "Does everything that goes into a rack fit into its units?",
            Set.of(Severity.FIX),
            new Source.Published("EIA-310 and IEC 60297-3-100, as quoted", "1 U is 44.45 mm"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Racks.Rack rack : Racks.all(evidence)) {
            int units = rack.space().units();
            int all = 0;
            boolean outside = false;
            for (Racks.Racked each : rack.things()) {
                all += each.height();
                if (each.unit() != null && (each.unit() < 1 || each.top() > units)) {
                    outside = true;
                    findings.add(CARD.finding(
                            Severity.FIX,
                            List.of(
                                    Subject.equipment(each.id()),
                                    Said.place(rack.place().id())),
                            Words.said(each.id()) + " is drawn in " + Racks.units(each) + " of "
                                    + Words.said(rack.place().id()) + ", which has " + units + ".",
                            List.of(new Value("highest unit", each.top(), (double) units, "U")),
                            List.of(Racks.move(evidence, rack, each))));
                }
            }
            if (all > units && !outside) {
                findings.add(CARD.finding(
                        Severity.FIX,
                        Said.subjects(
                                Said.place(rack.place().id()),
                                rack.things().stream().map(Racks.Racked::id).toList()),
                        "What goes into " + Words.said(rack.place().id()) + " takes " + all + " U, " + (all - units)
                                + " more than it has.",
                        List.of(new Value("units", all, (double) units, "U")),
                        List.of(Fix.of("Take a higher rack, or put something elsewhere."))));
            }
        }
        return findings.stream();
    }
}
