package housewright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide a text is at most, by classes of letters. The figures are those of a wide sans serif (letters of DejaVu Sans,
 * rounded up), so that the usual fonts of pages and printers stay within them.
 */
final class TextWidth {
    private static final double MONO_EM = 0.62;

    private TextWidth() {}

    static double of(String text, double size) {
        double em = 0;
        for (int i = 0; i < text.length(); ) {
            int each = text.codePointAt(i);
            i += Character.charCount(each);
            em += em(each);
        }
        return em * size;
    }

    static double mono(String text, double size) {
        double em = 0;
        for (int i = 0; i < text.length(); ) {
            int each = text.codePointAt(i);
            i += Character.charCount(each);
            em += each < 0x2E80 ? MONO_EM : 1.05;
        }
        return em * size;
    }

    /** The text, or as much of it as fits with an ellipsis after it. */
    static String cut(String text, double size, double width) {
        if (of(text, size) <= width) {
            return text;
        }
        int end = text.length();
        while (end > 0 && of(text.substring(0, end) + "…", size) > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).stripTrailing() + "…";
    }

    /** In lines no wider than asked, broken at spaces; a word that is wider after a hyphen, else anywhere. */
    static List<String> wrap(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            if (!line.isEmpty() && of(line + " " + rest, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (of(rest, size) > width && rest.codePointCount(0, rest.length()) > 1) {
                int end = rest.length();
                while (end > 0 && of(rest.substring(0, end), size) > width) {
                    end = rest.offsetByCodePoints(end, -1);
                }
                int hyphen = rest.lastIndexOf('-', end - 1) + 1;
                end = hyphen > 1 ? hyphen : Math.max(end, rest.offsetByCodePoints(0, 1));
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        if (!line.isEmpty() || lines.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    private static double em(int letter) {
        return switch (letter) {
            case 'i', 'j', 'l', 'I', '\'', '|', '.', ',', ':', ';' -> 0.35;
            case 'f', 't', 'r', ' ', '\u00A0', '(', ')', '[', ']', '/', '-', '!' -> 0.42;
            case 'm', 'M', 'w', 'W', '%', '@', '…', '→', '—' -> 1.0;
            default ->
                letter < 0x80
                        ? Character.isUpperCase(letter) ? 0.79 : 0.65
                        : letter < 0x500 ? 0.8 : letter < 0x2E80 ? 1.0 : 1.05;
        };
    }
}
