package housewright.paper;

import org.jspecify.annotations.Nullable;

/** A cell of a table. */
public record Cell(String text, Mark mark) {
    /** What stands in a cell besides its text. */
    public enum Mark {
        NONE,
        /** Nobody has said yet: a line to write on. */
        BLANK,
        /** A box to tick. */
        BOX
    }

    /** To be filled in by hand. */
    public static final Cell BLANK = new Cell("", Mark.BLANK);

    /** To be ticked. */
    public static final Cell BOX = new Cell("", Mark.BOX);

    /** Nothing belongs there. */
    public static final Cell NONE = new Cell("", Mark.NONE);

    public static Cell of(String text) {
        return new Cell(text, Mark.NONE);
    }

    /** The text, or a line to write it on where nobody has said. */
    public static Cell orBlank(@Nullable Object value) {
        return value == null || value.toString().isEmpty() ? BLANK : of(value.toString());
    }

    /** The text, or nothing. */
    public static Cell orNone(@Nullable Object value) {
        return value == null ? NONE : of(value.toString());
    }
}
