package housewright.plan;

import org.jspecify.annotations.Nullable;

/**
 * A plan wished for.
 *
 * @param before the plan that held until now, from which as little as possible is to move; null for a first plan
 */
public record Request(Job job, Log log, @Nullable Schedule before, Effort effort) {
    public static Request of(Job job, Effort effort) {
        return new Request(job, Log.NOTHING, null, effort);
    }

    public Request withLog(Log happened) {
        return new Request(job, happened, before, effort);
    }
}
