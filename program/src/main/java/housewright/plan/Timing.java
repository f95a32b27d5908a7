package housewright.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What ties a task in time.
 *
 * @param after ids of tasks that must be ended before
 * @param deliveries ids of what must have arrived before
 * @param earliest first minute it may begin; 0 for any
 * @param due minute by which it must be ended; {@link #NO_DUE} for the job's deadline
 * @param start minute at which somebody pinned it, or null
 */
public record Timing(
        List<String> after,
        List<String> deliveries,
        int earliest,
        int due,
        @Nullable Integer start) {
    /** No due time of its own. */
    public static final int NO_DUE = Integer.MAX_VALUE;

    /** Whenever. */
    public static final Timing FREE = new Timing(List.of(), List.of(), 0, NO_DUE, null);

    public Timing {
        after = List.copyOf(after);
        deliveries = List.copyOf(deliveries);
    }
}
