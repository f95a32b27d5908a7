package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Wording;
import housewright.model.Equipment;
import housewright.model.Hire;
import housewright.model.Life;
import housewright.model.Place;
import housewright.model.Room;
import housewright.model.Task;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The work overhead that the change from today to the target implies. */
final class Overhead {
    private Overhead() {}

    /** @param height above the room's floor, in m */
    record Work(Equipment thing, Place place, double height) {}

    static List<Work> work(Evidence evidence) {
        List<Work> all = new ArrayList<>();
        Map<String, Place> places = evidence.project().venue().places();
        for (Equipment each : evidence.project().equipment().values()) {
            String before = each.life() == Life.NEW ? null : each.today().at();
            String after = each.life() == Life.STRIKE ? null : each.at();
            boolean changes = each.life() == Life.NEW
                    || each.life() == Life.STRIKE
                    || (before != null && after != null && !before.equals(after));
            for (String at :
                    changes ? Stream.of(before, after).filter(p -> p != null).toList() : List.<String>of()) {
                Place place = places.get(at);
                if (place != null && place.hang() != null && place.at() != null) {
                    Room room = evidence.project().venue().rooms().get(String.valueOf(place.room()));
                    double floor = room == null || room.floor() == null
                            ? 0
                            : room.floor().metres();
                    all.add(new Work(each, place, place.at().z().metres() - floor));
                }
            }
        }
        return all;
    }

    /** What waits for a hire, in words: tasks that name it, and things high up. */
    static List<String> blocked(Evidence evidence, Hire hire) {
        List<String> blocked = new ArrayList<>();
        for (Task task : evidence.project().tasks().values()) {
            if (task.needs().contains(hire.id())) {
                blocked.add("\"" + (task.name() == null ? Words.said(task.id()) : task.name()) + "\"");
            }
        }
        Set<String> places = new LinkedHashSet<>();
        for (Work work : isLift(hire) ? work(evidence) : List.<Work>of()) {
            if (work.height() > NoWayUp.HIGH.value()) {
                places.add(work.place().id());
            }
        }
        if (!places.isEmpty()) {
            blocked.add("all work at " + Wording.things(places, 4));
        }
        return blocked;
    }

    /** A machine that lifts people. */
    static boolean isLift(Hire hire) {
        return says(hire, "lift", "boom", "cherry", "aerial");
    }

    static boolean isWayUp(Hire hire) {
        return isLift(hire) || says(hire, "tower", "scaffold", "ladder", "platform", "steps");
    }

    private static boolean says(Hire hire, String... words) {
        String text = (hire.id() + " " + hire.kind()).toLowerCase(Locale.ROOT);
        return Stream.of(words).anyMatch(text::contains);
    }
}
