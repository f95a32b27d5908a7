package housewright.plan.report;

import housewright.plan.Clash;
import housewright.plan.Delivery;
import housewright.plan.Effort;
import housewright.plan.Event;
import housewright.plan.Goal;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Promise;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Timing;
import housewright.plan.Window;
import housewright.plan.axis.Bound;
import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Unit;
import housewright.plan.axis.Measures;
import housewright.plan.list.ListScheduler;
import housewright.plan.report.Wish.Way;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Finds the smallest set of wishes that excludes what is missed. First what is missed is looked at with only what must come
 * before it: times, hours and chains alone often show that it cannot be. Then wishes are dropped one after another; what
 * cannot be dropped without making it possible stays (a deletion filter, so the set is minimal though not always the
 * smallest there is). Where that shows nothing, all mandatory work together is looked at in the same way.
 *
 * @see <a href="https://doi.org/10.1287/ijoc.3.2.157">J. W. Chinneck, E. W. Dravnieks, "Locating minimal infeasible constraint
 *     sets in linear programs", ORSA Journal on Computing 3 (1991) 157-168</a> (cited from memory)
 */
final class Clashes {
    private static final int EXPLAINED = 8;
    private static final int WAYS_EACH = 16;
    private static final int NAMED = 3;

    /** Tasks placed in all by plans that only show what would help, which bounds the time whatever the size. */
    private static final long PLACED = 6_000;

    /** Tasks looked at in all to say which wishes clash; what is missed beyond that is told without its reasons. */
    private static final long LOOKED_AT = 15_000;

    private static final int ROUNDS = 2;

    private final Job job;
    private final Log log;
    private final Map<String, Slot> slots;
    private final Map<String, Task> tasks = new LinkedHashMap<>();
    /** Whether the new way of a promise cannot be proven in time, so that the old has to wait: asked of every task. */
    private final Map<Promise, Boolean> forced = new HashMap<>();

    /** Units of work, in tasks placed, that are left for plans that show what would help. */
    private long left = PLACED;

    private long lookedAt;

    private Clashes(Request request, Schedule schedule) {
        this.log =
                new Log(request.log().now(), request.log().done(), request.log().begun(), Map.of(), Map.of());
        this.job = settled(request.job(), request.log());
        this.slots = schedule.byTask();
        job.tasks().forEach(task -> tasks.put(task.id(), task));
    }

    static List<Clash> of(Request request, Schedule schedule) {
        return new Clashes(request, schedule).all();
    }

    /** Why one task can never be done in time, even with nothing but what must come before it; empty where that is not shown. */
    static Optional<Clash> alone(Request request, String task) {
        Clashes clashes = new Clashes(request, new Schedule(List.of()));
        Task known = clashes.tasks.get(task);
        return known == null || clashes.log.frozen(task) ? Optional.empty() : clashes.alone(known);
    }

    /** The job with what the log says of deliveries and blocked tasks written into it. */
    private static Job settled(Job job, Log log) {
        List<Delivery> deliveries = job.deliveries().stream()
                .map(each -> {
                    int comes = Math.min(log.late().getOrDefault(each.id(), each.expected()), job.end() + Job.DAY);
                    return new Delivery(
                            each.id(), each.name(), comes, Math.max(comes, each.latest()), each.lateChance());
                })
                .toList();
        List<Task> tasks = job.tasks().stream()
                .map(task -> {
                    Timing old = task.timing();
                    int blocked = Math.min(log.blocked().getOrDefault(task.id(), 0), job.end() + Job.DAY);
                    return Wishes.timed(
                            task,
                            new Timing(
                                    old.after(),
                                    old.deliveries(),
                                    Math.max(old.earliest(), blocked),
                                    old.due(),
                                    old.start()));
                })
                .toList();
        return job.withDeliveries(deliveries).withTasks(tasks);
    }

    private List<Clash> all() {
        List<Clash> clashes = new ArrayList<>();
        for (Promise promise : job.promises()) {
            if (!Measures.over(job, log, promise)
                    && !Measures.kept(job, promise, slots)
                    && clashes.size() < EXPLAINED) {
                clashes.add(promise(promise));
            }
        }
        Map<Integer, List<Task>> crowds = new TreeMap<>();
        List<Task> optional = new ArrayList<>();
        for (Task task : job.tasks()) {
            if (missed(task) && task.timing().after().stream().noneMatch(id -> missed(tasks(id)))) {
                Optional<Clash> alone = clashes.size() < EXPLAINED ? alone(task) : Optional.empty();
                if (alone.isPresent()) {
                    clashes.add(alone.get());
                } else if (task.mandatory()) {
                    crowds.computeIfAbsent(job.dueOf(task), key -> new ArrayList<>())
                            .add(task);
                } else {
                    optional.add(task);
                }
            }
        }
        crowds.forEach((due, crowd) -> clashes.add(crowd(Set.of(), crowd, due)));
        if (!optional.isEmpty()) {
            boolean rest = crowds.isEmpty() && clashes.isEmpty();
            clashes.add(
                    rest
                            ? crowd(Set.of(optional.getFirst().id()), optional, job.dueOf(optional.getFirst()))
                            : new Clash(
                                    named(optional) + " must give way, being optional.",
                                    optional.stream().map(Task::id).toList(),
                                    List.of(),
                                    false,
                                    List.of()));
        }
        return merged(clashes);
    }

    private Task tasks(String id) {
        return java.util.Objects.requireNonNull(tasks.get(id));
    }

    private boolean missed(Task task) {
        Slot slot = slots.get(task.id());
        return !log.frozen(task.id()) && (slot == null || slot.end() > job.dueOf(task));
    }

    /** Those with the same wishes told as one. */
    private static List<Clash> merged(List<Clash> clashes) {
        Map<List<String>, Clash> byWishes = new LinkedHashMap<>();
        for (Clash clash : clashes) {
            byWishes.merge(clash.wishes(), clash, (one, other) -> {
                Set<String> both = new LinkedHashSet<>(one.tasks());
                both.addAll(other.tasks());
                return new Clash(
                        one.what().equals(other.what()) ? one.what() : one.what() + " " + other.what(),
                        List.copyOf(both),
                        one.wishes(),
                        one.proved() && other.proved(),
                        one.ways());
            });
        }
        return List.copyOf(byWishes.values());
    }

    /** Why a task cannot be done even with nothing but what must come before it; empty when that does not show it. */
    private Optional<Clash> alone(Task task) {
        int due = job.dueOf(task);
        Job alone = only(Set.of(task.id()), due);
        List<Wish> wishes = new ArrayList<>(Wishes.of(alone));
        Map<String, Promise> waiting = new LinkedHashMap<>();
        wishes.addAll(waitingWishes(alone, waiting));
        wishes.add(dueWish("it is due " + job.spoken(due), alone));
        String what = "%s cannot be done by %s%s.".formatted(task.title(), job.spoken(due), comesAfter(task));
        return smallest(mustWait(alone), wishes)
                .map(some -> withProofs(some, waiting))
                .map(some -> new Clash(what, List.of(task.id()), some.wishes(), true, some.ways()));
    }

    /** Why tasks that each could be done for itself cannot all be. */
    private Clash crowd(Set<String> beside, List<Task> crowd, int due) {
        Set<String> together = new LinkedHashSet<>(mandatory());
        together.addAll(beside);
        Job whole = only(together, due);
        List<Wish> wishes = new ArrayList<>(Wishes.shared(whole));
        wishes.add(dueWish("all mandatory work is due " + job.spoken(due), whole));
        String what = "%s cannot be done by %s beside the rest.".formatted(named(crowd), job.spoken(due));
        List<String> ids = crowd.stream().map(Task::id).toList();
        return smallest(whole, wishes)
                .map(some -> new Clash(what, ids, some.wishes(), true, some.ways()))
                .orElseGet(() -> new Clash(
                        "%s: no plan was found with all of it by %s beside the rest."
                                .formatted(named(crowd), job.spoken(due)),
                        ids,
                        List.of(),
                        false,
                        List.of(
                                "Each fits for itself, but no plan was found with all of them: leave out what is optional, or give"
                                        + " those who can do them more time before " + job.spoken(due) + ".")));
    }

    private static String named(List<Task> tasks) {
        List<String> some = tasks.stream().limit(NAMED).map(Task::title).toList();
        return String.join(", ", some) + (tasks.size() > NAMED ? " and %s more".formatted(tasks.size() - NAMED) : "");
    }

    /** Where an event makes tasks wait, also why the new way cannot be proven before it. */
    private Found withProofs(Found found, Map<String, Promise> waiting) {
        Set<String> wishes = new LinkedHashSet<>(found.wishes());
        Set<String> ways = new LinkedHashSet<>(found.ways());
        for (String wish : found.wishes()) {
            Promise promise = waiting.get(wish);
            if (promise != null && !promise.provenBy().isEmpty()) {
                Job proof = only(
                        promise.provenBy(), job.event(promise.event()).when().from());
                smallest(proof, Wishes.of(proof)).ifPresent(some -> {
                    wishes.addAll(some.wishes());
                    ways.addAll(some.ways());
                });
            }
        }
        return new Found(List.copyOf(wishes), List.copyOf(ways));
    }

    private String comesAfter(Task task) {
        List<String> first = task.timing().after().stream()
                .filter(id -> !log.frozen(id))
                .map(id -> tasks(id).title())
                .toList();
        return first.isEmpty() ? "" : "; " + String.join(", ", first) + " must come first";
    }

    private Clash promise(Promise promise) {
        Event event = job.event(promise.event());
        String what = "%s finds %s in pieces.".formatted(event.name(), promise.capability());
        List<String> wishes = new ArrayList<>();
        List<String> ways = new ArrayList<>();
        boolean proved = true;
        wishes.add("%s needs %s on %s"
                .formatted(
                        event.name(),
                        promise.capability(),
                        job.spoken(event.when().from())));
        if (promise.provenBy().isEmpty()) {
            wishes.add("nothing proves the new way");
        } else {
            Job proof = only(promise.provenBy(), event.when().from());
            Optional<Found> found = smallest(proof, Wishes.of(proof));
            found.ifPresent(some -> {
                wishes.addAll(some.wishes());
                ways.addAll(some.ways());
            });
            proved = found.isPresent();
        }
        if (!promise.worksToday()) {
            wishes.add("there is no old way that could serve until then");
        } else {
            List<String> begun = promise.takenApartBy().stream()
                    .filter(id -> log.frozen(id) && slots.containsKey(id))
                    .toList();
            if (!begun.isEmpty()) {
                wishes.add("%s is begun already and takes the old way apart"
                        .formatted(tasks(begun.getFirst()).title()));
            } else {
                Job waits = waiting(only(Set.copyOf(mandatory()), job.deadline()), promise, event.when());
                List<Wish> all = new ArrayList<>(Wishes.shared(waits));
                all.add(dueWish("all mandatory work is due " + job.spoken(job.deadline()), waits));
                Optional<Found> found = smallest(waits, all);
                found.ifPresent(some -> {
                    wishes.addAll(some.wishes());
                    ways.addAll(some.ways());
                });
                proved &= found.isPresent();
            }
        }
        ways.add("If %s does without %s.".formatted(event.name(), promise.capability()));
        return new Clash(
                what,
                List.copyOf(promise.provenBy()),
                wishes.stream().distinct().toList(),
                proved,
                ways.stream().distinct().toList());
    }

    private List<String> mandatory() {
        return job.tasks().stream().filter(Task::mandatory).map(Task::id).toList();
    }

    /** The job of some tasks and what must come before them, all due at a time. */
    private Job only(Set<String> targets, int due) {
        Set<String> wanted = new LinkedHashSet<>(targets);
        var queue = new ArrayDeque<>(targets);
        while (!queue.isEmpty()) {
            for (String before : tasks(queue.remove()).timing().after()) {
                if (wanted.add(before)) {
                    queue.add(before);
                }
            }
        }
        List<Task> kept = job.tasks().stream()
                .filter(task -> wanted.contains(task.id()) || log.frozen(task.id()))
                .map(task -> {
                    Timing old = task.timing();
                    int by = log.frozen(task.id()) ? job.end() : Math.min(due, old.due());
                    List<String> after = old.after().stream()
                            .filter(id -> wanted.contains(id) || log.frozen(id))
                            .toList();
                    return new Task(
                            task.id(),
                            task.title(),
                            task.kind(),
                            true,
                            task.length(),
                            task.crew(),
                            task.site(),
                            task.means(),
                            new Timing(after, old.deliveries(), old.earliest(), by, old.start()));
                })
                .toList();
        List<Event> events = job.events().stream()
                .map(each -> new Event(each.id(), each.name(), each.when(), each.place(), false))
                .toList();
        return job.withPromises(List.of()).withEvents(events).withTasks(kept);
    }

    /** What takes an old way apart waits for the event wherever the new way cannot be proven before it. */
    private Job mustWait(Job part) {
        Job waits = part;
        for (Promise promise : job.promises()) {
            if (forced(promise)) {
                waits = waiting(waits, promise, job.event(promise.event()).when());
            }
        }
        return waits;
    }

    private boolean forced(Promise promise) {
        return forced.computeIfAbsent(promise, this::mustWait);
    }

    private boolean mustWait(Promise promise) {
        Window when = job.event(promise.event()).when();
        return promise.worksToday()
                && !Measures.over(job, log, promise)
                && promise.takenApartBy().stream().noneMatch(log::frozen)
                && (promise.provenBy().isEmpty() || impossible(only(promise.provenBy(), when.from())));
    }

    private static Job waiting(Job part, Promise promise, Window when) {
        return part.withTasks(part.tasks().stream()
                .map(task -> promise.takenApartBy().contains(task.id()) ? after(task, when.to()) : task)
                .toList());
    }

    private static Task after(Task task, int minute) {
        Timing old = task.timing();
        return Wishes.timed(
                task,
                new Timing(old.after(), old.deliveries(), Math.max(minute, old.earliest()), old.due(), old.start()));
    }

    /** For each promise that makes tasks wait: what the job is without it. */
    private List<Wish> waitingWishes(Job part, Map<String, Promise> known) {
        List<Wish> wishes = new ArrayList<>();
        for (Promise promise : job.promises()) {
            Event event = job.event(promise.event());
            boolean touches = part.tasks().stream()
                    .anyMatch(task -> promise.takenApartBy().contains(task.id()));
            if (touches && forced(promise)) {
                String says = "%s needs %s as it is until %s"
                        .formatted(
                                event.name(),
                                promise.capability(),
                                job.spoken(event.when().to()));
                known.put(says, promise);
                wishes.add(Wish.whole(
                        says,
                        from -> from.withTasks(from.tasks().stream()
                                .map(task -> promise.takenApartBy().contains(task.id())
                                                && task.timing().earliest()
                                                        <= event.when().to()
                                        ? Wishes.timed(
                                                task,
                                                new Timing(
                                                        task.timing().after(),
                                                        task.timing().deliveries(),
                                                        tasks(task.id())
                                                                .timing()
                                                                .earliest(),
                                                        task.timing().due(),
                                                        task.timing().start()))
                                        : task)
                                .toList()),
                        "%s does without %s".formatted(event.name(), promise.capability())));
            }
        }
        return wishes;
    }

    private Wish dueWish(String says, Job part) {
        return new Wish(says, Clashes::withoutDue, from -> {
            Job open = withoutDue(from);
            if (impossible(open)) {
                return Stream.empty();
            }
            Schedule schedule = quick(open);
            if (missedIn(open, schedule) > 0) {
                return Stream.empty();
            }
            int end = schedule.slots().stream()
                    .filter(slot -> !log.frozen(slot.task()))
                    .mapToInt(Slot::end)
                    .max()
                    .orElse(0);
            return Stream.of(new Way("it may be ready by %s".formatted(part.spoken(end)), open));
        });
    }

    private static Job withoutDue(Job job) {
        return job.withTasks(job.tasks().stream()
                .map(task -> {
                    Timing old = task.timing();
                    return Wishes.timed(
                            task, new Timing(old.after(), old.deliveries(), old.earliest(), job.end(), old.start()));
                })
                .toList());
    }

    /** Whether times, chains and hours alone show that a job cannot be done with everything in time. */
    private boolean impossible(Job part) {
        lookedAt += part.tasks().size();
        Grid grid = Grid.of(part, log);
        Bound bound = Bound.of(grid);
        int last = 0;
        for (Unit unit : grid.units) {
            if (unit.neverPossible() || bound.earliestEnd[unit.index()] > unit.due()) {
                return true;
            }
            last = Math.max(last, unit.due());
        }
        return bound.impossible || bound.finish > last;
    }

    private record Found(List<String> wishes, List<String> ways) {}

    private Optional<Found> smallest(Job part, List<Wish> wishes) {
        if (lookedAt > LOOKED_AT || !impossible(part)) {
            return Optional.empty();
        }
        List<Wish> left = new ArrayList<>();
        drop(part, wishes, left);
        List<String> ways = new ArrayList<>();
        for (Wish wish : left) {
            if (!helps(wish.without().apply(part))) {
                continue; // nor does any less of it
            }
            wish.ways()
                    .apply(part)
                    .limit(WAYS_EACH)
                    .filter(way -> helps(way.job()))
                    .findFirst()
                    .ifPresent(way -> ways.add("If " + way.says() + "."));
        }
        return Optional.of(new Found(left.stream().map(Wish::says).toList(), ways));
    }

    /**
     * Drops wishes as long as that does not make a job possible, many at once where none of them matters.
     *
     * @param kept gathers those that cannot be dropped
     * @return the job without the others
     */
    private Job drop(Job now, List<Wish> wishes, List<Wish> kept) {
        Job without = Wish.without(now, wishes);
        if (wishes.isEmpty() || impossible(without)) {
            return without;
        }
        if (wishes.size() == 1) {
            kept.add(wishes.getFirst());
            return now;
        }
        int half = wishes.size() / 2;
        Job first = drop(now, wishes.subList(0, half), kept);
        return drop(first, wishes.subList(half, wishes.size()), kept);
    }

    /** Whether a plan is really found for what was missed and all that must come before it. */
    private boolean helps(Job changed) {
        if (left < changed.tasks().size()) {
            return false;
        }
        left -= changed.tasks().size();
        return !impossible(changed) && missedIn(changed, quick(changed)) == 0;
    }

    private Schedule quick(Job part) {
        return ListScheduler.schedule(
                Request.of(part, Effort.repeatable(1, 1)).withLog(log), Grid.of(part, log), ROUNDS);
    }

    private long missedIn(Job part, Schedule schedule) {
        Long missed = Measures.of(part, log, null, schedule).get(Goal.MISSED);
        return missed == null ? 0 : missed;
    }
}
