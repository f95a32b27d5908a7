package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** People on the stage in the beam of the projector. */
public final class StandsInProjection implements Rule {
    private static final Card CARD = new Card(
            "stands-in-projection",
            "Does nobody on the stage stand in the light of the projector?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.rooms().shadows().stream()
                .map(shadow -> CARD.finding(
                        Severity.FIX,
                        List.of(Subject.equipment(shadow.projector()), new Subject("target", shadow.target())),
                        "Whoever stands at " + Words.said(shadow.target()) + " reaches "
                                + Wording.length(evidence, shadow.depth()) + " into the light of "
                                + Words.said(shadow.projector()) + ": a shadow on " + Words.said(shadow.screen())
                                + ", and the projector in their eyes.",
                        List.of(new Value("head in the beam", shadow.depth(), 0.0, "m")),
                        List.of(Fix.of("Hang the projector or the screen higher, or move where they stand."))));
    }
}
