package housewright.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/** Jobs that use everything a job can say, from a seed; many of them cannot be done as wished. */
public final class RandomJobs {
    private static final List<String> SKILLS = List.of("audio", "height", "network");

    private RandomJobs() {}

    /** A job of so many tasks, over six days. */
    public static Job of(int tasks, long seed) {
        Random random = new Random(seed);
        List<Person> people = new ArrayList<>();
        for (int index = 0; index < 4; index++) {
            people.add(person(index, random));
        }
        Set<Integer> days = new TreeSet<>(List.of(1 + random.nextInt(2), 3 + random.nextInt(2)));
        List<Place> places = List.of(
                new Place("hall", "Hall", daily(8 * 60, 22 * 60), Map.of(Condition.DARK, daily(17 * 60, 22 * 60))),
                Place.of("store"));
        List<Delivery> deliveries = new ArrayList<>();
        for (int index = 0; index < 3; index++) {
            int comes = random.nextInt(5 * Job.DAY);
            deliveries.add(new Delivery("part-" + index, "Part " + index, comes, comes + Job.DAY, 0.2));
        }
        List<Event> events = List.of(
                new Event("service", "Service", at(2, 19 * 60, 70), "hall", false),
                new Event("elsewhere", "Fair", at(3, 10 * 60, 120), null, false),
                new Event("first", "First service", at(5, 10 * 60 + 30, 90), "hall", true));
        List<Task> made = new ArrayList<>();
        for (int index = 0; index < tasks; index++) {
            made.add(task(index, random));
        }
        List<Promise> promises = new ArrayList<>();
        for (int index = 0; index < 3; index++) {
            promises.add(new Promise(
                    events.get(random.nextInt(3)).id(),
                    "capability-" + index,
                    random.nextInt(4) > 0,
                    some(tasks, random),
                    some(tasks, random)));
        }
        return new Job(
                LocalDate.of(2027, 3, 1),
                6,
                15,
                people,
                List.of(new Hire("lift", "Lift", days, "height"), new Hire("van", "Van", Set.of(0, 5), null)),
                List.of(new Tool("tester", "Tester", 1), new Tool("ladder", "Ladder", 2)),
                places,
                deliveries,
                events,
                made,
                promises);
    }

    private static Person person(int index, Random random) {
        List<Window> site = new ArrayList<>();
        List<Window> remote = new ArrayList<>();
        for (int day = 0; day < 6; day++) {
            switch (random.nextInt(4)) {
                case 0 -> site.add(at(day, 8 * 60, 660));
                case 1 -> {
                    site.add(at(day, 9 * 60, 180));
                    site.add(at(day, 13 * 60, 240));
                }
                case 2 -> remote.add(at(day, 9 * 60, 200));
                default -> site.add(at(day, 18 * 60 + 7, 170));
            }
        }
        Limits limits = random.nextBoolean() ? new Limits(360 + 60 * random.nextInt(4), 240, 30) : Limits.NONE;
        Set<String> skills = new HashSet<>(SKILLS.subList(0, random.nextInt(SKILLS.size() + 1)));
        skills.add("general");
        if (index == 0) {
            skills.addAll(SKILLS);
        }
        List<Visit> visits = random.nextInt(3) == 0 ? List.of(new Visit(1, 3, 95, 60)) : List.of();
        return new Person("p" + index, "Person " + index, skills, site, remote, limits, visits);
    }

    private static Task task(int index, Random random) {
        int likely = 15 + 15 * random.nextInt(8);
        Task.Draft draft = Task.draft("t" + index, likely)
                .length(new Length(
                        Math.max(5, likely - random.nextInt(30)),
                        likely,
                        likely + random.nextInt(60),
                        random.nextInt(4) == 0))
                .crew(random.nextInt(5) == 0 ? 2 : 1);
        draft.skills(random.nextBoolean() ? "general" : SKILLS.get(random.nextInt(SKILLS.size())));
        if (random.nextInt(4) == 0) {
            draft.optional();
        }
        if (random.nextInt(5) == 0) {
            draft.remote();
        } else {
            draft.at(random.nextInt(3) == 0 ? "store" : "hall");
            if (random.nextInt(5) == 0) {
                draft.needs(Condition.values()[random.nextInt(3)]);
            } else if (random.nextBoolean()) {
                draft.spoils(random.nextBoolean() ? Condition.QUIET : Condition.DARK);
            }
            if (random.nextInt(6) == 0) {
                draft.hire(random.nextInt(3) == 0 ? "van" : "lift").spot("bar-" + index % 3);
            }
        }
        if (random.nextInt(5) == 0) {
            draft.tool(random.nextBoolean() ? "tester" : "ladder", 1);
        }
        for (int before = 0; before < 2 && index > 0; before++) {
            if (random.nextInt(3) == 0) {
                draft.after("t" + random.nextInt(index));
            }
        }
        if (random.nextInt(5) == 0) {
            draft.waitsFor("part-" + random.nextInt(3));
        }
        if (random.nextInt(12) == 0) {
            draft.earliest(random.nextInt(3 * Job.DAY));
        }
        if (random.nextInt(12) == 0) {
            draft.due(Job.DAY + random.nextInt(5 * Job.DAY));
        }
        if (random.nextInt(15) == 0) {
            draft.by("p" + random.nextInt(4));
        }
        if (random.nextInt(20) == 0) {
            draft.startsAt(random.nextInt(6) * Job.DAY + 10 * 60);
        }
        return draft.done();
    }

    /** What has happened by noon of a day, were a schedule followed; with a late part and a blocked task. */
    public static Log logOf(Job job, Schedule schedule, int day, long seed) {
        Random random = new Random(seed);
        int now = day * Job.DAY + 12 * 60;
        List<Slot> done = new ArrayList<>();
        List<Log.Begun> begun = new ArrayList<>();
        for (Slot slot : schedule.slots()) {
            if (slot.end() <= now) {
                done.add(slot);
            } else if (slot.start() < now) {
                int left = slot.pieces().stream()
                        .mapToInt(piece -> Math.max(0, piece.to() - Math.max(piece.from(), now)))
                        .sum();
                begun.add(new Log.Begun(slot.task(), slot.start(), slot.people(), left + random.nextInt(40)));
            }
        }
        Map<String, Integer> late = Map.of("part-" + random.nextInt(3), now + random.nextInt(2 * Job.DAY));
        Map<String, Integer> blocked = Map.of("t" + random.nextInt(job.tasks().size()), now + random.nextInt(Job.DAY));
        return new Log(now, done, begun, late, blocked);
    }

    private static Set<String> some(int tasks, Random random) {
        Set<String> some = new TreeSet<>();
        for (int count = random.nextInt(3); count > 0; count--) {
            some.add("t" + random.nextInt(tasks));
        }
        return some;
    }

    private static List<Window> daily(int from, int to) {
        List<Window> days = new ArrayList<>();
        for (int day = 0; day < 6; day++) {
            days.add(at(day, from, to - from));
        }
        return days;
    }

    /** Such a stretch on a day. */
    public static Window at(int day, int from, int length) {
        return new Window(day * Job.DAY + from, day * Job.DAY + from + length);
    }
}
