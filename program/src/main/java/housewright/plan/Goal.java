package housewright.plan;

/** What a plan is judged by, the weightiest first. Less is better in each. */
public enum Goal {
    /** Weighted sum of what cannot be done; see {@link Weights}. */
    MISSED,
    /** Only when a plan is made anew: tasks whose start or crew differ from the plan before. */
    MOVED,
    /** Minute at which the last mandatory task that the deadline waits for is ended. */
    FINISH,
    /** Days for which something is hired, each hire counted. */
    HIRE_DAYS,
    /** Times that something hired is taken from one spot to another. */
    HIRE_MOVES,
    /** Minutes between tasks within people's days on site, and on the road. */
    IDLE
}
