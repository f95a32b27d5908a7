package housewright.file;

import housewright.file.Node.Look;
import housewright.file.Node.Scalar;
import org.jspecify.annotations.Nullable;

/**
 * Scalars in YAML: plain where every reader, of YAML 1.2 (core schema, chapter 10.3) or 1.1, takes them for the same
 * text; quoted otherwise.
 */
final class YamlScalars {
    private YamlScalars() {}

    /** @param flow whether it stands within brackets or braces */
    static String text(Scalar scalar, boolean flow) {
        String text = scalar.text();
        if (scalar.look() != Look.TEXT && scalar.look() != Look.PLAIN) {
            return text;
        }
        boolean plain = isPlain(text, flow) && (scalar.look() == Look.PLAIN || !isAmbiguous(text));
        return plain ? text : quoted(text);
    }

    /** Whether the characters allow it without quotes. */
    static boolean isPlain(String text, boolean flow) {
        if (text.isEmpty() || text.startsWith("---") || text.startsWith("...")) {
            return false;
        }
        char first = text.charAt(0);
        if ("?:,[]{}#&*!|>'\"%@`= <~".indexOf(first) >= 0
                || (first == '-' && (text.length() == 1 || isSpaceOrFlow(text.charAt(1))))) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            char next = i + 1 < text.length() ? text.charAt(i + 1) : ' ';
            if (!isCommon(c)
                    || "[]{}".indexOf(c) >= 0
                    || (flow && (c == ',' || c == '?'))
                    || (c == ':' && (isSpaceOrFlow(next) || next == '"' || next == '\''))
                    || (c == ' ' && (next == '#' || i + 1 == text.length()))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSpaceOrFlow(char c) {
        return c == ' ' || c == ',' || c == '[' || c == ']' || c == '{' || c == '}';
    }

    /** Printable, on one line, and nothing that an editor might change or hide. */
    private static boolean isCommon(char c) {
        if (c < 0x7F) {
            return c >= ' ';
        }
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SPACE_SEPARATOR,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }

    /** Whether some reader would take the plain text for a number, a truth value, a date or nothing. */
    static boolean isAmbiguous(String text) {
        if (text.length() <= 5) {
            switch (text.toLowerCase(java.util.Locale.ROOT)) {
                case "y", "n", "yes", "no", "on", "off", "true", "false", "null", "~" -> {
                    return true;
                }
                default -> {
                    // not a word that stands for something
                }
            }
        }
        char first = text.charAt(0);
        char second = text.length() > 1 ? text.charAt(1) : ' ';
        boolean sign = first == '+' || first == '-' || first == '.';
        if (!isDigit(first)
                && !(sign
                        && (isDigit(second)
                                || second == '.'
                                || second == 'i'
                                || second == 'I'
                                || second == 'n'
                                || second == 'N'))) {
            return false;
        }
        if (sign && !isDigit(second)) {
            return true; // .5, .inf, -.inf, .nan and whatever looks like them
        }
        return isNumberLike(text);
    }

    /** Numbers in every base and with exponents, base 60, days and times: made of these characters alone. */
    private static boolean isNumberLike(String text) {
        for (int i = 0; i < text.length(); i++) {
            if ("0123456789_.:,+-xXoObBaAcCdDeEfFtTzZ ".indexOf(text.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                case '\r' -> quoted.append("\\r");
                default -> {
                    char next = i + 1 < text.length() ? text.charAt(i + 1) : ' ';
                    if (isCommon(c)) {
                        quoted.append(c);
                    } else if (Character.isHighSurrogate(c) && Character.isLowSurrogate(next)) {
                        quoted.append(c).append(next);
                        i++;
                    } else {
                        quoted.append(String.format(java.util.Locale.ROOT, "\\u%04X", (int) c));
                    }
                }
            }
        }
        return quoted.append('"').toString();
    }

    /**
     * The lines of a text for a literal block, or null where one cannot have it: a single line, lines that begin or
     * end with a space, or anything but a single line break at the end.
     */
    static String @Nullable [] lines(String text) {
        String body = text.endsWith("\n") ? text.substring(0, text.length() - 1) : text;
        if (body.indexOf('\n') < 0 || body.endsWith("\n") || body.startsWith("\n")) {
            return null;
        }
        String[] lines = body.split("\n", -1);
        for (String line : lines) {
            if (line.startsWith(" ") || line.endsWith(" ")) {
                return null;
            }
            for (int i = 0; i < line.length(); i++) {
                if (!isCommon(line.charAt(i))) {
                    return null;
                }
            }
        }
        return lines;
    }
}
