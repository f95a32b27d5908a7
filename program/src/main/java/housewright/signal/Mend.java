package housewright.signal;

import housewright.model.change.Change;
import java.math.BigDecimal;
import java.util.List;

/**
 * A set of changes that makes a feed true, breaks no other and lets no never-feed through.
 *
 * @param changes to be applied as one batch
 * @param steps the same as instructions for a person, one sentence each
 * @param price in the project's currency, from typical prices where the type's are
 * @param minutes of work, roughly
 * @param assumed what the price or the lengths take for granted
 * @param alsoMends ids of other feeds that are proven by it, too
 */
public record Mend(
        List<Change> changes,
        List<String> steps,
        BigDecimal price,
        int minutes,
        List<String> assumed,
        List<String> alsoMends) {
    public Mend {
        changes = List.copyOf(changes);
        steps = List.copyOf(steps);
        assumed = List.copyOf(assumed);
        alsoMends = List.copyOf(alsoMends);
    }

    Mend alsoMending(List<String> feeds) {
        return new Mend(changes, steps, price, minutes, assumed, feeds);
    }
}
