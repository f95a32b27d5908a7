package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Clock;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.LocalRef;
import housewright.model.Setting;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.sound.ClockDomain;
import housewright.sound.ClockDomain.ClockedPort;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Two clocks on one digital link drift apart, and it clicks; none at all and it may stay silent. */
final class ClockMasters implements Rule {
    private static final Card CARD = new Card(
            "clock-masters",
            "Has everything that is joined digitally exactly one clock master?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.sound().clockDomains().stream()
                .filter(domain -> !domain.ports().isEmpty())
                .filter(domain -> masters(domain).size() != 1)
                .filter(domain -> !masters(domain).isEmpty() || followAll(domain))
                .map(domain -> finding(evidence, domain));
    }

    /** Equipment that is master at one port at least. */
    private static List<String> masters(ClockDomain domain) {
        return domain.ports().stream()
                .filter(port -> port.clock() == Clock.MASTER)
                .map(ClockedPort::equipment)
                .distinct()
                .toList();
    }

    /** Of each the project says that it follows: nothing is left that could be the master. */
    private static boolean followAll(ClockDomain domain) {
        return domain.equipment().stream()
                .allMatch(each -> domain.ports().stream()
                        .anyMatch(port -> port.equipment().equals(each)));
    }

    private static Finding finding(Evidence evidence, ClockDomain domain) {
        List<String> masters = masters(domain);
        List<String> named = masters.isEmpty() ? domain.equipment() : masters;
        String names = named.stream().map(Words::said).collect(Collectors.joining(" and "));
        String message = masters.isEmpty()
                ? "Nothing gives the clock where " + names + " are joined: each of them follows."
                : names + " are joined digitally and each is clock master: they drift apart, and it clicks.";
        return CARD.finding(
                Severity.FIX,
                named.reversed().stream().map(Subject::equipment).toList(),
                message,
                List.of(new Value("clock masters", masters.size(), 1.0, "")),
                List.of(masters.isEmpty() ? oneLeads(evidence, domain) : othersFollow(evidence, domain, masters)));
    }

    private static Fix othersFollow(Evidence evidence, ClockDomain domain, List<String> masters) {
        String keeps = best(evidence, masters);
        Map<String, Equipment> changed = new LinkedHashMap<>();
        for (ClockedPort port : domain.ports()) {
            if (port.clock() == Clock.MASTER && !port.equipment().equals(keeps)) {
                set(evidence, changed, port, Clock.FOLLOWS);
            }
        }
        return new Fix("Let " + Words.said(keeps) + " be the master, and the others follow.", changes(changed));
    }

    private static Fix oneLeads(Evidence evidence, ClockDomain domain) {
        String leads = best(evidence, domain.equipment());
        Map<String, Equipment> changed = new LinkedHashMap<>();
        domain.ports().stream()
                .filter(port -> port.equipment().equals(leads))
                .forEach(port -> set(evidence, changed, port, Clock.MASTER));
        return new Fix("Make " + Words.said(leads) + " the master.", changes(changed));
    }

    /** The desk, where there is one. */
    private static String best(Evidence evidence, List<String> all) {
        return all.stream()
                .filter(each -> evidence.sound().isKind(each, Kind.MIXER))
                .findFirst()
                .orElse(all.getFirst());
    }

    private static List<Change> changes(Map<String, Equipment> changed) {
        return changed.values().stream()
                .<Change>map(each -> new Change.Put(Section.EQUIPMENT, each.id(), each))
                .toList();
    }

    private static void set(Evidence evidence, Map<String, Equipment> changed, ClockedPort port, Clock clock) {
        Equipment thing = changed.getOrDefault(
                port.equipment(), evidence.project().equipment().get(port.equipment()));
        if (thing == null) {
            return;
        }
        Map<LocalRef, Setting> set = new LinkedHashMap<>(thing.set());
        set.replaceAll((ref, setting) -> setting.clock() == null
                        || ref.spots().stream().noneMatch(spot -> spot.name().equals(port.port()))
                ? setting
                : setting.with(clock));
        changed.put(thing.id(), thing.with(set));
    }
}
