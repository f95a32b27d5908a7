package housewright.app;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** How figures are said. The same in every locale, and quick: it is used for every step of every path. */
public final class Figures {
    private Figures() {}

    public static String milliseconds(long nanos) {
        return fixed(nanos / 1e6, 2) + "\u00A0ms";
    }

    public static String decibels(double gain) {
        String text = trimmed(gain, 1);
        return (text.startsWith("-") || text.equals("0") ? text : "+" + text) + "\u00A0dB";
    }

    public static String headroom(double decibels) {
        return trimmed(decibels, 1) + "\u00A0dB";
    }

    public static String money(BigDecimal amount, @Nullable String currency) {
        BigDecimal rounded = amount.setScale(2, RoundingMode.HALF_UP);
        String text = rounded.stripTrailingZeros().scale() <= 0
                ? rounded.setScale(0, RoundingMode.HALF_UP).toPlainString()
                : rounded.toPlainString();
        return currency == null ? text : text + "\u00A0" + currency;
    }

    public static String minutes(int minutes) {
        if (minutes < 60) {
            return minutes + "\u00A0min";
        }
        return minutes / 60 + "\u00A0h" + (minutes % 60 == 0 ? "" : "\u00A0" + minutes % 60 + "\u00A0min");
    }

    public static String trimmed(double value, int decimals) {
        String text = fixed(value, decimals);
        if (text.indexOf('.') < 0) {
            return text;
        }
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /** Halves away from zero; no minus before a zero. */
    public static String fixed(double value, int decimals) {
        long scale = 1;
        for (int i = 0; i < decimals; i++) {
            scale *= 10;
        }
        long scaled = Math.round(Math.abs(value) * scale);
        StringBuilder text = new StringBuilder();
        if (value < 0 && scaled != 0) {
            text.append('-');
        }
        text.append(scaled / scale);
        if (decimals > 0) {
            String digits = Long.toString(scaled % scale);
            text.append('.').repeat('0', decimals - digits.length()).append(digits);
        }
        return text.toString();
    }
}
