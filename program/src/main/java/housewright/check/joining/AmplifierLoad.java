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
import housewright.model.Figures;
import housewright.model.Stage;
import housewright.unit.Resistance;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Loudspeakers in parallel, links counted, against the least load the amplifier may drive. An impedance that was
 * measured is a little below the one on the label (by a fifth at most, IEC 60268-5 from memory), so what falls short by
 * less than that, and rests on a measurement, is to be looked at and does not stop.
 */
public final class AmplifierLoad implements Rule {
    static final double MEASURED_SHARE = 0.8;

    private static final Card CARD = new Card(
            "amplifier-load-too-low",
            "Is the impedance of all loudspeakers on each amplifier output known, and not below its least load?",
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
            Finding finding = check(circuit);
            if (finding != null) {
                findings.add(finding);
            }
        }
        return findings.stream();
    }

    private static @Nullable Finding check(SpeakerCircuit circuit) {
        Resistance least = SpeakerCircuit.port(circuit.output()).minLoad();
        boolean mixed = circuit.loads().stream().anyMatch(SpeakerCircuit::isLineLoad);
        if (least == null || !circuit.isLow() || mixed || circuit.loads().isEmpty()) {
            return null; // lines are summed by their taps; a mixture is told by itself
        }
        List<Plug> unknown = circuit.loads().stream()
                .filter(load -> {
                    Resistance impedance = SpeakerCircuit.port(load).impedance();
                    return impedance == null || impedance.ohms() <= 0;
                })
                .toList();
        if (!unknown.isEmpty()) {
            return CARD.finding(
                    Severity.FIX,
                    subjects(circuit, unknown),
                    "The load on " + circuit.output().at().saidPort() + " cannot be told: the impedance of "
                            + Loudspeakers.named(unknown) + " is not known.",
                    List.of(),
                    List.of(Fix.of("Read it off the label, or measure it, before anything is switched on.")));
        }
        OptionalDouble load = circuit.parallel();
        if (load.isEmpty() || load.getAsDouble() >= least.ohms() * (1 - 1e-9)) {
            return null;
        }
        boolean measured = circuit.loads().stream()
                .anyMatch(each -> SpeakerCircuit.model(each).figures() == Figures.MEASURED);
        boolean near = measured && load.getAsDouble() >= least.ohms() * MEASURED_SHARE;
        String message = String.format(
                Locale.ROOT,
                "%s on %s: %d %s %.1f ohm, and %s is the least it may drive%s.",
                Loudspeakers.said(circuit.loads()),
                circuit.output().at().saidPort(),
                circuit.loads().size(),
                circuit.loads().size() == 1 ? "loudspeaker of" : "in parallel make",
                load.getAsDouble(),
                least.text(),
                near ? ", though by no more than a measurement reads below the label" : "");
        return CARD.finding(
                near ? Severity.FIX : Severity.STOP,
                subjects(circuit, circuit.loads()),
                message,
                List.of(new Value("load", load.getAsDouble(), least.ohms(), "ohm")),
                List.of(Fix.of("Take a loudspeaker off this output and give it one of its own, or use an amplifier that"
                        + " may drive so low a load.")));
    }

    private static List<Subject> subjects(SpeakerCircuit circuit, List<Plug> loads) {
        List<Subject> subjects =
                new ArrayList<>(List.of(Subject.equipment(circuit.output().at().thing())));
        loads.forEach(each -> subjects.add(Subject.equipment(each.at().thing())));
        circuit.cables().forEach(cable -> subjects.add(Subject.cable(cable)));
        return subjects;
    }
}
