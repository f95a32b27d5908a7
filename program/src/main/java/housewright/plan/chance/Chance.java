package housewright.plan.chance;

import java.util.List;

/**
 * How likely an event finds all it needs.
 *
 * @param event id
 * @param likely the coarse range, which is what people are told
 * @param kept draws in which it was ready
 * @param draws all draws
 * @param hangsOn what it hangs on, most first
 */
public record Chance(String event, Likely likely, int kept, int draws, List<Cause> hangsOn) {

    /**
     * A task or delivery that readiness hangs on.
     *
     * @param id of the task or delivery
     * @param share of the failed draws in which it took longer, or came later, than in the plan, less the same share of the
     *     draws that kept the day; 0 to 1
     */
    public record Cause(String id, double share) {}

    public Chance {
        hangsOn = List.copyOf(hangsOn);
    }
}
