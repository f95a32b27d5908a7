package housewright.plan.check;

/**
 * A rule that a schedule breaks.
 *
 * @param rule which, such as {@code skill} or {@code double-booked}
 * @param task id of the task
 * @param says in a sentence
 */
public record Breach(String rule, String task, String says) {}
