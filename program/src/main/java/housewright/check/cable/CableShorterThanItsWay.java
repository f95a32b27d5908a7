package housewright.check.cable;

import housewright.cable.Cabling;
import housewright.cable.Lead;
import housewright.cable.Span;
import housewright.cable.Span.Basis;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Pathway;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A stated length that does not reach along the pathways the cable is said to run. A cable that is still to be bought
 * wants slack at both ends besides; one that lies there already reaches as it is.
 */
public final class CableShorterThanItsWay implements Rule {
    /** One metre at each end: the least of CAB-12. */
    static final Limit SLACK = Limit.least("left over for both ends of new cable", 2, "m");

    private static final Card CARD = new Card(
            "cable-shorter-than-its-way",
            "Is every stated length enough for the pathways the cable runs along, and for its ends?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(SLACK));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double slack = evidence.limit(CARD, SLACK);
        Cabling cabling = evidence.cabling();
        List<Finding> findings = new ArrayList<>();
        for (Lead lead : cabling.leads()) {
            Span span = lead.span();
            Double way = span == null || span.basis() != Basis.STATED ? null : way(cabling, lead);
            if (way == null || span == null) {
                continue;
            }
            double left = span.metres() - way;
            if (left < 0 || (left < slack && Recut.planned(evidence, lead).isPresent())) {
                findings.add(finding(evidence, lead, span.metres(), way, slack));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Lead lead, double metres, double way, double slack) {
        double left = metres - way;
        String pathways = Said.all(lead.cable().via().stream().map(Said::place).toList());
        String message = left < 0
                ? lead.id() + " is " + Said.metres(-left) + " too short: it is stated as " + Said.metres(metres)
                        + ", and " + pathways + " alone " + (lead.cable().via().size() == 1 ? "is " : "are ")
                        + Said.metres(way) + "."
                : lead.id() + " has " + Said.metres(left) + " left for both ends: it is stated as "
                        + Said.metres(metres) + ", and its pathways are " + Said.metres(way) + "; plan "
                        + Said.metres(slack) + " at least.";
        String enough = Said.metres(way + 2 * Span.SLACK_M);
        Fix fix = Recut.planned(evidence, lead)
                .map(cable -> Recut.otherLength(
                        cable,
                        null,
                        "Make it " + enough + ": its pathways and " + Said.metres(Span.SLACK_M) + " at each end."))
                .orElseGet(() ->
                        Fix.of("Measure the cable and the way, and correct what is wrong, or join on a new one."));
        return CARD.finding(
                left < 0 ? Severity.FIX : Severity.NOTE,
                Said.subjects(List.of(lead.id())),
                message,
                List.of(new Value("left over", left, left < 0 ? 0 : slack, "m")),
                List.of(fix));
    }

    /** Null where it runs along no pathway, or one's length is not known. */
    private static @Nullable Double way(Cabling cabling, Lead lead) {
        double sum = 0;
        for (Pathway pathway : lead.pathways()) {
            Double metres = cabling.metres(pathway);
            if (metres == null) {
                return null;
            }
            sum += metres;
        }
        return lead.pathways().isEmpty() ? null : (Double) sum;
    }
}
