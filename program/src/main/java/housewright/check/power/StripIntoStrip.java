package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Connector;
import housewright.model.Model;
import housewright.model.Ref.Address;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.power.Supplies;
import housewright.power.Supply;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A strip plugged into a strip. */
public final class StripIntoStrip implements Rule {
    private static final Card CARD = new Card(
            "strip-into-strip",
            "Is every mains strip plugged into the wall, a UPS or a distributor with breakers?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Supplies supplies = evidence.supplies();
        List<Finding> findings = new ArrayList<>();
        for (Supply each : supplies.supplies()) {
            Address outlet = each.outlet();
            Present above = outlet == null ? null : supplies.things().get(outlet.thing());
            if (above != null && isStrip(each.thing().model()) && isStrip(above.model())) {
                findings.add(CARD.finding(
                        Severity.FIX,
                        List.of(Subject.equipment(each.id()), Subject.equipment(above.id())),
                        Words.said(each.id()) + " is plugged into " + Words.said(above.id())
                                + ", a strip into a strip: everything on both goes through one plug.",
                        List.of(),
                        List.of(Fix.of("Plug " + Words.said(each.id())
                                + " into the wall, or take one distributor with outlets enough."))));
            }
        }
        return findings.stream();
    }

    /** It hands on what comes in by a plug; what is wired in is an outlet of the house. */
    private static boolean isStrip(@Nullable Model model) {
        return Supplies.handsOn(model)
                && model != null
                && model.ports().values().stream().noneMatch(port -> port.in() == Signal.DMX)
                && model.ports().values().stream()
                        .anyMatch(port -> port.in() == Signal.MAINS
                                && port.connector() != null
                                && port.connector() != Connector.TERMINALS);
    }
}
