package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.PatchEntry;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.signal.FeedProof;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A screen that is plugged in and set to nothing, or to an input with nothing in it. Where a feed asks for it, that feed's proof says so already. */
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
        List<Screens.Shown> idle = Screens.all(evidence).stream()
                .filter(shown -> isIdle(evidence, shown))
                .toList();
        if (idle.isEmpty()) {
            return Stream.empty();
        }
        Set<String> asked = new HashSet<>();
        for (FeedProof proof : evidence.signals().proofs()) {
            if (!proof.feed().never()) {
                proof.pairs().forEach(pair -> asked.add(pair.to().toString()));
            }
        }
        return idle.stream()
                .filter(shown -> !asked.contains(shown.screen() + "." + shown.point()))
                .map(shown -> finding(shown, plugged(evidence, shown)));
    }

    private static List<String> plugged(Evidence evidence, Screens.Shown shown) {
        return shown.inputs().stream()
                .filter(input -> Screens.isPlugged(evidence, shown.screen(), input))
                .toList();
    }

    /** It is plugged in, and nothing that is plugged in is shown. */
    private static boolean isIdle(Evidence evidence, Screens.Shown shown) {
        List<String> plugged = plugged(evidence, shown);
        return !plugged.isEmpty()
                && shown.set().stream()
                        .noneMatch(pair -> plugged.contains(pair.from().name()));
    }

    private static Finding finding(Screens.Shown shown, List<String> plugged) {
        String screen = shown.screen();
        List<Fix> fixes = new ArrayList<>();
        for (String input : plugged) {
            List<Change> changes = new ArrayList<>();
            shown.set().forEach(pair -> changes.add(new Change.Unpatch(screen, pair.from(), pair.to())));
            changes.add(new Change.Patch(screen, PatchEntry.ofText(input + ":v -> " + shown.point())));
            fixes.add(new Fix("Set " + Words.said(screen) + " to " + Words.said(input) + ".", changes));
        }
        String set = shown.set().isEmpty()
                ? "no input"
                : Words.said(shown.set().getFirst().from().name());
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(screen)),
                Words.said(screen) + " is plugged in at "
                        + Said.some(plugged.stream().map(Words::said).toList(), 4)
                        + " and set to " + set + ": it shows nothing.",
                List.of(),
                fixes);
    }
}
