package housewright.sheet;

import java.util.List;
import java.util.Map;

/**
 * A sheet of a workbook, or a file of delimited text.
 *
 * @param name as its tab says; the file's name where it has no tabs
 * @param rows those that have anything in them, in order
 */
public record Sheet(String name, List<Row> rows) {
    public Sheet {
        rows = List.copyOf(rows);
    }

    /**
     * A row.
     *
     * @param number as the spreadsheet counts, from 1; a line of the file for delimited text
     * @param cells texts from the first column on, without blanks around them; empty where nothing stands
     * @param troubles why a cell has no text though something stands in it, by column from 0
     */
    public record Row(int number, List<String> cells, Map<Integer, String> troubles) {
        public Row {
            cells = List.copyOf(cells);
            troubles = Map.copyOf(troubles);
        }

        public Row(int number, List<String> cells) {
            this(number, cells, Map.of());
        }

        /** What stands in a column, from 0; empty beyond the last. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }
}
