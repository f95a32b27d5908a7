package housewright.plan;

/**
 * What a task may need of its place. A task that needs one shares the place at that time with no task that spoils it,
 * and with no other that needs the same: a second sound test plays as well, and the lamp aimed by one crew is stray light
 * to the other.
 */
public enum Condition {
    /** No noise: drilling spoils it. */
    QUIET,
    /** No light: work that needs to see spoils it. */
    DARK,
    /** Nobody else: every task on site spoils it. */
    EMPTY
}
