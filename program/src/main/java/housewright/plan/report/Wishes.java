package housewright.plan.report;

import housewright.plan.Condition;
import housewright.plan.Crew;
import housewright.plan.Delivery;
import housewright.plan.Event;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Length;
import housewright.plan.Limits;
import housewright.plan.Person;
import housewright.plan.Place;
import housewright.plan.Site;
import housewright.plan.Task;
import housewright.plan.Timing;
import housewright.plan.Visit;
import housewright.plan.Window;
import housewright.plan.report.Wish.Way;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Every wish of a job, in the order in which an explanation would rather do without it. */
final class Wishes {
    private static final int WORKDAY_FROM = 8 * 60;
    private static final int WORKDAY_TO = 18 * 60;

    private final Job job;
    private final List<Wish> all = new ArrayList<>();

    private Wishes(Job job) {
        this.job = job;
    }

    static List<Wish> of(Job job) {
        Wishes wishes = new Wishes(job);
        job.tasks().forEach(wishes::length);
        job.tasks().forEach(wishes::onSite);
        job.tasks().forEach(wishes::together);
        wishes.ofTheWhole();
        return wishes.all;
    }

    /** Those that a crowd of tasks shares, and pins; what each task is by itself is taken as given. */
    static List<Wish> shared(Job job) {
        Wishes wishes = new Wishes(job);
        wishes.ofTheWhole();
        return wishes.all;
    }

    private void ofTheWhole() {
        skills();
        job.places().forEach(this::place);
        job.events().forEach(this::event);
        job.people().forEach(this::person);
        job.tasks().forEach(this::earliest);
        job.hires().forEach(this::hire);
        job.deliveries().forEach(this::delivery);
        job.tasks().forEach(this::pins);
    }

    static Job change(Job job, String id, UnaryOperator<Task> how) {
        return job.withTasks(job.tasks().stream()
                .map(task -> task.id().equals(id) ? how.apply(task) : task)
                .toList());
    }

    static Task timed(Task task, Timing timing) {
        return new Task(
                task.id(),
                task.title(),
                task.kind(),
                task.mandatory(),
                task.length(),
                task.crew(),
                task.site(),
                task.means(),
                timing);
    }

    private static Task sized(Task task, Length length, Crew crew, Site site) {
        return new Task(
                task.id(),
                task.title(),
                task.kind(),
                task.mandatory(),
                length,
                crew,
                site,
                task.means(),
                task.timing());
    }

    private void length(Task task) {
        Length length = task.length();
        if (!length.mayPause() && length.planned(job.tick()) > 60) {
            Length pausing = new Length(length.optimistic(), length.likely(), length.pessimistic(), true);
            all.add(Wish.whole(
                    "%s takes %s at a stretch".formatted(task.title(), hours(length.planned(job.tick()))),
                    task.id(),
                    each -> sized(each, pausing, each.crew(), each.site()),
                    "%s may be laid down and taken up again".formatted(task.title())));
        }
    }

    private void onSite(Task task) {
        if (!task.site().remote() && task.means().hire() == null && task.crew().count() > 0) {
            Site afar = new Site(task.site().place(), task.site().spot(), true, Set.of(), Set.of());
            all.add(Wish.whole(
                    "%s is done on site".formatted(task.title()),
                    task.id(),
                    each -> sized(each, each.length(), each.crew(), afar),
                    "%s may be done from afar".formatted(task.title())));
        }
    }

    private void skills() {
        Set<String> needed = new TreeSet<>();
        job.tasks().forEach(task -> {
            needed.addAll(task.crew().skills());
            String hire = task.means().hire();
            String operator = hire == null ? null : job.hire(hire).skill();
            if (operator != null) {
                needed.add(operator);
            }
        });
        for (String skill : needed) {
            List<String> holders = job.people().stream()
                    .filter(person -> person.skills().contains(skill))
                    .map(Person::name)
                    .toList();
            if (holders.size() == job.people().size()) {
                continue;
            }
            all.add(new Wish(
                    holders.isEmpty()
                            ? "nobody has the skill %s".formatted(skill)
                            : "only %s %s the skill %s"
                                    .formatted(String.join(", ", holders), holders.size() == 1 ? "has" : "have", skill),
                    from -> from.withPeople(from.people().stream()
                            .map(each -> skilled(each, skill))
                            .toList()),
                    from -> from.people().stream()
                            .filter(each -> !each.skills().contains(skill))
                            .map(each -> new Way(
                                    "%s, or somebody with the same free times, has the skill %s"
                                            .formatted(each.name(), skill),
                                    swap(from, skilled(each, skill))))));
        }
    }

    private static Person skilled(Person person, String skill) {
        Set<String> skills = new HashSet<>(person.skills());
        skills.add(skill);
        return new Person(
                person.id(), person.name(), skills, person.onSite(), person.remote(), person.limits(), person.visits());
    }

    private static Job swap(Job job, Person person) {
        return job.withPeople(job.people().stream()
                .map(each -> each.id().equals(person.id()) ? person : each)
                .toList());
    }

    private void place(Place place) {
        boolean used = job.tasks().stream()
                .anyMatch(task -> place.id().equals(task.site().place()));
        if (used && !place.open().isEmpty()) {
            all.add(Wish.whole(
                    "%s is open only at its hours".formatted(place.name()),
                    from -> places(from, new Place(place.id(), place.name(), List.of(), place.only())),
                    "%s may be worked in at other hours, too".formatted(place.name())));
        }
        for (Condition condition : place.only().keySet().stream().sorted().toList()) {
            String word = condition.name().toLowerCase(Locale.ROOT);
            if (job.tasks().stream()
                    .anyMatch(task -> place.id().equals(task.site().place())
                            && task.site().needs().contains(condition))) {
                all.add(Wish.whole(
                        "%s is %s only at some hours".formatted(place.name(), word),
                        from -> places(from, new Place(place.id(), place.name(), place.open(), Map.of())),
                        "%s can be made %s at other hours, too".formatted(place.name(), word)));
            }
        }
    }

    private static Job places(Job job, Place place) {
        return new Job(
                job.firstDay(),
                job.days(),
                job.tick(),
                job.people(),
                job.hires(),
                job.tools(),
                job.places().stream()
                        .map(each -> each.id().equals(place.id()) ? place : each)
                        .toList(),
                job.deliveries(),
                job.events(),
                job.tasks(),
                job.promises());
    }

    private void event(Event event) {
        if (event.place() != null) {
            all.add(Wish.whole(
                    "%s holds %s from %s to %s"
                            .formatted(
                                    event.name(),
                                    job.place(event.place()).name(),
                                    job.spoken(event.when().from()),
                                    job.spoken(event.when().to())),
                    from -> from.withEvents(from.events().stream()
                            .map(each -> each.id().equals(event.id())
                                    ? new Event(each.id(), each.name(), each.when(), null, each.deadline())
                                    : each)
                            .toList()),
                    "%s is held elsewhere".formatted(event.name())));
        }
    }

    private void person(Person person) {
        all.add(new Wish(
                person.onSite().isEmpty()
                        ? "%s is never free on site".formatted(person.name())
                        : "%s is free on site only %s%s"
                                .formatted(person.name(), when(person.onSite()), visits(person)),
                from -> swap(
                        from,
                        new Person(
                                person.id(),
                                person.name(),
                                from.person(person.id()).skills(),
                                List.of(new Window(0, job.end())),
                                person.remote(),
                                Limits.NONE,
                                List.of())),
                from -> Stream.concat(
                        IntStream.range(0, job.days())
                                .mapToObj(day -> new Way(
                                        "%s is there all day on %s (08:00 to 18:00)"
                                                .formatted(person.name(), job.spokenDay(day)),
                                        swap(from, freeOn(from.person(person.id()), day)))),
                        Stream.of(new Way(
                                "%s may work longer days".formatted(person.name()),
                                swap(
                                        from,
                                        new Person(
                                                person.id(),
                                                person.name(),
                                                from.person(person.id()).skills(),
                                                person.onSite(),
                                                person.remote(),
                                                Limits.NONE,
                                                person.visits())))))));
    }

    private String when(List<Window> windows) {
        List<String> days = windows.stream()
                .map(window -> window.from() / Job.DAY)
                .distinct()
                .map(job::spokenDay)
                .toList();
        return days.size() <= 4
                ? "on " + String.join(", ", days)
                : "on %s days from %s to %s".formatted(days.size(), days.getFirst(), days.getLast());
    }

    private static String visits(Person person) {
        return person.visits().isEmpty()
                ? ""
                : ", within %s visits".formatted(person.visits().size());
    }

    private static Person freeOn(Person person, int day) {
        List<Window> free = new ArrayList<>(person.onSite());
        free.add(new Window(day * Job.DAY + WORKDAY_FROM, day * Job.DAY + WORKDAY_TO));
        List<Visit> visits = new ArrayList<>(person.visits());
        if (!visits.isEmpty()) {
            visits.add(new Visit(day, day, 0, 0));
        }
        return new Person(person.id(), person.name(), person.skills(), free, person.remote(), person.limits(), visits);
    }

    private void earliest(Task task) {
        int earliest = task.timing().earliest();
        if (earliest > 0) {
            all.add(new Wish(
                    earliest >= job.end()
                            ? "%s is blocked, and nobody knows until when".formatted(task.title())
                            : "%s may not begin before %s".formatted(task.title(), job.spoken(earliest)),
                    from -> change(from, task.id(), each -> begins(each, 0)),
                    from -> halfDays(Math.min(earliest, job.end()))
                            .mapToObj(by -> new Way(
                                    "%s may begin by %s".formatted(task.title(), job.spoken(by)),
                                    change(from, task.id(), each -> begins(each, by))))));
        }
    }

    /** Earlier times in steps of half a day, the latest first. */
    private static IntStream halfDays(int from) {
        return IntStream.rangeClosed(1, Math.ceilDiv(from, 720)).map(step -> Math.max(0, from - step * 720));
    }

    private static Task begins(Task task, int earliest) {
        Timing old = task.timing();
        return timed(task, new Timing(old.after(), old.deliveries(), earliest, old.due(), old.start()));
    }

    private void hire(Hire hire) {
        if (job.tasks().stream().noneMatch(task -> hire.id().equals(task.means().hire()))) {
            return;
        }
        Set<Integer> every =
                new TreeSet<>(IntStream.range(0, job.days()).boxed().toList());
        String days = hire.days().isEmpty()
                ? "never"
                : "only on "
                        + String.join(
                                ", ", hire.days().stream().map(job::spokenDay).toList());
        all.add(new Wish(
                "%s can be had %s".formatted(hire.name(), days),
                from -> hires(from, new Hire(hire.id(), hire.name(), every, hire.skill())),
                from -> every.stream().filter(day -> !hire.days().contains(day)).map(day -> {
                    Set<Integer> more = new TreeSet<>(hire.days());
                    more.add(day);
                    return new Way(
                            "%s can be had on %s, too".formatted(hire.name(), job.spokenDay(day)),
                            hires(from, new Hire(hire.id(), hire.name(), more, hire.skill())));
                })));
    }

    private static Job hires(Job job, Hire hire) {
        return job.withHires(job.hires().stream()
                .map(each -> each.id().equals(hire.id()) ? hire : each)
                .toList());
    }

    private void delivery(Delivery delivery) {
        if (job.tasks().stream().noneMatch(task -> task.timing().deliveries().contains(delivery.id()))
                || delivery.expected() == 0) {
            return;
        }
        all.add(new Wish(
                delivery.expected() >= job.end()
                        ? "%s does not arrive in time that is planned for".formatted(delivery.name())
                        : "%s arrives %s".formatted(delivery.name(), job.spoken(delivery.expected())),
                from -> arrives(from, delivery, 0),
                from -> halfDays(Math.min(delivery.expected(), job.end()))
                        .mapToObj(by -> new Way(
                                "%s arrives by %s".formatted(delivery.name(), job.spoken(by)),
                                arrives(from, delivery, by)))));
    }

    private static Job arrives(Job job, Delivery delivery, int at) {
        return job.withDeliveries(job.deliveries().stream()
                .map(each -> each.id().equals(delivery.id())
                        ? new Delivery(
                                each.id(),
                                each.name(),
                                at,
                                Math.max(at, each.latest()),
                                each.lateChance(),
                                each.promised())
                        : each)
                .toList());
    }

    private void pins(Task task) {
        Integer start = task.timing().start();
        if (start != null) {
            Timing old = task.timing();
            all.add(Wish.whole(
                    "%s is pinned to %s".formatted(task.title(), job.spoken(start)),
                    task.id(),
                    each -> timed(
                            each,
                            new Timing(
                                    old.after(),
                                    old.deliveries(),
                                    old.earliest(),
                                    each.timing().due(),
                                    null)),
                    "%s is not pinned".formatted(task.title())));
        }
        if (!task.crew().pinned().isEmpty()) {
            String names = String.join(
                    ", ",
                    task.crew().pinned().stream()
                            .map(id -> job.person(id).name())
                            .toList());
            all.add(Wish.whole(
                    "%s is to be done by %s".formatted(task.title(), names),
                    task.id(),
                    each -> sized(
                            each,
                            each.length(),
                            new Crew(each.crew().count(), each.crew().skills(), List.of()),
                            each.site()),
                    "%s may be done by others".formatted(task.title())));
        }
    }

    private void together(Task task) {
        if (task.crew().count() > 1) {
            all.add(Wish.whole(
                    "%s takes %s people at once"
                            .formatted(task.title(), task.crew().count()),
                    task.id(),
                    each -> sized(
                            each,
                            each.length(),
                            new Crew(
                                    Math.max(1, each.crew().pinned().size()),
                                    each.crew().skills(),
                                    each.crew().pinned()),
                            each.site()),
                    "%s can be done by one person alone".formatted(task.title())));
        }
    }

    static String hours(int minutes) {
        return minutes < 60
                ? minutes + " min"
                : minutes % 60 == 0 ? minutes / 60 + " h" : "%s h %s min".formatted(minutes / 60, minutes % 60);
    }
}
