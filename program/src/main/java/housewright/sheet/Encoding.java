package housewright.sheet;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Tells the encoding of a text: by its mark, else UTF-8 where it is that, else by its zeros, else Windows-1252. */
final class Encoding {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int LOOKED_AT = 4000;

    private Encoding() {}

    /** @param remarks what a reader should know, where the encoding is a guess */
    record Decoded(String text, List<String> remarks) {}

    static Decoded decode(byte[] bytes) throws Unreadable {
        if (begins(bytes, 0xEF, 0xBB, 0xBF)) {
            return strict(bytes, 3, StandardCharsets.UTF_8);
        }
        if (begins(bytes, 0xFF, 0xFE)) {
            return strict(bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (begins(bytes, 0xFE, 0xFF)) {
            return strict(bytes, 2, StandardCharsets.UTF_16BE);
        }
        int even = 0;
        int odd = 0;
        for (int i = 0; i < Math.min(bytes.length, LOOKED_AT); i++) {
            even += bytes[i] == 0 && i % 2 == 0 ? 1 : 0;
            odd += bytes[i] == 0 && i % 2 == 1 ? 1 : 0;
        }
        if (even + odd > 0) {
            int half = Math.min(bytes.length, LOOKED_AT) / 2;
            if (odd > half / 2 && even == 0) {
                return strict(bytes, 0, StandardCharsets.UTF_16LE);
            }
            if (even > half / 2 && odd == 0) {
                return strict(bytes, 0, StandardCharsets.UTF_16BE);
            }
            throw new Unreadable("It is no text: there are zero bytes in it. Save it as .csv, or as .xlsx.");
        }
        try {
            return new Decoded(plain(text(bytes, 0, StandardCharsets.UTF_8)), List.of());
        } catch (CharacterCodingException notUtf8) {
            try {
                return new Decoded(
                        plain(text(bytes, 0, WINDOWS)),
                        List.of("It is not UTF-8, and was read as Windows-1252: look at accents and signs."));
            } catch (CharacterCodingException e) {
                throw new Unreadable("It is text of no known encoding. Save it as .csv in UTF-8.");
            }
        }
    }

    private static Decoded strict(byte[] bytes, int from, Charset charset) throws Unreadable {
        try {
            return new Decoded(plain(text(bytes, from, charset)), List.of());
        } catch (CharacterCodingException e) {
            throw new Unreadable(
                    "It says that it is " + charset.name() + ", and is not. Save it again as .csv in UTF-8.");
        }
    }

    private static String text(byte[] bytes, int from, Charset charset) throws CharacterCodingException {
        return charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                .toString();
    }

    private static String plain(String text) throws Unreadable {
        long odd = text.chars()
                .filter(c -> c < 32 && c != '\n' && c != '\r' && c != '\t' && c != '\f')
                .count();
        if (odd > text.length() / 100) {
            throw new Unreadable("It is no text, whatever its name. Save the table as .csv or .xlsx.");
        }
        return text;
    }

    private static boolean begins(byte[] bytes, int... with) {
        if (bytes.length < with.length) {
            return false;
        }
        for (int i = 0; i < with.length; i++) {
            if ((bytes[i] & 0xFF) != with[i]) {
                return false;
            }
        }
        return true;
    }
}
