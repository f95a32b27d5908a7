package housewright.store.sqlite;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/** Ids for projects, made from their names: what goes into an address without being written otherwise there. */
final class ProjectIds {
    private static final int MOST_CHARACTERS = 40;
    private static final String NAMELESS = "project";

    /** Latin letters that are not a plain letter with a mark. */
    private static final Map<String, String> SPELLED = Map.of(
            "ß", "ss", "æ", "ae", "œ", "oe", "ø", "o", "ł", "l", "đ", "d", "ð", "d", "þ", "th", "ı", "i", "ħ", "h");

    private ProjectIds() {}

    /**
     * An id of a to z, 0 to 9 and single hyphens, up to {@value #MOST_CHARACTERS} characters and a number. A name that
     * has no Latin letter gives {@value #NAMELESS} and its digits.
     *
     * @param taken whether another project has this id
     */
    static String of(String name, Predicate<String> taken) {
        String stem = stem(name);
        String id = stem;
        for (int number = 2; taken.test(id); number++) {
            id = stem + "-" + number;
        }
        return id;
    }

    private static String stem(String name) {
        String lower = Normalizer.normalize(name, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
        for (Map.Entry<String, String> letter : SPELLED.entrySet()) {
            lower = lower.replace(letter.getKey(), letter.getValue());
        }
        String plain = trimmed(lower.replaceAll("\\p{M}+", "").replaceAll("[^a-z0-9]+", "-"));
        String named = plain.matches(".*[a-z].*") ? plain : trimmed(NAMELESS + "-" + plain);
        return named.length() <= MOST_CHARACTERS ? named : trimmed(named.substring(0, MOST_CHARACTERS));
    }

    private static String trimmed(String text) {
        return text.replaceAll("^-+|-+$", "");
    }
}
