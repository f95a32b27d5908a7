package housewright.plan;

/**
 * How hard to look for a plan.
 *
 * @param seed of all chance
 * @param seconds for all goals together; of the clock, or with {@code repeatable} of the solver's own count of its work
 * @param repeatable whether the same input and seed give the same plan: one worker, and no look at the clock
 * @param tolerance minutes by which the finish may move later for the sake of fewer hire days
 */
public record Effort(long seed, double seconds, boolean repeatable, int tolerance) {
    public Effort {
        if (!(seconds > 0) || tolerance < 0) {
            throw new IllegalArgumentException("Not an effort: %s s, tolerance %s min".formatted(seconds, tolerance));
        }
    }

    public static Effort repeatable(long seed, double seconds) {
        return new Effort(seed, seconds, true, 120);
    }

    public static Effort quick(long seed, double seconds) {
        return new Effort(seed, seconds, false, 120);
    }
}
