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
import housewright.finding.Value;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A loudspeaker without a transformer on a 100 V or 70 V line burns, and pulls the line down for all others; one with a
 * transformer on a plain amplifier is all but silent.
 */
public final class LineLoudspeakerMixed implements Rule {
    private static final Card CARD = new Card(
            "line-loudspeaker-mixed",
            "Do loudspeakers with transformers hang on line amplifiers only, and plain ones on plain amplifiers?",
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
        for (SpeakerCircuit circuit : evidence.cabling().speakerCircuits()) {
            List<Plug> wrong = circuit.isLine()
                    ? circuit.loads().stream().filter(SpeakerCircuit::isLowLoad).toList()
                    : circuit.isLow()
                            ? circuit.loads().stream()
                                    .filter(SpeakerCircuit::isLineLoad)
                                    .toList()
                            : List.of();
            if (!wrong.isEmpty()) {
                findings.add(finding(circuit, wrong));
            }
        }
        return findings.stream();
    }

    private static Finding finding(SpeakerCircuit circuit, List<Plug> wrong) {
        Set<Subject> subjects = new LinkedHashSet<>();
        wrong.forEach(each -> subjects.add(Subject.equipment(each.at().thing())));
        if (circuit.loads().stream().anyMatch(SpeakerCircuit::isLowLoad)) { // both sorts on one line: all are in it
            circuit.loads()
                    .forEach(each -> subjects.add(Subject.equipment(each.at().thing())));
        }
        subjects.add(Subject.equipment(circuit.output().at().thing()));
        circuit.cables().forEach(cable -> subjects.add(Subject.cable(cable)));
        String who = Loudspeakers.said(wrong);
        String output = circuit.output().at().saidPort();
        String volts = circuit.lineVolts().isPresent()
                ? String.format(Locale.ROOT, "%.0f V line", circuit.lineVolts().getAsDouble())
                : "line";
        String message = circuit.isLine()
                ? who + " without a transformer on the " + volts + " of " + output + ": it burns, and the line goes"
                        + " down with it."
                : who + " with a line transformer on " + output
                        + ", which is made for a few ohms: it is all but silent there.";
        String fix = circuit.isLine()
                ? "Fit a loudspeaker with a transformer, or drive this one from an amplifier for low impedance."
                : "Drive it from a line amplifier, or fit a loudspeaker without a transformer.";
        List<Value> values = new ArrayList<>();
        var impedance = SpeakerCircuit.port(wrong.getFirst()).impedance();
        var least = SpeakerCircuit.port(circuit.output()).minLoad();
        if (impedance != null && least != null) {
            values.add(new Value("impedance of one", impedance.ohms(), null, "ohm"));
            values.add(new Value("least load of the amplifier", least.ohms(), null, "ohm"));
        }
        return CARD.finding(Severity.STOP, List.copyOf(subjects), message, values, List.of(Fix.of(fix)));
    }
}
