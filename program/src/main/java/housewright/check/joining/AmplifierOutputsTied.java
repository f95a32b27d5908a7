package housewright.check.joining;

import housewright.cable.Plug;
import housewright.cable.SpeakerCircuit;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Two amplifier outputs on one pair of wires: each drives into the other. */
public final class AmplifierOutputsTied implements Rule {
    private static final Card CARD = new Card(
            "amplifier-outputs-tied",
            "Is every loudspeaker line driven by one amplifier output only?",
            Set.of(Severity.STOP),
            new Source.CommonPractice(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (SpeakerCircuit circuit : evidence.cabling().speakerCircuits()) {
            if (!circuit.others().isEmpty() && !told.contains(circuit.output().socket())) {
                circuit.others().forEach(other -> told.add(other.socket()));
                findings.add(finding(circuit));
            }
        }
        return findings.stream();
    }

    private static Finding finding(SpeakerCircuit circuit) {
        Plug other = circuit.others().getFirst();
        Set<Subject> subjects = new LinkedHashSet<>();
        circuit.cables().forEach(cable -> subjects.add(Subject.cable(cable)));
        subjects.add(Subject.equipment(circuit.output().at().thing()));
        circuit.others()
                .forEach(each -> subjects.add(Subject.equipment(each.at().thing())));
        return CARD.finding(
                Severity.STOP,
                List.copyOf(subjects),
                circuit.output().at().saidPort() + " and " + other.at().saidPort()
                        + " are tied together, by way of " + String.join(", ", circuit.cables())
                        + ": each drives into the other.",
                List.of(),
                List.of(Fix.of(
                        "Give each output loudspeakers of its own; bridge amplifiers only as their manual says.")));
    }
}
