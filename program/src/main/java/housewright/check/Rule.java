package housewright.check;

import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One question of the trade, asked of every project. A rule that cries wolf is a defect: a clean project yields no
 * stop and no fix. Where the data a rule needs is broken, and another rule reports that, it stays silent.
 */
public interface Rule {
    /** What the rule is. */
    Card card();

    Stream<Finding> check(Evidence evidence);

    /**
     * A figure that a rule holds to.
     *
     * @param what it is a limit of, in a few words
     * @param value in {@code unit}
     * @param unit as written after a number; empty for a plain count
     * @param atMost true where it must not be passed, false where it must be reached
     */
    record Limit(String what, double value, String unit, boolean atMost) {
        public static Limit most(String what, double value, String unit) {
            return new Limit(what, value, unit, true);
        }

        public static Limit least(String what, double value, String unit) {
            return new Limit(what, value, unit, false);
        }

        /** "loss at most 20 dB". */
        public String text() {
            String number = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
            return what + (atMost ? " at most " : " at least ") + number + (unit.isEmpty() ? "" : " " + unit);
        }
    }

    /**
     * What a rule is.
     *
     * @param id words with hyphens that name the fault, such as {@code feed-late}; a project switches it off by it
     * @param question what is asked, in the words of the trade, with a question mark
     * @param severities its findings may have
     * @param source what says that it is a fault
     * @param due the stage of the job from which on its findings matter
     * @param limits what it holds to, the one that a project may tighten first; none where it asks for yes or no
     */
    record Card(String id, String question, Set<Severity> severities, Source source, Stage due, List<Limit> limits) {
        public Card(String id, String question, Set<Severity> severities, Source source, Stage due) {
            this(id, question, severities, source, due, List.of());
        }

        public Card {
            severities = Set.copyOf(severities);
            limits = List.copyOf(limits);
            if (!question.endsWith("?") || severities.isEmpty()) {
                throw new IllegalArgumentException("The rule " + id + " needs a question and a severity");
            }
        }

        public Finding finding(
                Severity severity, List<Subject> subjects, String message, List<Value> evidence, List<Fix> fixes) {
            if (!severities.contains(severity)) {
                throw new IllegalArgumentException("The rule " + id + " does not say that it may " + severity.word());
            }
            return new Finding(id, severity, due, subjects, message, evidence, source, fixes);
        }
    }
}
