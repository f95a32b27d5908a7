package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Cable;
import housewright.model.End;
import housewright.model.Stage;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A cable with an end that nobody has found or planned yet. Fine in a survey; it cannot be cut to length. */
public final class CableUnfinished implements Rule {
    private static final Card CARD = new Card(
            "cable-unfinished",
            "Is it known where both ends of every cable go?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.ORDER);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.project().cables().values().stream()
                .filter(cable -> evidence.moment().isThere("cables", cable.id(), cable.life()))
                .map(cable -> evidence.moment().isDone("cables", cable.id()) ? cable : cable.today())
                .filter(CableUnfinished::isUnfinished)
                .map(cable -> CARD.finding(
                        Severity.FIX,
                        List.of(Subject.cable(cable.id())),
                        "It is not known where " + cable.id() + ends(cable) + ".",
                        List.of(),
                        List.of(Fix.of("Enter both ends, or take the cable out."))));
    }

    private static boolean isUnfinished(Cable cable) {
        return cable.ways().isEmpty() && (!isKnown(cable.from()) || !isKnown(cable.to()));
    }

    private static String ends(Cable cable) {
        if (isKnown(cable.from())) {
            return " ends";
        }
        return isKnown(cable.to()) ? " starts" : " starts and ends";
    }

    private static boolean isKnown(@Nullable End end) {
        return end != null && end.ref() != null;
    }
}
