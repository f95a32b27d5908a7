package housewright.check.complete;

import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Equipment;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.signal.Present;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Desks and boxes on one digital link, whose versions must agree. */
public final class FirmwareNotNoted implements Rule {
    private static final Card CARD = new Card(
            "firmware-not-noted",
            "Is it written down of everything on a digital stage link which firmware it was tested with?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.INSTALL);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<String> lacking = onLinks(evidence);
        return lacking.isEmpty()
                ? Stream.empty()
                : Stream.of(
                        CARD.finding(
                                Severity.NOTE,
                                lacking.stream().map(Subject::equipment).toList(),
                                "Nobody has noted which firmware was tested on " + Wording.things(lacking, 5) + ".",
                                List.of(new Value("not noted", lacking.size(), null, "")),
                                List.of(
                                        Fix.of(
                                                "Say under handover: firmware: the version; both ends of a link are updated together, never in the week of a service."))));
    }

    private static boolean isNoted(Equipment thing) {
        return thing.handover() != null && thing.handover().firmware() != null;
    }

    private static List<String> onLinks(Evidence evidence) {
        Set<String> linked = new LinkedHashSet<>();
        for (Line line : evidence.cabling().lines()) {
            if (line.signal() == Signal.STAGE_LINK) {
                add(linked, line.from());
                add(linked, line.to());
            }
        }
        return evidence.pictures().things().stream()
                .filter(thing -> linked.contains(thing.id()) && !isNoted(thing.equipment()))
                .map(Present::id)
                .toList();
    }

    private static void add(Set<String> linked, @Nullable Plug plug) {
        if (plug != null) {
            linked.add(plug.at().thing());
        }
    }
}
