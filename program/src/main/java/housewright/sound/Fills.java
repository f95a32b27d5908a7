package housewright.sound;

import housewright.model.Air;
import housewright.model.Equipment;
import housewright.model.FloorPoint;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.model.Room;
import housewright.model.Seats;
import housewright.model.SpacePoint;
import housewright.signal.FeedProof;
import housewright.signal.PairProof;
import housewright.signal.Signals;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds which loudspeaker fills in for which: in a room with seats, along the line from where its sounds begin to the
 * middle of the seats, one that hangs at least {@link #BEHIND_M} further back than another above the ears that plays
 * the same.
 */
final class Fills {
    private static final double BEHIND_M = 4;
    private static final double USUAL_AIR = 20;
    private static final double USUAL_EAR_M = 1.2;

    private final Ports ports;
    private final Project project;
    private final Signals signals;

    private record Spot(String thing, double x, double y, double z) {
        double to(Spot other) {
            return Math.sqrt(square(x - other.x) + square(y - other.y) + square(z - other.z));
        }

        private static double square(double value) {
            return value * value;
        }
    }

    Fills(Ports ports, Project project, Signals signals) {
        this.ports = ports;
        this.signals = signals;
        this.project = project;
    }

    List<Fill> find() {
        Map<String, Map<Address, Map<String, PairProof>>> byRoom = new LinkedHashMap<>();
        Map<String, Set<Address>> asked = new LinkedHashMap<>();
        Map<String, Set<Spot>> sources = new LinkedHashMap<>();
        for (FeedProof proof : signals.proofs()) {
            if (proof.feed().never()) {
                continue;
            }
            for (PairProof pair : proof.pairs()) {
                Spot from = spot(pair.from().thing());
                String room = room(pair.to().thing());
                if (room == null || !isLoudspeaker(pair.to().thing())) {
                    continue;
                }
                asked.computeIfAbsent(room, key -> new LinkedHashSet<>()).add(pair.to());
                if (!pair.hops().isEmpty()) {
                    byRoom.computeIfAbsent(room, key -> new LinkedHashMap<>())
                            .computeIfAbsent(pair.from(), key -> new LinkedHashMap<>())
                            .merge(pair.to().thing(), pair, Fills::sooner);
                    if (from != null && room.equals(room(from.thing()))) {
                        sources.computeIfAbsent(room, key -> new LinkedHashSet<>())
                                .add(from);
                    }
                }
            }
        }
        double speed = Sound.speed(celsius());
        List<Fill> fills = new ArrayList<>();
        byRoom.forEach((id, bySource) -> {
            Room room = project.venue().rooms().get(id);
            Spot seats = room == null ? null : middle(room.seats());
            Set<Spot> begin = sources.get(id);
            if (room != null && seats != null && begin != null) {
                asked.getOrDefault(id, Set.of()).forEach(to -> reach(to, bySource));
                Map<String, Fill> byFill = new LinkedHashMap<>();
                bySource.values().forEach(ways -> add(room, middle(begin), seats, ways, speed, byFill));
                fills.addAll(byFill.values());
            }
        });
        return List.copyOf(fills);
    }

    /** A loudspeaker none of whose own feeds arrives: something else may play there. */
    private void reach(Address to, Map<Address, Map<String, PairProof>> bySource) {
        if (bySource.values().stream().anyMatch(ways -> ways.containsKey(to.thing()))) {
            return;
        }
        for (Map.Entry<Address, Map<String, PairProof>> each : bySource.entrySet()) {
            PairProof way = signals.findWay(each.getKey(), to).orElse(null);
            if (way != null) {
                each.getValue().put(to.thing(), way);
                return;
            }
        }
    }

    private static PairProof sooner(PairProof one, PairProof other) {
        return other.delayNanos() < one.delayNanos() ? other : one;
    }

    private void add(
            Room room, Spot begin, Spot seats, Map<String, PairProof> ways, double speed, Map<String, Fill> byFill) {
        double length = Math.hypot(seats.x() - begin.x(), seats.y() - begin.y());
        if (length < 1) {
            return;
        }
        double ear = ear(room);
        for (Map.Entry<String, PairProof> each : ways.entrySet()) {
            Spot fill = spot(each.getKey());
            if (fill == null || fill.z() < ear || byFill.containsKey(each.getKey())) {
                continue;
            }
            Spot main = null;
            for (String other : ways.keySet()) {
                Spot before = spot(other);
                if (before != null
                        && before.z() >= ear
                        && along(begin, seats, fill) - along(begin, seats, before) >= BEHIND_M * length
                        && (main == null || before.to(fill) < main.to(fill))) {
                    main = before;
                }
            }
            PairProof mainWay = main == null ? null : ways.get(main.thing());
            if (main != null && mainWay != null) {
                double metres = main.to(fill);
                double later = (each.getValue().delayNanos() - mainWay.delayNanos()) / 1e6;
                byFill.put(
                        each.getKey(),
                        new Fill(
                                main.thing(),
                                fill.thing(),
                                metres,
                                metres / speed * 1000,
                                later,
                                each.getValue(),
                                mainWay));
            }
        }
    }

    /** How far it is along the line, times the line's length. */
    private static double along(Spot begin, Spot seats, Spot at) {
        return (at.x() - begin.x()) * (seats.x() - begin.x()) + (at.y() - begin.y()) * (seats.y() - begin.y());
    }

    private double celsius() {
        Air air = project.about().air();
        return air == null || air.temperature() == null
                ? USUAL_AIR
                : air.temperature().celsius();
    }

    private static double ear(Room room) {
        Seats seats = room.seats();
        double floor = room.floor() == null ? 0 : room.floor().metres();
        return floor
                + (seats == null || seats.ear() == null
                        ? USUAL_EAR_M
                        : seats.ear().metres());
    }

    private static @Nullable Spot middle(@Nullable Seats seats) {
        if (seats == null || seats.area().isEmpty()) {
            return null;
        }
        double x = 0;
        double y = 0;
        for (FloorPoint corner : seats.area()) {
            x += corner.x().metres();
            y += corner.y().metres();
        }
        return new Spot("", x / seats.area().size(), y / seats.area().size(), 0);
    }

    private static Spot middle(Set<Spot> spots) {
        double x = 0;
        double y = 0;
        for (Spot spot : spots) {
            x += spot.x();
            y += spot.y();
        }
        return new Spot("", x / spots.size(), y / spots.size(), 0);
    }

    private boolean isLoudspeaker(String thing) {
        Model model = ports.model(thing);
        return model != null && model.kind() == Kind.LOUDSPEAKER;
    }

    private @Nullable String room(String thing) {
        Place place = place(thing);
        return place == null ? null : place.room();
    }

    private @Nullable Spot spot(String thing) {
        Place place = place(thing);
        SpacePoint at = place == null ? null : place.at();
        return at == null
                ? null
                : new Spot(thing, at.x().metres(), at.y().metres(), at.z().metres());
    }

    private @Nullable Place place(String thing) {
        Equipment equipment = ports.thing(thing);
        String at = equipment == null ? null : equipment.at();
        return at == null ? null : project.venue().places().get(at);
    }
}
