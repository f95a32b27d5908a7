package housewright.file;

/**
 * How much the ranges of one file may stand for. A line such as {@code in-{1..4096} -> a, b, c} is short and means
 * much; a file of nothing else would run for hours.
 */
final class Budget {
    private static final long MOST = 5_000_000;

    /** The most names one range stands for; see {@link housewright.model.NamePattern#MOST}. */
    private static final long LARGEST = housewright.model.NamePattern.MOST;

    private long left = MOST;

    /** Takes what is about to be done from the budget; false once it is spent. */
    boolean spend(long cost) {
        left -= Math.min(cost, MOST + 1);
        return left >= 0;
    }

    boolean isSpent() {
        return left < 0;
    }

    /** No less than the places a text can stand for. */
    boolean spendFor(String text) {
        int open = text.indexOf('{');
        if (open < 0 && text.length() < 200) {
            return true; // as most are
        }
        long product = 1;
        long commas = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == ',') {
                commas++;
            } else if (c == '{') {
                product = Math.min(LARGEST, product * size(text, i + 1));
            }
        }
        return spend((product + commas) * (commas + 1));
    }

    private static long size(String text, int from) {
        int end = text.indexOf('}', from);
        if (end < 0) {
            return 1;
        }
        int dots = text.indexOf("..", from);
        if (dots < 0 || dots > end) {
            long names = 1;
            for (int i = from; i < end; i++) {
                names += text.charAt(i) == ',' ? 1 : 0;
            }
            return names;
        }
        try {
            long first = Long.parseLong(text.substring(from, dots).strip());
            long last = Long.parseLong(text.substring(dots + 2, end).strip());
            return Math.max(1, Math.min(LARGEST, last - first + 1));
        } catch (NumberFormatException e) {
            return 1; // not a range: refused before it is written out
        }
    }
}
