package housewright.app.table;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Counts the last number in a text up, and makes ids that nobody has yet. */
final class Numbering {
    private static final int LONGEST_NUMBER = 9;

    private Numbering() {}

    /** The text with its last number so much higher and no fewer digits; null where it has none. */
    static @Nullable String up(String text, int by) {
        int end = text.length();
        while (end > 0 && !isDigit(text.charAt(end - 1))) {
            end--;
        }
        int start = end;
        while (start > 0 && isDigit(text.charAt(start - 1))) {
            start--;
        }
        if (start == end || end - start > LONGEST_NUMBER) {
            return null;
        }
        long number = Long.parseLong(text.substring(start, end)) + by;
        String digits = Long.toString(number);
        return number < 0
                ? null
                : text.substring(0, start)
                        + "0".repeat(Math.max(0, end - start - digits.length()))
                        + digits
                        + text.substring(end);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** The next after an id that nobody has: {@code camera-4} after {@code camera-3}, {@code desk-2} after {@code desk}. */
    static String next(String id, Predicate<String> taken) {
        String base = up(id, 0) == null || !isDigit(id.charAt(id.length() - 1)) ? id + "-1" : id;
        String next = base;
        do {
            next = java.util.Objects.requireNonNull(up(next, 1));
        } while (taken.test(next));
        return next;
    }

    /** The word itself, with a number where others of the word have one or it is taken. */
    static String first(String word, Collection<String> ids) {
        Set<String> taken = Set.copyOf(ids);
        int highest = 0;
        for (String id : ids) {
            String number = id.startsWith(word + "-") ? id.substring(word.length() + 1) : "";
            if (!number.isEmpty()
                    && number.length() < LONGEST_NUMBER
                    && number.chars().allMatch(c -> isDigit((char) c))) {
                highest = Math.max(highest, Integer.parseInt(number));
            }
        }
        if (highest == 0 && !taken.contains(word)) {
            return word;
        }
        return next(word + "-" + Math.max(1, highest), taken::contains);
    }

    /**
     * The next of the numbers that a project gives its own: {@code C042} where {@code C041} is the highest of what most
     * begin with.
     *
     * @param otherwise the first where none has a number, such as {@code C001}
     */
    static String inStyle(Collection<String> ids, String otherwise) {
        Map<String, Integer> count = new HashMap<>();
        Map<String, String> highest = new HashMap<>();
        String most = null;
        for (String id : ids) {
            int start = id.length();
            while (start > 0 && isDigit(id.charAt(start - 1))) {
                start--;
            }
            if (start == 0 || start == id.length() || id.length() - start > LONGEST_NUMBER) {
                continue;
            }
            String stem = id.substring(0, start);
            highest.merge(stem, id, (one, other) -> compare(one, other) >= 0 ? one : other);
            if (count.merge(stem, 1, Integer::sum) > (most == null ? 0 : count.getOrDefault(most, 0))) {
                most = stem;
            }
        }
        Set<String> taken = Set.copyOf(ids);
        if (most == null) {
            return taken.contains(otherwise) ? next(otherwise, taken::contains) : otherwise;
        }
        return next(java.util.Objects.requireNonNull(highest.get(most)), taken::contains);
    }

    /** Capitals aside, numbers by their size: {@code in-2} before {@code in-10}. */
    static int compare(String one, String other) {
        int i = 0;
        int j = 0;
        while (i < one.length() && j < other.length()) {
            char a = one.charAt(i);
            char b = other.charAt(j);
            if (isDigit(a) && isDigit(b)) {
                int from = i;
                int fromOther = j;
                while (i < one.length() && isDigit(one.charAt(i))) {
                    i++;
                }
                while (j < other.length() && isDigit(other.charAt(j))) {
                    j++;
                }
                int byNumber = new java.math.BigInteger(one.substring(from, i))
                        .compareTo(new java.math.BigInteger(other.substring(fromOther, j)));
                if (byNumber != 0) {
                    return byNumber;
                }
            } else {
                int byLetter = Character.compare(Character.toLowerCase(a), Character.toLowerCase(b));
                if (byLetter != 0) {
                    return byLetter;
                }
                i++;
                j++;
            }
        }
        int byLength = Integer.compare(one.length() - i, other.length() - j);
        return byLength != 0 ? byLength : one.compareTo(other);
    }
}
