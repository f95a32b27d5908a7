package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.light.Lights;
import housewright.light.Receiver;
import housewright.model.LightData;
import housewright.model.Model;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/** Fixtures with an address and no mode, of a type that has several: how many channels they take is anybody's guess. */
public final class ModeMissing implements Rule {
    private static final Card CARD = new Card(
            "dmx-mode-missing",
            "Is the mode said of every fixture that has an address and several modes?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, List<Receiver>> byType = new LinkedHashMap<>();
        Map<String, String> usual = new HashMap<>();
        for (Receiver each : evidence.lights().receivers()) {
            Model model = each.thing().model();
            LightData data = model == null ? null : model.light();
            if (model == null || data == null || data.modes().isEmpty()) {
                continue;
            }
            String mode = Lights.setting(each.thing().equipment()).mode();
            if (mode != null) {
                usual.merge(model.id(), mode, (one, other) -> one.equals(other) ? one : "");
            } else if (each.address() != null && each.footprint() == null) {
                byType.computeIfAbsent(model.id(), key -> new ArrayList<>()).add(each);
            }
        }
        List<Finding> findings = new ArrayList<>();
        byType.forEach((type, these) -> findings.add(finding(evidence, type, these, usual.getOrDefault(type, ""))));
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, String type, List<Receiver> these, String usual) {
        List<String> ids = these.stream().map(Receiver::id).toList();
        LightData data = Objects.requireNonNull(
                Objects.requireNonNull(these.getFirst().thing().model()).light());
        List<Fix> fixes = new ArrayList<>();
        if (!usual.isEmpty()) {
            fixes.add(new Fix(
                    "Set " + (ids.size() == 1 ? "it" : "them") + " to " + usual + ", as the others of this type.",
                    these.stream()
                            .map(each -> Addresses.mode(evidence, each, usual))
                            .toList()));
        }
        fixes.add(Fix.of("Choose a mode, or read it off the display, and write it down: `light: {mode: "
                + data.modes().keySet().iterator().next() + "}`."));
        return CARD.finding(
                Severity.FIX,
                Said.equipment(ids),
                Said.things(ids) + " of type " + type + " " + (ids.size() == 1 ? "has an address" : "have addresses")
                        + " and no mode: it may be "
                        + String.join(" or ", data.modes().keySet()) + ", so nobody knows which channels are taken.",
                List.of(new Value("fixtures without a mode", ids.size(), 0.0, "")),
                fixes);
    }
}
