package housewright.check.light;

import housewright.finding.Subject;
import housewright.model.Words;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** How these rules say things. */
final class Said {
    private static final int NAMED = 4;

    private Said() {}

    /** "key 1, key 2 and key 3", or as many as one reads and how many more there are. */
    static String things(Collection<String> ids) {
        return some(ids.stream().map(Words::said).toList());
    }

    static String some(List<String> names) {
        if (names.size() > NAMED + 1) {
            return String.join(", ", names.subList(0, NAMED)) + " and " + (names.size() - NAMED) + " more";
        }
        return Words.and(names);
    }

    /** "channel 5", "channels 5 to 10". */
    static String channels(int first, int last) {
        return first == last ? "channel " + first : "channels " + first + " to " + last;
    }

    /** " of universe 2"; nothing where it is not said. */
    static String ofUniverse(@Nullable Integer universe) {
        return universe == null ? "" : " of universe " + universe;
    }

    /** "is" or "are". */
    static String be(int count) {
        return count == 1 ? "is" : "are";
    }

    static List<Subject> equipment(Collection<String> ids) {
        return ids.stream().map(Subject::equipment).toList();
    }

    /** The first with the others after it, each once. */
    static List<Subject> subjects(Subject first, Collection<Subject> others) {
        Set<Subject> all = new LinkedHashSet<>();
        all.add(first);
        all.addAll(others);
        return List.copyOf(all);
    }

    static Subject look(String id) {
        return new Subject("look", id);
    }

    static Subject control(String id) {
        return new Subject("control", id);
    }
}
