package housewright.unit;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Prints quantities so that reading them gives the very same value. */
final class QuantityWriter {
    private QuantityWriter() {}

    static String text(double value, Unit unit) {
        if (unit == Unit.AWG) {
            return WireGauge.text(value);
        }
        String sign = value < 0 ? "-" : "";
        double size = Math.abs(value);
        String compound = compound(size, unit);
        if (compound != null) {
            return sign + compound;
        }
        String symbol = unit == Unit.FRAME && value != 1 ? "frames" : unit.symbol();
        return sign + number(size) + " " + symbol;
    }

    /** As few digits as tell it from its neighbours, without an exponent. */
    static String number(double value) {
        return value == Math.rint(value)
                ? Long.toString((long) value)
                : new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    /** {@code 6 ft 3 in}, or null where a decimal says it as exactly and shorter. */
    private static @Nullable String compound(double size, Unit unit) {
        double whole = Math.floor(size);
        if (whole == 0 || whole == size) {
            return null;
        }
        long parts = 1; // how many of the smallest unit so far make one of `unit`
        Unit larger = unit;
        for (Unit smaller = unit.smaller(); smaller != null; larger = smaller, smaller = smaller.smaller()) {
            parts *= larger.smallerPerOne(smaller);
            long count = Math.round((size - whole) * parts);
            if (count > 0 && count < parts) {
                String text = number(whole) + " " + unit.symbol() + rest(count, parts, unit);
                if (QuantityReader.read(unit.dimension(), text).value() == size) {
                    return text;
                }
            }
        }
        return null;
    }

    /** Deals `count` of `parts` out to the smaller units, leaving out those of which there are none. */
    private static String rest(long count, long parts, Unit unit) {
        Unit smaller = unit.smaller();
        if (count == 0 || smaller == null) {
            return "";
        }
        long each = parts / unit.smallerPerOne(smaller);
        long here = count / each;
        String first = here == 0 ? "" : " " + here + " " + smaller.symbol();
        return first + rest(count % each, each, smaller);
    }
}
