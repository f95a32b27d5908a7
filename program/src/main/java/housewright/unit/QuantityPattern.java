package housewright.unit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What {@link QuantityReader} reads, as a regular expression in what ECMA-262 (plain or with its flag u or v) and Java
 * have in common.
 */
final class QuantityPattern {
    private static final String SPACES = "[ \\t\\u00a0\\u202f]*";
    private static final String MINUS = "[\\u2212\\-]";
    private static final String WHOLE = "[0-9]{1," + QuantityReader.WHOLE_DIGITS + "}";
    private static final String ONLY_DECIMALS = "\\.[0-9]{1," + QuantityReader.DECIMAL_DIGITS + "}";
    private static final String DECIMALS = "(?:" + ONLY_DECIMALS + ")?";
    private static final String NUMBER = "(?:" + WHOLE + DECIMALS + "|" + ONLY_DECIMALS + ")";

    private QuantityPattern() {}

    static String of(Dimension dimension) {
        var unitsByNumber = new LinkedHashMap<String, List<String>>();
        var compounds = new ArrayList<String>();
        for (Unit unit : dimension.units()) {
            unitsByNumber
                    .computeIfAbsent(number(unit), number -> new ArrayList<>())
                    .add(spellings(unit));
            if (dimension.takesSmaller(unit)) {
                compounds.add(
                        sign(unit) + WHOLE + SPACES + spellings(unit) + SPACES + "(?:" + smallerParts(unit) + ")");
            }
        }
        var choices = new ArrayList<String>();
        unitsByNumber.forEach(
                (number, units) -> choices.add("(?:" + number + ")" + SPACES + "(?:" + String.join("|", units) + ")"));
        choices.addAll(compounds);
        return "^" + SPACES + "(?:" + String.join("|", choices) + ")" + SPACES + "$";
    }

    private static String number(Unit unit) {
        return switch (unit) {
            case AWG -> WireGauge.PATTERN;
            case RACK_UNIT -> "\\+?(?:%s(?:\\.[05]0{0,39})?|\\.[05]0{0,39})".formatted(WHOLE);
            case DEGREE_CELSIUS, DEGREE_FAHRENHEIT -> "\\+?%s|%s%s".formatted(NUMBER, MINUS, upTo(-unit.least()));
            default -> sign(unit) + NUMBER;
        };
    }

    private static String sign(Unit unit) {
        return unit.least() == 0 ? "\\+?" : "[+\\u2212\\-]?";
    }

    private static String spellings(Unit unit) {
        String aliases = unit.aliases().stream().map(alias -> "|" + alias).collect(Collectors.joining());
        return aliases.isEmpty() ? unit.symbol() : "(?:" + unit.symbol() + aliases + ")";
    }

    /** Minutes and seconds, minutes alone, or seconds alone after hours: only the last may have decimals. */
    private static String smallerParts(Unit larger) {
        Unit smaller = larger.smaller();
        if (smaller == null) {
            return "";
        }
        String whole = below(larger.smallerPerOne(smaller));
        String last = whole + DECIMALS + SPACES + smaller.symbol();
        if (smaller.smaller() == null) {
            return last;
        }
        return last + "|(?:" + whole + SPACES + smaller.symbol() + SPACES + ")?(?:" + smallerParts(smaller) + ")";
    }

    /** One or two digits below `limit`, which has two. */
    private static String below(int limit) {
        int tens = (limit - 1) / 10;
        int ones = (limit - 1) % 10;
        return "(?:[0-" + (tens - 1) + "]?[0-9]|" + tens + "[0-" + ones + "])";
    }

    /** Numbers up to `limit`, which has three digits before the point and two after it, none of them 0. */
    private static String upTo(double limit) {
        String digits = Long.toString(Math.round(limit * 100));
        String wholeBelow = "[0-%c]?[0-9]?[0-9]|%s[0-%c][0-9]|%s[0-%c]"
                .formatted(
                        before(digits, 0),
                        digits.substring(0, 1),
                        before(digits, 1),
                        digits.substring(0, 2),
                        before(digits, 2));
        String decimalsUpTo = "[0-%c][0-9]{0,39}|%c(?:[0-%c][0-9]{0,38}|%c0{0,38})?"
                .formatted(before(digits, 3), digits.charAt(3), before(digits, 4), digits.charAt(4));
        return "(?:0{0,9}(?:(?:%s)%s|%s(?:\\.(?:%s))?)|%s)"
                .formatted(wholeBelow, DECIMALS, digits.substring(0, 3), decimalsUpTo, ONLY_DECIMALS);
    }

    private static char before(String digits, int index) {
        return (char) (digits.charAt(index) - 1);
    }
}
