package housewright.plan;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * A case of {@code awkward.yaml}.
 *
 * @param expect what the file says is to come of it
 */
public record AwkwardCase(String name, Request request, Map<String, Object> expect) {

    @Override
    public String toString() {
        return name;
    }

    public static List<AwkwardCase> all() {
        try (InputStream in = Objects.requireNonNull(AwkwardCase.class.getResourceAsStream("awkward.yaml"))) {
            List<AwkwardCase> cases = new ArrayList<>();
            for (Object each : list(new Load(LoadSettings.builder().build()).loadFromInputStream(in))) {
                cases.add(read(map(each)));
            }
            return cases;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    public List<String> words(String key) {
        return strings(expect.get(key));
    }

    public Map<String, Object> table(String key) {
        return map(expect.get(key));
    }

    /** Such as {@code 1 09:30}. */
    public static int minute(Object text) {
        String[] parts = text.toString().split(" ");
        return Integer.parseInt(parts[0]) * Job.DAY + clock(parts[1]);
    }

    private static int clock(String text) {
        String[] parts = text.split(":");
        return Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1]);
    }

    private static Window window(Object text) {
        String[] parts = text.toString().split("[ -]");
        int day = Integer.parseInt(parts[0]) * Job.DAY;
        return new Window(day + clock(parts[1]), day + clock(parts[2]));
    }

    private static AwkwardCase read(Map<String, Object> from) {
        int days = from.containsKey("days") ? (Integer) from.get("days") : 5;
        List<Person> people = new ArrayList<>();
        map(from.get("people")).forEach((id, value) -> people.add(person(id, map(value))));
        List<Hire> hires = new ArrayList<>();
        map(from.get("hires")).forEach((id, value) -> {
            Set<Integer> had = new TreeSet<>();
            list(map(value).get("days")).forEach(day -> had.add((Integer) day));
            hires.add(new Hire(id, id, had, (String) map(value).get("skill")));
        });
        List<Tool> tools = new ArrayList<>();
        map(from.get("tools")).forEach((id, units) -> tools.add(new Tool(id, id, (Integer) units)));
        Map<String, Object> dark = map(map(from.get("dark")).get("hall"));
        List<Place> places = List.of(
                new Place("hall", "hall", List.of(), dark.isEmpty() ? Map.of() : Map.of(Condition.DARK, windows(dark))),
                Place.of("store"));
        List<Delivery> deliveries = new ArrayList<>();
        map(from.get("deliveries"))
                .forEach((id, at) -> deliveries.add(new Delivery(id, id, minute(at), minute(at), 0)));
        List<Event> events = new ArrayList<>();
        map(from.get("events"))
                .forEach((id, value) -> events.add(new Event(
                        id,
                        id,
                        window(map(value).get("when")),
                        (String) map(value).get("at"),
                        false)));
        events.add(new Event("last", "last", window("4 10:00-11:00"), null, true));
        List<Task> tasks = new ArrayList<>();
        map(from.get("tasks")).forEach((id, value) -> tasks.add(task(id, map(value))));
        List<Promise> promises = new ArrayList<>();
        for (Object each : list(from.get("promises"))) {
            Map<String, Object> promise = map(each);
            promises.add(new Promise(
                    (String) promise.get("event"),
                    (String) promise.get("of"),
                    true,
                    Set.copyOf(strings(promise.get("apart"))),
                    Set.copyOf(strings(promise.get("proof")))));
        }
        Job job = new Job(
                LocalDate.of(2027, 3, 1), days, 15, people, hires, tools, places, deliveries, events, tasks, promises);
        List<Slot> before = new ArrayList<>();
        map(from.get("before")).forEach((id, value) -> before.add(slot(id, list(value))));
        Request request = new Request(
                job,
                log(map(from.get("log"))),
                before.isEmpty() ? null : new Schedule(before),
                Effort.repeatable(1, 5));
        return new AwkwardCase((String) from.get("case"), request, map(from.get("expect")));
    }

    private static Slot slot(String task, List<Object> value) {
        return new Slot(task, List.of(window(value.get(0))), List.of((String) value.get(1)));
    }

    private static Log log(Map<String, Object> from) {
        if (from.isEmpty()) {
            return Log.NOTHING;
        }
        List<Slot> done = new ArrayList<>();
        map(from.get("done")).forEach((id, value) -> done.add(slot(id, list(value))));
        List<Log.Begun> begun = new ArrayList<>();
        map(from.get("begun")).forEach((id, value) -> {
            List<Object> parts = list(value);
            begun.add(new Log.Begun(id, minute(parts.get(0)), List.of((String) parts.get(1)), (Integer) parts.get(2)));
        });
        Map<String, Integer> late = new LinkedHashMap<>();
        map(from.get("late")).forEach((id, at) -> late.put(id, minute(at)));
        Map<String, Integer> blocked = new LinkedHashMap<>();
        map(from.get("blocked")).forEach((id, at) -> blocked.put(id, at.equals("never") ? Log.NEVER : minute(at)));
        return new Log(minute(from.get("now")), done, begun, late, blocked);
    }

    private static Person person(String id, Map<String, Object> from) {
        List<Window> free = new ArrayList<>();
        if (from.containsKey("free")) {
            free.addAll(windows(map(from.get("free"))));
        } else {
            for (int day = 0; day < 4; day++) {
                free.add(window(day + " 09:00-17:00"));
            }
        }
        List<Visit> visits = new ArrayList<>();
        for (Object each : list(from.get("visits"))) {
            List<Object> four = list(each);
            visits.add(new Visit(
                    (Integer) four.get(0), (Integer) four.get(1), (Integer) four.get(2), (Integer) four.get(3)));
        }
        List<Object> limits = list(from.get("limits"));
        return new Person(
                id,
                id,
                Set.copyOf(strings(from.get("skills"))),
                free,
                windows(map(from.get("remote"))),
                limits.isEmpty()
                        ? Limits.NONE
                        : new Limits((Integer) limits.get(0), (Integer) limits.get(1), (Integer) limits.get(2)),
                visits);
    }

    private static List<Window> windows(Map<String, Object> byDay) {
        List<Window> all = new ArrayList<>();
        byDay.forEach((day, times) -> all.add(window(day + " " + times)));
        return all;
    }

    private static Task task(String id, Map<String, Object> from) {
        Task.Draft draft = Task.draft(id, (Integer) Objects.requireNonNull(from.get("min")))
                .at((String) from.get("at"))
                .hire((String) from.get("hire"))
                .after(strings(from.get("after")).toArray(String[]::new))
                .waitsFor(strings(from.get("waits")).toArray(String[]::new))
                .skills(strings(from.get("skills")).toArray(String[]::new))
                .by(strings(from.get("by")).toArray(String[]::new))
                .crew(from.containsKey("crew") ? (Integer) from.get("crew") : 1);
        strings(from.get("needs")).forEach(word -> draft.needs(Condition.valueOf(word)));
        strings(from.get("spoils")).forEach(word -> draft.spoils(Condition.valueOf(word)));
        map(from.get("tools")).forEach((tool, units) -> draft.tool(tool, (Integer) units));
        if (from.containsKey("start")) {
            draft.startsAt(minute(from.get("start")));
        }
        if (from.containsKey("due")) {
            draft.due(minute(from.get("due")));
        }
        if (from.containsKey("pause")) {
            draft.mayPause();
        }
        if (from.containsKey("remote")) {
            draft.remote();
        }
        if (from.containsKey("optional")) {
            draft.optional();
        }
        return draft.done();
    }

    private static Map<String, Object> map(Object value) {
        Map<String, Object> map = new LinkedHashMap<>();
        if (value instanceof Map<?, ?> from) {
            from.forEach((key, each) -> map.put(key.toString(), each));
        }
        return map;
    }

    private static List<Object> list(Object value) {
        List<Object> list = new ArrayList<>();
        if (value instanceof List<?> from) {
            list.addAll(from);
        }
        return list;
    }

    private static List<String> strings(Object value) {
        return list(value).stream().map(Object::toString).toList();
    }
}
