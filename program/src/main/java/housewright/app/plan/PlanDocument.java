package housewright.app.plan;

import housewright.model.Doc;
import housewright.plan.Goal;
import housewright.plan.Job;
import housewright.plan.Move;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.Readiness;
import housewright.plan.Slot;
import housewright.plan.chance.Chance;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What {@code plan --json} prints. */
public record PlanDocument(
        @Doc("In order of time") List<TaskPart> tasks,
        List<EventPart> events,

        @Doc("How good the plan is, the weightiest goal first")
        List<GoalPart> objective,

        @Doc("What no plan can be better than, goal by goal")
        List<GoalPart> bound,

        @Doc("What it leaves undone or too late, in sentences")
        List<String> missed,

        @Doc("Why, each with the smallest set of wishes found that cannot hold together")
        List<ClashPart> clashes,

        @Doc("What it puts elsewhere than the accepted plan")
        List<MovePart> moved,

        @Doc("Taken for granted where the project says nothing")
        List<String> assumed) {

    /** One task in the plan. */
    public record TaskPart(
            String id,
            String title,
            String kind,
            @Doc("Local time, such as 2027-03-15T08:30") String start,
            @Doc("Local time") String end,
            @Doc("Ids of who does it") List<String> people,
            @Doc("Ids of what is hired for it") List<String> hires,

            @Doc("Id of the room; null where it does not matter") @Nullable
            String place,

            @Doc("Ids of what comes first") List<String> after,
            @Doc("By how much its start may slip") int slackMinutes,
            @Doc("Why it is not earlier") String why) {}

    /** One event. */
    public record EventPart(
            String id,

            @Doc("All that it needs is whole when it begins")
            boolean ready,

            @Doc("How likely that is, no finer than the lengths are guessed; null where it was not reckoned") @Nullable
            String likelihood,

            @Doc("What is not whole, in sentences") List<String> lacks) {}

    /** A goal and its figure. */
    public record GoalPart(
            Goal goal,

            @Doc("Minutes since the job's first midnight for finish, minutes for idle, else a count")
            long value) {}

    /** Wishes that cannot hold together. */
    public record ClashPart(
            String what,
            List<String> tasks,
            List<String> wishes,
            @Doc("Shown, and not only not found") boolean proved,
            List<String> ways) {}

    /** A task that is elsewhere than in the accepted plan. */
    public record MovePart(
            String id,

            @Doc("Local time it began at in the accepted plan")
            String was,

            @Doc("Ids of who was to do it") List<String> wasBy,

            @Doc("Local time it begins at now; null where it is left out") @Nullable
            String is,

            @Doc("Ids of who does it now") List<String> isBy,
            String why) {}

    public static PlanDocument of(Job job, Plan plan, List<Chance> chances, List<String> assumed) {
        return new PlanDocument(
                plan.tasks().stream().map(each -> task(job, each)).toList(),
                plan.events().stream().map(each -> event(each, chances)).toList(),
                plan.levels().stream()
                        .map(level -> new GoalPart(level.goal(), level.value()))
                        .toList(),
                plan.levels().stream()
                        .map(level -> new GoalPart(level.goal(), level.bound()))
                        .toList(),
                plan.missed(),
                plan.clashes().stream()
                        .map(each ->
                                new ClashPart(each.what(), each.tasks(), each.wishes(), each.proved(), each.ways()))
                        .toList(),
                plan.moves().stream().map(move -> move(job, move)).toList(),
                assumed);
    }

    private static TaskPart task(Job job, Planned task) {
        return new TaskPart(
                task.slot().task(),
                task.title(),
                task.kind(),
                job.at(task.slot().start()).toString(),
                job.at(task.slot().end()).toString(),
                task.slot().people(),
                task.hire() == null ? List.of() : List.of(task.hire()),
                task.place(),
                task.after(),
                task.slackMinutes(),
                task.why());
    }

    private static MovePart move(Job job, Move move) {
        Slot to = move.to();
        return new MovePart(
                move.from().task(),
                job.at(move.from().start()).toString(),
                move.from().people(),
                to == null ? null : job.at(to.start()).toString(),
                to == null ? List.of() : to.people(),
                move.why());
    }

    private static EventPart event(Readiness event, List<Chance> chances) {
        return new EventPart(
                event.event(),
                event.ready(),
                chances.stream()
                        .filter(chance -> chance.event().equals(event.event()))
                        .map(chance -> chance.likely().word())
                        .findFirst()
                        .orElse(null),
                event.lacks());
    }
}
