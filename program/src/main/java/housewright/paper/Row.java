package housewright.paper;

import java.util.List;

/**
 * A row of a table.
 *
 * @param key tells it from the other rows of its table and stays the same from revision to revision
 * @param changed marked in the margin: it is new, or says something else than in the revision before
 */
public record Row(String key, List<Cell> cells, boolean changed) {
    public Row {
        cells = List.copyOf(cells);
    }

    public Row(String key, List<Cell> cells) {
        this(key, cells, false);
    }

    /** A row of plain cells; an empty text is an empty cell. */
    public static Row of(String key, String... texts) {
        return new Row(key, List.of(texts).stream().map(Cell::of).toList());
    }

    public Row marked() {
        return new Row(key, cells, true);
    }
}
