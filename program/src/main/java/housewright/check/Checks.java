package housewright.check;

import housewright.finding.Exempted;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.finding.RuleFailure;
import housewright.finding.Subject;
import housewright.model.Exemption;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Runs rules. */
public final class Checks {
    private Checks() {}

    /** Runs all rules; one that throws is reported apart, and the others still run. */
    public static Findings run(List<Rule> rules, Evidence evidence) {
        List<Finding> all = new ArrayList<>();
        List<RuleFailure> failures = new ArrayList<>();
        for (Rule rule : rules) {
            List<Finding> found = new ArrayList<>();
            try {
                rule.check(evidence)
                        .map(finding -> finding.under(evidence.ruleSet()))
                        .forEach(found::add);
                all.addAll(found);
            } catch (RuntimeException e) {
                failures.add(new RuleFailure(rule.card().id(), said(e)));
            }
        }
        all.sort(Finding.REPORT_ORDER);
        Stage stage = evidence.project().about().stage();
        List<Finding> due = new ArrayList<>();
        List<Finding> later = new ArrayList<>();
        List<Exempted> exempted = new ArrayList<>();
        for (Finding finding : all) {
            Exemption exemption = exemption(finding, evidence.project().exempt());
            if (exemption != null) {
                exempted.add(new Exempted(finding, exemption));
            } else if (finding.due().compareTo(stage) > 0) {
                later.add(finding);
            } else {
                due.add(finding);
            }
        }
        return new Findings(due, later, exempted, failures);
    }

    /**
     * What two parts of the rules found, as if they had been run together.
     *
     * @param rules all of them, in their order
     */
    public static Findings together(List<Rule> rules, Findings one, Findings other) {
        List<String> order = rules.stream().map(rule -> rule.card().id()).toList();
        return new Findings(
                both(one.due(), other.due(), Finding.REPORT_ORDER),
                both(one.notYetDue(), other.notYetDue(), Finding.REPORT_ORDER),
                both(one.exempted(), other.exempted(), Comparator.comparing(Exempted::finding, Finding.REPORT_ORDER)),
                both(
                        one.failures(),
                        other.failures(),
                        Comparator.comparingInt(failure -> order.indexOf(failure.rule()))));
    }

    private static <T> List<T> both(List<T> one, List<T> other, Comparator<T> order) {
        return Stream.concat(one.stream(), other.stream()).sorted(order).toList();
    }

    private static String said(RuntimeException e) {
        StackTraceElement[] trace = e.getStackTrace();
        return e + (trace.length == 0 ? "" : " at " + trace[0]);
    }

    private static @Nullable Exemption exemption(Finding finding, List<Exemption> exemptions) {
        for (Exemption exemption : exemptions) {
            if (exemption.rule().equals(finding.rule()) && concerns(exemption.subject(), finding)) {
                return exemption;
            }
        }
        return null;
    }

    private static boolean concerns(@Nullable String subject, Finding finding) {
        return subject == null || finding.subjects().stream().map(Subject::path).anyMatch(subject::equals);
    }
}
