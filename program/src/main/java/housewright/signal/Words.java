package housewright.signal;

import java.util.Locale;

/** How figures are said here. */
final class Words {
    private Words() {}

    /** Nanoseconds as milliseconds with two decimals at most. */
    static String milliseconds(long nanos) {
        String text = String.format(Locale.ROOT, "%.2f", nanos / 1e6);
        while (text.endsWith("0")) {
            text = text.substring(0, text.length() - 1);
        }
        return (text.endsWith(".") ? text.substring(0, text.length() - 1) : text) + " ms";
    }

    /** A name without its number: {@code ch-12} is {@code ch}. */
    static String stem(String name) {
        int end = name.length();
        while (end > 0 && Character.isDigit(name.charAt(end - 1))) {
            end--;
        }
        if (end == name.length() && name.lastIndexOf('-') > 0) {
            return name.substring(0, name.lastIndexOf('-')); // main-L and main-R
        }
        return end > 0 && name.charAt(end - 1) == '-' ? name.substring(0, end - 1) : name.substring(0, end);
    }
}
