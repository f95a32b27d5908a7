package housewright.order;

import java.util.Locale;

/** Lengths as they are written on a bill. */
final class Figures {
    private Figures() {}

    static String metres(double metres) {
        String text = String.format(Locale.ROOT, "%.1f", metres);
        return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + " m";
    }
}
