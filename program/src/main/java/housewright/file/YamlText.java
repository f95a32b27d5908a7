package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Layout;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.file.Node.Sequence;

/** Nodes as YAML that a person reads: what fits is on one line, the rest has a line for each member. */
final class YamlText {
    /** Columns of a line. */
    static final int WIDTH = 110;

    private static final int STEP = 2;

    private final StringBuilder out = new StringBuilder();
    private final String lineEnd;
    private int lineStart;

    private YamlText(String lineEnd) {
        this.lineEnd = lineEnd;
    }

    /** A whole document. */
    static String document(Mapping root) {
        YamlText text = new YamlText("\n");
        for (Entry entry : root.entries()) {
            boolean section = !(entry.value() instanceof Scalar);
            if (section && !entry.key().text().equals("project") && !text.out.isEmpty()) {
                text.endLine();
            }
            text.entry(entry, 0);
        }
        return text.out.toString();
    }

    /** A key and its value, from the first line's indentation to the last line's end. */
    static String entry(Entry entry, int indent, String lineEnd) {
        YamlText text = new YamlText(lineEnd);
        text.entry(entry, indent);
        return text.out.toString();
    }

    /** An item of a block list, from the first line's indentation to the last line's end. */
    static String item(Node item, int indent, String lineEnd) {
        YamlText text = new YamlText(lineEnd);
        text.item(item, indent);
        return text.out.toString();
    }

    /** On one line, whatever it is. */
    static String flow(Node node) {
        StringBuilder flow = new StringBuilder();
        flow(node, flow, Integer.MAX_VALUE);
        return flow.toString();
    }

    static String key(Scalar key, boolean flow) {
        return YamlScalars.text(key, flow);
    }

    private void entry(Entry entry, int indent) {
        out.repeat(' ', indent).append(key(entry.key(), false)).append(':');
        value(entry.value(), indent);
    }

    private void item(Node item, int indent) {
        out.repeat(' ', indent).append('-');
        if (item instanceof Mapping mapping && !fits(mapping, 1)) {
            out.append(' ');
            boolean first = true;
            for (Entry entry : mapping.entries()) {
                if (first) {
                    out.append(key(entry.key(), false)).append(':');
                    value(entry.value(), indent + STEP);
                    first = false;
                } else {
                    entry(entry, indent + STEP);
                }
            }
        } else {
            value(item, indent);
        }
    }

    /** What comes after a colon or a hyphen, with the end of its last line. */
    private void value(Node node, int indent) {
        switch (node) {
            case Scalar scalar -> scalar(scalar, indent);
            case Sequence sequence
            when fits(sequence, 1)
                    && isCompact(sequence.layout(), sequence.items().isEmpty()) -> oneLine(sequence);
            case Mapping mapping
            when fits(mapping, 1)
                    && isCompact(mapping.layout(), mapping.entries().isEmpty()) -> oneLine(mapping);
            case Sequence sequence -> {
                endLine();
                for (Node item : sequence.items()) {
                    item(item, indent + STEP);
                }
            }
            case Mapping mapping -> {
                endLine();
                for (Entry entry : mapping.entries()) {
                    entry(entry, indent + STEP);
                }
            }
        }
    }

    private static boolean isCompact(Layout layout, boolean empty) {
        return layout == Layout.COMPACT || empty;
    }

    private void oneLine(Node node) {
        out.append(' ');
        flow(node, out, Integer.MAX_VALUE);
        endLine();
    }

    private void scalar(Scalar scalar, int indent) {
        String[] lines = scalar.look() == Node.Look.TEXT ? YamlScalars.lines(scalar.text()) : null;
        if (lines == null) {
            out.append(' ').append(YamlScalars.text(scalar, false));
            endLine();
            return;
        }
        out.append(scalar.text().endsWith("\n") ? " |" : " |-");
        endLine();
        for (String line : lines) {
            if (!line.isEmpty()) {
                out.repeat(' ', indent + STEP).append(line);
            }
            endLine();
        }
    }

    private void endLine() {
        out.append(lineEnd);
        lineStart = out.length();
    }

    /** Whether it fits on the rest of the line, after so many more characters. */
    private boolean fits(Node node, int more) {
        int room = WIDTH - (out.length() - lineStart) - more;
        StringBuilder flow = new StringBuilder();
        return flow(node, flow, room) && flow.length() <= room;
    }

    /** False as soon as it is longer than that. */
    private static boolean flow(Node node, StringBuilder flow, int longest) {
        switch (node) {
            case Scalar scalar -> flow.append(YamlScalars.text(scalar, true));
            case Sequence sequence -> {
                flow.append('[');
                String comma = "";
                for (Node item : sequence.items()) {
                    flow.append(comma);
                    comma = ", ";
                    if (!flow(item, flow, longest)) {
                        return false;
                    }
                }
                flow.append(']');
            }
            case Mapping mapping -> {
                flow.append('{');
                String comma = "";
                for (Entry entry : mapping.entries()) {
                    flow.append(comma).append(key(entry.key(), true)).append(": ");
                    comma = ", ";
                    if (!flow(entry.value(), flow, longest)) {
                        return false;
                    }
                }
                flow.append('}');
            }
        }
        return flow.length() <= longest;
    }
}
