package housewright.plan;

/** Hears from a search, on the searching thread, and may stop it. */
public interface Progress {
    /** Deaf, and never stops. */
    Progress NONE = new Progress() {};

    /** The best plan so far for a goal, and what no plan can be better than. */
    default void better(Schedule schedule, Level level) {}

    /** A better bound. */
    default void bound(Level level) {}

    /** Asked now and then: whether to stop and give the best so far. */
    default boolean stopped() {
        return false;
    }
}
