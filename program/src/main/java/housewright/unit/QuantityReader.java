package housewright.unit;

/**
 * Reads one quantity in a single pass over its text.
 *
 * <p>A sign, up to twelve digits, a point with up to forty digits, a unit; after some units a smaller one follows
 * ({@code 6 ft 3 in}). Spaces between them are free. {@link QuantityPattern} says the same as a regular expression.
 */
final class QuantityReader {
    static final int WHOLE_DIGITS = 12;
    static final int DECIMAL_DIGITS = 40;

    /**
     * A double holds every whole number of so many digits, and so many powers of ten, so that one division rounds
     * correctly.
     */
    private static final int EXACT_DIGITS = 15;

    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private static final int LONGEST_SYMBOL = 16;
    private static final int LONGEST_QUOTE = 20;

    private final Dimension dimension;
    private final String text;
    private final int end;
    private int at;
    private boolean decimal; // whether the number read last had a point

    private QuantityReader(Dimension dimension, String text) {
        this.dimension = dimension;
        this.text = text;
        int last = text.length();
        while (last > 0 && isSpace(text.charAt(last - 1))) {
            last--;
        }
        this.end = last;
        skipSpaces();
    }

    /** @throws UnitException if the text is not of this kind */
    static Quantity read(Dimension dimension, String text) {
        return new QuantityReader(dimension, text).quantity();
    }

    private Quantity quantity() {
        if (at == end) {
            throw wrong("is empty");
        }
        if (dimension == Dimension.CROSS_SECTION && text.startsWith("AWG", end - 3)) {
            return gauge();
        }
        boolean negative = sign();
        double amount = number(WHOLE_DIGITS);
        Unit unit = unit();
        double size = withSmallerParts(amount, unit);
        double value = negative ? -size : size;
        String trouble =
                negative && unit.least() == 0 ? dimension.negativeTrouble() : dimension.findTrouble(value, unit);
        if (trouble != null) {
            throw wrong(trouble);
        }
        return dimension.of(value, unit);
    }

    private Quantity gauge() {
        int numberEnd = end - 3;
        while (numberEnd > at && isSpace(text.charAt(numberEnd - 1))) {
            numberEnd--;
        }
        double gauge = WireGauge.read(text.substring(at, numberEnd));
        if (Double.isNaN(gauge)) {
            throw wrong(WireGauge.RANGE);
        }
        return dimension.of(gauge, Unit.AWG);
    }

    /** Steps over a sign. @return whether it is a minus */
    private boolean sign() {
        char sign = text.charAt(at);
        boolean negative = sign == '-' || sign == '\u2212';
        if (negative || sign == '+') {
            at++;
        }
        return negative;
    }

    /** Steps over a number without sign. */
    private double number(int wholeDigits) {
        int start = at;
        int point = afterDigits(start);
        decimal = point < end && text.charAt(point) == '.';
        int stop = decimal ? afterDigits(point + 1) : point;
        if (decimal && stop == point + 1) {
            throw wrong("has no digit after the point");
        }
        if (stop == start) {
            throw wrong("has no number where one is due");
        }
        refuseForeignNumber(stop);
        if (point - start > wholeDigits || stop - point - 1 > DECIMAL_DIGITS) {
            throw wrong("has too many digits");
        }
        at = stop;
        return valueOf(start, point, stop);
    }

    /**
     * Numbers as other countries, other programs and tape measures write them, which cannot be read without guessing.
     */
    private void refuseForeignNumber(int stop) {
        char next = stop < end ? text.charAt(stop) : ' ';
        char afterNext = stop + 1 < end ? text.charAt(stop + 1) : ' ';
        if (next == ',') {
            throw wrong("has a comma; decimals take a point and thousands no mark");
        }
        if (next == '.') {
            throw wrong("has two points in one number");
        }
        if ((next == 'e' || next == 'E') && (isDigit(afterNext) || afterNext == '+' || afterNext == '-')) {
            throw wrong("has an exponent; write the number in full");
        }
        if (next == '/' && isDigit(afterNext)) {
            throw wrong("has a fraction; write it as a decimal, 3/4 as 0.75");
        }
    }

    private double valueOf(int start, int point, int stop) {
        int decimals = Math.max(0, stop - point - 1);
        if (point - start + decimals > EXACT_DIGITS) {
            return Double.parseDouble(text.substring(start, stop));
        }
        long digits = 0;
        for (int i = start; i < stop; i++) {
            if (i != point) {
                digits = digits * 10 + (text.charAt(i) - '0');
            }
        }
        return digits / POWERS_OF_TEN[decimals];
    }

    /**
     * Steps over a unit and the spaces around it: all the rest of the text where that is a unit, else up to a space or
     * digit.
     */
    private Unit unit() {
        skipSpaces();
        if (at == end) {
            throw wrong("has no unit");
        }
        int stop = end;
        Unit unit = end - at <= LONGEST_SYMBOL ? Unit.findBySymbol(text.substring(at, end)) : null;
        if (unit == null) {
            stop = at;
            while (stop < end && !isSpace(text.charAt(stop)) && !isDigit(text.charAt(stop))) {
                stop++;
            }
            unit = Unit.findBySymbol(text.substring(at, stop));
        }
        if (unit == null || !dimension.takes(unit)) {
            throw wrongUnit(stop);
        }
        at = stop;
        skipSpaces();
        return unit;
    }

    /**
     * What follows a larger unit, and the whole in that unit. It is counted in the smallest unit and divided once, so
     * that {@code 1 ft 7 in} is the double nearest to 19/12.
     */
    private double withSmallerParts(double amount, Unit first) {
        double count = amount;
        int parts = 1;
        for (Unit last = first; at < end; ) {
            if (last.smaller() == null || !isDigit(text.charAt(at))) {
                throw wrong("goes on after its unit");
            }
            if (decimal) {
                throw wrong("has a decimal before its last unit");
            }
            double next = number(2);
            Unit unit = unit();
            int most = 1;
            for (Unit step = last; step != unit; ) {
                Unit smaller = step.smaller();
                if (smaller == null) {
                    throw wrong("has its units in the wrong order; the larger one goes first");
                }
                most = step.smallerPerOne(smaller);
                parts *= most;
                count *= most;
                step = smaller;
            }
            if (Math.floor(next) >= most) {
                throw wrong("has too many " + unit.symbol() + " after " + last.symbol());
            }
            count += next;
            last = unit;
        }
        return count / parts;
    }

    /** @param stop where the word ends that should have been the unit */
    private UnitException wrongUnit(int stop) {
        if (stop == at) {
            return wrong("has no unit");
        }
        String rest = text.substring(at, Math.min(end, at + LONGEST_QUOTE));
        String word = text.substring(at, Math.min(stop, at + LONGEST_QUOTE));
        Unit named = UnitSpelling.findNamed(rest);
        if (named == null) {
            named = UnitSpelling.findNamed(word);
        }
        if (named != null && !dimension.takes(named)) {
            return wrong("is " + named.dimension().wordWithArticle());
        }
        Unit nearest = named != null ? named : UnitSpelling.findNearest(rest, dimension);
        String advice = nearest == null ? "" : ", nearest is " + nearest.symbol();
        return UnitException.of(dimension, text, "has the unknown unit " + UnitException.shown(rest) + advice, nearest);
    }

    private UnitException wrong(String problem) {
        return UnitException.of(dimension, text, problem);
    }

    private int afterDigits(int from) {
        int position = from;
        while (position < end && isDigit(text.charAt(position))) {
            position++;
        }
        return position;
    }

    private void skipSpaces() {
        while (at < end && isSpace(text.charAt(at))) {
            at++;
        }
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Space, tab, and the two spaces that do not break a line, which word processors put before a unit. */
    private static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u202f';
    }
}
