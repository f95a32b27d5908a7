package housewright.study;

import housewright.model.Equipment;
import housewright.model.Free;
import housewright.model.Life;
import housewright.model.Order;
import housewright.model.Project;
import housewright.model.RoomCondition;
import housewright.model.Stay;
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
import housewright.plan.Tool;
import housewright.plan.Visit;
import housewright.plan.Window;
import housewright.signal.FeedProof;
import housewright.unit.TimeSpan;
import housewright.work.Work;
import housewright.work.WorkTask;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
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

    private static final String EQUIPMENT = "equipment.";

    /** How many things a sentence names. */
    private static final int TOLD = 5;

    private static final int HALF_AN_HOUR = 30;

    /** Between the ids of hires that are wanted at once; no id of the project has it. */
    static final String TOGETHER = "+";

    /** What could leave the room in pieces. */
    private static final Set<TaskKind> RISKY =
            EnumSet.of(TaskKind.TAKE_OUT, TaskKind.STRIKE, TaskKind.MOVE, TaskKind.REPLUG, TaskKind.POWER);

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
    /** Hires that some task wants together with another. */
    private final Set<String> shared = new LinkedHashSet<>();

    /** The first service on the new system, which the job must be ready for. */
    private final housewright.model.@Nullable Event firstService;

    /** Who has time on site when that is over. */
    private final List<housewright.model.Person> afterwards;

    /** Minute from which nothing is taken apart until the first service is over; {@link Timing#NO_DUE} for none. */
    private final int freeze;

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
        work.tasks().stream()
                .filter(task -> task.hires().size() > 1 && !task.remote())
                .forEach(task -> shared.addAll(task.hires()));
        firstService = project.events().values().stream()
                .filter(event -> event.deadline() && event.from() != null && event.to() != null)
                .min(Comparator.comparing(event -> Objects.requireNonNull(event.from())))
                .orElse(null);
        afterwards = freeAfterwards();
        freeze = work.tasks().stream()
                .filter(task -> task.kind() == TaskKind.REHEARSE && task.event() != null)
                .map(task -> project.events().get(task.event()))
                .flatMap(held -> Stream.ofNullable(held == null ? null : window(held)))
                .mapToInt(Window::from)
                .min()
                .orElse(Timing.NO_DUE);
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
                hires(),
                tools(),
                places(services),
                project.orders().values().stream().map(this::delivery).toList(),
                project.events().values().stream()
                        .flatMap(event -> Stream.ofNullable(event(event)))
                        .toList(),
                tasks,
                promises());
        unguarded(services);
        goneUnasked();
        return new PlanJob(job, List.copyOf(assumed), unplanned(people, tasks));
    }

    /** What takes apart something that works is kept from the events that somebody has entered, and from no other day. */
    private void unguarded(List<Window> services) {
        if (work.tasks().stream().anyMatch(task -> !task.takesApart().isEmpty())) {
            assumed.add(
                    services.isEmpty()
                            ? "No event in the hall is entered, so nothing is kept whole for one: enter every service and"
                                    + " whatever else the hall is used for until the work is done."
                            : "Only the events that are entered are kept whole. Whatever else the hall is used for until"
                                    + " the work is done, an ordinary service too, has to be entered as one.");
        }
    }

    /** What goes and no feed that works today uses: an old lamp may light a service, and nothing here says so. */
    private void goneUnasked() {
        if (project.events().values().stream().allMatch(event -> event.needs() == null || window(event) == null)) {
            return;
        }
        List<String> gone = work.tasks().stream()
                .filter(task -> task.takesApart().isEmpty() && !waits(task))
                .filter(task -> task.does().contains(TaskKind.STRIKE))
                .flatMap(task -> task.about().stream())
                .filter(about -> about.startsWith(EQUIPMENT))
                .map(about -> about.substring(EQUIPMENT.length()))
                .filter(id -> {
                    Equipment thing = project.equipment().get(id);
                    return thing != null && thing.life() == Life.STRIKE;
                })
                .distinct()
                .toList();
        if (!gone.isEmpty()) {
            int told = Math.min(TOLD, gone.size());
            assumed.add("No event needs what no feed tells of: " + String.join(", ", gone.subList(0, told))
                    + (gone.size() > told ? " and " + (gone.size() - told) + " more" : "")
                    + (gone.size() == 1 ? " is" : " are")
                    + " used by no feed that works today, and may go before any event. Where one does need it, "
                    + "hold the task that takes it down to a later time (plan.pins).");
        }
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
                person.visits().stream()
                        .flatMap(stay -> Stream.ofNullable(visit(person, stay)))
                        .toList());
    }

    /** The days of a stay; null where it lies beyond what is planned, or ends before it begins. */
    private @Nullable Visit visit(housewright.model.Person person, Stay stay) {
        if (stay.to().isBefore(stay.from())) {
            assumed.add("A visit of " + person.id() + " ends on " + stay.to() + ", before it begins on " + stay.from()
                    + ", and is left out.");
            return null;
        }
        int first = day(stay.from());
        int last = day(stay.to());
        return last < 0 || first >= days
                ? null
                : new Visit(
                        Math.max(first, 0),
                        Math.min(last, days - 1),
                        first < 0 ? 0 : minutes(stay.wayThere()),
                        last >= days ? 0 : minutes(stay.wayBack()));
    }

    private int day(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(firstDay, date);
    }

    private static int minutes(@Nullable TimeSpan span) {
        return span == null ? 0 : (int) Math.ceil(span.seconds() / 60);
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

    /** Those of the project, and those that some task wants at once, which can be had on the days of all. */
    private List<Hire> hires() {
        Map<String, Hire> hires = new LinkedHashMap<>();
        project.hires().values().forEach(hire -> hires.put(hire.id(), hire(hire)));
        for (WorkTask task : work.tasks()) {
            if (task.hires().size() > 1 && !task.remote()) {
                hires.computeIfAbsent(together(task), id -> {
                    List<Hire> each = task.hires().stream()
                            .map(one -> Objects.requireNonNull(hires.get(one)))
                            .toList();
                    Set<Integer> offered = new TreeSet<>(each.getFirst().days());
                    each.forEach(one -> offered.retainAll(one.days()));
                    return new Hire(
                            id,
                            String.join(" and ", each.stream().map(Hire::name).toList()),
                            offered,
                            each.getFirst().skill());
                });
            }
        }
        return List.copyOf(hires.values());
    }

    private static String together(WorkTask task) {
        return String.join(TOGETHER, task.hires());
    }

    /** Whoever has two hires at once has each of them: there is one of each. */
    private List<Tool> tools() {
        return shared.stream().map(id -> new Tool(id, id, 1)).toList();
    }

    private Map<String, Integer> uses(WorkTask task) {
        Map<String, Integer> uses = new LinkedHashMap<>();
        task.hires().stream().filter(shared::contains).forEach(id -> uses.put(id, 1));
        return uses;
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
            return new Delivery(order.id(), order.id(), 0, 0, 0, false);
        }
        int expected = order.arrived() != null
                ? minute(there.atStartOfDay())
                : minute(there.plusDays(THERE_AFTER_DAYS).atStartOfDay());
        int latest = order.arrived() != null ? expected : Math.min(expected + LATE_DAYS * Job.DAY, days * Job.DAY);
        if (chance > 0) {
            assumed.add("Deliveries come when promised; for how likely the days are kept, one in five comes up to "
                    + LATE_DAYS + " days late (common practice).");
        }
        boolean promised = order.arrived() != null || order.promised() != null;
        return new Delivery(order.id(), order.id(), expected, Math.max(expected, latest), chance, promised);
    }

    private Task task(WorkTask task) {
        housewright.model.Event held =
                task.event() == null ? null : project.events().get(task.event());
        Window at = held == null ? null : window(held);
        int count = Math.max(task.crew(), task.who().size());
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
                        : new Means(together(task), uses(task)),
                new Timing(
                        after(task),
                        task.deliveries(),
                        waits(task) ? firstServiceOver() : 0,
                        due(task, at),
                        at == null ? null : at.from()));
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
        if (waits(task)) {
            return days * Job.DAY;
        }
        if (isFrozen(task)) {
            return freeze;
        }
        LocalDate site = SiteDays.first(project);
        boolean anybody = project.people().values().stream()
                .anyMatch(person -> !person.remote().isEmpty());
        return task.beforehand() && task.remote() && at == null && site != null && anybody
                ? minute(site.atStartOfDay())
                : Timing.NO_DUE;
    }

    // ---- a way back: the old stays until the first service has passed, and nothing is touched after the rehearsal
    // ----

    /** Nothing new waits for it, and those who can do it have time for it after the first service, and what is hired for it. */
    private boolean waits(WorkTask task) {
        return task.mayWait()
                && afterwards.size() >= Math.max(task.crew(), 1)
                && task.skills().stream()
                        .allMatch(skill -> afterwards.stream()
                                .anyMatch(person -> person.skills().contains(skill)))
                && task.who().stream()
                        .allMatch(id -> afterwards.stream()
                                .anyMatch(person -> person.id().equals(id)))
                && task.hires().stream()
                        .allMatch(id -> hire(
                                        Objects.requireNonNull(project.hires().get(id)))
                                .days()
                                .stream()
                                .anyMatch(day -> day * Job.DAY >= firstServiceOver()));
    }

    /** Who is free on site for half an hour or more after the first service. */
    private List<housewright.model.Person> freeAfterwards() {
        int over = firstServiceOver();
        return over == 0
                ? List.of()
                : project.people().values().stream()
                        .filter(person -> windows(person.free()).stream()
                                .anyMatch(free -> free.to() - Math.max(over, free.from()) >= HALF_AN_HOUR))
                        .toList();
    }

    private int firstServiceOver() {
        return firstService == null || firstService.to() == null ? 0 : minute(firstService.to());
    }

    /** What takes something apart or moves it: never between the rehearsal and the service that it is for. */
    private boolean isFrozen(WorkTask task) {
        return freeze != Timing.NO_DUE && task.event() == null && isRisky(task);
    }

    private static boolean isRisky(WorkTask task) {
        return !task.takesApart().isEmpty() || task.does().stream().anyMatch(RISKY::contains);
    }

    /** A rehearsal without a time of its own comes after all that it is not to be spoilt by. */
    private List<String> after(WorkTask task) {
        if (task.kind() != TaskKind.REHEARSE || task.event() != null) {
            return task.after();
        }
        Set<String> after = new LinkedHashSet<>(task.after());
        Set<String> behind = new HashSet<>(work.downstream(List.of(task.id())));
        work.tasks().stream()
                .filter(each -> isRisky(each) && !waits(each) && !behind.contains(each.id()))
                .forEach(each -> after.add(each.id()));
        return List.copyOf(after);
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

    /** In minutes, half a working day: nobody does what is longer without laying it down. Common practice. */
    private static final int LONG = 240;

    /** In minutes; what can be left and taken up again, such as a round of like tasks, is, where it is longer: common practice. */
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
                    .forEach(feed -> proven.computeIfAbsent(feed, each -> new HashSet<>())
                            .add(task.id()));
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
