package housewright.study;

import housewright.model.Types;
import housewright.plan.Job;
import housewright.signal.FeedProof;
import housewright.work.Work;
import java.time.LocalDate;
import java.util.List;

/**
 * What a plan is made for, out of a project and the work it implies.
 *
 * @param job what is asked; its tasks, people, hires, deliveries and events have the ids of the project's
 * @param assumed what was taken for granted where the project says nothing, as sentences
 * @param unplanned why no plan can be made at all, as a sentence; empty when one can
 */
public record PlanJob(Job job, List<String> assumed, String unplanned) {
    public PlanJob {
        assumed = List.copyOf(assumed);
    }

    /**
     * @param today the feeds as they are before the work: what works then must not stop without its successor
     * @param from the day from which an order that nobody has placed could be placed, and the first of the job where the
     *     project knows no earlier
     */
    static PlanJob of(Types types, Work work, List<FeedProof> today, LocalDate from) {
        return new PlanJobMaker(types, work, today, from).make();
    }
}
