package housewright.paper.html;

/** Text in markup. */
final class Html {
    private static final char REPLACEMENT = '\uFFFD';

    private Html() {}

    /** Escaped for content and for attributes in double quotes; what XML 1.0 cannot hold is replaced. */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); ) {
            int each = text.codePointAt(i);
            i += Character.charCount(each);
            switch (each) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\t', '\n', '\r' -> escaped.append(' ');
                default -> {
                    if (isXml(each)) {
                        escaped.appendCodePoint(each);
                    } else {
                        escaped.append(REPLACEMENT);
                    }
                }
            }
        }
        return escaped.toString();
    }

    private static boolean isXml(int letter) {
        return letter >= 0x20
                && !(letter >= 0x7F && letter < 0xA0)
                && !(letter >= 0xD800 && letter <= 0xDFFF)
                && letter != 0xFFFE
                && letter != 0xFFFF;
    }

    /** With at most three decimals, alike in every locale. */
    static String num(double value) {
        return String.format(java.util.Locale.ROOT, "%.3f", value).replaceFirst("\\.?0+$", "");
    }
}
