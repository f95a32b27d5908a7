package housewright.check.cable;

import housewright.cable.Cabling;
import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Cable;
import housewright.model.End;
import housewright.model.Life;
import housewright.model.Ref;
import housewright.model.Stage;
import housewright.model.Way;
import housewright.signal.Moment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** A cable that goes, though one that stays is plugged into the other side of the panel it ends in. */
public final class StruckCableNeeded implements Rule {
    private static final Card CARD = new Card(
            "struck-cable-needed",
            "Does everything that stays plugged into a panel still lead somewhere when the work is done?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    private record Open(Lead stays, Plug plug) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Set<String> losing = losing(evidence);
        List<Open> open = new ArrayList<>();
        for (Lead lead : losing.isEmpty() ? List.<Lead>of() : evidence.cabling().leads()) {
            for (Joint joint : lead.joints()) {
                for (Plug plug : joint.plugs()) {
                    if (plug.isPassive()
                            && losing.contains(plug.at().thing())
                            && evidence.cabling().beyond(plug).isEmpty()) {
                        open.add(new Open(lead, plug));
                    }
                }
            }
        }
        return open.isEmpty() ? Stream.empty() : findings(evidence, open);
    }

    /** What a cable that goes ends in today. */
    private static Set<String> losing(Evidence evidence) {
        Set<String> things = new HashSet<>();
        for (Cable cable : evidence.project().cables().values()) {
            if (cable.life() == Life.STRIKE && !evidence.moment().isThere("cables", cable.id(), cable.life())) {
                Cable today = cable.today();
                for (End end : Arrays.asList(today.from(), today.to())) {
                    Ref ref = end == null ? null : end.ref();
                    if (ref != null) {
                        ref.addresses().forEach(at -> things.add(at.thing()));
                    }
                }
                for (Way way : today.ways()) {
                    way.pairs().forEach(pair -> {
                        things.add(pair.from().thing());
                        things.add(pair.to().thing());
                    });
                }
            }
        }
        return things;
    }

    private static Stream<Finding> findings(Evidence evidence, List<Open> open) {
        Cabling today = evidence.at(Moment.today()).cabling();
        Map<String, Set<String>> needed = new LinkedHashMap<>();
        for (Open each : open) {
            for (Lead lead : today.beyond(each.plug())) {
                if (lead.cable().life() == Life.STRIKE) {
                    needed.computeIfAbsent(lead.id(), id -> new LinkedHashSet<>())
                            .add(each.stays().id());
                }
            }
        }
        return needed.entrySet().stream().map(each -> finding(evidence, each.getKey(), List.copyOf(each.getValue())));
    }

    private static Finding finding(Evidence evidence, String struck, List<String> stays) {
        List<String> cables = new ArrayList<>(List.of(struck));
        cables.addAll(stays);
        Cable cable = evidence.project().cables().get(struck);
        Fix fix = cable == null ? Fix.of("Keep it.") : new Fix("Keep " + struck + ".", List.of(Recut.kept(cable)));
        return CARD.finding(
                Severity.FIX,
                Said.subjects(cables),
                struck + " is to go, and " + Said.some(stays) + (stays.size() == 1 ? " stays" : " stay")
                        + " plugged into the other side of its panel, where nothing follows then.",
                List.of(new Value("cables left without a way on", stays.size(), 0.0, "")),
                List.of(fix, Fix.of("Or plan what takes its place, or take the others out, too.")));
    }
}
