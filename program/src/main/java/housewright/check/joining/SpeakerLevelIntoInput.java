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
import housewright.model.Connector;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * An amplifier's output on a socket that is not made for it: a powered loudspeaker's line input, a desk. It burns what
 * it meets. On panel sockets that people take for a microphone's it is only a matter of time until somebody does.
 */
public final class SpeakerLevelIntoInput implements Rule {
    private static final Card CARD = new Card(
            "speaker-level-into-input",
            "Does loudspeaker power reach nothing but what is made for it?",
            Set.of(Severity.STOP, Severity.FIX),
            new Source.CommonPractice(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (SpeakerCircuit circuit : evidence.cabling().speakerCircuits()) {
            for (Plug foreign : circuit.foreign()) {
                findings.add(finding(
                        circuit,
                        foreign,
                        Severity.STOP,
                        "puts loudspeaker power into " + foreign.at().saidPort() + ", which is not made for it",
                        "Take the cable out. Feed that input from a line output, or put a loudspeaker there that needs"
                                + " an amplifier."));
            }
            circuit.panels().stream()
                    .filter(panel -> isTakenForAnother(Ends.socket(panel)))
                    .findFirst()
                    .ifPresent(panel -> findings.add(finding(
                            circuit,
                            panel,
                            Severity.FIX,
                            "passes loudspeaker power through " + panel.at().saidPort()
                                    + ", a socket that people take for a microphone's or a line's",
                            "Use a panel with loudspeaker connectors.")));
        }
        return findings.stream();
    }

    private static boolean isTakenForAnother(@Nullable Connector connector) {
        return connector != null
                && switch (connector) {
                    case XLR_3M, XLR_3F, XLR_5M, XLR_5F, TRS, TS, TRS_3_5, RCA, RJ45, BNC, DB25 -> true;
                    default -> false;
                };
    }

    private static Finding finding(SpeakerCircuit circuit, Plug at, Severity severity, String does, String fix) {
        List<Subject> subjects = new ArrayList<>();
        circuit.cables().forEach(cable -> subjects.add(Subject.cable(cable)));
        subjects.add(Subject.equipment(at.at().thing()));
        subjects.add(Subject.equipment(circuit.output().at().thing()));
        return CARD.finding(
                severity,
                subjects,
                circuit.output().at().saidPort() + " " + does + ".",
                List.of(),
                List.of(Fix.of(fix)));
    }
}
