package housewright.check.power;

import housewright.finding.Subject;
import housewright.model.Words;
import housewright.power.Supply;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** How these rules say things. */
final class Said {
    /** Stands in every fix about what hangs. */
    static final String RIGGING =
            "What may hang there is for a structural engineer or licensed rigger to say, under local code.";

    /** Stands in every fix about fixed mains. */
    static final String ELECTRICIAN = "Fixed mains is a licensed electrician's work, under local code.";

    private static final int NAMED = 4;

    private Said() {}

    static String things(Collection<String> ids) {
        return some(ids.stream().map(Words::said).toList());
    }

    /** "A, B and C", or as many as one reads and how many more there are. */
    static String some(List<String> names) {
        if (names.size() > NAMED + 1) {
            return String.join(", ", names.subList(0, NAMED)) + " and " + (names.size() - NAMED) + " more";
        }
        return Words.and(names);
    }

    /** With one decimal where it needs one. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    static String watts(double watts) {
        return String.format(Locale.ROOT, "%.0f W", watts);
    }

    static String amperes(double amperes) {
        return number(amperes) + " A";
    }

    static String be(int count) {
        return count == 1 ? "is" : "are";
    }

    static List<Subject> equipment(Collection<String> ids) {
        return ids.stream().map(Subject::equipment).toList();
    }

    static Subject circuit(String id) {
        return new Subject("circuit", id);
    }

    static Subject place(String id) {
        return new Subject("place", id);
    }

    /** The first with the things after it. */
    static List<Subject> subjects(Subject first, Collection<String> things) {
        List<Subject> all = new ArrayList<>();
        all.add(first);
        all.addAll(equipment(things));
        return all;
    }

    static List<String> ids(List<Supply> supplies) {
        return supplies.stream().map(Supply::id).toList();
    }
}
