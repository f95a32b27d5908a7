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
import housewright.model.Port;
import housewright.model.Stage;
import housewright.unit.Power;
import housewright.unit.Resistance;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The power that one loudspeaker can get, against what it takes: the amplifier gives its rating into its least load, and
 * at the same voltage P·R/Z into Z. Once to twice the loudspeaker's rating is the usual choice. Much more wants a
 * limiter; much less clips, which is no kinder to the tweeter.
 */
public final class AmplifierPower implements Rule {
    static final Limit MOST = Limit.most("power over the loudspeaker's rating", 2.5, "times");
    static final Limit LEAST = Limit.least("power over the loudspeaker's rating", 0.4, "times");
    static final Limit BURNS =
            Limit.most("power over the loudspeaker's rating that is no more than a note", 5, "times");

    private static final Card CARD = new Card(
            "amplifier-power-far-off",
            "Is the power of every amplifier in proportion to the loudspeakers on it?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(MOST, LEAST, BURNS));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, MOST);
        List<Finding> findings = new ArrayList<>();
        for (SpeakerCircuit circuit : evidence.cabling().speakerCircuits()) {
            if (circuit.isLow()) {
                Finding worst = null; // like loudspeakers on one output get alike; one finding does for all
                for (Plug load : circuit.loads()) {
                    Finding finding = check(circuit, load, most);
                    if (finding != null && (worst == null || isWorse(finding, worst))) {
                        worst = finding;
                    }
                }
                if (worst != null) {
                    findings.add(worst);
                }
            }
        }
        return findings.stream();
    }

    private static boolean isWorse(Finding one, Finding other) {
        return one.severity().compareTo(other.severity()) < 0;
    }

    /** Watts into an impedance, from the rating into the least load: the voltage is the same, P = V²/R. */
    static double watts(double ratedWatts, double leastOhms, double ohms) {
        return ratedWatts * leastOhms / ohms;
    }

    private static @Nullable Finding check(SpeakerCircuit circuit, Plug load, double most) {
        Port output = SpeakerCircuit.port(circuit.output());
        Port input = SpeakerCircuit.port(load);
        Power gives = output.power();
        Power takes = input.power();
        Resistance least = output.minLoad();
        Resistance impedance = input.impedance();
        if (gives == null || takes == null || least == null || impedance == null || SpeakerCircuit.isLineLoad(load)) {
            return null;
        }
        if (takes.watts() <= 0 || impedance.ohms() < least.ohms()) {
            return null; // amplifier-load-too-low says so
        }
        double watts = watts(gives.watts(), least.ohms(), impedance.ohms());
        double times = watts / takes.watts();
        if (times <= most && times >= LEAST.value()) {
            return null;
        }
        boolean over = times > most;
        String message = String.format(
                Locale.ROOT,
                "%s can give %.0f W to %s, which takes %s: %s.",
                circuit.output().at().saidPort(),
                watts,
                load.at().saidPort(),
                takes.text(),
                over ? "without a limiter it dies of it" : "it clips long before the loudspeaker is at its best");
        String fix = over
                ? "Set a limiter to the loudspeaker's rating in the processor or amplifier, or take a smaller amplifier."
                : "Take a bigger amplifier, or expect less level than the loudspeaker's data sheet says.";
        return CARD.finding(
                times > BURNS.value() ? Severity.FIX : Severity.NOTE,
                List.of(
                        Subject.equipment(circuit.output().at().thing()),
                        Subject.equipment(load.at().thing())),
                message,
                List.of(new Value("power over rating", times, over ? most : LEAST.value(), "times")),
                List.of(Fix.of(fix)));
    }
}
