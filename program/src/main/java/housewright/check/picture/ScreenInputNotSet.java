package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Feed;
import housewright.model.PatchEntry;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A screen that is plugged in and set to nothing. Where a feed asks for it, that feed's proof says so already. */
public final class ScreenInputNotSet implements Rule {
    private static final Card CARD = new Card(
            "screen-input-not-set",
            "Is every screen that is plugged in set to an input?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Set<String> asked = new HashSet<>();
        for (Feed feed : evidence.project().feeds().values()) {
            if (!feed.never()) {
                feed.to()
                        .forEach(to ->
                                to.addresses().stream().map(Address::toString).forEach(asked::add));
            }
        }
        return Screens.all(evidence).stream()
                .filter(shown -> shown.set().isEmpty() && !asked.contains(shown.screen() + "." + shown.point()))
                .flatMap(shown -> {
                    List<String> plugged = shown.inputs().stream()
                            .filter(input -> Screens.isPlugged(evidence, shown.screen(), input))
                            .toList();
                    return plugged.isEmpty() ? Stream.empty() : Stream.of(finding(shown, plugged));
                });
    }

    private static Finding finding(Screens.Shown shown, List<String> plugged) {
        String screen = shown.screen();
        List<Fix> fixes = plugged.stream()
                .map(input -> new Fix(
                        "Set " + Words.said(screen) + " to " + Words.said(input) + ".",
                        List.of(new Change.Patch(screen, PatchEntry.ofText(input + ":v -> " + shown.point())))))
                .toList();
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(screen)),
                Words.said(screen) + " is plugged in at "
                        + Said.some(plugged.stream().map(Words::said).toList(), 4)
                        + " and set to no input: it shows nothing.",
                List.of(),
                fixes);
    }
}
