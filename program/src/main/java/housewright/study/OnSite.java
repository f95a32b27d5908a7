package housewright.study;

import housewright.model.AcceptedPlan;
import housewright.model.LogEntry;
import housewright.model.Pin;
import housewright.model.PlannedTask;
import housewright.model.Project;
import housewright.model.Stretch;
import housewright.plan.Crew;
import housewright.plan.Job;
import housewright.plan.Length;
import housewright.plan.Log;
import housewright.plan.Person;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Timing;
import housewright.plan.Window;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Lays the project's pins, log and accepted plan on the axis of a job. */
final class OnSite {
    private final AcceptedPlan plan;
    private final PlanJob asked;
    private final Job job;
    private final int now;
    private final Map<String, Task> tasks = new LinkedHashMap<>();
    private final Set<String> people;
    private final Set<String> orders;
    private final Map<String, Slot> accepted = new LinkedHashMap<>();
    private final Set<String> assumed = new LinkedHashSet<>();

    OnSite(Project project, PlanJob asked, LocalDateTime now) {
        this.plan = project.plan() == null ? AcceptedPlan.NONE : project.plan();
        this.asked = asked;
        this.job = asked.job();
        this.now = Math.clamp(minute(now), 0, job.end());
        job.tasks().forEach(task -> tasks.put(task.id(), task));
        this.people = job.people().stream().map(Person::id).collect(Collectors.toSet());
        this.orders = project.orders().keySet();
        plan.times().forEach((id, times) -> {
            Slot slot = slot(times);
            if (slot != null && tasks.containsKey(id)) {
                accepted.put(id, slot);
            }
        });
        int gone = plan.times().size() - accepted.size();
        if (gone > 0) {
            assumed.add(gone + (gone == 1 ? " task" : " tasks")
                    + " of the accepted plan, which the change does not imply any more, are left out of it.");
        }
    }

    PlanBasis basis(Map<String, LogEntry> happened) {
        Log log = log(happened);
        plan.pins().forEach((id, pin) -> pin(pin, log));
        List<String> all = new ArrayList<>(asked.assumed());
        all.addAll(assumed);
        return new PlanBasis(
                job.withTasks(List.copyOf(tasks.values())),
                log,
                new Schedule(List.copyOf(accepted.values())),
                all,
                asked.unplanned());
    }

    private int minute(LocalDateTime at) {
        long minutes = ChronoUnit.MINUTES.between(job.firstDay().atStartOfDay(), at);
        return (int) Math.clamp(minutes, -Job.DAY * 1000L, Job.DAY * 2000L);
    }

    /** Null where it is not within the job's days any more. */
    private @Nullable Slot slot(PlannedTask times) {
        List<Window> pieces = new ArrayList<>();
        for (Stretch each : times.stretches()) {
            int from = minute(each.from());
            int to = minute(each.to());
            if (from < 0 || to > job.end() || to <= from) {
                return null;
            }
            pieces.add(new Window(from, to));
        }
        return new Slot(times.id(), pieces, known(times.people()));
    }

    private List<String> known(List<String> ids) {
        return ids.stream().filter(people::contains).toList();
    }

    // What happened

    private Log log(Map<String, LogEntry> happened) {
        List<Slot> done = new ArrayList<>();
        List<Log.Begun> begun = new ArrayList<>();
        Map<String, Integer> late = new HashMap<>();
        Map<String, Integer> blocked = new HashMap<>();
        happened.forEach((id, entry) -> {
            if (orders.contains(id)) {
                delivery(entry, late);
                return;
            }
            Task task = tasks.get(id);
            if (task == null) {
                assumed.add("The log has " + id + ", which is no task any more: it is left out.");
                return;
            }
            switch (entry.state()) {
                case DONE -> done.add(done(task, entry));
                case BEGUN -> begun.add(begun(task, entry));
                case LATE, BLOCKED -> {
                    blocked.put(id, entry.until() == null ? Log.NEVER : minute(entry.until()));
                    left(task, entry);
                }
            }
        });
        fullDays(done);
        return new Log(now, done, begun, late, blocked);
    }

    /** Whoever has worked as long as a day may be, by the log, gets nothing more that day: a time typed wrong does it, too. */
    private void fullDays(List<Slot> done) {
        int today = now - now % Job.DAY;
        for (Person person : job.people()) {
            BitSet worked = new BitSet();
            done.stream()
                    .filter(slot -> slot.people().contains(person.id()))
                    .flatMap(slot -> slot.pieces().stream())
                    .forEach(piece -> worked.set(Math.max(0, piece.from()), Math.max(0, piece.to())));
            int minutes = worked.get(today, today + Job.DAY).cardinality();
            boolean wouldBeFree = Stream.concat(person.onSite().stream(), person.remote().stream())
                    .anyMatch(free -> free.to() > now && free.from() < today + Job.DAY);
            if (wouldBeFree && minutes >= person.limits().minutesADay()) {
                assumed.add(
                        ("By the log %s has worked %s on %s, and a day is %s at most: nothing more is planned for %s that day."
                                        + " Where that is not so, mend the times in the log.")
                                .formatted(
                                        person.id(),
                                        said(minutes),
                                        job.at(today).toLocalDate(),
                                        said(person.limits().minutesADay()),
                                        person.id()));
            }
        }
    }

    private void delivery(LogEntry entry, Map<String, Integer> late) {
        switch (entry.state()) {
            case DONE -> late.put(entry.id(), entry.to() == null ? now : minute(entry.to()));
            case LATE, BLOCKED -> late.put(entry.id(), entry.until() == null ? Log.NEVER : minute(entry.until()));
            case BEGUN -> {} // on its way, as was known
        }
    }

    private Slot done(Task task, LogEntry entry) {
        Slot planned = accepted.get(task.id());
        int end = Math.max(
                1, entry.to() == null ? Math.min(now, planned == null ? now : planned.end()) : minute(entry.to()));
        int start;
        if (entry.from() != null) {
            start = minute(entry.from());
        } else { // nobody says when it was begun: it took as long as planned, and not from before its time
            int usual = end - task.length().planned(job.tick());
            start = planned != null && planned.start() < end ? Math.max(planned.start(), usual) : usual;
        }
        return new Slot(
                task.id(),
                worked(Math.clamp(start, 0, end - 1), end, task.length().planned(job.tick())),
                crew(task, entry, planned));
    }

    /** Nobody worked through the night: of what took days only the beginning and the end are known. */
    private List<Window> worked(int start, int end, int usual) {
        int lastDay = (end - 1) / Job.DAY * Job.DAY;
        if (start >= lastDay) {
            return List.of(new Window(start, end));
        }
        int firstEnd = Math.min(start + job.tick(), (start / Job.DAY + 1) * Job.DAY);
        return List.of(new Window(start, firstEnd), new Window(Math.max(lastDay, end - usual), end));
    }

    private Log.Begun begun(Task task, LogEntry entry) {
        Slot planned = accepted.get(task.id());
        int start = entry.from() != null ? minute(entry.from()) : planned != null ? planned.start() : now;
        start = Math.clamp(start, 0, now);
        int left;
        if (entry.left() != null) {
            left = minutes(entry);
        } else {
            int worked = task.length().mayPause() && planned != null ? before(planned) : now - start;
            left = Math.max(job.tick(), task.length().planned(job.tick()) - worked);
            assumed.add(
                    "What is begun takes as long as planned in all where the log does not say what is left (left).");
        }
        return new Log.Begun(task.id(), start, crew(task, entry, planned), left);
    }

    /** Minutes that the plan had for it until now. */
    private int before(Slot planned) {
        return planned.pieces().stream()
                .mapToInt(piece -> Math.max(0, Math.min(piece.to(), now) - piece.from()))
                .sum();
    }

    private static int minutes(LogEntry entry) {
        return entry.left() == null
                ? 1
                : Math.max(1, (int) Math.ceil(entry.left().seconds() / 60));
    }

    private List<String> crew(Task task, LogEntry entry, @Nullable Slot planned) {
        return !entry.people().isEmpty()
                ? known(entry.people())
                : planned != null ? planned.people() : task.crew().pinned();
    }

    /** What was begun before it stopped takes only what is left. */
    private void left(Task task, LogEntry entry) {
        if (entry.left() != null) {
            tasks.put(
                    task.id(),
                    new Task(
                            task.id(),
                            task.title(),
                            task.kind(),
                            task.mandatory(),
                            Length.of(minutes(entry)),
                            task.crew(),
                            task.site(),
                            task.means(),
                            task.timing()));
        }
    }

    // What is pinned

    private void pin(Pin pin, Log log) {
        Task task = tasks.get(pin.id());
        if (task == null) {
            assumed.add("The pin of " + pin.id() + " holds nothing: there is no such task any more.");
            return;
        }
        if (log.frozen(pin.id())) {
            return;
        }
        List<String> who = known(pin.people());
        Crew crew = who.isEmpty()
                ? task.crew()
                : new Crew(
                        Math.max(task.crew().count(), who.size()), task.crew().skills(), who);
        Timing is = task.timing();
        Timing timing = pin.from() == null
                ? is
                : new Timing(is.after(), is.deliveries(), is.earliest(), is.due(), start(pin.id(), pin.from(), is));
        tasks.put(
                task.id(),
                new Task(
                        task.id(),
                        task.title(),
                        task.kind(),
                        task.mandatory(),
                        task.length(),
                        crew,
                        task.site(),
                        task.means(),
                        timing));
    }

    private @Nullable Integer start(String id, LocalDateTime from, Timing is) {
        int minute = minute(from);
        if (minute < now || minute >= job.end()) {
            assumed.add("The pin of " + id + " to " + said(from)
                    + (minute < now ? " is past" : " is after the last day of the job") + ", and holds nothing.");
            return is.start();
        }
        int onGrid = minute - minute % job.tick();
        if (onGrid != minute) {
            assumed.add("The pin of " + id + " to " + said(from) + " is taken as " + said(job.at(onGrid))
                    + ": plans go in steps of " + job.tick() + " min.");
        }
        return onGrid;
    }

    private static String said(int minutes) {
        return minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
    }

    private static String said(LocalDateTime at) {
        return at.toString().replace('T', ' ');
    }
}
