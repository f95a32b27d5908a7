package housewright.sheet;

/** Counts what was read, and refuses what is more than any list of a small hall. */
final class Limits {
    private int rows;
    private int cells;

    String cell(String text, int column, int row) throws Unreadable {
        if (text.isEmpty()) {
            return text;
        }
        if (text.length() > SheetReader.LONGEST_CELL) {
            throw new Unreadable("A cell in row " + row + " has " + text.length() + " characters; "
                    + SheetReader.LONGEST_CELL + " are the most. An opening quotation mark may want closing.");
        }
        if (column >= SheetReader.MOST_COLUMNS) {
            throw new Unreadable("Row " + row + " has something in column " + (column + 1) + "; "
                    + SheetReader.MOST_COLUMNS + " columns are read at most.");
        }
        if (++cells > SheetReader.MOST_CELLS) {
            throw new Unreadable("It has more than " + SheetReader.MOST_CELLS + " filled cells. Take out what is not"
                    + " meant for this job.");
        }
        return text;
    }

    Sheet.Row row(Sheet.Row row) throws Unreadable {
        if (++rows > SheetReader.MOST_ROWS) {
            throw new Unreadable("A sheet has more than " + SheetReader.MOST_ROWS + " filled rows. Take out what is not"
                    + " meant for this job.");
        }
        return row;
    }

    void nextSheet() {
        rows = 0;
    }
}
