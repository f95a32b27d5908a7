package housewright.web.page;

import housewright.app.Now;
import housewright.app.plan.Solve;
import housewright.app.plan.Standing;
import housewright.model.LogEntry;
import housewright.plan.Clash;
import housewright.plan.Event;
import housewright.plan.Goal;
import housewright.plan.Job;
import housewright.plan.Level;
import housewright.plan.Move;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.Slot;
import housewright.plan.Window;
import housewright.plan.chance.Chance;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Who does what when.
 *
 * @param answer in a sentence
 * @param under when it was accepted, and what it is held against
 * @param found a plan that was just found and is not accepted; else the accepted one
 * @param troubles what is missed, or does not hold any more, in sentences
 * @param more how many there are beyond those
 * @param facts how good it is
 * @param chart null where there is no plan
 * @param assumed what was taken for granted
 * @param impossible why no plan can be made, as a sentence; empty where one can
 */
public record PlanPage(
        String answer,
        String under,
        boolean found,
        List<String> troubles,
        int more,
        List<ClashRow> clashes,
        List<String> facts,
        List<EventRow> events,
        List<MoveRow> moves,
        @Nullable PlanChart chart,
        List<Day> days,
        List<String> assumed,
        @Nullable Search search,
        List<PinRow> pins,
        String impossible) {
    private static final int MOST_TROUBLES = 12;

    public PlanPage {
        troubles = List.copyOf(troubles);
        clashes = List.copyOf(clashes);
        facts = List.copyOf(facts);
        events = List.copyOf(events);
        moves = List.copyOf(moves);
        days = List.copyOf(days);
        assumed = List.copyOf(assumed);
        pins = List.copyOf(pins);
    }

    /**
     * An event, and whether it finds what it needs.
     *
     * @param holds whether the plan that says so can be kept as it is
     */
    public record EventRow(String id, String when, boolean ready, boolean holds, String likely, List<String> lacks) {}

    /** Wishes that cannot hold together, and what would help. */
    public record ClashRow(String what, boolean proved, List<String> wishes, List<String> ways) {
        static ClashRow of(Clash clash) {
            return new ClashRow(clash.what(), clash.proved(), clash.wishes(), clash.ways());
        }
    }

    /** A task that is elsewhere than before. */
    public record MoveRow(String task, String href, String title, String was, String is, String why) {}

    /** A task held to a person or a start. */
    public record PinRow(String task, String href, String title, String holds) {}

    /** One day of the list. */
    public record Day(String id, String label, String hired, List<Row> rows) {
        public Day {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A stretch of a task.
     *
     * @param mark of how far it is; empty where nothing is known
     * @param state the same in words
     * @param first the row of the task's first stretch, which has the id
     */
    public record Row(
            String task,
            boolean first,
            String href,
            String title,
            String time,
            String people,
            String where,
            String slack,
            String mark,
            String state,
            boolean pinned,
            String why) {}

    /**
     * A search for a plan.
     *
     * @param begun in ms since 1970; tells it from other searches of the project
     * @param lines how good the best so far is, and what no plan beats
     * @param stale the project is another by now
     */
    public record Search(
            long begun,
            boolean running,
            boolean stopping,
            boolean telling,
            String failed,
            String since,
            List<String> lines,
            boolean stale) {
        public Search {
            lines = List.copyOf(lines);
        }
    }

    /**
     * @param chances of the accepted plan, as far as they are known
     * @param solve the project's last, where there is one
     * @param wantsFound show the plan of that solve, where it has one
     */
    public static PlanPage of(
            Now now,
            Standing standing,
            List<Chance> chances,
            @Nullable Solve solve,
            boolean wantsFound,
            String home,
            Instant at) {
        Plan solved = solve == null ? null : solve.plan();
        boolean found = solved != null && (wantsFound || standing.plan() == null);
        Plan plan = found ? solved : standing.plan();
        Job job =
                found && solve != null ? solve.basis().job() : standing.basis().job();
        Search search = solve == null ? null : search(solve, now, at);
        String impossible = standing.basis().unplanned();
        List<PinRow> pins = pins(now, job, home);
        if (plan == null) {
            String none =
                    now.project().plan() == null || now.project().plan().times().isEmpty()
                            ? "No plan is accepted yet"
                            : "Nothing of the accepted plan is left in the project";
            return new PlanPage(
                    none,
                    "",
                    false,
                    List.of(),
                    0,
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    null,
                    List.of(),
                    standing.basis().assumed(),
                    search,
                    pins,
                    impossible);
        }
        List<String> troubles = new ArrayList<>();
        if (!found) {
            if (!standing.unticked().isEmpty()) {
                troubles.add(standing.unticked().size()
                        + (standing.unticked().size() == 1 ? " task was" : " tasks were")
                        + " to begin by now and nobody has ticked it: "
                        + String.join(
                                ", ", standing.unticked().stream().limit(6).toList())
                        + (standing.unticked().size() > 6 ? " …" : "") + ".");
            }
            troubles.addAll(standing.broken());
        }
        troubles.addAll(plan.missed());
        return new PlanPage(
                answer(standing, plan, job, found),
                under(now, found),
                found,
                troubles.subList(0, Math.min(MOST_TROUBLES, troubles.size())),
                Math.max(0, troubles.size() - MOST_TROUBLES),
                plan.clashes().stream().map(ClashRow::of).toList(),
                facts(job, plan, found),
                events(job, plan, found ? List.of() : chances, found || standing.holds()),
                plan.moves().stream().map(move -> move(job, move, home)).toList(),
                PlanChart.of(now, job, plan, home, standing.now()),
                days(now, job, plan, home),
                (found && solve != null ? solve.basis() : standing.basis()).assumed(),
                search,
                pins,
                impossible);
    }

    private static String answer(Standing standing, Plan plan, Job job, boolean found) {
        int end =
                plan.tasks().stream().mapToInt(each -> each.slot().end()).max().orElse(0);
        String what = found ? "Found, and not accepted yet: " : "";
        if (!found && !standing.holds()) {
            return "The accepted plan does not hold any more: plan again";
        }
        if (!plan.missed().isEmpty()) {
            return what + plan.saidMissed();
        }
        String all = "all " + plan.tasks().size() + " tasks are done by " + job.spoken(end);
        return found ? what + all : "A" + all.substring(1);
    }

    private static String under(Now now, boolean found) {
        var accepted = now.project().plan();
        if (found) {
            return (accepted == null || accepted.times().isEmpty()
                            ? "Accept it, and it is what orders, daily calls and calendars go by."
                            : "The accepted plan stays until this one is accepted.")
                    + " Until then it is kept only while Housewright runs.";
        }
        return accepted == null || accepted.made() == null ? "" : "Accepted " + Dates.moment(accepted.made()) + ".";
    }

    private static List<String> facts(Job job, Plan plan, boolean found) {
        List<String> facts = new ArrayList<>();
        boolean all = plan.missed().isEmpty();
        plan.levels().forEach(level -> {
            String value = value(job, all, level.goal(), level.value());
            if (!value.isEmpty()) {
                facts.add(value + (found ? bound(job, all, level) : ""));
            }
        });
        return facts;
    }

    private static String bound(Job job, boolean all, Level level) {
        return level.proved()
                ? "; no plan does better"
                : level.bound() <= 0 ? "" : "; no plan can beat " + value(job, all, level.goal(), level.bound());
    }

    private static String value(Job job, boolean all, Goal goal, long value) {
        return switch (goal) {
            case MISSED -> "";
            case MOVED -> value + (value == 1 ? " task moved" : " tasks moved");
            case FINISH -> (all ? "ready " : "what is in it is done ") + job.spoken((int) Math.min(value, job.end()));
            case HIRE_DAYS -> value + (value == 1 ? " day of hire" : " days of hire");
            case HIRE_MOVES -> value + (value == 1 ? " move of what is hired" : " moves of what is hired");
            case IDLE -> TaskWords.minutes((int) value) + " of waiting and travel";
        };
    }

    public static Search search(Solve solve, Now now, Instant at) {
        boolean running = solve.state() == Solve.State.RUNNING;
        List<String> lines = new ArrayList<>();
        if (running && solve.planned() > 0) {
            lines.add("Best so far: " + solve.planned() + " of "
                    + solve.basis().job().tasks().size() + " tasks planned");
        }
        boolean all = solve.levels().stream().noneMatch(level -> level.goal() == Goal.MISSED && level.value() > 0);
        for (Level level : solve.levels()) {
            if (level.goal() == Goal.MISSED) {
                lines.add(level.value() == 0 ? "Nothing is missed" : "Not all can be done as wished yet");
            } else {
                lines.add(value(solve.basis().job(), all, level.goal(), level.value())
                        + bound(solve.basis().job(), all, level));
            }
        }
        return new Search(
                solve.begun().toEpochMilli(),
                running,
                running && solve.isStopped(),
                solve.isTelling(),
                solve.trouble(),
                Math.max(0, Duration.between(solve.begun(), at).toSeconds()) + " s",
                lines,
                solve.revision() != now.revision());
    }

    public static List<EventRow> events(Job job, Plan plan, List<Chance> chances, boolean holds) {
        return plan.events().stream()
                .map(each -> {
                    Event event = job.event(each.event());
                    String likely = chances.stream()
                            .filter(chance -> chance.event().equals(each.event()))
                            .map(chance -> chance.likely().word())
                            .findFirst()
                            .orElse("");
                    return new EventRow(
                            each.event(), job.spoken(event.when().from()), each.ready(), holds, likely, each.lacks());
                })
                .toList();
    }

    private static MoveRow move(Job job, Move move, String home) {
        Slot to = move.to();
        String id = move.from().task();
        boolean sameTime = to != null && to.start() == move.from().start();
        return new MoveRow(
                id,
                TaskPage.href(home, id),
                job.task(id).title(),
                TaskWords.when(job, move.from()) + ", "
                        + TaskWords.people(move.from().people()),
                to == null
                        ? "left out"
                        : (sameTime ? "the same time" : TaskWords.when(job, to)) + ", " + TaskWords.people(to.people()),
                move.why());
    }

    private static List<PinRow> pins(Now now, Job job, String home) {
        var plan = now.project().plan();
        if (plan == null) {
            return List.of();
        }
        Map<String, String> titles = new LinkedHashMap<>();
        job.tasks().forEach(task -> titles.put(task.id(), task.title()));
        return plan.pins().values().stream()
                .map(pin -> {
                    List<String> holds = new ArrayList<>();
                    if (pin.from() != null) {
                        holds.add(TaskWords.moment(pin.from()));
                    }
                    if (!pin.people().isEmpty()) {
                        holds.add(TaskWords.people(pin.people()));
                    }
                    return new PinRow(
                            pin.id(),
                            TaskPage.href(home, pin.id()),
                            titles.getOrDefault(pin.id(), pin.id()),
                            String.join(", ", holds));
                })
                .toList();
    }

    private static List<Day> days(Now now, Job job, Plan plan, String home) {
        Map<Integer, List<Row>> rows = new TreeMap<>();
        Map<Integer, TreeSet<String>> hires = new TreeMap<>();
        var pins = now.project().plan();
        List<Stretch> stretches = new ArrayList<>();
        for (Planned task : plan.tasks()) {
            for (Window piece : task.slot().pieces()) {
                stretches.add(new Stretch(task, piece));
            }
        }
        stretches.sort(
                java.util.Comparator.comparingInt((Stretch each) -> each.piece().from())
                        .thenComparing(each -> each.task().slot().task()));
        for (Stretch each : stretches) {
            Planned task = each.task();
            String id = task.slot().task();
            int day = each.piece().from() / Job.DAY;
            LogEntry entry = TaskWords.entry(now.project(), id);
            rows.computeIfAbsent(day, key -> new ArrayList<>())
                    .add(new Row(
                            id,
                            each.piece().from() == task.slot().start(),
                            TaskPage.href(home, id),
                            task.title(),
                            TaskWords.time(job, each.piece().from()) + "–"
                                    + TaskWords.time(job, each.piece().to()),
                            TaskWords.people(task.slot().people()),
                            task.place() == null ? "" : task.place(),
                            entry != null
                                    ? ""
                                    : task.slackMinutes() == 0 ? "none" : TaskWords.minutes(task.slackMinutes()),
                            TaskWords.mark(entry),
                            TaskWords.said(entry),
                            pins != null && pins.pins().containsKey(id),
                            task.why()));
            if (task.hire() != null) {
                hires.computeIfAbsent(day, key -> new TreeSet<>()).add(task.hire());
            }
        }
        List<Day> days = new ArrayList<>();
        rows.forEach((day, of) -> days.add(new Day(
                "day-" + job.firstDay().plusDays(day),
                job.spokenDay(day),
                hires.containsKey(day) ? String.join(", ", hires.get(day)) : "",
                of)));
        return days;
    }

    private record Stretch(Planned task, Window piece) {}
}
