package housewright.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * All that a plan is made for.
 *
 * @param firstDay day 0; its midnight is minute 0
 * @param days how far the plan may reach, 1 to 1000
 * @param tick grid in minutes, a divisor of an hour; 15 as a rule
 */
public record Job(
        LocalDate firstDay,
        int days,
        int tick,
        List<Person> people,
        List<Hire> hires,
        List<Tool> tools,
        List<Place> places,
        List<Delivery> deliveries,
        List<Event> events,
        List<Task> tasks,
        List<Promise> promises) {

    public static final int DAY = 24 * 60;

    private static final DateTimeFormatter SPOKEN = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter SPOKEN_DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    /** @throws IllegalArgumentException if an id is used twice or nothing has it, or tasks wait for each other in a circle */
    public Job {
        people = List.copyOf(people);
        hires = List.copyOf(hires);
        tools = List.copyOf(tools);
        places = List.copyOf(places);
        deliveries = List.copyOf(deliveries);
        events = List.copyOf(events);
        tasks = List.copyOf(tasks);
        promises = List.copyOf(promises);
        if (days < 1 || days > 1000 || tick < 1 || 60 % tick != 0) {
            throw new IllegalArgumentException(
                    "A job takes 1 to 1000 days on a grid that divides the hour, but not %s days at %s min"
                            .formatted(days, tick));
        }
        if (people.size() > 60) {
            throw new IllegalArgumentException("A plan takes at most 60 people, but these are " + people.size());
        }
        Set<String> known = ids("person", people, Person::id);
        Set<String> hired = ids("hire", hires, Hire::id);
        Set<String> owned = ids("tool", tools, Tool::id);
        Set<String> rooms = ids("place", places, Place::id);
        Set<String> coming = ids("delivery", deliveries, Delivery::id);
        Set<String> held = ids("event", events, Event::id);
        Set<String> work = ids("task", tasks, Task::id);
        for (Event event : events) {
            known("event", event.id(), "place", rooms, event.place());
        }
        for (Task task : tasks) {
            task.crew().pinned().forEach(id -> known("task", task.id(), "person", known, id));
            known("task", task.id(), "hire", hired, task.means().hire());
            known("task", task.id(), "place", rooms, task.site().place());
            task.means().tools().keySet().forEach(id -> known("task", task.id(), "tool", owned, id));
            task.timing().after().forEach(id -> known("task", task.id(), "task", work, id));
            task.timing().deliveries().forEach(id -> known("task", task.id(), "delivery", coming, id));
        }
        for (Promise promise : promises) {
            known("promise", promise.capability(), "event", held, promise.event());
            promise.takenApartBy().forEach(id -> known("promise", promise.capability(), "task", work, id));
            promise.provenBy().forEach(id -> known("promise", promise.capability(), "task", work, id));
        }
        noCircle(tasks);
    }

    private static <T> Set<String> ids(String what, List<T> all, Function<T, String> id) {
        Set<String> ids = new HashSet<>();
        for (T each : all) {
            if (!ids.add(id.apply(each))) {
                throw new IllegalArgumentException("Two of %s have the id %s".formatted(what, id.apply(each)));
            }
        }
        return ids;
    }

    private static void known(String what, String id, String named, Set<String> known, @Nullable String reference) {
        if (reference != null && !known.contains(reference)) {
            throw new IllegalArgumentException(
                    "%s %s names the %s %s, which there is not".formatted(what, id, named, reference));
        }
    }

    private static void noCircle(List<Task> tasks) {
        Map<String, Integer> waiting = new LinkedHashMap<>();
        Map<String, Set<String>> next = new HashMap<>();
        for (Task task : tasks) {
            Set<String> before = new HashSet<>(task.timing().after());
            waiting.put(task.id(), before.size());
            before.forEach(
                    id -> next.computeIfAbsent(id, key -> new HashSet<>()).add(task.id()));
        }
        var ready = new ArrayDeque<String>();
        waiting.forEach((id, count) -> {
            if (count == 0) {
                ready.add(id);
            }
        });
        while (!ready.isEmpty()) {
            String id = ready.remove();
            waiting.remove(id);
            for (String follower : next.getOrDefault(id, Set.of())) {
                if (waiting.merge(follower, -1, Integer::sum) == 0) {
                    ready.add(follower);
                }
            }
        }
        if (!waiting.isEmpty()) {
            throw new IllegalArgumentException("Tasks wait for each other in a circle, among them " + waiting.keySet());
        }
    }

    /** The minute after the last. */
    public int end() {
        return days * DAY;
    }

    /** The minute by which all is due that has no due time of its own: when the deadline begins, or the horizon ends. */
    public int deadline() {
        return events.stream()
                .filter(Event::deadline)
                .mapToInt(event -> event.when().from())
                .min()
                .orElse(end());
    }

    public int dueOf(Task task) {
        return task.timing().due() == Timing.NO_DUE ? deadline() : task.timing().due();
    }

    public LocalDateTime at(int minute) {
        return firstDay.atStartOfDay().plusMinutes(minute);
    }

    /** Minute of a date and time. */
    public int minute(LocalDateTime time) {
        return Math.toIntExact(
                java.time.Duration.between(firstDay.atStartOfDay(), time).toMinutes());
    }

    /** Such as {@code Tue 16 Mar 09:00}. */
    public String spoken(int minute) {
        return at(minute).format(SPOKEN);
    }

    /** Such as {@code Tue 16 Mar}. */
    public String spokenDay(int day) {
        return firstDay.plusDays(day).format(SPOKEN_DAY);
    }

    public DayOfWeek dayOfWeek(int day) {
        return firstDay.plusDays(day).getDayOfWeek();
    }

    public Task task(String id) {
        return one("task", tasks, Task::id, id);
    }

    public Person person(String id) {
        return one("person", people, Person::id, id);
    }

    public Hire hire(String id) {
        return one("hire", hires, Hire::id, id);
    }

    public Place place(String id) {
        return one("place", places, Place::id, id);
    }

    public Delivery delivery(String id) {
        return one("delivery", deliveries, Delivery::id, id);
    }

    public Event event(String id) {
        return one("event", events, Event::id, id);
    }

    private static <T> T one(String what, List<T> all, Function<T, String> idOf, String id) {
        for (T each : all) {
            if (idOf.apply(each).equals(id)) {
                return each;
            }
        }
        throw new IllegalArgumentException("There is no %s %s".formatted(what, id));
    }

    public Job withTasks(List<Task> others) {
        return new Job(firstDay, days, tick, people, hires, tools, places, deliveries, events, others, promises);
    }

    public Job withPeople(List<Person> others) {
        return new Job(firstDay, days, tick, others, hires, tools, places, deliveries, events, tasks, promises);
    }

    public Job withPromises(List<Promise> others) {
        return new Job(firstDay, days, tick, people, hires, tools, places, deliveries, events, tasks, others);
    }

    public Job withEvents(List<Event> others) {
        return new Job(firstDay, days, tick, people, hires, tools, places, deliveries, others, tasks, promises);
    }

    public Job withDeliveries(List<Delivery> others) {
        return new Job(firstDay, days, tick, people, hires, tools, places, others, events, tasks, promises);
    }

    public Job withHires(List<Hire> others) {
        return new Job(firstDay, days, tick, people, others, tools, places, deliveries, events, tasks, promises);
    }
}
