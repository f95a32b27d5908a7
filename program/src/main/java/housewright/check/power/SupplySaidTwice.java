package housewright.check.power;

import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Equipment;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.power.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Two entries that say where a thing has its mains from, and differ. */
public final class SupplySaidTwice implements Rule {
    private static final Card CARD = new Card(
            "supply-said-twice",
            "Do outlet, mains lead and circuit of every thing say the same?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Supply each : evidence.supplies().supplies()) {
            Address outlet = each.outlet();
            String own = each.thing().equipment().circuit();
            Line lead = each.lead();
            Plug plugged = lead == null ? null : lead.source();
            if (lead != null
                    && outlet != null
                    && plugged != null
                    && !plugged.socket().equals(socket(outlet))) {
                findings.add(finding(
                        evidence,
                        each,
                        Words.said(each.id()) + " is said to hang on " + outlet.said() + ", and its lead "
                                + Said.some(lead.ids()) + " is in "
                                + plugged.at().saidPort() + ".",
                        "Believe the lead: it hangs on " + plugged.at().saidPort() + ".",
                        null,
                        new Ref(plugged.socket())));
            } else if (outlet != null && own != null && each.circuit() != null && !own.equals(each.circuit())) {
                findings.add(finding(
                        evidence,
                        each,
                        Words.said(each.id()) + " is said to be on " + own + ", and " + outlet.said()
                                + ", which feeds it, is on " + each.circuit() + ".",
                        "Let the outlet say which circuit it is.",
                        null,
                        each.thing().equipment().poweredBy()));
            }
        }
        return findings.stream();
    }

    private static String socket(Address outlet) {
        return outlet.thing() + "." + outlet.spot().name();
    }

    private static Finding finding(
            Evidence evidence,
            Supply supply,
            String message,
            String words,
            @Nullable String circuit,
            @Nullable Ref outlet) {
        Equipment equipment = evidence.getEquipment(supply.id());
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(supply.id())),
                message,
                List.of(),
                List.of(new Fix(
                        words,
                        List.of(new Change.Put(
                                Section.EQUIPMENT, supply.id(), equipment.poweredFrom(circuit, outlet))))));
    }
}
