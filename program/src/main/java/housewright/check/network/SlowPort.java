package housewright.check.network;

import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Life;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.network.Link;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** A switch port slower than what is plugged into it, unless the switch goes. One note for each switch. */
public final class SlowPort implements Rule {
    private static final Card CARD = new Card(
            "slow-port",
            "Is every switch port as fast as what is plugged into it?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    private record Slow(Plug port, Plug device, double gives, double could) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, List<Slow>> slow = new LinkedHashMap<>();
        for (Link link : evidence.networks().links()) {
            add(link.one(), link.other(), slow);
            add(link.other(), link.one(), slow);
        }
        return slow.entrySet().stream().map(each -> finding(each.getKey(), each.getValue()));
    }

    private static void add(Plug port, Plug device, Map<String, List<Slow>> slow) {
        Double gives = Link.rate(port);
        Double could = Link.rate(device);
        boolean stays = port.equipment() != null && port.equipment().life() != Life.STRIKE;
        if (stays && Link.isSwitch(port) && gives != null && could != null && gives < could) {
            slow.computeIfAbsent(port.at().thing(), key -> new ArrayList<>()).add(new Slow(port, device, gives, could));
        }
    }

    private static Finding finding(String hub, List<Slow> slow) {
        List<String> devices =
                slow.stream().map(each -> each.device().at().thing()).distinct().toList();
        double gives = slow.stream().mapToDouble(Slow::gives).min().orElse(0);
        double could = slow.stream().mapToDouble(Slow::could).max().orElse(0);
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(hub));
        subjects.addAll(Said.equipment(devices));
        return CARD.finding(
                Severity.NOTE,
                subjects,
                Words.said(hub) + " passes " + Said.rate(gives) + " where " + Said.things(devices, 4) + " could do "
                        + Said.rate(could) + ".",
                List.of(new Value("port rate", gives / 1e6, could / 1e6, "Mbit/s")),
                List.of(Fix.of("Take a faster port, or change " + Words.said(hub) + " for a faster switch.")));
    }
}
