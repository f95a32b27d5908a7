package housewright.check;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A limit as a project writes it: a number and the rule's own unit, on the safe side of the rule's own limit. */
public final class Tightening {
    private static final Pattern WRITTEN = Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,6})?)\\s*(.*)");

    private Tightening() {}

    /** Empty where it is no number, has another unit, or is looser than the rule's own. */
    public static OptionalDouble of(String written, Rule.Limit limit) {
        Matcher matcher = WRITTEN.matcher(written.strip());
        if (!matcher.matches() || !matcher.group(2).equals(limit.unit())) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(matcher.group(1));
        boolean tighter = limit.atMost() ? value <= limit.value() : value >= limit.value();
        return tighter ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
