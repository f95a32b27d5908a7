package housewright.check.power;

import housewright.check.Evidence;
import housewright.finding.Fix;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Place;
import housewright.model.RackSpace;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What is in each rack. */
final class Racks {
    /**
     * One thing that takes rack units.
     *
     * @param height whole units it takes
     * @param unit the lowest of them; null where it is not said
     */
    record Racked(Present thing, int height, @Nullable Integer unit) {
        String id() {
            return thing.id();
        }

        int top() {
            return unit == null ? 0 : unit + height - 1;
        }
    }

    /** A rack with what is in it, in the order of the file. */
    record Rack(Place place, RackSpace space, List<Racked> things, List<Present> all) {}

    private Racks() {}

    static List<Rack> all(Evidence evidence) {
        Map<String, Rack> racks = new LinkedHashMap<>();
        for (Place place : evidence.project().venue().places().values()) {
            if (place.rack() != null) {
                racks.put(place.id(), new Rack(place, place.rack(), new ArrayList<>(), new ArrayList<>()));
            }
        }
        for (Present each : evidence.supplies().things().values()) {
            Rack rack = each.equipment().at() == null
                    ? null
                    : racks.get(each.equipment().at());
            if (rack == null) {
                continue;
            }
            rack.all().add(each);
            Model model = each.model();
            double units =
                    model == null || model.rack() == null ? 0 : model.rack().units();
            if (units > 0) {
                rack.things()
                        .add(new Racked(
                                each, (int) Math.ceil(units), each.equipment().unit()));
            } else if (each.equipment().unit() != null) {
                rack.things().add(new Racked(each, 1, each.equipment().unit()));
            }
        }
        return List.copyOf(racks.values());
    }

    /** The lowest unit with room, when the things that are not moving stay where they are; null where there is none. */
    static @Nullable Integer free(Rack rack, Racked moving) {
        boolean[] taken = new boolean[rack.space().units() + 1];
        for (Racked each : rack.things()) {
            if (!each.equals(moving) && each.unit() != null) {
                for (int at = Math.max(1, each.unit());
                        at <= Math.min(rack.space().units(), each.top());
                        at++) {
                    taken[at] = true;
                }
            }
        }
        int run = 0;
        for (int at = 1; at <= rack.space().units(); at++) {
            run = taken[at] ? 0 : run + 1;
            if (run >= moving.height()) {
                return at - moving.height() + 1;
            }
        }
        return null;
    }

    /** A fix that moves it there, or says that there is no room. */
    static Fix move(Evidence evidence, Rack rack, Racked moving) {
        Integer free = free(rack, moving);
        if (free == null) {
            return Fix.of("Nothing is free in " + Words.said(rack.place().id()) + " for its " + moving.height()
                    + " U: take a higher rack, or put something elsewhere.");
        }
        Equipment equipment = evidence.getEquipment(moving.id());
        return new Fix(
                "Put " + Words.said(moving.id()) + " at unit " + free + ", which is free.",
                List.of(new Change.Put(Section.EQUIPMENT, moving.id(), equipment.atUnit(free))));
    }

    /** "unit 5", "units 5 to 7". */
    static String units(Racked thing) {
        return thing.height() == 1 ? "unit " + thing.unit() : "units " + thing.unit() + " to " + thing.top();
    }
}
