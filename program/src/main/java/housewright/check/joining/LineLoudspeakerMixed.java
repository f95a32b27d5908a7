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
import housewright.model.Kind;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A loudspeaker without a transformer on a 100 V or 70 V line burns, and pulls the line down for all others; one with a
 * transformer on a plain amplifier is far too quiet. One that is made for 70 V takes twice its power on 100 V.
 */
public final class LineLoudspeakerMixed implements Rule {
    /** A line written once as 100 V and once as 42.2 dBu, or 10 % off, is the same. */
    private static final double SAME = 1.1;

    private static final Card CARD = new Card(
            "line-loudspeaker-mixed",
            "Do loudspeakers with transformers hang on line amplifiers only, and plain ones on plain amplifiers?",
            Set.of(Severity.STOP, Severity.NOTE),
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
                    : circuit.isLow() && !circuit.drivesLine()
                            ? circuit.loads().stream()
                                    .filter(SpeakerCircuit::isLineLoad)
                                    .toList()
                            : List.of();
            if (!wrong.isEmpty()) {
                findings.add(finding(circuit, wrong));
            } else if (circuit.isLine()) {
                otherVoltage(circuit, true).ifPresent(findings::add);
                otherVoltage(circuit, false).ifPresent(findings::add);
            }
        }
        return findings.stream();
    }

    /** Loudspeakers whose transformer is made for another voltage than the line has: power goes with its square (CV-04). */
    private static Optional<Finding> otherVoltage(SpeakerCircuit circuit, boolean tooHigh) {
        OptionalDouble line = circuit.lineVolts();
        if (line.isEmpty()) {
            return Optional.empty();
        }
        double volts = line.getAsDouble();
        List<Plug> wrong = circuit.loads().stream()
                .filter(load -> SpeakerCircuit.model(load).kind() == Kind.LOUDSPEAKER)
                .filter(load -> SpeakerCircuit.lineVolts(load).stream()
                        .anyMatch(own -> tooHigh ? volts > own * SAME : volts < own / SAME))
                .toList();
        if (wrong.isEmpty()) {
            return Optional.empty();
        }
        double made = SpeakerCircuit.lineVolts(wrong.getFirst()).orElseThrow();
        String each = wrong.size() == 1 ? "it" : "each";
        double times = volts / made * (volts / made);
        Set<Subject> subjects = new LinkedHashSet<>();
        wrong.forEach(load -> subjects.add(Subject.equipment(load.at().thing())));
        subjects.add(Subject.equipment(circuit.output().at().thing()));
        String message = String.format(
                Locale.ROOT,
                "%s made for %s, on the %s line of %s: %s.",
                Loudspeakers.said(wrong),
                SpeakerCircuit.said(made),
                SpeakerCircuit.said(volts),
                circuit.output().at().saidPort(),
                tooHigh
                        ? String.format(Locale.ROOT, "%s takes %.1f times the power of its tap", each, times)
                        : String.format(Locale.ROOT, "%s plays %.0f dB below its tap", each, -10 * Math.log10(times)));
        return Optional.of(CARD.finding(
                tooHigh ? Severity.STOP : Severity.NOTE,
                List.copyOf(subjects),
                message,
                List.of(new Value("line", volts, made, "V")),
                List.of(Fix.of(
                        tooHigh
                                ? "Use its input or tap for " + SpeakerCircuit.said(volts)
                                        + " where it has one, or another loudspeaker or amplifier."
                                : "Reckon with it when the taps are set, or use its input for "
                                        + SpeakerCircuit.said(volts) + " where it has one."))));
    }

    private static String quiet(SpeakerCircuit circuit, Plug load) {
        OptionalDouble own = circuit.ownVolts();
        OptionalDouble made = SpeakerCircuit.lineVolts(load);
        return own.isEmpty() || made.isEmpty()
                ? "far too quiet"
                : String.format(
                        Locale.ROOT, "%.0f dB below its tap", 20 * Math.log10(made.getAsDouble() / own.getAsDouble()));
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
                ? SpeakerCircuit.said(circuit.lineVolts().getAsDouble()) + " line"
                : "line";
        String message = circuit.isLine()
                ? who + " without a transformer on the " + volts + " of " + output + ": it burns, and the line goes"
                        + " down with it."
                : who + " with a line transformer on " + output + ", which is made for a few ohms: "
                        + (wrong.size() == 1 ? "it is " : "they are ") + quiet(circuit, wrong.getFirst()) + " there.";
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
