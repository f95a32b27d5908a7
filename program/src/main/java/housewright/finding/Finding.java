package housewright.finding;

import housewright.model.RuleSet;
import housewright.model.Stage;
import java.util.Comparator;
import java.util.List;

/**
 * One thing that is wrong, worded for the person who can put it right.
 *
 * @param rule id of the rule that found it
 * @param due the stage of the job from which on it matters; before, it is counted and not shown
 * @param subjects what it is about, the one to look at first in front
 * @param message what is wrong, as one sentence, the fault first
 * @param evidence the figures it rests on
 * @param source what says that it is a fault
 * @param fixes ways to put it right, the best first
 */
public record Finding(
        String rule,
        Severity severity,
        Stage due,
        List<Subject> subjects,
        String message,
        List<Value> evidence,
        Source source,
        List<Fix> fixes) {

    /** Worst first, then by subject, then by rule: two runs print the same report. */
    public static final Comparator<Finding> REPORT_ORDER = Comparator.comparing(Finding::severity)
            .thenComparing(finding -> finding.subjects().getFirst())
            .thenComparing(Finding::rule)
            .thenComparing(Finding::message);

    public Finding {
        subjects = List.copyOf(subjects);
        evidence = List.copyOf(evidence);
        fixes = List.copyOf(fixes);
        if (subjects.isEmpty() || message.isBlank()) {
            throw new IllegalArgumentException("A finding of " + rule + " needs a subject and a message");
        }
        if (severity != Severity.NOTE && fixes.isEmpty()) {
            throw new IllegalArgumentException("A finding of " + rule + " that wants settling says how");
        }
    }

    /** The same, resting on what applies under a set of rules. */
    public Finding under(RuleSet set) {
        Source applies = source.in(set);
        return applies.equals(source)
                ? this
                : new Finding(rule, severity, due, subjects, message, evidence, applies, fixes);
    }
}
