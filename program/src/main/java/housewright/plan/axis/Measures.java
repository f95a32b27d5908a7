package housewright.plan.axis;

import housewright.plan.Goal;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Person;
import housewright.plan.Promise;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Visit;
import housewright.plan.Weights;
import housewright.plan.Window;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a schedule is worth in each goal, in the units of {@link Goal}. */
public final class Measures {
    private Measures() {}

    public static Map<Goal, Long> of(Job job, Log log, @Nullable Schedule before, Schedule schedule) {
        Map<String, Slot> slots = schedule.byTask();
        Map<Goal, Long> all = new EnumMap<>(Goal.class);
        long missed = 0;
        long finish = 0;
        for (Task task : job.tasks()) {
            Slot slot = slots.get(task.id());
            if (slot == null) {
                missed += Weights.USUAL.out(task);
            } else if (slot.end() > job.dueOf(task) && !log.frozen(task.id())) {
                missed += Weights.USUAL.late(task);
            }
            if (slot != null && task.mandatory() && job.dueOf(task) <= job.deadline()) {
                finish = Math.max(finish, slot.end());
            }
        }
        for (Promise promise : job.promises()) {
            if (!over(job, log, promise) && !kept(job, promise, slots)) {
                missed += Weights.USUAL.promise();
            }
        }
        all.put(Goal.MISSED, missed);
        if (before != null) {
            all.put(
                    Goal.MOVED,
                    before.slots().stream()
                            .filter(was -> !log.frozen(was.task())
                                    && job.tasks().stream()
                                            .anyMatch(task -> task.id().equals(was.task())))
                            .filter(was -> moved(was, slots.get(was.task())))
                            .count());
        }
        all.put(Goal.FINISH, finish);
        all.put(Goal.HIRE_DAYS, hireDays(job, schedule));
        all.put(Goal.HIRE_MOVES, hireMoves(job, schedule));
        all.put(Goal.IDLE, idle(job, schedule));
        return all;
    }

    /** Whether a task has another start or crew than it had. */
    public static boolean moved(Slot was, @Nullable Slot is) {
        return is == null || is.start() != was.start() || !is.people().equals(was.people());
    }

    public static boolean over(Job job, Log log, Promise promise) {
        return log.now() > 0 && job.event(promise.event()).when().to() <= log.now();
    }

    public static boolean kept(Job job, Promise promise, Map<String, Slot> slots) {
        Window when = job.event(promise.event()).when();
        boolean waits = promise.worksToday()
                && promise.takenApartBy().stream()
                        .map(slots::get)
                        .allMatch(slot -> slot == null || slot.start() >= when.to());
        return waits || proves(promise, slots, when);
    }

    private static boolean proves(Promise promise, Map<String, Slot> slots, Window when) {
        return !promise.provenBy().isEmpty()
                && promise.provenBy().stream()
                        .map(slots::get)
                        .allMatch(slot -> slot != null && slot.end() <= when.from());
    }

    private static long hireDays(Job job, Schedule schedule) {
        Set<String> days = new HashSet<>();
        for (Slot slot : schedule.slots()) {
            String hire = job.task(slot.task()).means().hire();
            if (hire != null) {
                slot.pieces().forEach(piece -> days.add(hire + "/" + piece.from() / Job.DAY));
            }
        }
        return days.size();
    }

    private static long hireMoves(Job job, Schedule schedule) {
        Map<String, String> at = new LinkedHashMap<>();
        long moves = 0;
        for (Slot slot : schedule.slots()) {
            Task task = job.task(slot.task());
            String hire = task.means().hire();
            if (hire != null && !task.site().spot().isEmpty()) {
                String was = at.put(hire, task.site().spot());
                moves += was != null && !was.equals(task.site().spot()) ? 1 : 0;
            }
        }
        return moves;
    }

    private static long idle(Job job, Schedule schedule) {
        Map<String, List<Window>> work = new LinkedHashMap<>();
        for (Slot slot : schedule.slots()) {
            if (!job.task(slot.task()).site().remote()) {
                slot.people()
                        .forEach(person -> work.computeIfAbsent(person, key -> new ArrayList<>())
                                .addAll(slot.pieces()));
            }
        }
        Map<String, int[]> spans = new LinkedHashMap<>();
        work.forEach((person, pieces) -> {
            for (Window piece : Windows.byDay(Windows.union(pieces), job.days() + 1)) {
                int[] span = spans.computeIfAbsent(
                        person + "/" + piece.from() / Job.DAY, key -> new int[] {piece.from(), piece.to(), 0});
                span[1] = piece.to();
                span[2] += piece.length();
            }
        });
        long idle = spans.values().stream()
                .mapToLong(span -> span[1] - span[0] - span[2])
                .sum();
        for (Person person : job.people()) {
            for (Visit visit : person.visits()) {
                for (int day = visit.firstDay(); day <= visit.lastDay(); day++) {
                    if (spans.containsKey(person.id() + "/" + day)) {
                        idle += visit.road();
                        break;
                    }
                }
            }
        }
        return idle;
    }
}
