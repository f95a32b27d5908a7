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
import housewright.unit.Power;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The watts of all taps on a 100 V or 70 V line, against what the amplifier gives and what a volume control passes. A
 * tap fed with another voltage than it is marked for draws with the square of it.
 */
public final class LineTapsOverRating implements Rule {
    static final Limit PLANNED = Limit.most("taps planned for, of the amplifier's rating,", 80, "%");
    static final Limit RATED = Limit.most("taps in all, of the amplifier's rating,", 100, "%");

    private static final Card CARD = new Card(
            "line-taps-over-rating",
            "Is the sum of the taps on every 100 V or 70 V line within the amplifier's rating, with some in hand?",
            Set.of(Severity.STOP, Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.SURVEY,
            List.of(PLANNED, RATED));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double planned = evidence.limit(CARD, PLANNED);
        List<Finding> findings = new ArrayList<>();
        for (SpeakerCircuit circuit : evidence.cabling().speakerCircuits()) {
            if (!(circuit.isLine() || circuit.drivesLine())
                    || circuit.loads().stream().anyMatch(SpeakerCircuit::isLowLoad)) {
                continue;
            }
            Finding finding = check(circuit, planned);
            if (finding != null) {
                findings.add(finding);
            }
        }
        return findings.stream();
    }

    private static @Nullable Finding check(SpeakerCircuit circuit, double planned) {
        Power rating = SpeakerCircuit.port(circuit.output()).power();
        List<Plug> loads =
                circuit.loads().stream().filter(SpeakerCircuit::isLineLoad).toList();
        if (rating == null || rating.watts() <= 0 || loads.isEmpty()) {
            return null;
        }
        double watts = 0;
        List<Plug> unknown = new ArrayList<>();
        for (Plug load : loads) {
            OptionalDouble draws = circuit.draws(load);
            if (draws.isEmpty()) {
                unknown.add(load);
            }
            watts += draws.orElse(0);
        }
        double share = 100 * watts / rating.watts();
        String output = circuit.output().at().saidPort();
        if (share <= planned + 1e-6 && !unknown.isEmpty()) {
            return CARD.finding(
                    Severity.FIX,
                    subjects(circuit, unknown),
                    "The load on " + output + " cannot be summed: the tap of " + Loudspeakers.named(unknown)
                            + " is not known.",
                    List.of(),
                    List.of(Fix.of("Read the tap on each loudspeaker, and enter its watts.")));
        }
        if (share <= planned + 1e-6) {
            return null;
        }
        boolean over = share > RATED.value() + 1e-6;
        String message = String.format(
                Locale.ROOT,
                "%s has %s W of taps on it, %.0f %% of its %s; %s.",
                output,
                watts == Math.rint(watts)
                        ? Long.toString(Math.round(watts))
                        : String.format(Locale.ROOT, "%.1f", watts),
                share,
                rating.text(),
                over ? "that is more than it gives" : String.format(Locale.ROOT, "plan with %.0f %% at most", planned));
        return CARD.finding(
                over ? Severity.STOP : Severity.NOTE,
                subjects(circuit, loads),
                message,
                List.of(new Value("taps", share, over ? RATED.value() : planned, "%")),
                List.of(Fix.of("Tap some loudspeakers lower, or use a bigger amplifier.")));
    }

    private static List<Subject> subjects(SpeakerCircuit circuit, List<Plug> loads) {
        List<Subject> subjects =
                new ArrayList<>(List.of(Subject.equipment(circuit.output().at().thing())));
        loads.forEach(each -> subjects.add(Subject.equipment(each.at().thing())));
        circuit.cables().forEach(cable -> subjects.add(Subject.cable(cable)));
        return subjects;
    }
}
