package housewright.file;

/** Text of a file as an error may show it: short, and without what would upset a terminal. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    static String quoted(String text) {
        return '"' + cut(text) + '"';
    }

    /** A list or mapping on one line, as it could be written there. */
    static String of(Node node) {
        StringBuilder written = new StringBuilder();
        write(node, written);
        return cut(written.toString());
    }

    /** Writes no further than what is cut off anyway. */
    private static void write(Node node, StringBuilder written) {
        String between = "";
        switch (node) {
            case Node.Scalar scalar -> written.append(scalar.text());
            case Node.Sequence list -> {
                written.append('[');
                for (Node item : list.items()) {
                    written.append(between);
                    if (written.length() > LONGEST) {
                        return;
                    }
                    write(item, written);
                    between = ", ";
                }
                written.append(']');
            }
            case Node.Mapping mapping -> {
                written.append('{');
                for (Node.Entry entry : mapping.entries()) {
                    written.append(between);
                    if (written.length() > LONGEST) {
                        return;
                    }
                    written.append(entry.key().text()).append(": ");
                    write(entry.value(), written);
                    between = ", ";
                }
                written.append('}');
            }
        }
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
