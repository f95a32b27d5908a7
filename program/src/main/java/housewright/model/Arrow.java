package housewright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** How the two sides of an arrow pair up, and how a list after it is read. */
final class Arrow {
    private Arrow() {}

    /** One from and one to. */
    record Pair<T>(T from, T to) {}

    /**
     * The two sides pair up.
     *
     * @param text the whole, as written
     * @throws WordingException when they do not
     */
    static void requirePairs(List<?> from, List<?> to, Supplier<String> text) {
        if (from.size() != to.size() && from.size() > 1 && to.size() > 1) {
            throw new WordingException(
                    text.get(),
                    "an arrow with as many names on the left (" + from.size() + ") as on the right (" + to.size()
                            + ")");
        }
    }

    /** Of two sides that pair up: both in step when both are ranges; one side alone repeats. */
    static <T> List<Pair<T>> pairs(List<T> from, List<T> to) {
        int count = Math.max(from.size(), to.size());
        List<Pair<T>> pairs = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            pairs.add(new Pair<>(from.get(from.size() == 1 ? 0 : i), to.get(to.size() == 1 ? 0 : i)));
        }
        return pairs;
    }

    /** The two sides of {@code a -> b}, stripped. */
    static String[] sides(String text, String arrow, String expected) {
        int at = text.indexOf(arrow);
        if (at < 0 || text.indexOf(arrow, at + arrow.length()) >= 0) {
            throw new WordingException(text, expected);
        }
        return new String[] {
            text.substring(0, at).strip(), text.substring(at + arrow.length()).strip()
        };
    }

    /** Splits at commas that are not inside a range. */
    static List<String> list(String text) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '{') {
                depth++;
            } else if (c == '}') {
                depth--;
            } else if (c == ',' && depth == 0) {
                parts.add(text.substring(start, i).strip());
                start = i + 1;
            }
        }
        parts.add(text.substring(start).strip());
        return parts;
    }
}
