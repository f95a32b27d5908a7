package housewright.check.complete;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Stage;
import housewright.signal.Present;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Programs, and nobody has said whom they are licensed to. */
public final class LicenceNotNoted implements Rule {
    private static final Card CARD = new Card(
            "licence-not-noted",
            "Is it written down of every program whom its licence is made out to?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.INSTALL);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<String> lacking = evidence.pictures().things().stream()
                .filter(thing -> thing.model() != null && thing.model().kind() == Kind.PROGRAM)
                .filter(thing -> !isNoted(thing.equipment()))
                .map(Present::id)
                .toList();
        return lacking.isEmpty()
                ? Stream.empty()
                : Stream.of(
                        CARD.finding(
                                Severity.NOTE,
                                lacking.stream().map(Subject::equipment).toList(),
                                "Nobody has noted whom the licence is made out to of " + Wording.things(lacking, 5)
                                        + ".",
                                List.of(new Value("not noted", lacking.size(), null, "")),
                                List.of(
                                        Fix.of(
                                                "Say under handover: licence: to whom and until when; the hall, not the person who installs it."))));
    }

    private static boolean isNoted(Equipment thing) {
        return thing.handover() != null && thing.handover().licence() != null;
    }
}
