package housewright.plan.report;

import housewright.plan.Condition;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Promise;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Window;
import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How far each task may slip when all keep their order and crews, and what follows slips as far as it can. */
final class Slack {
    private final Job job;
    private final Log log;
    private final Grid grid;
    private final Map<String, Slot> slots;
    private final Map<String, Task> tasks = new HashMap<>();
    private final Map<String, Integer> latest = new HashMap<>();

    private Slack(Job job, Log log, Grid grid, Schedule schedule) {
        this.job = job;
        this.log = log;
        this.grid = grid;
        this.slots = schedule.byTask();
        job.tasks().forEach(task -> tasks.put(task.id(), task));
    }

    /** Latest start in minutes by task. */
    static Map<String, Integer> of(Job job, Log log, Grid grid, Schedule schedule) {
        Slack slack = new Slack(job, log, grid, schedule);
        List<Slot> backwards = new ArrayList<>(schedule.slots());
        backwards.sort(
                Comparator.comparingInt(Slot::start).thenComparingInt(Slot::end).reversed());
        List<Slot> later = new ArrayList<>();
        for (Slot slot : backwards) {
            slack.latest.put(slot.task(), slack.latest(slot, later));
            later.add(slot);
        }
        return slack.latest;
    }

    private int latest(Slot slot, List<Slot> later) {
        if (log.frozen(slot.task()) || slot.pieces().size() > 1) {
            return slot.start();
        }
        Task task = task(slot);
        int end = job.dueOf(task);
        if (slot.end() > end) {
            return slot.start();
        }
        for (Slot next : later) {
            if (next.start() >= slot.end() && tied(task, slot, task(next), next)) {
                end = Math.min(end, latest.getOrDefault(next.task(), next.start()));
            }
        }
        for (Slot paused : slots.values()) { // begun earlier, and taken up again after this one
            if (paused.pieces().size() > 1 && tied(task, slot, task(paused), paused)) {
                for (Window piece : paused.pieces()) {
                    end = piece.from() >= slot.end() ? Math.min(end, piece.from()) : end;
                }
            }
        }
        for (Promise promise : job.promises()) {
            Window when = job.event(promise.event()).when();
            if (promise.provenBy().contains(task.id()) && slot.end() <= when.from() && apartBefore(promise, when)) {
                end = Math.min(end, when.from());
            }
        }
        Integer unit = grid.unitOf.get(slot.task());
        if (unit == null || task.timing().start() != null) {
            return slot.start();
        }
        Unit self = grid.units.get(unit);
        int ticks = (slot.end() - slot.start()) / job.tick();
        long crew = grid.crew(slot.people());
        int from = grid.atOrAfter(slot.start() / job.tick());
        for (int at = Math.min(grid.length - 1, grid.atOrAfter(Math.max(0, end / job.tick() - ticks)));
                at > from;
                at--) {
            if (grid.real[at] * job.tick() + ticks * job.tick() <= end
                    && self.surroundings()[at] >= ticks
                    && Grid.crewFree(grid.free(self), crew, at) >= ticks) {
                return grid.real[at] * job.tick();
            }
        }
        return slot.start();
    }

    private Task task(Slot slot) {
        return java.util.Objects.requireNonNull(tasks.get(slot.task()));
    }

    private boolean apartBefore(Promise promise, Window when) {
        return !promise.worksToday()
                || promise.takenApartBy().stream()
                        .map(slots::get)
                        .anyMatch(slot -> slot != null && slot.start() < when.to());
    }

    /** Whether one has to be ended before the other begins, by what must come first or by what they share. */
    private static boolean tied(Task task, Slot slot, Task other, Slot next) {
        if (other.timing().after().contains(task.id())
                || next.people().stream().anyMatch(slot.people()::contains)
                || (task.means().hire() != null
                        && task.means().hire().equals(other.means().hire()))
                || task.means().tools().keySet().stream().anyMatch(other.means().tools()::containsKey)) {
            return true;
        }
        String place = task.site().place();
        if (place == null || !place.equals(other.site().place())) {
            return false;
        }
        for (Condition condition : Condition.values()) {
            boolean a = task.site().needs().contains(condition);
            boolean b = other.site().needs().contains(condition);
            boolean aSpoils =
                    condition == Condition.EMPTY || task.site().spoils().contains(condition);
            boolean bSpoils =
                    condition == Condition.EMPTY || other.site().spoils().contains(condition);
            if ((a && (b || bSpoils)) || (b && aSpoils)) {
                return true;
            }
        }
        return false;
    }
}
