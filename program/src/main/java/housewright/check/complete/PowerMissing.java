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
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.change.Change;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Things that take mains, and of which nobody has said from where. */
public final class PowerMissing implements Rule {
    private static final Card CARD = new Card(
            "power-missing",
            "Is it known of everything that takes mains where its supply comes from?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        if (evidence.project().venue().circuits().isEmpty()) {
            return Stream.empty(); // nobody has drawn the mains
        }
        Set<String> byNetwork = new HashSet<>(); // or on a port that gives none, which another rule says
        evidence.networks().powered().stream()
                .filter(each -> each.by() != null)
                .forEach(each -> byNetwork.add(each.thing().id()));
        List<Equipment> dark = evidence.pictures().things().stream()
                .filter(thing -> !byNetwork.contains(thing.id()) && isUnpowered(evidence, thing))
                .map(Present::equipment)
                .toList();
        if (dark.isEmpty()) {
            return Stream.empty();
        }
        List<String> ids = dark.stream().map(Equipment::id).toList();
        return Stream.of(CARD.finding(
                Severity.FIX,
                ids.stream().map(Subject::equipment).toList(),
                Wording.things(ids, 5) + (ids.size() == 1 ? " takes" : " take")
                        + " mains, and nothing says from which circuit or outlet.",
                List.of(new Value("without power", ids.size(), null, "")),
                List.of(fix(evidence, dark))));
    }

    private static boolean isUnpowered(Evidence evidence, Present thing) {
        Equipment equipment = thing.equipment();
        Model model = thing.model();
        if (model == null
                || (model.battery() != null && model.kind() != Kind.UPS)
                || equipment.partOf() != null
                || equipment.runsOn() != null
                || equipment.circuit() != null
                || equipment.poweredBy() != null) {
            return false;
        }
        boolean takes = false;
        for (Map.Entry<NamePattern, Port> port : model.ports().entrySet()) {
            if (port.getValue().in() == Signal.MAINS) {
                takes = true;
                for (String name : port.getKey().names()) {
                    if (!evidence.cabling().in(thing.id() + "." + name).isEmpty()) {
                        return false;
                    }
                }
            }
        }
        return takes;
    }

    /** Onto the circuit of its place, where every one of them has one only. */
    private static Fix fix(Evidence evidence, List<Equipment> dark) {
        Map<String, List<String>> byPlace = new HashMap<>();
        evidence.project()
                .venue()
                .circuits()
                .values()
                .forEach(circuit -> circuit.places()
                        .forEach(place -> byPlace.computeIfAbsent(place, key -> new ArrayList<>())
                                .add(circuit.id())));
        List<Change> changes = new ArrayList<>();
        Set<String> circuits = new LinkedHashSet<>();
        for (Equipment each : dark) {
            Equipment kept = evidence.project().equipment().get(each.id());
            List<String> here = byPlace.getOrDefault(String.valueOf(each.at()), List.of());
            if (here.size() != 1 || kept == null) {
                return Fix.of(
                        "Say circuit: where it is plugged into the wall, powered-by: where into a strip or another"
                                + " thing.");
            }
            changes.add(Copy.onCircuit(kept, here.getFirst()));
            circuits.add(here.getFirst());
        }
        return new Fix("Take it from the circuit of its place, " + Wording.some(circuits, 3) + ".", changes);
    }
}
