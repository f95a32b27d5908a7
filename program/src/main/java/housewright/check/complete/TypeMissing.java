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
import housewright.model.Stage;
import housewright.signal.Present;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Things of which nobody has entered what they are. */
public final class TypeMissing implements Rule {
    private static final Card CARD = new Card(
            "type-missing",
            "Is it known of everything what it is?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.ORDER);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<String> bare = evidence.pictures().things().stream()
                .filter(thing -> thing.equipment().model() == null)
                .map(Present::id)
                .toList();
        return bare.isEmpty()
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        Severity.FIX,
                        bare.stream().map(Subject::equipment).toList(),
                        Wording.things(bare, 5) + (bare.size() == 1 ? " has" : " have")
                                + " no type: what plugs in there, and what it draws and weighs, nobody can check.",
                        List.of(new Value("without a type", bare.size(), null, "")),
                        List.of(Fix.of("Enter a model of the library, or one of the project's own; a sketch will do for"
                                + " what is only passed by."))));
    }
}
