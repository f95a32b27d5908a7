package housewright.finding;

import housewright.model.change.Change;
import java.util.List;

/**
 * A way to put a finding right.
 *
 * @param words what to do, as a sentence to the person who does it
 * @param changes that do it in the project, as one batch; empty where only a person can
 */
public record Fix(String words, List<Change> changes) {
    public Fix {
        if (words.isBlank()) {
            throw new IllegalArgumentException("A fix says what to do");
        }
        changes = List.copyOf(changes);
    }

    public static Fix of(String words) {
        return new Fix(words, List.of());
    }
}
