package housewright.unit;

import java.util.Random;
import java.util.function.Function;

/** Text that is good, nearly good, or rubbish, from a seeded generator. */
final class RandomText {
    private static final String LETTERS =
            "0123456789 0123456789.,+-/exmkgdBuVAWHzsinftolbhUKpP%\u00b5\u03a9\u00b0\u00b2\u2212\u00a0\n\u0000\ud83d";

    private RandomText() {}

    /** One of these, with up to three letters dropped, put in, changed or doubled. */
    static String like(Random random, String... good) {
        var text = new StringBuilder(good[random.nextInt(good.length)]);
        for (int edits = random.nextInt(4); edits > 0; edits--) {
            int at = random.nextInt(text.length() + 1);
            switch (random.nextInt(4)) {
                case 0 -> text.insert(at, letter(random));
                case 1 -> text.insert(at, text.substring(0, at));
                case 2 -> text.delete(Math.max(0, at - 1), at);
                default -> text.replace(Math.max(0, at - 1), at, letter(random));
            }
        }
        return text.toString();
    }

    static String rubbish(Random random) {
        var text = new StringBuilder();
        for (int length = random.nextInt(20); length > 0; length--) {
            text.append(random.nextInt(20) == 0 ? Character.toString(random.nextInt(0xd800)) : letter(random));
        }
        return text.toString();
    }

    /** Whether it is read; any failure but a {@link UnitException} comes through. */
    static boolean reads(Function<String, ?> reader, String text) {
        try {
            reader.apply(text);
            return true;
        } catch (UnitException refused) {
            return false;
        }
    }

    private static String letter(Random random) {
        return LETTERS.substring(random.nextInt(LETTERS.length())).substring(0, 1);
    }
}
