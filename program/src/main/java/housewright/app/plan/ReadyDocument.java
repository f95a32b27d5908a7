package housewright.app.plan;

import housewright.model.Doc;
import housewright.plan.Job;
import housewright.plan.Ready;
import java.time.LocalDateTime;
import java.util.List;

/** What {@code plan --ready PERSON --json} prints. */
public record ReadyDocument(
        @Doc("Id of whose it is") String person,
        @Doc("Local time it holds for") String now,

        @Doc("What the person could begin, what most work waits for first")
        List<ReadyPart> tasks) {

    /** One task. */
    public record ReadyPart(
            String id,
            String title,
            @Doc("Minutes it takes") int takes,
            @Doc("How many others it takes") int others,

            @Doc("Tasks that cannot begin before it is done")
            List<String> waiting,

            @Doc("Their minutes together") int waitingMinutes) {}

    public static ReadyDocument of(Job job, String person, LocalDateTime now, List<Ready> ready) {
        return new ReadyDocument(
                person,
                now.toString(),
                ready.stream()
                        .map(each -> new ReadyPart(
                                each.task(),
                                job.task(each.task()).title(),
                                job.task(each.task()).length().planned(job.tick()),
                                each.with(),
                                each.waiting(),
                                each.minutes()))
                        .toList());
    }
}
