package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Join;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A screen shows one input at a time; set to two, nobody knows which. */
public final class ScreenSetToTwoInputs implements Rule {
    private static final Card CARD = new Card(
            "screen-set-to-two-inputs",
            "Is every screen set to one input only?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return Screens.all(evidence).stream()
                .filter(shown -> shown.set().size() > 1)
                .map(shown -> finding(evidence, shown));
    }

    private static Finding finding(Evidence evidence, Screens.Shown shown) {
        String screen = shown.screen();
        List<String> inputs =
                shown.set().stream().map(pair -> Words.said(pair.from().name())).toList();
        List<Fix> fixes = new ArrayList<>();
        for (Join.Pair keep : shown.set()) {
            List<Change> changes = new ArrayList<>();
            for (Join.Pair other : shown.set()) {
                if (!other.equals(keep)) {
                    changes.add(new Change.Unpatch(screen, other.from(), other.to()));
                }
            }
            Fix fix = new Fix(
                    "Leave " + Words.said(screen) + " on "
                            + Words.said(keep.from().name()) + ".",
                    changes);
            boolean plugged = Screens.isPlugged(evidence, screen, keep.from().name());
            fixes.add(plugged ? firstUnplugged(evidence, shown, fixes.size()) : fixes.size(), fix);
        }
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(screen), Subject.at("patch." + screen)),
                Words.said(screen) + " is set to " + Said.some(inputs, 4) + " at once; it shows one of them.",
                List.of(new Value("inputs", inputs.size(), 1.0, "")),
                fixes);
    }

    /** Inputs with a cable in them are offered before those without. */
    private static int firstUnplugged(Evidence evidence, Screens.Shown shown, int end) {
        int at = 0;
        for (int i = 0; i < end; i++) {
            if (Screens.isPlugged(
                    evidence, shown.screen(), shown.set().get(i).from().name())) {
                at++;
            }
        }
        return at;
    }
}
