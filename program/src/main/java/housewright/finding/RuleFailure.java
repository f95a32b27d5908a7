package housewright.finding;

/**
 * A rule that failed by a fault of the program; what it would have found is not known.
 *
 * @param what the failure, for whoever mends the program
 */
public record RuleFailure(String rule, String what) {}
