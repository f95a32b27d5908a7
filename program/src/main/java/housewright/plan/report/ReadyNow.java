package housewright.plan.report;

import housewright.plan.Delivery;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Person;
import housewright.plan.Promise;
import housewright.plan.Ready;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Window;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tasks that one person could begin at this moment. */
final class ReadyNow {
    private final Job job;
    private final Log log;
    private final Map<String, Slot> slots;
    private final Map<String, List<Task>> followers = new LinkedHashMap<>();

    private ReadyNow(Job job, Log log, Schedule schedule) {
        this.job = job;
        this.log = log;
        this.slots = schedule.byTask();
        for (Task task : job.tasks()) {
            task.timing()
                    .after()
                    .forEach(id -> followers
                            .computeIfAbsent(id, key -> new ArrayList<>())
                            .add(task));
        }
    }

    static List<Ready> of(Job job, Log log, Schedule schedule, Person person) {
        ReadyNow now = new ReadyNow(job, log, schedule);
        return job.tasks().stream()
                .filter(task -> now.canBegin(task, person))
                .map(now::ready)
                .sorted(Comparator.comparingInt((Ready ready) -> -ready.minutes())
                        .thenComparingInt(ready -> job.dueOf(job.task(ready.task())))
                        .thenComparing(Ready::task))
                .toList();
    }

    private boolean canBegin(Task task, Person person) {
        if (log.frozen(task.id()) || task.crew().count() == 0) {
            return false;
        }
        int now = log.now();
        boolean firstDone = task.timing().after().stream()
                .allMatch(id -> log.done().stream().anyMatch(done -> done.task().equals(id)));
        boolean there = task.timing().deliveries().stream().allMatch(id -> isThere(job.delivery(id)));
        Integer start = task.timing().start();
        return firstDone
                && there
                && task.timing().earliest() <= now
                && log.blocked().getOrDefault(task.id(), 0) <= now
                && (start == null || start <= now)
                && fits(task, person)
                && hireToday(task)
                && roomIsFree(task)
                && !mustWait(task);
    }

    /** By what was said of it: that nobody has said when it comes is no reason to unpack it. */
    private boolean isThere(Delivery delivery) {
        Integer late = log.late().get(delivery.id());
        return late != null ? late <= log.now() : delivery.promised() && delivery.expected() <= log.now();
    }

    private boolean fits(Task task, Person person) {
        boolean pinnedToOthers = task.crew().pinned().size() == task.crew().count()
                && !task.crew().pinned().contains(person.id());
        if (pinnedToOthers) {
            return false;
        }
        if (task.crew().count() > 1) {
            return true; // others of the crew bring the skills
        }
        String hire = task.means().hire();
        String operator = hire == null ? null : job.hire(hire).skill();
        return person.skills().containsAll(task.crew().skills())
                && (operator == null || person.skills().contains(operator));
    }

    private boolean hireToday(Task task) {
        for (Hire hire : job.hires()) {
            if (hire.id().equals(task.means().hire()) && !hire.days().contains(log.now() / Job.DAY)) {
                return false;
            }
        }
        return true;
    }

    private boolean roomIsFree(Task task) {
        String place = task.site().place();
        if (place == null || task.site().remote()) {
            return true;
        }
        List<Window> open = job.place(place).open();
        return (open.isEmpty()
                        || open.stream().anyMatch(window -> window.from() <= log.now() && log.now() < window.to()))
                && job.events().stream()
                        .noneMatch(event -> place.equals(event.place())
                                && event.when().from() <= log.now()
                                && log.now() < event.when().to());
    }

    /** Whether the plan leaves what the task takes apart until an event is over. */
    private boolean mustWait(Task task) {
        Slot planned = slots.get(task.id());
        for (Promise promise : job.promises()) {
            Window when = job.event(promise.event()).when();
            if (promise.takenApartBy().contains(task.id())
                    && log.now() < when.to()
                    && promise.worksToday()
                    && (planned == null || planned.start() >= when.to())) {
                return true;
            }
        }
        return false;
    }

    private Ready ready(Task task) {
        Set<String> waiting = new LinkedHashSet<>();
        var queue = new ArrayDeque<>(List.of(task.id()));
        int minutes = 0;
        while (!queue.isEmpty()) {
            for (Task next : followers.getOrDefault(queue.remove(), List.of())) {
                if (!log.frozen(next.id()) && waiting.add(next.id())) {
                    minutes += next.length().planned(job.tick());
                    queue.add(next.id());
                }
            }
        }
        int others = task.crew().count() - 1;
        String says = waiting.isEmpty()
                ? "Nothing waits for it."
                : "%s %s, %s of work, cannot begin before it is done."
                        .formatted(waiting.size(), waiting.size() == 1 ? "task" : "tasks", Wishes.hours(minutes));
        return new Ready(
                task.id(),
                List.copyOf(waiting),
                minutes,
                others,
                others == 0 ? says : says + " It takes %s more.".formatted(others));
    }
}
