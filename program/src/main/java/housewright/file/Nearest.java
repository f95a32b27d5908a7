package housewright.file;

import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The word of a list that somebody probably meant. */
public final class Nearest {
    /** More candidates than anybody would have; a hostile file has them. */
    private static final int MOST_CANDIDATES = 20_000;

    private static final int LONGEST = 60;

    private Nearest() {}

    /**
     * The candidate with the fewest slips (a letter wrong, missing, too many, or two swapped), the first of equals;
     * null where none is near: at most one slip in three letters, four in all. Capitals alone make no slip; another
     * digit is another thing, and no slip of the one.
     */
    public static @Nullable String find(String word, Collection<String> candidates) {
        if (word.isEmpty() || word.length() > LONGEST) {
            return null;
        }
        String wanted = word.toLowerCase(Locale.ROOT);
        String best = null;
        int fewest = Math.min(4, wanted.length() / 3) + 1;
        int seen = 0;
        for (String candidate : candidates) {
            if (++seen > MOST_CANDIDATES || fewest == 0) {
                break;
            }
            if (Math.abs(candidate.length() - wanted.length()) < fewest) {
                int slips = slips(wanted, candidate.toLowerCase(Locale.ROOT), fewest);
                if (slips < fewest) {
                    fewest = slips;
                    best = candidate;
                }
            }
        }
        return best;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Optimal string alignment distance, or {@code limit} where it is not less. */
    static int slips(String a, String b, int limit) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        Arrays.setAll(last, j -> j);
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            int least = i;
            for (int j = 1; j <= b.length(); j++) {
                boolean same = a.charAt(i - 1) == b.charAt(j - 1);
                boolean otherDigit = !same && isDigit(a.charAt(i - 1)) && isDigit(b.charAt(j - 1));
                int change = same ? 0 : otherDigit ? limit : 1;
                int cost = Math.min(last[j - 1] + change, Math.min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost = Math.min(cost, beforeLast[j - 2] + 1);
                }
                row[j] = cost;
                least = Math.min(least, cost);
            }
            if (least >= limit) {
                return limit;
            }
            int[] spare = beforeLast;
            beforeLast = last;
            last = row;
            row = spare;
        }
        return Math.min(limit, last[b.length()]);
    }
}
