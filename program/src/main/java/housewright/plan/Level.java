package housewright.plan;

/**
 * How good a plan is in one goal.
 *
 * @param value of the plan
 * @param bound no plan is better than this, given what the goals before it settled; equal to {@code value} when proved best
 */
public record Level(Goal goal, long value, long bound) {
    public Level {
        if (bound > value) {
            throw new IllegalArgumentException("%s is %s, better than its bound %s".formatted(goal, value, bound));
        }
    }

    public boolean proved() {
        return value == bound;
    }
}
