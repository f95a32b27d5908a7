package housewright.check.network;

import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Equipment;
import housewright.model.NetworkSend;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.network.Link;
import housewright.signal.Cause;
import housewright.signal.Unjoined;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** A cable between two switches whose ends carry different VLANs. Where a send fails by it, that is reported instead. */
public final class TrunkEndsDiffer implements Rule {
    private static final Card CARD = new Card(
            "trunk-ends-differ",
            "Do both ends of every link between switches carry the same VLANs?",
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
        for (Link link : evidence.networks().links()) {
            if (!link.joinsSwitches()) {
                continue;
            }
            Set<Integer> one = evidence.networks().vlans(link.one());
            Set<Integer> other = evidence.networks().vlans(link.other());
            Set<Integer> both = new TreeSet<>(one);
            both.addAll(other);
            Set<Integer> apart = new TreeSet<>(both);
            apart.removeIf(vlan -> one.contains(vlan) && other.contains(vlan));
            if (!apart.isEmpty() && !sendFails(evidence, apart)) {
                findings.add(finding(evidence, link, one, other, both, apart));
            }
        }
        return findings.stream();
    }

    private static boolean sendFails(Evidence evidence, Set<Integer> apart) {
        for (Unjoined unjoined : evidence.signals().unjoined()) {
            if (unjoined.cause() instanceof Cause.BySend cause) {
                NetworkSend send = evidence.project().networkSends().get(cause.id());
                if (send == null || send.vlan() == null || apart.contains(send.vlan())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Finding finding(
            Evidence evidence, Link link, Set<Integer> one, Set<Integer> other, Set<Integer> both, Set<Integer> apart) {
        List<Change> changes = new ArrayList<>();
        change(evidence, link.one(), one, both, changes);
        change(evidence, link.other(), other, both, changes);
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(link.one().at().thing()));
        subjects.add(Subject.equipment(link.other().at().thing()));
        subjects.addAll(Said.cables(link));
        String words = "Carry " + list(both) + " at both ends of " + link.said() + ".";
        return CARD.finding(
                Severity.FIX,
                subjects,
                link.said() + " carries VLAN " + list(one) + " at "
                        + Words.said(link.one().at().thing()) + " and " + list(other) + " at "
                        + Words.said(link.other().at().thing()) + ", so VLAN " + list(apart)
                        + " does not get through.",
                List.of(),
                List.of(changes.isEmpty() ? Fix.of(words) : new Fix(words, changes)));
    }

    private static String list(Set<Integer> vlans) {
        return Said.some(vlans.stream().map(String::valueOf).toList(), 8);
    }

    private static void change(
            Evidence evidence, Plug plug, Set<Integer> now, Set<Integer> both, List<Change> changes) {
        String thing = plug.at().thing();
        Equipment each = evidence.project().equipment().get(thing);
        if (each != null && !now.equals(both) && evidence.moment().isDone("equipment", thing)) {
            changes.add(new Change.Put(
                    Section.EQUIPMENT,
                    thing,
                    Addresses.with(
                            each,
                            each.ip(),
                            Addresses.vlans(each.vlans(), plug.at().spot().name(), List.copyOf(both)))));
        }
    }
}
