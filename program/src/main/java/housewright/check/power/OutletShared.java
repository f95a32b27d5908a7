package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Equipment;
import housewright.model.Port;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.power.Supply;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Two plugs for one outlet. */
public final class OutletShared implements Rule {
    private static final Card CARD = new Card(
            "outlet-shared",
            "Is there an outlet for every mains plug?",
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
        evidence.supplies().byOutlet().forEach((outlet, plugs) -> {
            if (plugs.size() > 1 && isOutlet(evidence, outlet) && !isDrawn(evidence, outlet)) {
                findings.add(finding(evidence, outlet, plugs));
            }
        });
        return findings.stream();
    }

    /** Two leads are drawn into it, which stops the job already. */
    private static boolean isDrawn(Evidence evidence, String outlet) {
        return evidence.cabling().shared().stream()
                .anyMatch(each -> each.plug().socket().equals(outlet));
    }

    private static boolean isOutlet(Evidence evidence, String outlet) {
        Address at = new Ref(outlet).addresses().getFirst();
        return outlets(evidence, at.thing()).containsKey(at.spot().name());
    }

    /** The outlets of a thing by name, with the plug that each takes. */
    private static Map<String, Port> outlets(Evidence evidence, String thing) {
        Present present = evidence.supplies().things().get(thing);
        Map<String, Port> outlets = new LinkedHashMap<>();
        if (present != null && present.model() != null) {
            present.model().ports().forEach((names, port) -> {
                if (port.out() == Signal.MAINS) {
                    names.names().forEach(name -> outlets.put(name, port));
                }
            });
        }
        return outlets;
    }

    private static Finding finding(Evidence evidence, String outlet, List<Supply> plugs) {
        Address at = new Ref(outlet).addresses().getFirst();
        Map<String, Port> outlets = outlets(evidence, at.thing());
        Port wanted = outlets.get(at.spot().name());
        List<String> free = new ArrayList<>();
        outlets.forEach((name, port) -> {
            boolean alike = wanted != null && port.connector() == wanted.connector();
            if (alike && !evidence.supplies().byOutlet().containsKey(at.thing() + "." + name)) {
                free.add(name);
            }
        });
        List<Supply> others = plugs.subList(1, plugs.size());
        List<Fix> fixes = new ArrayList<>();
        if (free.size() >= others.size() && others.stream().allMatch(each -> each.lead() == null)) {
            List<Change> changes = new ArrayList<>();
            for (int i = 0; i < others.size(); i++) {
                Equipment equipment = evidence.getEquipment(others.get(i).id());
                changes.add(new Change.Put(
                        Section.EQUIPMENT,
                        equipment.id(),
                        equipment.poweredFrom(null, new Ref(at.thing() + "." + free.get(i)))));
            }
            fixes.add(new Fix(
                    "Plug " + Said.things(Said.ids(others)) + " into " + Said.things(free.subList(0, others.size()))
                            + ", free there.",
                    changes));
        }
        fixes.add(Fix.of(
                free.isEmpty()
                        ? "No outlet of " + Words.said(at.thing())
                                + " is free: take one with more, not a strip behind it."
                        : "Plug one of them into another outlet: " + Said.things(free) + " " + Said.be(free.size())
                                + " free."));
        return CARD.finding(
                Severity.FIX,
                Said.subjects(Subject.equipment(at.thing()), Said.ids(plugs)),
                Said.things(Said.ids(plugs)) + (plugs.size() == 2 ? " both" : " all") + " hang on one outlet, "
                        + at.said() + ".",
                List.of(new Value("plugs in the outlet", plugs.size(), 1.0, "")),
                fixes);
    }
}
