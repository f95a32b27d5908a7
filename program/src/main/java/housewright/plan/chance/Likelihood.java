package housewright.plan.chance;

import housewright.plan.Condition;
import housewright.plan.Delivery;
import housewright.plan.Event;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Promise;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Window;
import housewright.plan.axis.Free;
import housewright.plan.chance.Chance.Cause;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Plays a plan many times over. */
public final class Likelihood {
    private static final int NEVER = Integer.MAX_VALUE / 2;
    private static final int TOLD = 5;
    private static final double WORTH_TELLING = 0.1;

    private final Job job;
    private final Log log;
    private final List<Slot> order;
    private final Map<String, Integer> index = new HashMap<>();
    private final List<Task> tasks = new ArrayList<>();
    private final int[][] before;
    private final List<List<Window>> free = new ArrayList<>();
    private final Map<String, Integer> deliveries = new HashMap<>();
    private final List<Event> events;

    private Likelihood(Job job, Log log, Schedule schedule) {
        this.job = job;
        this.log = log;
        this.order = schedule.slots();
        this.events = job.events().stream()
                .filter(event -> log.now() == 0 || event.when().to() > log.now())
                .toList();
        Map<String, Task> byId = new HashMap<>();
        job.tasks().forEach(task -> byId.put(task.id(), task));
        Map<String, Free> people = new HashMap<>();
        job.people().forEach(person -> people.put(person.id(), Free.of(job, person)));
        for (Slot slot : order) {
            index.put(slot.task(), tasks.size());
            Task task = java.util.Objects.requireNonNull(byId.get(slot.task()));
            tasks.add(task);
            free.add(times(task, slot, people));
        }
        for (int each = 0; each < job.deliveries().size(); each++) {
            deliveries.put(job.deliveries().get(each).id(), each);
        }
        before = new int[order.size()][];
        for (int each = 0; each < order.size(); each++) {
            int self = each;
            before[each] = java.util.stream.IntStream.range(0, each)
                    .filter(other -> tied(self, other))
                    .toArray();
        }
    }

    /**
     * For each event that is not over, how likely it finds all it needs.
     *
     * @param draws 1 or more; 1000 give a share to some 3 %
     */
    public static List<Chance> of(Job job, Log log, Schedule schedule, long seed, int draws) {
        return new Likelihood(job, log, schedule).play(new Random(seed), draws);
    }

    /** When the crew and the place of a task are there together. */
    private List<Window> times(Task task, Slot slot, Map<String, Free> people) {
        List<Window> shared = List.of(new Window(0, job.end()));
        for (String id : slot.people()) {
            Free person = java.util.Objects.requireNonNull(people.get(id));
            shared = meet(shared, task.site().remote() ? person.anywhere() : person.onSite());
        }
        String place = task.site().remote() ? null : task.site().place();
        if (place != null) {
            if (!job.place(place).open().isEmpty()) {
                shared = meet(shared, job.place(place).open());
            }
            for (Condition condition : task.site().needs()) {
                List<Window> only = job.place(place).only().get(condition);
                if (only != null) {
                    shared = meet(shared, only);
                }
            }
            for (Event event : job.events()) {
                if (place.equals(event.place())) {
                    List<Window> around = new ArrayList<>();
                    if (event.when().from() > 0) {
                        around.add(new Window(0, event.when().from()));
                    }
                    around.add(
                            new Window(event.when().to(), Math.max(event.when().to() + 1, job.end())));
                    shared = meet(shared, around);
                }
            }
        }
        String hire = task.means().hire();
        if (hire != null) {
            shared = meet(
                    shared,
                    job.hire(hire).days().stream()
                            .map(day -> new Window(day * Job.DAY, (day + 1) * Job.DAY))
                            .toList());
        }
        return shared;
    }

    private static List<Window> meet(List<Window> some, List<Window> others) {
        List<Window> shared = new ArrayList<>();
        for (Window one : some) {
            for (Window other : others) {
                int from = Math.max(one.from(), other.from());
                int to = Math.min(one.to(), other.to());
                if (from < to) {
                    shared.add(new Window(from, to));
                }
            }
        }
        shared.sort(Comparator.naturalOrder());
        return shared;
    }

    /** Whether a task has to wait for one that the plan has before it. */
    private boolean tied(int self, int other) {
        Task one = tasks.get(self);
        Task two = tasks.get(other);
        if (one.timing().after().contains(two.id())) {
            return true;
        }
        if (order.get(other).end() > order.get(self).start()) {
            return false;
        }
        return order.get(self).people().stream().anyMatch(order.get(other).people()::contains)
                || (one.means().hire() != null
                        && one.means().hire().equals(two.means().hire()))
                || one.means().tools().keySet().stream().anyMatch(two.means().tools()::containsKey)
                || apart(one, two);
    }

    private static boolean apart(Task one, Task two) {
        String place = one.site().place();
        if (place == null
                || !place.equals(two.site().place())
                || one.site().remote()
                || two.site().remote()) {
            return false;
        }
        for (Condition condition : Condition.values()) {
            boolean a = one.site().needs().contains(condition);
            boolean b = two.site().needs().contains(condition);
            boolean aSpoils =
                    condition == Condition.EMPTY || one.site().spoils().contains(condition);
            boolean bSpoils =
                    condition == Condition.EMPTY || two.site().spoils().contains(condition);
            if ((a && (b || bSpoils)) || (b && aSpoils)) {
                return true;
            }
        }
        return false;
    }

    private List<Chance> play(Random random, int draws) {
        int count = events.size();
        int things = tasks.size() + job.deliveries().size();
        int[] kept = new int[count];
        int[][] longKept = new int[count][things];
        int[][] longFailed = new int[count][things];
        for (int draw = 0; draw < draws; draw++) {
            boolean[] worse = new boolean[things];
            int[] starts = new int[tasks.size()];
            int[] ends = new int[tasks.size()];
            once(random, starts, ends, worse);
            for (int event = 0; event < count; event++) {
                boolean ready = ready(events.get(event), starts, ends);
                kept[event] += ready ? 1 : 0;
                int[] times = ready ? longKept[event] : longFailed[event];
                for (int thing = 0; thing < things; thing++) {
                    times[thing] += worse[thing] ? 1 : 0;
                }
            }
        }
        List<Chance> chances = new ArrayList<>();
        for (int event = 0; event < count; event++) {
            chances.add(new Chance(
                    events.get(event).id(),
                    Likely.of((double) kept[event] / draws),
                    kept[event],
                    draws,
                    causes(kept[event], draws, longKept[event], longFailed[event])));
        }
        return chances;
    }

    private List<Cause> causes(int kept, int draws, int[] longKept, int[] longFailed) {
        List<Cause> causes = new ArrayList<>();
        int failed = draws - kept;
        for (int thing = 0; thing < longKept.length && failed > 0; thing++) {
            double share = (double) longFailed[thing] / failed - (kept == 0 ? 0 : (double) longKept[thing] / kept);
            if (share >= WORTH_TELLING) {
                causes.add(new Cause(
                        thing < tasks.size()
                                ? tasks.get(thing).id()
                                : job.deliveries().get(thing - tasks.size()).id(),
                        Math.min(1, share)));
            }
        }
        causes.sort(Comparator.comparingDouble((Cause cause) -> -cause.share()).thenComparing(Cause::id));
        return causes.subList(0, Math.min(TOLD, causes.size()));
    }

    /** Plays the plan once. */
    private void once(Random random, int[] starts, int[] ends, boolean[] worse) {
        int[] arrives = new int[job.deliveries().size()];
        for (int each = 0; each < arrives.length; each++) {
            Delivery delivery = job.deliveries().get(each);
            int expected = log.late().getOrDefault(delivery.id(), delivery.expected());
            boolean late = random.nextDouble() < delivery.lateChance();
            double by = random.nextDouble();
            arrives[each] = late && expected >= log.now() && delivery.latest() > expected
                    ? expected + (int) Math.ceil(by * (delivery.latest() - expected))
                    : expected;
            worse[tasks.size() + each] = arrives[each] > expected;
        }
        for (int self = 0; self < tasks.size(); self++) {
            Task task = tasks.get(self);
            Slot slot = order.get(self);
            double drawn = Beta.draw(task.length(), random);
            if (log.frozen(task.id())) {
                starts[self] = slot.start();
                ends[self] = slot.end();
                continue;
            }
            worse[self] = drawn > task.length().mean();
            int from = Math.max(
                    Math.max(log.now(), task.timing().earliest()), log.blocked().getOrDefault(task.id(), 0));
            if (task.timing().start() != null) {
                from = Math.max(from, task.timing().start());
            }
            for (String id : task.timing().deliveries()) {
                from = Math.max(from, arrives[java.util.Objects.requireNonNull(deliveries.get(id))]);
            }
            for (int other : before[self]) {
                from = Math.max(from, ends[other]);
            }
            from = Math.max(from, waitsUntil(task, slot));
            work(self, from, (int) Math.ceil(drawn), starts, ends);
        }
    }

    /** The plan leaves the old way alone until an event is over; so does whoever follows it. */
    private int waitsUntil(Task task, Slot slot) {
        int until = 0;
        for (Promise promise : job.promises()) {
            int over = job.event(promise.event()).when().to();
            if (promise.worksToday() && promise.takenApartBy().contains(task.id()) && slot.start() >= over) {
                until = Math.max(until, over);
            }
        }
        return until;
    }

    /** A task that runs over the end of a shift is finished in the next. */
    private void work(int self, int from, int minutes, int[] starts, int[] ends) {
        int left = minutes;
        starts[self] = NEVER;
        ends[self] = NEVER;
        for (Window window : free.get(self)) {
            int at = Math.max(from, window.from());
            if (at >= window.to() || from >= NEVER) {
                continue;
            }
            if (starts[self] == NEVER) {
                starts[self] = at;
            }
            if (at + left <= window.to()) {
                ends[self] = at + left;
                return;
            }
            left -= window.to() - at;
        }
    }

    private boolean ready(Event event, int[] starts, int[] ends) {
        for (Promise promise : job.promises()) {
            if (promise.event().equals(event.id()) && !kept(promise, event.when(), starts, ends)) {
                return false;
            }
        }
        if (event.deadline()) {
            for (Task task : job.tasks()) {
                if (task.mandatory()
                        && job.dueOf(task) <= event.when().from()
                        && end(task.id(), ends) > event.when().from()) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean kept(Promise promise, Window when, int[] starts, int[] ends) {
        boolean waits = promise.worksToday()
                && promise.takenApartBy().stream()
                        .allMatch(id -> index.get(id) == null || starts[index.get(id)] >= when.to());
        return waits
                || (!promise.provenBy().isEmpty()
                        && promise.provenBy().stream().allMatch(id -> end(id, ends) <= when.from()));
    }

    private int end(String task, int[] ends) {
        @Nullable Integer at = index.get(task);
        return at == null ? NEVER : ends[at];
    }
}
