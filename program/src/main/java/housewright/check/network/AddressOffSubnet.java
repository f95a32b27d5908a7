package housewright.check.network;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.network.Segment;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A thing whose address is in another network than those of the others it is joined to: they do not hear each other
 * without a router between. Where no mask is written 255.255.255.0 is taken, and said so.
 */
public final class AddressOffSubnet implements Rule {
    private static final Card CARD = new Card(
            "address-off-subnet",
            "Are the addresses of all that is on one network in one range?",
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
        Addresses addresses = new Addresses(evidence);
        Set<String> seen = new HashSet<>();
        Set<String> fits = new HashSet<>();
        List<Map<Integer, List<Addresses.Held>>> all = new ArrayList<>();
        for (Segment segment : evidence.networks().segments()) {
            Map<Integer, List<Addresses.Held>> byNetwork = new LinkedHashMap<>();
            for (Present thing : segment.things()) {
                Addresses.Held held = addresses.of(thing);
                if (held != null) {
                    byNetwork
                            .computeIfAbsent(held.ip().network(), key -> new ArrayList<>())
                            .add(held);
                }
            }
            most(byNetwork).forEach(held -> fits.add(held.thing().id()));
            all.add(byNetwork);
        }
        int n = 0;
        for (Segment segment : evidence.networks().segments()) {
            Map<Integer, List<Addresses.Held>> byNetwork = all.get(n++);
            List<Addresses.Held> most = most(byNetwork);
            for (List<Addresses.Held> group : byNetwork.values()) {
                for (Addresses.Held held : group.equals(most) ? List.<Addresses.Held>of() : group) {
                    // on a port with several VLANs it may belong to another of them
                    if (!fits.contains(held.thing().id())
                            && seen.add(held.thing().id())) {
                        findings.add(finding(evidence, addresses, segment, held, most));
                    }
                }
            }
        }
        return findings.stream();
    }

    private static List<Addresses.Held> most(Map<Integer, List<Addresses.Held>> byNetwork) {
        List<Addresses.Held> most = List.of();
        for (List<Addresses.Held> group : byNetwork.values()) {
            if (group.size() > most.size()) {
                most = group;
            }
        }
        return most;
    }

    private static Finding finding(
            Evidence evidence, Addresses addresses, Segment segment, Addresses.Held held, List<Addresses.Held> most) {
        String thing = held.thing().id();
        Ip network = most.getFirst().ip();
        Ip own = network.with(held.ip().bits() & network.hosts());
        Ip free = addresses.free(network, (own.bits() & network.hosts()) - 1);
        List<Change> changes = free == null ? List.of() : Addresses.give(evidence, thing, free);
        String mask = network.written() ? "" : " (taken as /24, since no mask is given)";
        List<String> others = most.stream().map(each -> each.thing().id()).toList();
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(thing));
        subjects.add(Subject.equipment(others.getFirst()));
        return CARD.finding(
                Severity.FIX,
                subjects,
                Words.said(thing) + " has " + held.ip().text() + ", and on " + segment.said() + " "
                        + Said.things(others, 3) + (others.size() == 1 ? " is" : " are") + " in "
                        + network.networkText() + mask + ": they do not hear each other.",
                List.of(),
                List.of(
                        changes.isEmpty()
                                ? Fix.of("Give it an address in " + network.networkText() + ".")
                                : new Fix("Give it " + (free == null ? "" : free.text()) + ".", changes)));
    }
}
