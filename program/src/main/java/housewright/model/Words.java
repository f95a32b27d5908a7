package housewright.model;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Small words of the file. */
public final class Words {
    private Words() {}

    /** What yes, no, true, false, on and off mean; null for any other text. */
    public static @Nullable Boolean yesOrNo(String text) {
        return switch (text) {
            case "yes", "true", "on" -> true;
            case "no", "false", "off" -> false;
            default -> null;
        };
    }

    /** An id as a person says it: hyphens as spaces; what looks like a code (capitals and digits) stays. */
    public static String said(String id) {
        return id.equals(id.toUpperCase(Locale.ROOT)) ? id : id.replace('-', ' ');
    }

    /** "a, b and c". */
    public static String and(Collection<String> names) {
        return listed(names, " and ");
    }

    /** "a, b or c". */
    public static String or(Collection<String> names) {
        return listed(names, " or ");
    }

    private static String listed(Collection<String> names, String beforeLast) {
        List<String> all = List.copyOf(names);
        int last = all.size() - 1;
        return last < 1 ? String.join("", all) : String.join(", ", all.subList(0, last)) + beforeLast + all.get(last);
    }

    static <T> @Nullable T first(@Nullable T one, @Nullable T other) {
        return one != null ? one : other;
    }
}
