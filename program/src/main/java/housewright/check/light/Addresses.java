package housewright.check.light;

import housewright.check.Evidence;
import housewright.light.Lights;
import housewright.light.Receiver;
import housewright.model.Equipment;
import housewright.model.FixtureSetting;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Gives fixtures new addresses. */
final class Addresses {
    private Addresses() {}

    /**
     * The receivers at the lowest addresses that are free, those of one gang together; none where one of them has no known
     * footprint, or the universe is full.
     */
    static List<Change> anew(Evidence evidence, List<Receiver> movers) {
        Integer universe = movers.getFirst().universe();
        return anew(
                evidence,
                movers,
                evidence.lights().receivers().stream()
                        .filter(each -> Objects.equals(universe, each.universe()))
                        .toList());
    }

    /** The same, of a universe that these are in. */
    static List<Change> anew(Evidence evidence, List<Receiver> movers, List<Receiver> universe) {
        Lights lights = evidence.lights();
        boolean[] taken = new boolean[Receiver.SLOTS + 1];
        Set<String> moving = new HashSet<>();
        movers.forEach(each -> moving.add(each.id()));
        for (Receiver each : universe) {
            if (!moving.contains(each.id())) {
                mark(taken, each.address(), each.last());
            }
        }
        List<Change> changes = new ArrayList<>();
        List<Receiver> placed = new ArrayList<>();
        List<Integer> at = new ArrayList<>();
        for (Receiver each : movers) {
            Integer channels = each.footprint();
            if (channels == null) {
                return List.of();
            }
            Integer address = null;
            for (int i = 0; i < placed.size(); i++) {
                if (lights.areGanged(placed.get(i).id(), each.id())) {
                    address = at.get(i);
                }
            }
            if (address == null) {
                address = free(taken, channels);
            }
            if (address == null) {
                return List.of();
            }
            mark(taken, address, address + channels - 1);
            placed.add(each);
            at.add(address);
            changes.add(put(evidence, each, each.universe(), address));
        }
        return changes;
    }

    static Change put(Evidence evidence, Receiver receiver, @Nullable Integer universe, @Nullable Integer address) {
        Equipment equipment = evidence.getEquipment(receiver.id());
        FixtureSetting light = Lights.setting(equipment);
        FixtureSetting other =
                new FixtureSetting(universe, address, light.mode(), light.aim(), light.colour(), light.focus());
        return new Change.Put(Section.EQUIPMENT, receiver.id(), equipment.with(other));
    }

    /** The same with another mode. */
    static Change mode(Evidence evidence, Receiver receiver, String mode) {
        Equipment equipment = evidence.getEquipment(receiver.id());
        FixtureSetting light = Lights.setting(equipment);
        FixtureSetting other =
                new FixtureSetting(light.universe(), light.address(), mode, light.aim(), light.colour(), light.focus());
        return new Change.Put(Section.EQUIPMENT, receiver.id(), equipment.with(other));
    }

    private static void mark(boolean[] taken, @Nullable Integer first, @Nullable Integer last) {
        if (first != null && last != null) {
            for (int at = Math.max(1, first); at <= Math.min(Receiver.SLOTS, last); at++) {
                taken[at] = true;
            }
        }
    }

    private static @Nullable Integer free(boolean[] taken, int channels) {
        int run = 0;
        for (int at = 1; at <= Receiver.SLOTS; at++) {
            run = taken[at] ? 0 : run + 1;
            if (run >= channels) {
                return at - channels + 1;
            }
        }
        return null;
    }
}
