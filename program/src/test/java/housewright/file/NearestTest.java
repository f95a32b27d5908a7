package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NearestTest {
    @Test
    void theWordWithTheFewestSlipsIsFound() {
        List<String> words = List.of("mixer", "microphone", "matrix", "monitor", "link");

        assertThat(Nearest.find("mixr", words)).isEqualTo("mixer");
        assertThat(Nearest.find("MIXER", words)).isEqualTo("mixer");
        assertThat(Nearest.find("micrpohone", words)).isEqualTo("microphone");
        assertThat(Nearest.find("lnk", words)).isEqualTo("link");
        assertThat(Nearest.find("teapot", words)).isNull();
        assertThat(Nearest.find("", words)).isNull();
    }

    @Test
    void aShortWordOrAnotherNumberIsNoSlip() {
        assertThat(Nearest.find("q", List.of("p"))).isNull();
        assertThat(Nearest.find("ab", List.of("ac"))).isNull();
        assertThat(Nearest.find("AB", List.of("ab"))).isEqualTo("ab");
        assertThat(Nearest.find("in-14", List.of("in-11", "in-15"))).isNull();
        assertThat(Nearest.find("in14", List.of("in-11", "in-14"))).isEqualTo("in-14");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void slipsAreThoseOfThePlainRecursion(long seed) {
        Random random = new Random(seed);
        String a = word(random);
        String b = word(random);
        int limit = 1 + random.nextInt(6);

        assertThat(Nearest.slips(a, b, limit)).isEqualTo(Math.min(limit, slowly(a, b)));
        assertThat(Nearest.slips(b, a, limit)).isEqualTo(Nearest.slips(a, b, limit));
    }

    private static String word(Random random) {
        StringBuilder word = new StringBuilder();
        for (int i = random.nextInt(7); i > 0; i--) {
            word.append((char) ('a' + random.nextInt(3)));
        }
        return word.toString();
    }

    /** The distance by its definition: the last letters are equal, changed, dropped, put in or swapped. */
    private static int slowly(String a, String b) {
        if (a.isEmpty() || b.isEmpty()) {
            return a.length() + b.length();
        }
        String shortA = a.substring(0, a.length() - 1);
        String shortB = b.substring(0, b.length() - 1);
        char lastA = a.charAt(a.length() - 1);
        char lastB = b.charAt(b.length() - 1);
        int slips = slowly(shortA, shortB) + (lastA == lastB ? 0 : 1);
        slips = Math.min(slips, Math.min(slowly(shortA, b), slowly(a, shortB)) + 1);
        if (shortA.endsWith(String.valueOf(lastB)) && shortB.endsWith(String.valueOf(lastA))) {
            String before = shortA.substring(0, shortA.length() - 1);
            slips = Math.min(slips, slowly(before, shortB.substring(0, shortB.length() - 1)) + 1);
        }
        return slips;
    }
}
