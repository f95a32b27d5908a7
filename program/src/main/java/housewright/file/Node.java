package housewright.file;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A document as a tree: what YAML and JSON have in common, with places for the errors. */
sealed interface Node {
    Span span();

    /** As an error names what was found. */
    String found();

    /** How a scalar is, or is to be, written. */
    enum Look {
        /** As it is, in YAML without quotes. */
        PLAIN,
        /** As text, whatever it looks like. */
        TEXT,
        NUMBER,
        TRUTH
    }

    record Scalar(String text, Look look, Span span) implements Node {
        Scalar(String text, Look look) {
            this(text, look, Span.NONE);
        }

        boolean isNothing() {
            return look == Look.PLAIN
                    && (text.isEmpty()
                            || text.equals("~")
                            || text.equals("null")
                            || text.equals("Null")
                            || text.equals("NULL"));
        }

        @Override
        public String found() {
            return isNothing() ? "nothing" : Shown.quoted(text);
        }
    }

    record Sequence(List<Node> items, Layout layout, Span span) implements Node {
        @Override
        public String found() {
            return items.isEmpty() ? "an empty list" : "the list " + Shown.of(this);
        }
    }

    record Entry(Scalar key, Node value) {}

    record Mapping(List<Entry> entries, Layout layout, Span span) implements Node {
        @Override
        public String found() {
            return entries.isEmpty() ? "an empty mapping" : "the mapping " + Shown.of(this);
        }

        @Nullable
        Node find(String key) {
            for (Entry entry : entries) {
                if (entry.key().text().equals(key)) {
                    return entry.value();
                }
            }
            return null;
        }
    }

    /** How the writer lays a list or mapping out; what was read has {@link #COMPACT}. */
    enum Layout {
        /** On one line where it fits. */
        COMPACT,
        /** A line for each member, unless what it stands in fits on one line as a whole. */
        LINES,
        /** A line for each member always. */
        SECTION
    }
}
