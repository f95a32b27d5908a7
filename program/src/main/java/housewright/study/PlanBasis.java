package housewright.study;

import housewright.model.LogEntry;
import housewright.plan.Effort;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Request;
import housewright.plan.Schedule;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;

/**
 * What a plan is asked of at a moment: the job with its pins, what has happened on site, and the plan that holds.
 *
 * @param accepted the plan that holds, as far as its tasks and people are still there; empty where there is none
 * @param assumed what was taken for granted where the project says nothing, as sentences
 * @param unplanned why no plan can be made at all, as a sentence; empty when one can
 */
public record PlanBasis(Job job, Log log, Schedule accepted, List<String> assumed, String unplanned) {
    public PlanBasis {
        assumed = List.copyOf(assumed);
    }

    /**
     * @param now nothing that is not begun yet begins before it; outside of the job's days, their nearest moment
     * @param happened by the ids of tasks and orders
     */
    static PlanBasis of(Study study, LocalDateTime now, Map<String, LogEntry> happened) {
        return new OnSite(study.project(), study.planJob(now.toLocalDate()), now).basis(happened);
    }

    public boolean isAccepted() {
        return !accepted.slots().isEmpty();
    }

    /** The plan that moves as little as it can of the one that holds; a first one where none does. */
    public Request request(Effort effort) {
        return new Request(job, log, isAccepted() ? accepted : null, effort);
    }

    /** A plan made as if none held. */
    public Request anew(Effort effort) {
        return new Request(job, log, null, effort);
    }
}
