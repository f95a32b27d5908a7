package housewright.model;

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

    static <T> @Nullable T first(@Nullable T one, @Nullable T other) {
        return one != null ? one : other;
    }
}
