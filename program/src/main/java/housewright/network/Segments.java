package housewright.network;

import housewright.signal.Present;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which things hear one another: switches joined within a VLAN, and what is plugged into them. */
final class Segments {
    private record Side(String thing, int vlan) {}

    private final Networks networks;
    private final Map<Side, Side> parents = new HashMap<>();

    Segments(Networks networks) {
        this.networks = networks;
    }

    List<Segment> all() {
        for (Link link : networks.links()) {
            if (link.joinsSwitches()) {
                for (int vlan : networks.vlans(link)) {
                    Side one = find(new Side(link.one().at().thing(), vlan));
                    Side other = find(new Side(link.other().at().thing(), vlan));
                    if (!one.equals(other)) {
                        parents.put(other, one);
                    }
                }
            }
        }
        Map<Side, Set<Present>> members = new LinkedHashMap<>();
        List<Segment> direct = new ArrayList<>();
        for (Link link : networks.links()) {
            boolean one = Link.isSwitch(link.one());
            boolean other = Link.isSwitch(link.other());
            if (!one && !other) {
                List<Present> ends = new ArrayList<>();
                add(ends, link.one().at().thing());
                add(ends, link.other().at().thing());
                direct.add(new Segment(0, ends));
            }
            for (int vlan : networks.vlans(link)) {
                if (one) {
                    join(members, link.one().at().thing(), link.other().at().thing(), vlan);
                }
                if (other) {
                    join(members, link.other().at().thing(), link.one().at().thing(), vlan);
                }
            }
        }
        List<Segment> all = new ArrayList<>();
        members.forEach((side, things) -> all.add(new Segment(side.vlan(), List.copyOf(things))));
        all.addAll(direct);
        return List.copyOf(all);
    }

    /** What is plugged into a switch; a switch itself answers on the default network. */
    private void join(Map<Side, Set<Present>> members, String hub, String thing, int vlan) {
        Set<Present> there = members.computeIfAbsent(find(new Side(hub, vlan)), key -> new LinkedHashSet<>());
        if (vlan == Networks.DEFAULT_VLAN) {
            add(there, hub);
        }
        if (!networks.isSwitch(thing) || vlan == Networks.DEFAULT_VLAN) {
            add(there, thing);
        }
    }

    private void add(Collection<Present> to, String thing) {
        Present present = networks.thing(thing);
        if (present != null) {
            to.add(present);
        }
    }

    private Side find(Side side) {
        Side top = side;
        while (parents.containsKey(top)) {
            top = parents.get(top);
        }
        Side at = side;
        while (!at.equals(top)) {
            Side next = parents.getOrDefault(at, top);
            parents.put(at, top);
            at = next;
        }
        return top;
    }
}
