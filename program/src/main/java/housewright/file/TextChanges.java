package housewright.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Changes to stretches of a text, collected in any order and made at once. */
final class TextChanges {
    private record Change(int start, int end, String with) {}

    private final List<Change> changes = new ArrayList<>();

    void replace(int start, int end, String with) {
        if (start > end) {
            throw new YamlEdit.Unplaced("a change from " + start + " to " + end);
        }
        changes.add(new Change(start, end, with));
    }

    int mark() {
        return changes.size();
    }

    /** Forgets the changes since the mark. */
    void backTo(int mark) {
        changes.subList(mark, changes.size()).clear();
    }

    /** The text with all changes made; of those at one place, insertions first, in the order they came. */
    String applyTo(String text) {
        changes.sort(Comparator.comparingInt(Change::start).thenComparingInt(Change::end));
        StringBuilder changed = new StringBuilder(text.length() + 256);
        int done = 0;
        for (Change change : changes) {
            if (change.start() < done) {
                throw new YamlEdit.Unplaced("two changes of the same stretch");
            }
            changed.append(text, done, change.start()).append(change.with());
            done = change.end();
        }
        return changed.append(text, done, text.length()).toString();
    }
}
