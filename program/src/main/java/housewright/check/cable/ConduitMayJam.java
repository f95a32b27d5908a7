package housewright.check.cable;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Life;
import housewright.model.Pathway;
import housewright.model.PathwayKind;
import housewright.model.Stage;
import housewright.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Three equal cables pulled together into a conduit of about three times their diameter wedge side by side in a bend. */
public final class ConduitMayJam implements Rule {
    static final Limit LEAST = Limit.least("bore to diameter, or else below 2.8,", 3.2, "");
    static final double BELOW = 2.8;

    private static final Card CARD = new Card(
            "conduit-may-jam",
            "Can three equal cables wedge side by side in a conduit?",
            Set.of(Severity.NOTE),
            new Source.FromMemory("Jam ratio of pulling guides"),
            Stage.ORDER,
            List.of(LEAST));

    private static final int CABLES = 3;

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.project().venue().pathways().values().stream()
                .filter(pathway -> pathway.kind() == PathwayKind.CONDUIT && pathway.bore() != null)
                .flatMap(pathway -> finding(evidence, pathway).stream());
    }

    private static Optional<Finding> finding(Evidence evidence, Pathway pathway) {
        List<Lead> leads = evidence.cabling().along(pathway);
        Length bore = pathway.bore();
        Length diameter = leads.size() == CABLES ? diameter(leads.getFirst()) : null;
        if (bore == null
                || diameter == null
                || leads.stream().noneMatch(lead -> lead.cable().life() == Life.NEW)
                || !leads.stream().allMatch(lead -> diameter.equals(diameter(lead)))) {
            return Optional.empty();
        }
        double ratio = bore.metres() / diameter.metres();
        if (ratio < BELOW || ratio >= evidence.limit(CARD, LEAST)) {
            return Optional.empty();
        }
        List<String> cables = leads.stream().map(Lead::id).toList();
        List<Subject> subjects = new ArrayList<>(List.of(Said.pathway(pathway.id())));
        subjects.addAll(Said.subjects(cables));
        return Optional.of(CARD.finding(
                Severity.NOTE,
                subjects,
                String.format(
                        Locale.ROOT,
                        "%s may wedge in %s: the bore is %.2f times their diameter, and from %s to %s three lie across it in"
                                + " a bend.",
                        Said.all(cables),
                        Said.place(pathway.id()),
                        ratio,
                        Said.number(BELOW),
                        Said.number(LEAST.value())),
                List.of(new Value("bore to diameter", ratio, LEAST.value(), "")),
                List.of(Fix.of(
                        "Pull them with lubricant and a fourth line among them, or take the next larger conduit."))));
    }

    private static @Nullable Length diameter(Lead lead) {
        return lead.type() == null ? null : lead.type().diameter();
    }
}
