package housewright.check;

import housewright.model.RuleSet;
import housewright.model.Words;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** How rules say lists and lengths. */
public final class Wording {
    private static final double INCH = 0.0254;

    /** The international avoirdupois pound, exact. */
    private static final double POUND = 0.45359237;

    private Wording() {}

    /** The names, or as many as are named and how many more there are. */
    public static String some(Collection<String> names, int most) {
        if (names.size() <= most) {
            List<String> all = List.copyOf(names);
            int last = all.size() - 1;
            return last < 1 ? String.join("", all) : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
        }
        return names.stream().limit(most).collect(Collectors.joining(", ")) + " and " + (names.size() - most) + " more";
    }

    /** The ids as a person says them, as {@link #some}. */
    public static String things(Collection<String> ids, int most) {
        return some(ids.stream().map(Words::said).distinct().toList(), most);
    }

    /** "3 things", "1 thing". */
    public static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** "21.5 kg", or "47.4 lb" where the project works by US rules. */
    public static String weight(Evidence evidence, double kilograms) {
        boolean us = evidence.ruleSet() == RuleSet.US;
        return String.format(Locale.ROOT, us ? "%.1f lb" : "%.1f kg", us ? kilograms / POUND : kilograms)
                .replace(".0 ", " ");
    }

    /** "1.50 m" or "59 mm", and "4 ft 11 in" or "2.3 in" where the project works by US rules. */
    public static String length(Evidence evidence, double metres) {
        if (evidence.ruleSet() == RuleSet.US) {
            if (metres < 12 * INCH) {
                return String.format(Locale.ROOT, "%.1f in", metres / INCH).replace(".0 ", " ");
            }
            long inches = Math.round(metres / INCH);
            return inches / 12 + " ft" + (inches % 12 == 0 ? "" : " " + inches % 12 + " in");
        }
        if (metres < 0.2) {
            return Math.round(1000 * metres) + " mm";
        }
        return String.format(Locale.ROOT, metres < 10 ? "%.2f m" : "%.1f m", metres);
    }
}
