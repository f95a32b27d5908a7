package housewright.check;

import housewright.finding.Exempted;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.finding.RuleFailure;
import housewright.finding.Subject;
import housewright.model.Exemption;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Runs rules. */
public final class Checks {
    private Checks() {}

    /** Runs all rules; one that throws is reported apart, and the others still run. */
    public static Findings run(List<Rule> rules, Evidence evidence) {
        List<Finding> all = new ArrayList<>();
        List<RuleFailure> failures = new ArrayList<>();
        for (Rule rule : rules) {
            try {
                all.addAll(rule.check(evidence).toList());
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
