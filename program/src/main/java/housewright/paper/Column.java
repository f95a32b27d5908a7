package housewright.paper;

/**
 * A column of a table.
 *
 * @param width its share of the table's width, beside the other columns' shares
 */
public record Column(String head, double width, Kind kind) {
    /** How its cells are set. */
    public enum Kind {
        TEXT,
        /** An id: in letters of one width. */
        ID,
        /** Figures, to the right; a number in a spreadsheet. */
        NUMBER
    }

    public static Column text(String head, double width) {
        return new Column(head, width, Kind.TEXT);
    }

    public static Column id(String head, double width) {
        return new Column(head, width, Kind.ID);
    }

    public static Column number(String head, double width) {
        return new Column(head, width, Kind.NUMBER);
    }
}
