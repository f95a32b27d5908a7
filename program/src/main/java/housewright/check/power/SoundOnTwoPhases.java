package housewright.check.power;

import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Circuit;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.power.Supply;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Analogue sound between things on different circuits, on different phases or on nobody knows which. */
public final class SoundOnTwoPhases implements Rule {
    private static final Card CARD = new Card(
            "sound-on-two-phases",
            "Is everything that is joined by analogue sound on one technical supply, of one phase?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, Circuit> circuits = evidence.project().venue().circuits();
        Set<String> apart = new LinkedHashSet<>();
        Set<String> asked = new LinkedHashSet<>();
        for (Line line : evidence.cabling().lines()) {
            if (line.signal() != Signal.ANALOG_AUDIO) {
                continue;
            }
            Circuit one = circuit(evidence, circuits, line.from());
            Circuit other = circuit(evidence, circuits, line.to());
            if (one == null || other == null || one == other) {
                continue;
            }
            String phase = one.phase();
            if (phase == null || other.phase() == null) {
                asked.add(one.id());
                asked.add(other.id());
            } else if (!phase.equalsIgnoreCase(other.phase())) {
                apart.add(one.id());
                apart.add(other.id());
            }
        }
        List<Finding> findings = new ArrayList<>();
        if (!apart.isEmpty()) {
            findings.add(
                    finding(
                            apart,
                            "Analogue sound joins things on " + Said.some(List.copyOf(apart))
                                    + ", which are on different phases: expect hum where a screen joins both earths.",
                            "Have all sound and picture put on one phase and one earth bar, or isolate the lines by transformers. "));
        } else if (!asked.isEmpty()) {
            findings.add(finding(
                    asked,
                    "Analogue sound joins things on " + Said.some(List.copyOf(asked))
                            + ", and nobody has said whether they are on one phase and one earth bar.",
                    "Ask the electrician, and write `phase` on the circuits. "));
        }
        return findings.stream();
    }

    private static @Nullable Circuit circuit(Evidence evidence, Map<String, Circuit> circuits, @Nullable Plug plug) {
        Supply supply = plug == null
                ? null
                : evidence.supplies().find(plug.at().thing()).orElse(null);
        return supply == null || supply.circuit() == null ? null : circuits.get(supply.circuit());
    }

    private static Finding finding(Set<String> circuits, String message, String fix) {
        return CARD.finding(
                Severity.NOTE,
                circuits.stream().map(Said::circuit).toList(),
                message,
                List.of(new Value("circuits", circuits.size(), 1.0, "")),
                List.of(Fix.of(fix + "Never lift an earth. " + Said.ELECTRICIAN)));
    }
}
