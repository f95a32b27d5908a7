package housewright.model;

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

    static <T> @Nullable T first(@Nullable T one, @Nullable T other) {
        return one != null ? one : other;
    }
}
