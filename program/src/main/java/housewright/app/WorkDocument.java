package housewright.app;

import housewright.model.Doc;
import housewright.model.RoomCondition;
import housewright.model.TaskKind;
import housewright.study.Study;
import housewright.work.Work;
import housewright.work.WorkTask;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What {@code work --json} prints. */
public record WorkDocument(
        @Doc("Name of the project") String project,
        @Doc("Each after those before it") List<TaskPart> tasks,

        @Doc("What the project says of its tasks and cannot be, and what it lacks")
        List<String> notes) {

    /** One task. */
    public record TaskPart(
            @Doc("Stable: kind and id of what it is about, or the project's own")
            String id,

            String title,
            TaskKind kind,

            @Doc("Every kind of work in it, the main one first")
            List<TaskKind> does,

            @Doc("The difference it comes from") String why,

            @Doc("Section and id of what it changes, the main one first, such as cables.C501")
            List<String> about,

            LengthPart takes,
            @Doc("People at it at once") int crew,
            @Doc("Each of which one of the crew must have") List<String> skills,

            @Doc("People who do it, where the project says so")
            List<String> who,

            @Doc("Each of which it needs while it lasts") List<String> hires,
            @Doc("Where it is done") List<String> places,

            @Doc("Rooms it is done in, or whose state it needs")
            List<String> rooms,

            @Doc("Highest point of it above the floor, in m; null where nobody knows") @Nullable
            Double heightM,

            @Doc("Above people's heads, or what it hangs is")
            boolean overhead,

            @Doc("Done from afar") boolean remote,
            @Doc("To be done before the visit") boolean beforehand,
            @Doc("What the room must be") List<RoomCondition> conditions,
            @Doc("Orders whose goods it uses") List<String> deliveries,
            @Doc("What it uses that is in no order") List<String> unordered,

            @Doc("Tasks that come first, none that another of them implies")
            List<String> after,

            @Doc("Feeds that work today and stop working with it")
            List<String> takesApart,

            @Doc("Feeds that it proves") List<String> proves,

            @Doc("The event at which it is held; null where it is free") @Nullable
            String event,

            @Doc("Nothing new waits for it: it can stay until the first service has passed")
            boolean mayWait,

            @Doc("It can be left and taken up again on another day")
            boolean mayPause,

            @Doc("The project's own task") boolean own,
            @Doc("Worked out, and changed by the project") boolean changed,

            @Doc("What it is made of where like tasks are done in one go, each in words; else empty")
            List<String> parts,

            @Doc("What could hurt somebody") List<String> cautions,

            @Doc("What was taken for granted where the project says nothing")
            List<String> assumed) {}

    /** How long, for its crew. */
    public record LengthPart(
            @Doc("Minutes when all goes well") int least,
            @Doc("Minutes most often") int likely,
            @Doc("Minutes when it goes badly") int most,

            @Doc("The labour units it is the sum of; empty where the project states it")
            List<PortionPart> reckoned) {}

    /** So many of a labour unit. */
    public record PortionPart(
            @Doc("Id of the labour unit") String unit,
            double count,
            @Doc("What it is counted by") String per) {}

    public static WorkDocument of(Study study) {
        Work work = study.work();
        return new WorkDocument(
                study.project().about().name(),
                work.tasks().stream().map(WorkDocument::task).toList(),
                work.notes());
    }

    private static TaskPart task(WorkTask task) {
        return new TaskPart(
                task.id(),
                task.title(),
                task.kind(),
                task.does(),
                task.why(),
                task.about(),
                new LengthPart(
                        task.takes().least(),
                        task.takes().likely(),
                        task.takes().most(),
                        task.reckoned().stream()
                                .map(part -> new PortionPart(part.unit(), Parts.rounded(part.count()), part.per()))
                                .toList()),
                task.crew(),
                task.skills(),
                task.who(),
                task.hires(),
                task.places(),
                task.rooms(),
                task.heightM() == null ? null : Parts.rounded(task.heightM()),
                task.overhead(),
                task.remote(),
                task.beforehand(),
                task.conditions(),
                task.deliveries(),
                task.unordered(),
                task.after(),
                task.takesApart(),
                task.proves(),
                task.event(),
                task.mayWait(),
                task.mayPause(),
                task.own(),
                task.changed(),
                task.parts(),
                task.cautions(),
                task.assumed());
    }
}
