package housewright.file;

/** Text of a file as an error may show it: short, and without what would upset a terminal. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    static String quoted(String text) {
        return '"' + cut(text) + '"';
    }

    static String cut(String text) {
        StringBuilder shown = new StringBuilder(Math.min(text.length(), LONGEST) + 1);
        int length = 0;
        for (int i = 0; i < text.length() && length < LONGEST; length++) {
            int c = text.codePointAt(i);
            int type = Character.getType(c);
            boolean hidden = type == Character.CONTROL
                    || type == Character.FORMAT
                    || type == Character.SURROGATE
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR;
            shown.appendCodePoint(hidden ? (c == '\n' ? ' ' : '\uFFFD') : c);
            i += Character.charCount(c);
            if (length == LONGEST - 1 && i < text.length()) {
                shown.append('…');
            }
        }
        return shown.toString();
    }
}
