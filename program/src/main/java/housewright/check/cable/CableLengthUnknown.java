package housewright.check.cable;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.Stage;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Cables whose length nobody has said, of a type whose length matters: one note for all, since it is one walk. */
public final class CableLengthUnknown implements Rule {
    private static final Card CARD = new Card(
            "cable-length-unknown",
            "Is the length of every cable known where it decides whether the signal gets through?",
            Set.of(Severity.NOTE),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<String> unknown = evidence.cabling().leads().stream()
                .filter(lead -> lead.span() == null && matters(lead.type()) && isPluggedIn(lead))
                .map(Lead::id)
                .toList();
        if (unknown.isEmpty()) {
            return Stream.empty();
        }
        String message = (unknown.size() == 1
                        ? "The length of one cable is"
                        : "The lengths of " + unknown.size() + " cables are")
                + " not known, so nothing that depends on it is checked: " + Said.some(unknown) + ".";
        return Stream.of(CARD.finding(
                Severity.NOTE,
                Said.subjects(unknown),
                message,
                List.of(new Value("lengths missing", unknown.size(), 0.0, "")),
                List.of(Fix.of("Enter the length, or the pathways it runs along and how long those are."))));
    }

    private static boolean matters(@Nullable CableType type) {
        return type != null && (type.longest() != null || type.attenuation() != null || type.conductor() != null);
    }

    /** At both ends, so that it is known to be there and in use. */
    private static boolean isPluggedIn(Lead lead) {
        for (Joint joint : lead.joints()) {
            if (joint.from() == null || joint.to() == null) {
                return false;
            }
        }
        return !lead.joints().isEmpty();
    }
}
