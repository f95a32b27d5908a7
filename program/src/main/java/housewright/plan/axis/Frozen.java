package housewright.plan.axis;

import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Window;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is done or begun, as slots: it stays where it is. */
public final class Frozen {
    private Frozen() {}

    /** One slot for each task done or begun. What is begun goes on at once, or, if it may pause, when its crew is free. */
    public static List<Slot> slots(Job job, Log log) {
        Map<String, Slot> slots = new TreeMap<>();
        log.done().forEach(slot -> slots.put(slot.task(), slot));
        // What may pause makes way for what may not.
        List<Log.Begun> inOrder = log.begun().stream()
                .sorted(Comparator.comparing(
                        (Log.Begun begun) -> job.task(begun.task()).length().mayPause()))
                .toList();
        for (Log.Begun begun : inOrder) {
            Task task = job.task(begun.task());
            List<Window> pieces = new ArrayList<>();
            if (begun.start() < log.now()) {
                pieces.add(new Window(begun.start(), log.now()));
            }
            pieces.addAll(rest(job, log.now(), begun, task, slots.values()));
            slots.put(begun.task(), new Slot(begun.task(), Windows.union(pieces), begun.people()));
        }
        return List.copyOf(slots.values());
    }

    private static List<Window> rest(Job job, int now, Log.Begun begun, Task task, Collection<Slot> others) {
        int left = Math.ceilDiv(begun.left(), job.tick()) * job.tick();
        if (!task.length().mayPause() || begun.people().isEmpty()) {
            return List.of(new Window(now, now + left));
        }
        List<Window> shared = List.of(new Window(now, Math.max(job.end(), now + 1)));
        for (String person : begun.people()) {
            Free free = Free.of(job, job.person(person));
            shared = Windows.intersect(shared, task.site().remote() ? free.anywhere() : free.onSite());
        }
        for (Slot other : others) {
            if (other.people().stream().anyMatch(begun.people()::contains)) {
                shared = Windows.without(shared, other.pieces());
            }
        }
        List<Window> rest = new ArrayList<>();
        for (Window each : shared) {
            if (left == 0) {
                break;
            }
            int taken = Math.min(left, each.length());
            rest.add(new Window(each.from(), each.from() + taken));
            left -= taken;
        }
        if (left > 0) {
            rest.add(new Window(Math.max(now, job.end()), Math.max(now, job.end()) + left));
        }
        return rest;
    }
}
