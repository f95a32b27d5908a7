package housewright.check.volunteers;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Control;
import housewright.model.Lighting;
import housewright.model.Stage;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Looks that no button and no clock calls, where others have one. */
public final class LookWithoutButton implements Rule {
    private static final Card CARD = new Card(
            "look-without-button",
            "Is every look called by a button or a clock?",
            Set.of(Severity.NOTE),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Lighting lighting = evidence.project().lighting();
        Set<String> called = new HashSet<>();
        for (Control control : evidence.project().controls().values()) {
            if (control.calls() != null) {
                called.add(control.calls());
            }
        }
        if (lighting == null || called.isEmpty()) {
            return Stream.empty();
        }
        List<String> alone = lighting.looks().keySet().stream()
                .filter(look -> !called.contains(look))
                .toList();
        return alone.isEmpty()
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        Severity.NOTE,
                        alone.stream().map(look -> new Subject("look", look)).toList(),
                        "No button and no clock calls " + (alone.size() == 1 ? "the look " : "the looks ")
                                + Wording.things(alone, 5) + ": a volunteer cannot have "
                                + (alone.size() == 1 ? "it." : "them."),
                        List.of(new Value("looks without a button", alone.size(), null, "")),
                        List.of(Fix.of("Give it a button under controls, or drop it."))));
    }
}
