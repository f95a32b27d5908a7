package housewright.check.power;

import housewright.check.Evidence;
import housewright.model.Equipment;
import housewright.model.EquipmentToday;
import housewright.model.Hanging;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Model;
import housewright.model.Place;
import housewright.model.Room;
import housewright.model.SpacePoint;
import housewright.model.Words;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What hangs over people's heads, point by point. */
final class Overhead {
    /** What hangs lower is in nobody's way over their head; higher than a tall man with his hat, and a door. */
    static final double HEAD_M = 2.3;

    private static final Set<Kind> HANGS = Set.of(
            Kind.LOUDSPEAKER,
            Kind.FIXTURE,
            Kind.PROJECTOR,
            Kind.PROJECTION_SCREEN,
            Kind.DISPLAY,
            Kind.CAMERA,
            Kind.AMPLIFIER,
            Kind.DIMMER,
            Kind.DMX_NODE,
            Kind.DMX_SPLITTER);

    /** These hang more often than they stand: of them it has to be known. */
    private static final Set<Kind> USUALLY = Set.of(Kind.FIXTURE, Kind.PROJECTOR);

    /** A point, and what hangs there at the moment. */
    record Point(Place place, List<Present> things) {
        List<String> ids() {
            return things.stream().map(Present::id).toList();
        }

        String said() {
            return Words.said(place.id());
        }

        /** The limit that somebody stands for; null where nobody has stated one. */
        @Nullable
        Double limit() {
            Hanging hang = place.hang();
            if (hang == null || hang.limit() == null || hang.statedBy() == null) {
                return null;
            }
            return hang.statedBy().isBlank()
                    ? null
                    : Double.valueOf(hang.limit().kilograms());
        }
    }

    private Overhead() {}

    static List<Point> points(Evidence evidence) {
        Map<String, Point> points = new LinkedHashMap<>();
        for (Present each : evidence.supplies().things().values()) {
            String at = each.equipment().at();
            Place place =
                    at == null ? null : evidence.project().venue().places().get(at);
            if (place != null && isOverhead(evidence, each, place)) {
                points.computeIfAbsent(at, key -> new Point(place, new ArrayList<>()))
                        .things()
                        .add(each);
            }
        }
        return List.copyOf(points.values());
    }

    private static boolean isOverhead(Evidence evidence, Present thing, Place place) {
        Equipment equipment = thing.equipment();
        if (equipment.partOf() != null || equipment.runsOn() != null) {
            return false;
        }
        if (place.hang() != null || equipment.secondary() != null) {
            return true;
        }
        Model model = thing.model();
        return place.rack() == null
                && model != null
                && HANGS.contains(model.kind())
                && place.at() != null
                && height(evidence, place, place.at()) >= HEAD_M;
    }

    /** What is likely to hang, at a place of which neither height nor limit is said, by place. */
    static Map<String, List<String>> ofUnknownHeight(Evidence evidence) {
        Map<String, List<String>> byPlace = new LinkedHashMap<>();
        for (Present each : evidence.supplies().things().values()) {
            String at = each.equipment().at();
            Place place =
                    at == null ? null : evidence.project().venue().places().get(at);
            if (place != null
                    && place.at() == null
                    && place.rack() == null
                    && place.operator() == null
                    && each.model() != null
                    && USUALLY.contains(each.model().kind())
                    && !isOverhead(evidence, each, place)) {
                byPlace.computeIfAbsent(at, key -> new ArrayList<>()).add(each.id());
            }
        }
        return byPlace;
    }

    /** What hangs, since its secondary attachment is spoken of, and nobody has said where: it is in no point's sum. */
    static List<String> nowhere(Evidence evidence) {
        return evidence.supplies().things().values().stream()
                .filter(each -> each.equipment().at() == null
                        && each.equipment().secondary() != null
                        && each.equipment().partOf() == null
                        && each.equipment().runsOn() == null)
                .map(Present::id)
                .toList();
    }

    private static double height(Evidence evidence, Place place, SpacePoint at) {
        Room room =
                place.room() == null ? null : evidence.project().venue().rooms().get(place.room());
        double floor = room == null || room.floor() == null ? 0 : room.floor().metres();
        return at.z().metres() - floor;
    }

    /** The work at a point that waits, in words: "hanging key 1 and key 2; taking down old lamp 1". */
    static String blocked(Evidence evidence, String place) {
        List<String> up = new ArrayList<>();
        List<String> down = new ArrayList<>();
        List<String> at = new ArrayList<>();
        for (Equipment each : evidence.project().equipment().values()) {
            boolean here = place.equals(each.at());
            EquipmentToday was = each.was();
            boolean before = place.equals(was == null || was.at() == null ? each.at() : was.at());
            if (each.life() == Life.STRIKE && before) {
                down.add(each.id());
            } else if (here && (each.life() == Life.NEW || !before)) {
                up.add(each.id());
            } else if (before && !here) {
                down.add(each.id());
            } else if (here && was != null && (was.light() != null || was.secondary() != null)) {
                at.add(each.id());
            }
        }
        List<String> work = new ArrayList<>();
        if (!up.isEmpty()) {
            work.add("hanging " + Said.things(up));
        }
        if (!down.isEmpty()) {
            work.add("taking down " + Said.things(down));
        }
        if (!at.isEmpty()) {
            work.add("setting anew " + Said.things(at));
        }
        return work.isEmpty() ? "any work up there" : String.join("; ", work);
    }
}
