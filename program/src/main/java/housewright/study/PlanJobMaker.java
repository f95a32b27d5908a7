package housewright.study;

import housewright.model.Free;
import housewright.model.Order;
import housewright.model.Project;
import housewright.model.RoomCondition;
import housewright.model.TaskKind;
import housewright.model.Types;
import housewright.plan.Condition;
import housewright.plan.Crew;
import housewright.plan.Delivery;
import housewright.plan.Event;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Length;
import housewright.plan.Limits;
import housewright.plan.Means;
import housewright.plan.Person;
import housewright.plan.Place;
import housewright.plan.Promise;
import housewright.plan.Site;
import housewright.plan.Task;
import housewright.plan.Timing;
import housewright.plan.Window;
import housewright.signal.FeedProof;
import housewright.work.Work;
import housewright.work.WorkTask;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Puts the job of a plan together: days become minutes of one axis, rooms become places, feeds become promises. */
final class PlanJobMaker {
    /** Where no room is named. */
    static final String BUILDING = "building";

    /** The skill of whoever lends a hand with anything. */
    private static final String GENERAL = "general";

    private static final int TICK = 5; // many tasks are of five minutes: on a coarser grid they would add up to days
    private static final int MOST_DAYS = 1000;

    /** A delivery promised for a day is there when that day is over: nobody says at what hour a van comes. */
    private static final int THERE_AFTER_DAYS = 1;

    /** One delivery in five comes late, and then by up to a week: common practice, for want of the supplier's own record. */
    private static final double LATE_CHANCE = 0.2;

    private static final int LATE_DAYS = 7;

    /** Work that can be heard in the room. */
    private static final Set<TaskKind> LOUD = EnumSet.of(
            TaskKind.TAKE_OUT,
            TaskKind.STRIKE,
            TaskKind.MOVE,
            TaskKind.MOUNT,
            TaskKind.SECURE,
            TaskKind.WIRE,
            TaskKind.PULL,
            TaskKind.ALIGN,
            TaskKind.PROVE,
            TaskKind.REHEARSE,
            TaskKind.OWN);

    private final Project project;
    private final Work work;
    private final List<FeedProof> today;
    private final LocalDate from;
    private final LocalDate firstDay;
    private final int days;
    private final Set<String> assumed = new LinkedHashSet<>();

    PlanJobMaker(Types types, Work work, List<FeedProof> today, LocalDate from) {
        this.project = types.project();
        this.work = work;
        this.today = today;
        this.from = from;
        TreeSet<LocalDate> known = new TreeSet<>();
        project.people()
                .values()
                .forEach(person -> Stream.concat(person.free().stream(), person.remote().stream())
                        .forEach(free -> known.addAll(free.between())));
        project.hires().values().forEach(hire -> known.addAll(hire.offered()));
        project.events().values().forEach(event -> {
            if (event.from() != null && event.to() != null) {
                known.add(event.from().toLocalDate());
                known.add(event.to().toLocalDate());
            }
        });
        if (known.isEmpty()) {
            known.add(from);
        }
        firstDay = known.getFirst();
        days = Math.clamp(ChronoUnit.DAYS.between(firstDay, known.getLast()) + 1, 1, MOST_DAYS);
    }

    PlanJob make() {
        List<Window> services = project.events().values().stream()
                .filter(event -> !"elsewhere".equals(event.at()))
                .flatMap(event -> Stream.ofNullable(window(event)))
                .toList();
        List<Person> people =
                project.people().values().stream().map(this::person).toList();
        List<Task> tasks = work.tasks().stream().map(this::task).toList();
        Job job = new Job(
                firstDay,
                days,
                TICK,
                people,
                project.hires().values().stream().map(this::hire).toList(),
                List.of(),
                places(services),
                project.orders().values().stream().map(this::delivery).toList(),
                project.events().values().stream()
                        .flatMap(event -> Stream.ofNullable(event(event)))
                        .toList(),
                tasks,
                promises());
        return new PlanJob(job, List.copyOf(assumed), unplanned(people, tasks));
    }

    private static String unplanned(List<Person> people, List<Task> tasks) {
        if (tasks.isEmpty()) {
            return "There is nothing to do: today and the target are the same, and the project has no tasks of its own.";
        }
        if (people.stream()
                .allMatch(each -> each.onSite().isEmpty() && each.remote().isEmpty())) {
            return "Nobody is free at any time: say in people who works on the job and when (free, remote).";
        }
        return "";
    }

    private int minute(LocalDateTime at) {
        return (int) Math.clamp(ChronoUnit.MINUTES.between(firstDay.atStartOfDay(), at), 0, (long) days * Job.DAY);
    }

    private @Nullable Window window(housewright.model.Event event) {
        if (event.from() == null || event.to() == null) {
            return null;
        }
        int begin = minute(event.from());
        int end = minute(event.to());
        return end > begin ? new Window(begin, end) : null;
    }

    private Person person(housewright.model.Person person) {
        return new Person(
                person.id(),
                Objects.requireNonNullElse(person.role(), person.id()),
                new HashSet<>(person.skills()),
                windows(person.free()),
                windows(person.remote()),
                Limits.USUAL,
                List.of());
    }

    private List<Window> windows(List<Free> times) {
        List<Window> windows = new ArrayList<>();
        for (Free free : times) {
            if (free.between().isEmpty()) {
                continue;
            }
            LocalDate last = free.between().getLast();
            for (LocalDate day = free.between().getFirst(); !day.isAfter(last); day = day.plusDays(1)) {
                if (free.days().days().contains(day.getDayOfWeek())) {
                    int begin = minute(day.atTime(free.from()));
                    int end = minute(
                            free.to().equals(LocalTime.MIDNIGHT)
                                    ? day.plusDays(1).atStartOfDay()
                                    : day.atTime(free.to()));
                    if (end > begin) {
                        windows.add(new Window(begin, end));
                    }
                }
            }
        }
        return united(windows);
    }

    /** Times said twice are one. */
    private static List<Window> united(List<Window> windows) {
        List<Window> united = new ArrayList<>();
        for (Window each : windows.stream().sorted().toList()) {
            Window last = united.isEmpty() ? null : united.getLast();
            if (last != null && each.from() <= last.to()) {
                united.set(united.size() - 1, new Window(last.from(), Math.max(last.to(), each.to())));
            } else {
                united.add(each);
            }
        }
        return united;
    }

    private Hire hire(housewright.model.Hire hire) {
        Set<Integer> offered = new TreeSet<>();
        if (!hire.offered().isEmpty()) {
            LocalDate last = hire.offered().getLast();
            for (LocalDate day = hire.offered().getFirst(); !day.isAfter(last); day = day.plusDays(1)) {
                offered.add((int) ChronoUnit.DAYS.between(firstDay, day));
            }
        }
        return new Hire(hire.id(), Objects.requireNonNullElse(hire.kind(), hire.id()), offered, hire.skill());
    }

    /** Every room, shut while something is held in the building. */
    private List<Place> places(List<Window> services) {
        List<Window> open = new ArrayList<>();
        int at = 0;
        for (Window service : united(services)) {
            if (service.from() > at) {
                open.add(new Window(at, service.from()));
            }
            at = service.to();
        }
        if (at < days * Job.DAY) {
            open.add(new Window(at, days * Job.DAY));
        }
        return Stream.concat(Stream.of(BUILDING), project.venue().rooms().keySet().stream())
                .map(id -> new Place(id, id, open, Map.of()))
                .toList();
    }

    private @Nullable Event event(housewright.model.Event event) {
        Window window = window(event);
        if (window == null) {
            assumed.add("Event " + event.id() + " has no time, and is left out.");
            return null;
        }
        return new Event(event.id(), event.id(), window, null, event.deadline());
    }

    private Delivery delivery(Order order) {
        LocalDate there = order.arrived();
        double chance = 0;
        if (there == null) {
            chance = LATE_CHANCE;
            there = order.promised();
        }
        if (there == null && order.lead() != null) {
            LocalDate placed = order.placed();
            if (placed == null) {
                placed = from;
                assumed.add("Order " + order.id() + " is not placed: planned as if it were on " + from + ".");
            }
            there = placed.plusDays((long) Math.ceil(order.lead().seconds() / 86_400));
        }
        if (there == null) {
            assumed.add("Order " + order.id()
                    + " has neither a promised day nor a lead time: planned as if it were there.");
            return new Delivery(order.id(), order.id(), 0, 0, 0);
        }
        int expected = order.arrived() != null
                ? minute(there.atStartOfDay())
                : minute(there.plusDays(THERE_AFTER_DAYS).atStartOfDay());
        int latest = order.arrived() != null ? expected : Math.min(expected + LATE_DAYS * Job.DAY, days * Job.DAY);
        if (chance > 0) {
            assumed.add("Deliveries come when promised; for how likely the days are kept, one in five comes up to "
                    + LATE_DAYS + " days late (common practice).");
        }
        return new Delivery(order.id(), order.id(), expected, Math.max(expected, latest), chance);
    }

    private Task task(WorkTask task) {
        housewright.model.Event held =
                task.event() == null ? null : project.events().get(task.event());
        Window at = held == null ? null : window(held);
        int count = Math.max(task.crew(), task.who().size());
        if (task.hires().size() > 1) {
            assumed.add("Task " + task.id() + " wants " + String.join(" and ", task.hires()) + " at once: only "
                    + task.hires().getFirst() + " is planned for.");
        }
        if (!task.unordered().isEmpty()) {
            assumed.add("What tasks use and no order has (such as "
                    + task.unordered().getFirst() + ") is planned as if it were there.");
        }
        return new Task(
                task.id(),
                task.title(),
                task.kind().word(),
                !task.mayWait(),
                at != null ? Length.of(round(at.length())) : length(task),
                new Crew(count, skills(task), task.who()),
                at != null ? Site.ANYWHERE : site(task),
                task.remote() || at != null || task.hires().isEmpty()
                        ? Means.NONE
                        : new Means(task.hires().getFirst(), Map.of()),
                new Timing(task.after(), task.deliveries(), 0, due(task, at), at == null ? null : at.from()));
    }

    /** What asks for nothing else asks for somebody who does anything, where the project says who that is. */
    private List<String> skills(WorkTask task) {
        boolean anybody = project.people().values().stream()
                .noneMatch(person -> person.skills().contains(GENERAL));
        return !task.skills().isEmpty() || !task.who().isEmpty() || task.event() != null || anybody
                ? task.skills()
                : List.of(GENERAL);
    }

    /** What is done from afar before the visit is due when its first day on site begins, where somebody has time from afar. */
    private int due(WorkTask task, @Nullable Window at) {
        LocalDate site = SiteDays.first(project);
        boolean anybody = project.people().values().stream()
                .anyMatch(person -> !person.remote().isEmpty());
        return task.beforehand() && task.remote() && at == null && site != null && anybody
                ? minute(site.atStartOfDay())
                : Timing.NO_DUE;
    }

    private static int round(int minutes) {
        return Math.ceilDiv(Math.max(1, minutes), TICK) * TICK;
    }

    private static Length length(WorkTask task) {
        int likely = Math.max(1, task.takes().likely());
        return new Length(
                Math.clamp(task.takes().least(), 1, likely),
                likely,
                Math.max(likely, task.takes().most()),
                likely > LONG || (task.mayPause() && likely > ROUND));
    }

    /** Longer than half a working day: nobody does it without laying it down. */
    private static final int LONG = 240;

    /** What can be left and taken up again, such as a round of like tasks, is, where it is longer than this. */
    private static final int ROUND = 90;

    private Site site(WorkTask task) {
        if (task.remote()) {
            return new Site(null, "", true, Set.of(), Set.of());
        }
        Set<Condition> needs = EnumSet.noneOf(Condition.class);
        for (RoomCondition each : task.conditions()) {
            needs.add(condition(each));
        }
        Set<Condition> spoils = EnumSet.noneOf(Condition.class);
        if (!needs.contains(Condition.DARK)) {
            spoils.add(Condition.DARK);
        }
        if (task.does().stream().anyMatch(LOUD::contains) && !needs.contains(Condition.QUIET)) {
            spoils.add(Condition.QUIET);
        }
        return new Site(
                task.rooms().isEmpty() ? BUILDING : task.rooms().getFirst(),
                task.places().isEmpty() ? "" : task.places().getFirst(),
                false,
                needs,
                spoils);
    }

    private static Condition condition(RoomCondition room) {
        return switch (room) {
            case QUIET -> Condition.QUIET;
            case DARK -> Condition.DARK;
            case EMPTY -> Condition.EMPTY;
        };
    }

    private List<Promise> promises() {
        Map<String, Set<String>> apart = new LinkedHashMap<>();
        Map<String, Set<String>> proven = new LinkedHashMap<>();
        for (WorkTask task : work.tasks()) {
            task.takesApart()
                    .forEach(feed ->
                            apart.computeIfAbsent(feed, each -> new HashSet<>()).add(task.id()));
            task.proves()
                    .forEach(feed ->
                            proven.computeIfAbsent(feed, each -> new HashSet<>()).add(task.id()));
        }
        Set<String> working = new HashSet<>();
        today.stream()
                .filter(FeedProof::proven)
                .forEach(proof -> working.add(proof.feed().id()));
        List<Promise> promises = new ArrayList<>();
        for (housewright.model.Event event : project.events().values()) {
            if (event.needs() == null || window(event) == null) {
                continue;
            }
            List<String> feeds = event.needs().all()
                    ? project.feeds().values().stream()
                            .filter(feed -> !feed.never())
                            .map(feed -> feed.id())
                            .toList()
                    : event.needs().feeds();
            for (String feed : feeds) {
                boolean works = working.contains(feed);
                Set<String> takenApartBy = apart.getOrDefault(feed, Set.of());
                if (!works || !takenApartBy.isEmpty()) {
                    promises.add(
                            new Promise(event.id(), feed, works, takenApartBy, proven.getOrDefault(feed, Set.of())));
                }
            }
        }
        return promises;
    }
}
