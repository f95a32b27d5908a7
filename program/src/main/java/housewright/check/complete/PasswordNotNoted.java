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
import housewright.model.Model;
import housewright.model.Stage;
import housewright.signal.Present;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Things that ask for a password, and nobody has said who keeps it. */
public final class PasswordNotNoted implements Rule {
    private static final Card CARD = new Card(
            "password-not-noted",
            "Is it written down who keeps the password of everything that has one?",
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
                .filter(thing -> asks(thing) && !isNoted(thing.equipment()))
                .map(Present::id)
                .toList();
        return lacking.isEmpty()
                ? Stream.empty()
                : Stream.of(
                        CARD.finding(
                                Severity.NOTE,
                                lacking.stream().map(Subject::equipment).toList(),
                                "Nobody has noted who keeps the password of " + Wording.things(lacking, 5) + ".",
                                List.of(new Value("not noted", lacking.size(), null, "")),
                                List.of(
                                        Fix.of(
                                                "Say under handover: password: who keeps it and where, such as an envelope in the office; never the password itself."))));
    }

    private static boolean isNoted(Equipment thing) {
        return thing.handover() != null && thing.handover().password() != null;
    }

    private static boolean asks(Present thing) {
        Model model = thing.model();
        return model != null
                && model.battery() == null
                && (KINDS.contains(model.kind())
                        || (model.kind() == Kind.SWITCH && thing.equipment().ip() != null));
    }

    private static final Set<Kind> KINDS = EnumSet.of(Kind.COMPUTER, Kind.INTERNET_ROUTER, Kind.ENCODER);
}
