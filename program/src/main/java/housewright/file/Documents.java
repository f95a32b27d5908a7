package housewright.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** From bytes to nodes: the encoding, the limits, and which of the two notations it is. */
final class Documents {
    static final int LARGEST_BYTES = 16 * 1024 * 1024;
    static final int DEEPEST = 40;

    static final String BEGINNING = "a project, which begins with housewright: 1";

    private Documents() {}

    static Node read(String fileName, String text) throws DocumentException {
        return isJson(fileName, text) ? JsonNodes.read(text) : YamlNodes.read(text);
    }

    /** Whether it is JSON by its name, or reads as JSON where the name does not say. */
    static boolean isJson(String fileName, String text) {
        if (fileName.toLowerCase(Locale.ROOT).endsWith(".json")) {
            return true;
        }
        if (!looksLikeJson(text)) {
            return false;
        }
        try {
            JsonNodes.read(text);
            return true;
        } catch (DocumentException notJson) {
            return false; // YAML may begin alike; what is wrong with it is said in its terms
        }
    }

    /** Whether the text begins as a JSON object does: a brace, then a quoted key or a brace. */
    private static boolean looksLikeJson(String text) {
        int at = afterSpace(text, 0);
        if (at == text.length() || text.charAt(at) != '{') {
            return false;
        }
        at = afterSpace(text, at + 1);
        return at < text.length() && (text.charAt(at) == '"' || text.charAt(at) == '}');
    }

    private static int afterSpace(String text, int from) {
        int at = from;
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return at;
    }

    /** The text of a file in UTF-8, with or without a byte order mark. */
    static String decode(byte[] bytes) throws DocumentException {
        if (bytes.length > LARGEST_BYTES) {
            throw tooLarge();
        }
        if (begins(bytes, 0xFE, 0xFF) || begins(bytes, 0xFF, 0xFE)) {
            throw new DocumentException(1, 1, "a file in UTF-16", "UTF-8: save it with that encoding");
        }
        int start = begins(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        String text = new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8);
        if (text.indexOf('\uFFFD') >= 0) {
            refuseBadBytes(bytes, start);
        }
        return text;
    }

    private static boolean begins(byte[] bytes, int... with) {
        boolean begins = bytes.length >= with.length;
        for (int i = 0; begins && i < with.length; i++) {
            begins = bytes[i] == (byte) with[i];
        }
        return begins;
    }

    /** The replacement character may stand in the file by right; only a decoder that stops can tell. */
    private static void refuseBadBytes(byte[] bytes, int start) throws DocumentException {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            String before = out.flip().toString();
            int[] place = lineAndColumn(before, before.length());
            throw new DocumentException(
                    place[0],
                    place[1],
                    String.format(Locale.ROOT, "the byte 0x%02X at byte %d", bytes[in.position()], in.position() + 1),
                    "text in UTF-8: save it with that encoding");
        }
    }

    static DocumentException tooLarge() {
        return new DocumentException(
                0, 0, "more than " + LARGEST_BYTES / (1024 * 1024) + " MB", "a project, which is far smaller");
    }

    static DocumentException empty() {
        return new DocumentException(1, 1, "an empty file", BEGINNING);
    }

    static DocumentException tooDeep(Span span) {
        return new DocumentException(
                span.line(),
                span.column(),
                "lists or mappings more than " + DEEPEST + " deep",
                "a project, which is flatter");
    }

    /** Line and column, both from 1 and the column in code points, of a character. */
    static int[] lineAndColumn(String text, int at) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < at; i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'))) {
                line++;
                lineStart = i + 1;
            }
        }
        return new int[] {line, text.codePointCount(lineStart, at) + 1};
    }
}
