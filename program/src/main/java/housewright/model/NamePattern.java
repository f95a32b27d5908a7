package housewright.model;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One name, or several written with one range: {@code in-{1..16}}, {@code sound-{L,R}}. Equal when written
 * alike.
 */
public final class NamePattern implements Written {
    private final String text;
    private final List<String> names;

    /** The most names one range may stand for; a typing slip must not fill the memory. */
    public static final int MOST = 4096;

    private static final String EXPECTED = "a name or a range of names, such as in-3, in-{1..16} or sound-{L,R}";

    public NamePattern(String text) {
        List<String> expanded = expand(text);
        if (expanded == null) {
            throw new WordingException(text, EXPECTED);
        }
        this.text = text;
        this.names = expanded;
    }

    @Override
    public String text() {
        return text;
    }

    public static NamePattern parse(String text) {
        return new NamePattern(text);
    }

    /** The names in order; one where there is no range. */
    public List<String> names() {
        return names;
    }

    public boolean isRange() {
        return text.indexOf('{') >= 0;
    }

    /** The names of a text with at most one range, or null where it is not well formed. */
    static @Nullable List<String> expand(String text) {
        int open = text.indexOf('{');
        if (open < 0) {
            return isName(text) ? List.of(text) : null;
        }
        int close = text.indexOf('}', open);
        if (close < 0 || text.indexOf('{', open + 1) >= 0 || text.indexOf('}', close + 1) >= 0) {
            return null;
        }
        List<String> values = values(text.substring(open + 1, close));
        if (values == null) {
            return null;
        }
        String before = text.substring(0, open);
        String after = text.substring(close + 1);
        List<String> names = new ArrayList<>(values.size());
        for (String value : values) {
            String name = before + value + after;
            if (!isName(name)) {
                return null;
            }
            names.add(name);
        }
        return List.copyOf(names);
    }

    private static @Nullable List<String> values(String inside) {
        int dots = inside.indexOf("..");
        if (dots < 0) {
            List<String> values = new ArrayList<>();
            for (String value : inside.split(",", -1)) {
                String trimmed = value.strip();
                if (trimmed.isEmpty() || values.contains(trimmed)) {
                    return null;
                }
                values.add(trimmed);
            }
            return values;
        }
        String low = inside.substring(0, dots).strip();
        String high = inside.substring(dots + 2).strip();
        if (!isNumber(low) || !isNumber(high)) {
            return null;
        }
        int first = Integer.parseInt(low);
        int last = Integer.parseInt(high);
        if (last < first || last - first >= MOST) {
            return null;
        }
        List<String> values = new ArrayList<>(last - first + 1);
        for (int n = first; n <= last; n++) {
            values.add(Integer.toString(n));
        }
        return values;
    }

    private static boolean isNumber(String text) {
        return !text.isEmpty() && text.length() <= 6 && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    /** Letters, digits and hyphens, a letter or digit first: the form of every id in the file. */
    public static boolean isName(String text) {
        if (text.isEmpty() || text.charAt(0) == '-') {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-')) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof NamePattern same && same.text.equals(text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
