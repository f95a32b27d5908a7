package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.model.Circuit;
import housewright.model.Equipment;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.power.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Things on a circuit that has no outlet where they are. */
public final class CircuitNotAtPlace implements Rule {
    private static final Card CARD = new Card(
            "circuit-not-at-place",
            "Does every circuit come to the places of the things that are on it?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, Circuit> circuits = evidence.project().venue().circuits();
        List<Finding> findings = new ArrayList<>();
        for (Supply each : evidence.supplies().supplies()) {
            String at = each.thing().equipment().at();
            Circuit circuit = each.outlet() != null || each.circuit() == null ? null : circuits.get(each.circuit());
            if (circuit != null
                    && at != null
                    && !circuit.places().isEmpty()
                    && !circuit.places().contains(at)) {
                findings.add(finding(evidence, each, circuit, at));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Supply supply, Circuit circuit, String at) {
        List<Circuit> here = evidence.project().venue().circuits().values().stream()
                .filter(each -> each.places().contains(at) && each.dimmed() == circuit.dimmed())
                .toList();
        List<Fix> fixes = new ArrayList<>();
        if (!here.isEmpty()) {
            Equipment equipment = evidence.getEquipment(supply.id());
            fixes.add(new Fix(
                    "Plug it into " + here.getFirst().id() + ", which comes there.",
                    List.of(new Change.Put(
                            Section.EQUIPMENT,
                            supply.id(),
                            equipment.poweredFrom(here.getFirst().id(), null)))));
        }
        fixes.add(
                Fix.of("Have an outlet put there, or find out which circuit the one there is on. " + Said.ELECTRICIAN));
        return CARD.finding(
                Severity.FIX,
                Said.subjects(Said.circuit(circuit.id()), List.of(supply.id())),
                Words.said(supply.id()) + " is on " + circuit.id() + ", which has no outlet at " + Words.said(at) + ".",
                List.of(),
                fixes);
    }
}
