package housewright.plan.report;

import housewright.plan.Condition;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Promise;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Window;
import housewright.plan.axis.Free;
import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Unit;
import housewright.plan.axis.Measures;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What stands in the way of a task at some time of a schedule. */
final class Occupied {
    private final Job job;
    private final Log log;
    private final Grid grid;
    private final Map<String, Slot> slots;
    private final Map<String, Slot> before;
    private final Map<String, Task> tasks = new HashMap<>();

    Occupied(Job job, Log log, Grid grid, Schedule schedule, @Nullable Schedule before) {
        this.before = before == null ? Map.of() : before.byTask();
        this.job = job;
        this.log = log;
        this.grid = grid;
        this.slots = schedule.byTask();
        job.tasks().forEach(task -> tasks.put(task.id(), task));
    }

    Task task(String id) {
        return java.util.Objects.requireNonNull(tasks.get(id));
    }

    /** Why a task is not earlier than in the schedule. */
    String whyNotEarlier(Slot slot) {
        Task task = task(slot.task());
        if (log.frozen(slot.task())) {
            return "It is begun already.";
        }
        if (task.timing().start() != null) {
            return "It is pinned to " + job.spoken(slot.start()) + ".";
        }
        Integer unit = grid.unitOf.get(slot.task());
        if (unit == null) {
            return "";
        }
        Optional<String> wait = waits(task, slot.start() - job.tick());
        if (wait.isPresent()) {
            return wait.get();
        }
        Unit self = grid.units.get(unit);
        int first = self.pieces()[0];
        for (int at = grid.atOrAfter(slot.start() / job.tick()) - 1; at >= 0; at--) {
            int from = grid.real[at] * job.tick();
            Optional<String> later = waits(task, from);
            if (later.isPresent()) {
                return later.get();
            }
            if (self.surroundings()[at] < first
                    || Grid.crewFree(grid.free(self), grid.crew(slot.people()), at) < first) {
                continue; // closed, away or asleep: what happened before that is the reason
            }
            Window there = new Window(from, from + first * job.tick());
            Optional<String> taken = taken(slot, task, there);
            return taken.or(() -> longDay(slot, there))
                    .or(() -> stayed(slot))
                    .orElse("It could begin at " + job.spoken(from)
                            + "; here it saves hire days or idle time, or nothing better was found.");
        }
        return firstTime(task, slot);
    }

    /** What of its own a task waits for at a time, if anything. */
    private Optional<String> waits(Task task, int from) {
        int until = from; // of several the one that lasts longest is the reason
        String reason = "";
        for (String id : task.timing().after()) {
            Slot before = slots.get(id);
            if (before != null && before.end() > until) {
                until = before.end();
                reason = "%s comes first and ends %s.".formatted(name(before.task()), job.spoken(before.end()));
            }
        }
        for (String id : task.timing().deliveries()) {
            int comes = log.late().getOrDefault(id, job.delivery(id).expected());
            if (comes > until) {
                until = comes;
                String name = job.delivery(id).name();
                reason = comes == Log.NEVER
                        ? "%s is late, and nobody knows until when.".formatted(name)
                        : "%s arrives %s.".formatted(name, job.spoken(comes));
            }
        }
        int blocked = log.blocked().getOrDefault(task.id(), from);
        if (blocked > until) {
            reason = blocked == Log.NEVER
                    ? "It is blocked, and nobody knows until when."
                    : "It is blocked until " + job.spoken(blocked) + ".";
        }
        if (!reason.isEmpty()) {
            return Optional.of(reason);
        }
        if (task.timing().earliest() > from) {
            return Optional.of(
                    "It may not begin before " + job.spoken(task.timing().earliest()) + ".");
        }
        if (log.now() > 0 && log.now() > from) {
            return Optional.of("It is " + job.spoken(log.now()) + " now.");
        }
        for (Promise promise : job.promises()) {
            Window when = job.event(promise.event()).when();
            if (promise.takenApartBy().contains(task.id())
                    && when.to() > from
                    && !Measures.over(job, log, promise)
                    && Measures.kept(job, promise, slots)
                    && !proven(promise, when)) {
                return Optional.of("%s still needs the old way of %s and ends %s."
                        .formatted(job.event(promise.event()).name(), promise.capability(), job.spoken(when.to())));
            }
        }
        return Optional.empty();
    }

    private boolean proven(Promise promise, Window when) {
        return !promise.provenBy().isEmpty()
                && promise.provenBy().stream()
                        .map(slots::get)
                        .allMatch(slot -> slot != null && slot.end() <= when.from());
    }

    /** Who or what else holds what a task would need at a time, if anything. */
    private Optional<String> taken(Slot self, Task task, Window there) {
        int tools = 0;
        for (Slot other : slots.values()) {
            if (other.task().equals(self.task()) || other.pieces().stream().noneMatch(there::overlaps)) {
                continue;
            }
            Task by = task(other.task());
            for (String person : self.people()) {
                if (other.people().contains(person)) {
                    return Optional.of("%s is at %s until %s."
                            .formatted(job.person(person).name(), name(by.id()), job.spoken(other.end())));
                }
            }
            String hire = task.means().hire();
            if (hire != null && hire.equals(by.means().hire())) {
                return Optional.of("%s is used for %s until %s."
                        .formatted(job.hire(hire).name(), name(by.id()), job.spoken(other.end())));
            }
            Optional<Condition> condition = condition(task, by);
            if (condition.isPresent()) {
                return Optional.of("%s is not to be together with %s, which ends %s: one of them needs the place %s."
                        .formatted(
                                name(task.id()),
                                name(by.id()),
                                job.spoken(other.end()),
                                condition.get().name().toLowerCase(java.util.Locale.ROOT)));
            }
            if (task.means().tools().keySet().stream().anyMatch(by.means().tools()::containsKey)) {
                tools++;
            }
        }
        if (tools > 0) {
            return Optional.of(
                    "Others use " + String.join(", ", task.means().tools().keySet()) + " then.");
        }
        return Optional.empty();
    }

    private Optional<String> longDay(Slot self, Window there) {
        int day = there.from() / Job.DAY;
        for (String person : self.people()) {
            int worked = slots.values().stream()
                    .filter(slot ->
                            !slot.task().equals(self.task()) && slot.people().contains(person))
                    .flatMap(slot -> slot.pieces().stream())
                    .filter(piece -> piece.from() / Job.DAY == day)
                    .mapToInt(Window::length)
                    .sum();
            if (worked + there.length() > job.person(person).limits().minutesADay()) {
                return Optional.of("%s has %s of work on %s already."
                        .formatted(job.person(person).name(), Wishes.hours(worked), job.spokenDay(day)));
            }
        }
        return Optional.empty();
    }

    private Optional<String> stayed(Slot slot) {
        Slot was = before.get(slot.task());
        return was != null && was.start() == slot.start() ? Optional.of("It stays where it was.") : Optional.empty();
    }

    private static Optional<Condition> condition(Task one, Task two) {
        String place = one.site().place();
        if (place == null
                || !place.equals(two.site().place())
                || one.site().remote()
                || two.site().remote()) {
            return Optional.empty();
        }
        for (Condition condition : Condition.values()) {
            boolean a = one.site().needs().contains(condition);
            boolean b = two.site().needs().contains(condition);
            boolean spoils = condition == Condition.EMPTY
                    || (a ? two : one).site().spoils().contains(condition);
            if ((a && b) || ((a || b) && spoils)) {
                return Optional.of(condition);
            }
        }
        return Optional.empty();
    }

    private String firstTime(Task task, Slot slot) {
        String hire = task.means().hire();
        if (hire != null && job.hire(hire).days().stream().noneMatch(day -> day < slot.start() / Job.DAY)) {
            return "%s is there from %s on.".formatted(job.hire(hire).name(), job.spokenDay(slot.start() / Job.DAY));
        }
        List<String> names = new ArrayList<>();
        for (String id : slot.people()) {
            Free free = Free.of(job, job.person(id));
            List<Window> windows = task.site().remote() ? free.anywhere() : free.onSite();
            if (windows.stream().noneMatch(window -> window.to() <= slot.start())) {
                names.add(job.person(id).name());
            }
        }
        if (!names.isEmpty()) {
            return "It is the first time that %s can work on it.".formatted(String.join(" and ", names));
        }
        return "It is the first time that place, people and means come together.";
    }

    /** Why a task cannot stay where it was; empty when nothing of its own forbids it. */
    Optional<String> whyNotThere(Slot was) {
        Task task = task(was.task());
        Optional<String> waits = waits(task, was.start());
        if (waits.isPresent()) {
            return waits;
        }
        for (Window piece : was.pieces()) {
            Optional<String> taken = taken(was, task, piece);
            if (taken.isPresent()) {
                return taken;
            }
        }
        return Optional.empty();
    }

    String name(String id) {
        Task task = task(id);
        return task.title().equals(id) ? id : "%s (%s)".formatted(task.title(), id);
    }
}
