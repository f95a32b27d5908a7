package housewright.plan.axis;

import housewright.plan.Condition;
import housewright.plan.Event;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Place;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Window;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** When places and machines are to be had, given events and what is begun. */
final class Openings {
    private final Job job;
    private final Map<String, List<Window>> hireTaken = new HashMap<>();
    private final Map<String, List<Window>> placeTaken = new HashMap<>();

    Openings(Job job, Log log, List<Slot> frozen) {
        this.job = job;
        for (Slot slot : frozen) {
            Task task = job.task(slot.task());
            if (slot.end() <= log.now()) {
                continue;
            }
            if (task.means().hire() != null) {
                hireTaken
                        .computeIfAbsent(task.means().hire(), key -> new ArrayList<>())
                        .addAll(slot.pieces());
            }
            String place = task.site().place();
            if (place != null && !task.site().remote()) {
                for (Condition condition : Condition.values()) {
                    boolean needs = task.site().needs().contains(condition);
                    if (needs) {
                        placeTaken
                                .computeIfAbsent(place + "/spoils/" + condition, key -> new ArrayList<>())
                                .addAll(slot.pieces());
                    }
                    if (needs || spoils(task, condition)) {
                        placeTaken
                                .computeIfAbsent(place + "/needs/" + condition, key -> new ArrayList<>())
                                .addAll(slot.pieces());
                    }
                }
            }
        }
    }

    static boolean spoils(Task task, Condition condition) {
        return condition == Condition.EMPTY || task.site().spoils().contains(condition);
    }

    /** When a place lets a task be done in it. */
    List<Window> of(Task task, Place place) {
        List<Window> may = place.open().isEmpty() ? List.of(new Window(0, job.end())) : Windows.union(place.open());
        Map<Condition, List<Window>> only = new EnumMap<>(Condition.class);
        only.putAll(place.only());
        for (Condition condition : task.site().needs()) {
            if (only.containsKey(condition)) {
                may = Windows.intersect(may, Windows.union(only.getOrDefault(condition, List.of())));
            }
        }
        List<Window> taken = new ArrayList<>();
        for (Event event : job.events()) {
            if (place.id().equals(event.place())) {
                taken.add(event.when());
            }
        }
        for (Condition condition : Condition.values()) {
            if (task.site().needs().contains(condition)) {
                taken.addAll(placeTaken.getOrDefault(place.id() + "/needs/" + condition, List.of()));
            }
            if (spoils(task, condition)) {
                taken.addAll(placeTaken.getOrDefault(place.id() + "/spoils/" + condition, List.of()));
            }
        }
        return Windows.without(may, taken);
    }

    /** When a machine can be had and what is begun does not use it. */
    List<Window> of(Hire hire) {
        List<Window> days = hire.days().stream()
                .map(day -> new Window(day * Job.DAY, (day + 1) * Job.DAY))
                .toList();
        return Windows.without(Windows.union(days), hireTaken.getOrDefault(hire.id(), List.of()));
    }
}
