package housewright.check.network;

import housewright.check.Evidence;
import housewright.model.Equipment;
import housewright.model.NamePattern;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.network.Segment;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Who has which address, and what is free. */
final class Addresses {
    /** A thing and its address. */
    record Held(Present thing, Ip ip) {}

    private final Map<String, Held> held = new LinkedHashMap<>();
    private final Set<Integer> taken = new HashSet<>();

    Addresses(Evidence evidence) {
        for (Present thing : evidence.networks().things()) {
            String text = thing.equipment().ip();
            Ip ip = text == null ? null : Ip.find(text);
            if (ip != null && ip.isHost()) {
                held.put(thing.id(), new Held(thing, ip));
                taken.add(ip.bits());
            }
        }
    }

    /** Only those that one thing may have. */
    List<Held> all() {
        return List.copyOf(held.values());
    }

    @Nullable
    Held of(Present thing) {
        return held.get(thing.id());
    }

    /** For each thing the numbers of the segments it is in. */
    static Map<String, Set<Integer>> segments(Evidence evidence) {
        Map<String, Set<Integer>> in = new HashMap<>();
        int n = 0;
        for (Segment segment : evidence.networks().segments()) {
            for (Present thing : segment.things()) {
                in.computeIfAbsent(thing.id(), key -> new HashSet<>()).add(n);
            }
            n++;
        }
        return in;
    }

    /** The next free one above this in a network; null where it is full. */
    @Nullable
    Ip free(Ip network, int above) {
        for (int host = above + 1; host < network.hosts(); host++) {
            Ip ip = network.with(host);
            if (!taken.contains(ip.bits()) && ip.isHost()) {
                return ip;
            }
        }
        return null;
    }

    /** The change that gives a thing an address; none where today is asked about, which no plan changes. */
    static List<Change> give(Evidence evidence, String thing, Ip ip) {
        Equipment each = evidence.project().equipment().get(thing);
        return each == null || !evidence.moment().isDone("equipment", thing)
                ? List.of()
                : List.of(new Change.Put(Section.EQUIPMENT, thing, with(each, ip.text(), each.vlans())));
    }

    static Equipment with(Equipment each, @Nullable String ip, Map<NamePattern, List<Integer>> vlans) {
        return new Equipment(
                each.id(),
                each.model(),
                each.at(),
                each.life(),
                each.circuit(),
                each.poweredBy(),
                each.set(),
                each.unit(),
                each.secondary(),
                each.light(),
                each.gang(),
                each.terminator(),
                ip,
                vlans,
                each.partOf(),
                each.runsOn(),
                each.serial(),
                each.label(),
                each.handover(),
                each.was(),
                each.remarks());
    }

    /** The same with one port carrying other VLANs, the rest of its range as before. */
    static Map<NamePattern, List<Integer>> vlans(
            Map<NamePattern, List<Integer>> before, String port, List<Integer> wanted) {
        Map<NamePattern, List<Integer>> after = new LinkedHashMap<>();
        before.forEach((pattern, vlans) -> {
            List<String> names = new ArrayList<>(pattern.names());
            if (names.remove(port)) {
                names.forEach(name -> after.put(NamePattern.parse(name), vlans));
            } else {
                after.put(pattern, vlans);
            }
        });
        after.put(NamePattern.parse(port), wanted);
        return after;
    }
}
