package housewright.plan;

import java.util.List;

/**
 * What a solver found.
 *
 * @param levels one for each goal it looked at, in the order of {@link Goal}
 */
public record Solved(Schedule schedule, List<Level> levels, Ended ended, String remark) {
    /** How the search came to its end. */
    public enum Ended {
        /** Every goal is proved best. */
        PROVED,
        /** Out of time or work. */
        LIMIT,
        /** Somebody stopped it. */
        STOPPED,
        /** The solver broke; {@code remark} says how. What it had found until then is kept. */
        BROKEN
    }

    public Solved {
        levels = List.copyOf(levels);
    }
}
