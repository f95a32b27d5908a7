package housewright.bench;

import housewright.plan.Condition;
import housewright.plan.Delivery;
import housewright.plan.Event;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Limits;
import housewright.plan.Person;
import housewright.plan.Place;
import housewright.plan.Promise;
import housewright.plan.Task;
import housewright.plan.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * Invented refits of any size, for measuring the planning: capabilities whose old way is struck, cut over, tuned and proven;
 * devices that are prepared, cabled, mounted, terminated, set up and checked; some extras. The crew stays three whatever the
 * size; days, services, parts and capabilities grow with it. The same size and seed give the same job.
 */
final class JobGenerator {
    private static final int FIRST_SITE_DAY = 21;
    private static final int EVENING = 18 * 60;

    private final int size;
    private final Random random;
    private final List<Task> tasks = new ArrayList<>();
    private final List<Delivery> deliveries = new ArrayList<>();
    private final List<Integer> siteDays = new ArrayList<>();

    private JobGenerator(int size, long seed) {
        this.size = size;
        this.random = new Random(seed * 1000 + size);
    }

    /**
     * A job.
     *
     * @param size tasks, 40 or more
     */
    static Job of(int size, long seed) {
        return new JobGenerator(size, seed).job();
    }

    private Job job() {
        int visits = Math.max(2, size / 40);
        for (int day = FIRST_SITE_DAY; siteDays.size() < visits; day++) {
            if (day % 7 != 6) {
                siteDays.add(day);
            }
        }
        int last = siteDays.getLast();
        List<Window> days = new ArrayList<>();
        for (int day : siteDays) {
            days.add(new Window(day * Job.DAY + 8 * 60, day * Job.DAY + 13 * 60));
            days.add(new Window(day * Job.DAY + 14 * 60, day * Job.DAY + 19 * 60));
        }
        List<Window> evenings = new ArrayList<>(days);
        for (int day = 0; day < FIRST_SITE_DAY; day++) {
            if (day % 7 < 5) {
                evenings.add(new Window(day * Job.DAY + EVENING, day * Job.DAY + EVENING + 180));
            }
        }
        List<Person> people = List.of(
                new Person(
                        "visitor",
                        "Visitor",
                        Set.of("general", "audio", "network", "termination", "lighting", "height"),
                        days,
                        List.of(),
                        Limits.NONE,
                        List.of()),
                new Person(
                        "rigger",
                        "Rigger",
                        Set.of("general", "height", "lighting", "termination"),
                        days,
                        List.of(),
                        Limits.NONE,
                        List.of()),
                new Person(
                        "local",
                        "Local lead",
                        Set.of("general", "audio", "network"),
                        evenings,
                        List.of(),
                        Limits.NONE,
                        List.of()));
        int capabilities = size <= 160 ? 5 : size <= 320 ? 8 : 12;
        List<Event> events = events(last);
        List<Promise> promises = new ArrayList<>();
        int parts = Math.max(8, size * 30 / 160);
        for (int part = 0; part < parts; part++) {
            int comes = (random.nextInt(4) > 0
                                    ? random.nextInt(FIRST_SITE_DAY)
                                    : FIRST_SITE_DAY + random.nextInt(Math.max(1, visits / 2)))
                            * Job.DAY
                    + 10 * 60;
            deliveries.add(new Delivery("part-" + part, "Part " + part, comes, comes + 2 * Job.DAY, 0.1));
        }
        List<List<String>> checks = new ArrayList<>();
        List<List<String>> strikes = new ArrayList<>();
        for (int index = 0; index < capabilities; index++) {
            List<String> strike = new ArrayList<>();
            for (int each = 0; each < 3; each++) {
                strike.add(add(Task.draft("c%d-strike-%d".formatted(index, each), minutes(45))
                        .kind("strike")
                        .at("hall")
                        .skills("general")
                        .spoils(Condition.QUIET, Condition.DARK)));
            }
            strikes.add(strike);
            checks.add(new ArrayList<>());
        }
        int room = size - 6 * capabilities;
        int device = 0;
        while (room >= 6) {
            room -= device(device, checks.get(device % capabilities), strikes.get(device % capabilities));
            device++;
        }
        for (int index = 0; index < capabilities; index++) {
            List<String> before = new ArrayList<>(strikes.get(index));
            List<String> ready = checks.get(index);
            before.addAll(ready.subList(0, ready.size() / 2));
            String cut = add(Task.draft("c%d-cut-over".formatted(index), minutes(40))
                    .kind("cut-over")
                    .at("hall")
                    .skills("audio")
                    .after(before.toArray(String[]::new)));
            String tune = add(Task.draft("c%d-tune".formatted(index), minutes(60))
                    .kind("tune")
                    .at("hall")
                    .skills(index % 3 == 2 ? "lighting" : "audio")
                    .needs(index % 3 == 2 ? Condition.DARK : Condition.QUIET)
                    .after(cut));
            List<String> all = new ArrayList<>(ready);
            all.add(tune);
            String prove = add(Task.draft("c%d-prove".formatted(index), 30)
                    .kind("prove")
                    .at("hall")
                    .crew(2)
                    .skills("audio")
                    .after(all.toArray(String[]::new)));
            Set<String> apart = new HashSet<>(strikes.get(index));
            apart.add(cut);
            for (Event event : events) {
                if (event.deadline() || random.nextInt(2) == 0) {
                    promises.add(new Promise(event.id(), "capability-" + index, true, apart, Set.of(prove)));
                }
            }
        }
        for (int extra = 0; tasks.size() < size; extra++) {
            add(Task.draft("extra-" + extra, minutes(30))
                    .kind("extra")
                    .optional()
                    .at("store")
                    .skills("general"));
        }
        List<Task> mixed = new ArrayList<>(tasks);
        Collections.shuffle(mixed, random);
        return new Job(
                LocalDate.of(2027, 2, 1),
                last + 1,
                15,
                people,
                List.of(new Hire("lift", "Lift", new TreeSet<>(siteDays), "height")),
                List.of(),
                List.of(
                        new Place("hall", "Hall", List.of(), Map.of()),
                        new Place("store", "Store", List.of(), Map.of())),
                deliveries,
                events,
                mixed,
                promises);
    }

    private List<Event> events(int last) {
        List<Event> events = new ArrayList<>();
        for (int day = 6; day < last; day += 7) {
            events.add(service("sunday-" + day, day * Job.DAY + 630));
        }
        for (int index = 1; index < siteDays.size() - 1; index += 4) {
            events.add(service("evening-" + siteDays.get(index), siteDays.get(index) * Job.DAY + 19 * 60 + 30));
        }
        events.add(new Event(
                "rehearsal",
                "Rehearsal",
                new Window(last * Job.DAY + 16 * 60, last * Job.DAY + 18 * 60),
                "hall",
                true));
        return events;
    }

    private static Event service(String id, int from) {
        return new Event(id, id, new Window(from, from + 90), "hall", false);
    }

    private int device(int number, List<String> checks, List<String> strikes) {
        String id = "d%d-".formatted(number);
        boolean high = random.nextInt(4) == 0;
        String prep = add(Task.draft(id + "prepare", minutes(30))
                .kind("prepare")
                .at("store")
                .skills("general")
                .waitsFor(
                        random.nextInt(2) == 0
                                ? new String[] {
                                    deliveries
                                            .get(random.nextInt(deliveries.size()))
                                            .id()
                                }
                                : new String[0]));
        String pull = add(Task.draft(id + "pull", minutes(45))
                .kind("pull")
                .at("hall")
                .crew(random.nextInt(3) == 0 ? 2 : 1)
                .skills("general")
                .spoils(random.nextInt(2) == 0 ? new Condition[] {Condition.QUIET} : new Condition[0]));
        Task.Draft mounting = Task.draft(id + "mount", minutes(45))
                .kind("mount")
                .at("hall")
                .after(prep)
                .spoils(Condition.QUIET, Condition.DARK);
        if (high) {
            mounting.hire("lift").crew(2).skills("height").spot("bar-" + number % 5);
        } else {
            mounting.skills("general");
        }
        if (random.nextInt(3) == 0) {
            mounting.after(strikes.get(random.nextInt(strikes.size())));
        }
        String mount = add(mounting);
        String ends = add(Task.draft(id + "terminate", minutes(40))
                .kind("terminate")
                .at("hall")
                .skills("termination")
                .after(pull)
                .spoils(Condition.DARK));
        String set = add(Task.draft(id + "configure", minutes(30))
                .kind("configure")
                .at("store")
                .skills(random.nextBoolean() ? "audio" : "network")
                .after(prep));
        checks.add(add(Task.draft(id + "check", 15)
                .kind("check")
                .at("hall")
                .skills("general")
                .after(mount, ends, set)));
        return 6;
    }

    private String add(Task.Draft draft) {
        Task task = draft.done();
        tasks.add(task);
        return task.id();
    }

    /** A skewed length around a mean, in quarters of an hour from 15 to 240 min. */
    private int minutes(int mean) {
        double drawn = mean * Math.exp(0.6 * random.nextGaussian() - 0.18);
        return Math.clamp(Math.round(drawn / 15), 1, 16) * 15;
    }
}
