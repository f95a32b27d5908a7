package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.power.CircuitLoad;
import housewright.power.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Sound or picture on the circuit of a dimmer, whose chopped mains they hear and show. */
public final class SoundWithDimmers implements Rule {
    private static final Set<Kind> QUIET = Set.of(
            Kind.MIXER,
            Kind.STAGE_BOX,
            Kind.PERSONAL_MIXER,
            Kind.PROCESSOR,
            Kind.AMPLIFIER,
            Kind.LOUDSPEAKER,
            Kind.HEARING_LOOP,
            Kind.RADIO_RECEIVER,
            Kind.RECORDER,
            Kind.AUDIO_INTERFACE,
            Kind.COMPUTER,
            Kind.VISION_MIXER,
            Kind.CAMERA,
            Kind.ENCODER,
            Kind.SWITCH,
            Kind.UPS);

    private static final Card CARD = new Card(
            "sound-with-dimmers",
            "Is every dimmer on a circuit without sound and picture?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (CircuitLoad load : evidence.supplies().circuits()) {
            List<String> dimmers = new ArrayList<>();
            List<String> quiet = new ArrayList<>();
            for (Supply each : load.on()) {
                Model model = each.thing().model();
                if (isDimmer(model)) {
                    dimmers.add(each.id());
                } else if (isQuiet(model)) {
                    quiet.add(each.id());
                }
            }
            if (!dimmers.isEmpty() && !quiet.isEmpty()) {
                List<String> all = new ArrayList<>(dimmers);
                all.addAll(quiet);
                findings.add(CARD.finding(
                        Severity.FIX,
                        Said.subjects(Said.circuit(load.circuit().id()), all),
                        Said.things(quiet) + " " + Said.be(quiet.size()) + " on "
                                + load.circuit().id()
                                + " together with the dimmer " + Said.things(dimmers)
                                + ": what it chops off is heard as a buzz.",
                        List.of(new Value("dimmers beside sound and picture", dimmers.size(), 0.0, "")),
                        List.of(Fix.of("Put sound and picture on a circuit of their own. " + Said.ELECTRICIAN))));
            }
        }
        return findings.stream();
    }

    /** Nothing would be found of the circuit for this thing being on it, too. */
    static boolean goTogether(Supply thing, CircuitLoad load) {
        Model model = thing.thing().model();
        return load.on().stream()
                .map(each -> each.thing().model())
                .noneMatch(other -> (isDimmer(model) && isQuiet(other)) || (isQuiet(model) && isDimmer(other)));
    }

    private static boolean isDimmer(@Nullable Model model) {
        return model != null
                && model.kind() == Kind.DIMMER
                && model.ports().values().stream().anyMatch(port -> port.out() == Signal.MAINS);
    }

    private static boolean isQuiet(@Nullable Model model) {
        return model != null && QUIET.contains(model.kind());
    }
}
