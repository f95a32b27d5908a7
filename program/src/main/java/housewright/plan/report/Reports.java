package housewright.plan.report;

import housewright.plan.Clash;
import housewright.plan.Event;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Move;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.Promise;
import housewright.plan.Readiness;
import housewright.plan.Ready;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Solved;
import housewright.plan.Task;
import housewright.plan.axis.Grid;
import housewright.plan.axis.Measures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes a plan of a schedule. */
public final class Reports {
    private Reports() {}

    /** The plan, with why and what clashes. */
    public static Plan plan(Request request, Solved solved) {
        return plan(request, solved, Clashes.of(request, solved.schedule()));
    }

    /** The plan as it stands, without looking for what clashes, which takes long where much is missed. */
    public static Plan standing(Request request, Solved solved) {
        return plan(request, solved, List.of());
    }

    /**
     * Why a task can never be done in time, whatever else is planned: shown without a search, from times, hours, skills and
     * what must come before it. Empty where that shows nothing, which does not say that it can be done.
     */
    public static Optional<Clash> impossible(Request request, String task) {
        return Clashes.alone(request, task);
    }

    private static Plan plan(Request request, Solved solved, List<Clash> clashes) {
        Job job = request.job();
        Log log = request.log();
        Schedule schedule = solved.schedule();
        Grid grid = Grid.of(job, log);
        Occupied occupied = new Occupied(job, log, grid, schedule, request.before());
        Map<String, Integer> latest = Slack.of(job, log, grid, schedule);
        List<Planned> tasks = new ArrayList<>();
        for (Slot slot : schedule.slots()) {
            Task task = occupied.task(slot.task());
            tasks.add(new Planned(
                    slot,
                    task.title(),
                    task.kind(),
                    task.site().place(),
                    task.means().hire(),
                    task.timing().after(),
                    latest.getOrDefault(slot.task(), slot.start()),
                    occupied.whyNotEarlier(slot)));
        }
        return new Plan(
                tasks,
                events(job, log, schedule),
                solved.levels(),
                missed(job, log, schedule, occupied),
                clashes,
                moves(request, schedule, occupied),
                solved.ended(),
                solved.remark());
    }

    /**
     * What one person could begin now, what most depends on first.
     *
     * @param schedule the plan that holds, which says what is to wait for an event
     */
    public static List<Ready> ready(Job job, Log log, Schedule schedule, String person) {
        return ReadyNow.of(job, log, schedule, job.person(person));
    }

    private static List<Readiness> events(Job job, Log log, Schedule schedule) {
        Map<String, Slot> slots = schedule.byTask();
        List<Readiness> events = new ArrayList<>();
        for (Event event : job.events()) {
            List<String> lacks = new ArrayList<>();
            for (Promise promise : job.promises()) {
                if (promise.event().equals(event.id())
                        && !Measures.over(job, log, promise)
                        && !Measures.kept(job, promise, slots)) {
                    lacks.add("%s is neither left as it was until %s is over nor proven anew before it."
                            .formatted(promise.capability(), event.name()));
                }
            }
            if (event.deadline()) {
                for (Task task : job.tasks()) {
                    Slot slot = slots.get(task.id());
                    boolean due =
                            task.mandatory() && job.dueOf(task) <= event.when().from();
                    if (due && (slot == null || slot.end() > event.when().from())) {
                        lacks.add("%s is not done by then.".formatted(task.title()));
                    }
                }
            }
            events.add(new Readiness(event.id(), lacks));
        }
        return events;
    }

    private static List<String> missed(Job job, Log log, Schedule schedule, Occupied occupied) {
        Map<String, Slot> slots = schedule.byTask();
        List<String> missed = new ArrayList<>();
        for (Promise promise : job.promises()) {
            if (!Measures.over(job, log, promise) && !Measures.kept(job, promise, slots)) {
                missed.add("%s finds %s in pieces."
                        .formatted(job.event(promise.event()).name(), promise.capability()));
            }
        }
        for (Task task : job.tasks()) {
            Slot slot = slots.get(task.id());
            if (slot == null) {
                missed.add("%s%s is left out."
                        .formatted(occupied.name(task.id()), task.mandatory() ? "" : ", which is optional,"));
            } else if (slot.end() > job.dueOf(task) && !log.frozen(task.id())) {
                missed.add("%s ends %s, but is due %s."
                        .formatted(occupied.name(task.id()), job.spoken(slot.end()), job.spoken(job.dueOf(task))));
            }
        }
        return missed;
    }

    private static List<Move> moves(Request request, Schedule schedule, Occupied occupied) {
        Schedule before = request.before();
        List<Move> moves = new ArrayList<>();
        if (before == null) {
            return moves;
        }
        Map<String, Slot> slots = schedule.byTask();
        for (Slot was : before.slots()) {
            boolean known =
                    request.job().tasks().stream().anyMatch(task -> task.id().equals(was.task()));
            Slot is = slots.get(was.task());
            if (known && !request.log().frozen(was.task()) && Measures.moved(was, is)) {
                moves.add(new Move(
                        was,
                        is,
                        occupied.whyNotThere(was)
                                .orElse("It makes room for others, or its people are no longer free then.")));
            }
        }
        return moves;
    }
}
