package housewright.card;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Grade level by Flesch and Kincaid: 0.39 words a sentence + 11.8 syllables a word - 15.59. Source of the formula:
 * Kincaid, Fishburne, Rogers and Chissom 1975, as quoted on public pages about it (the report itself was not seen).
 * Grade 6 is read by children of eleven to twelve.
 *
 * <p>Syllables are those of the CMU Pronouncing Dictionary where {@code syllables.txt} has the word; of others, such as
 * names of things, groups of vowels are counted. What has a digit in it is spelt, a syllable a character.
 */
final class Readability {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\d][\\p{L}\\d'-]*");
    private static final Pattern SENTENCE = Pattern.compile("[^.?!]+[.?!]");
    static final Map<String, Integer> KNOWN = known();

    private Readability() {}

    static double grade(List<String> texts) {
        int sentences = 0;
        int words = 0;
        int syllables = 0;
        for (String text : texts) {
            Matcher sentence = SENTENCE.matcher(text.endsWith(".") || text.endsWith("?") ? text : text + ".");
            while (sentence.find()) {
                List<String> found = words(sentence.group());
                sentences += found.isEmpty() ? 0 : 1;
                words += found.size();
                syllables += found.stream().mapToInt(Readability::syllables).sum();
            }
        }
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            words.add(word.group().toLowerCase(Locale.ROOT));
        }
        return words;
    }

    static int syllables(String word) {
        Integer known = KNOWN.get(word);
        return known == null ? counted(word) : known;
    }

    static int counted(String word) {
        if (word.chars().anyMatch(Character::isDigit)) {
            return (int) word.chars().filter(Character::isLetterOrDigit).count();
        }
        String bare = word.replaceAll("(?<=[^aeiouyl])e$", "").replaceAll("(?<=[^aeiouytd])ed$", "d");
        Matcher vowels = Pattern.compile("[aeiouy]+").matcher(bare);
        int count = 0;
        while (vowels.find()) {
            count++;
        }
        return Math.max(1, count);
    }

    private static Map<String, Integer> known() {
        Map<String, Integer> known = new HashMap<>();
        String text;
        try (InputStream in = Readability.class.getResourceAsStream("syllables.txt")) {
            text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        text.lines().filter(line -> !line.startsWith("#")).forEach(line -> {
            String[] parts = line.split(" ");
            known.put(parts[0], Integer.valueOf(parts[1]));
        });
        return known;
    }
}
