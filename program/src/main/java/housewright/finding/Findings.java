package housewright.finding;

import java.util.List;

/**
 * What the rules found, each list of findings in {@link Finding#REPORT_ORDER}.
 *
 * @param due matter at the project's stage
 * @param notYetDue matter from a later stage on: counted, not shown
 * @param exempted switched off by the project
 * @param failures of rules, in the order of the rules
 */
public record Findings(
        List<Finding> due, List<Finding> notYetDue, List<Exempted> exempted, List<RuleFailure> failures) {
    public Findings {
        due = List.copyOf(due);
        notYetDue = List.copyOf(notYetDue);
        exempted = List.copyOf(exempted);
        failures = List.copyOf(failures);
    }

    /** Somebody could be hurt, something would be damaged, or the job fails on the day. */
    public boolean stop() {
        return !due.isEmpty() && due.getFirst().severity() == Severity.STOP;
    }

    public long count(Severity severity) {
        return due.stream().filter(finding -> finding.severity() == severity).count();
    }
}
