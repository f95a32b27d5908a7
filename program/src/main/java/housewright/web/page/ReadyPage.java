package housewright.web.page;

import housewright.app.Now;
import housewright.app.plan.Standing;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Ready;
import housewright.plan.Task;
import java.util.List;

/**
 * What one person could do at this moment.
 *
 * @param people who may be asked about
 * @param begun what the person is at
 * @param rows what they could begin, what most work waits for first
 */
public record ReadyPage(
        String answer, String under, List<Choice> people, String person, List<Row> begun, List<Row> rows) {
    public ReadyPage {
        people = List.copyOf(people);
        begun = List.copyOf(begun);
        rows = List.copyOf(rows);
    }

    /** @param says why it is worth beginning, or how long it still takes */
    public record Row(String task, String href, String title, String where, String takes, String says) {}

    public static ReadyPage of(Now now, Standing standing, String person, List<Ready> ready, String home) {
        Job job = standing.basis().job();
        List<Choice> people = now.project().people().keySet().stream()
                .map(id -> new Choice(id, home + "/now?person=" + TaskWords.encoded(id), id.equals(person)))
                .toList();
        String at = TaskWords.moment(standing.now());
        if (person.isEmpty() || !standing.basis().unplanned().isEmpty()) {
            return new ReadyPage(
                    person.isEmpty()
                            ? "Nobody is entered yet who could do anything"
                            : standing.basis().unplanned(),
                    "",
                    people,
                    person,
                    List.of(),
                    List.of());
        }
        List<Row> begun = standing.basis().log().begun().stream()
                .filter(each -> each.people().contains(person))
                .map(each -> begun(job, each, home))
                .toList();
        String can = ready.isEmpty()
                ? person + " can begin nothing now"
                : person + " can begin " + ready.size() + (ready.size() == 1 ? " task" : " tasks") + " now";
        return new ReadyPage(
                can,
                "As things are on " + at + ", what most work waits for first."
                        + (standing.plan() == null
                                ? " No plan is accepted yet, so what should wait for an event may be among them."
                                : ""),
                people,
                person,
                begun,
                ready.stream().map(each -> row(job, each, home)).toList());
    }

    private static Row begun(Job job, Log.Begun begun, String home) {
        Task task = job.task(begun.task());
        return new Row(
                task.id(),
                TaskPage.href(home, task.id()),
                task.title(),
                where(task),
                "",
                "About " + TaskWords.minutes(begun.left()) + " more.");
    }

    private static Row row(Job job, Ready ready, String home) {
        Task task = job.task(ready.task());
        return new Row(
                task.id(),
                TaskPage.href(home, task.id()),
                task.title(),
                where(task),
                TaskWords.minutes(task.length().planned(job.tick())),
                ready.says());
    }

    private static String where(Task task) {
        String place = task.site().place() == null ? "" : task.site().place();
        String spot = task.site().spot();
        return spot.isEmpty() || spot.equals(place) ? place : place.isEmpty() ? spot : place + ", " + spot;
    }
}
