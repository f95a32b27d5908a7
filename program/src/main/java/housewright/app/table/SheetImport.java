package housewright.app.table;

import housewright.app.table.Paste.PastedRow;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.sheet.Sheet;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * What a list from a spreadsheet would do to a project, row by row, and the changes that do it.
 *
 * @param rows every row of the sheet with anything in it, in its order
 * @param changes of all that is added and changed, one batch
 * @param says what they do, for the history
 */
public record SheetImport(FoundTable found, List<Row> rows, List<Change> changes, String says) {
    /** More than any list of a small hall has. */
    public static final int MOST_ROWS = 25_000;

    /** No desk of a small hall has as many. */
    static final int MOST_INPUTS = 512;

    public SheetImport {
        rows = List.copyOf(rows);
        changes = List.copyOf(changes);
    }

    /** What becomes of a row. */
    public enum Does {
        ADD,
        CHANGE,
        /** It is so already. */
        SAME,
        REFUSE,
        /** It is no row of the list. */
        LEAVE
    }

    /**
     * A row.
     *
     * @param number as the spreadsheet counts
     * @param id of what it makes or changes; empty where it makes nothing
     * @param cells what is taken, by column
     * @param why it is refused or left out, as sentences or parts of them
     * @param notes what was read otherwise than it stands there, and what could not be taken
     */
    public record Row(
            int number, String id, Does does, Map<String, String> cells, List<String> why, List<String> notes) {
        public Row {
            why = List.copyOf(why);
            notes = List.copyOf(notes);
        }
    }

    public long count(Does does) {
        return rows.stream().filter(row -> row.does() == does).count();
    }

    public static SheetImport of(Study study, FoundTable found) {
        Table table = found.kind().table();
        int most = table == null ? MOST_INPUTS : table == Table.PATCH ? Paste.MOST_ROWS : MOST_ROWS;
        List<Row> rows = new ArrayList<>();
        List<Change> changes = List.of();
        if (found.rows().size() > most) {
            String why = "the list has " + found.rows().size() + " rows, and " + most
                    + " are taken at once; take it in parts";
            found.rows()
                    .forEach(
                            row -> rows.add(new Row(row.number(), "", Does.REFUSE, Map.of(), List.of(why), List.of())));
        } else if (table == null) {
            changes = InputList.read(study, found, rows);
        } else {
            changes = rows(study, table, found, rows);
        }
        for (FoundTable.LeftOut left : found.left()) {
            rows.add(new Row(left.row(), "", Does.LEAVE, Map.of("", left.words()), List.of(left.why()), List.of()));
        }
        rows.sort(Comparator.comparingInt(Row::number));
        long taken = rows.stream()
                .filter(row -> row.does() == Does.ADD || row.does() == Does.CHANGE)
                .count();
        String says = "Took " + taken + (taken == 1 ? " row" : " rows") + " of " + found.sheet() + " into "
                + found.kind().title();
        return new SheetImport(found, rows, changes, says);
    }

    private static List<Change> rows(Study study, Table table, FoundTable found, List<Row> rows) {
        List<PastedRow> sound = new ArrayList<>();
        List<Sheet.Row> readable = new ArrayList<>();
        for (Sheet.Row row : found.rows()) {
            List<String> troubles = troubles(found, row);
            if (troubles.isEmpty()) {
                readable.add(row);
            } else {
                rows.add(new Row(row.number(), "", Does.REFUSE, Map.of(), troubles, List.of()));
            }
        }
        ColumnGuess.Guess guess = new ColumnGuess.Guess(
                found.guess().head(),
                found.guess().columns(),
                readable.stream().map(Sheet.Row::cells).toList());
        Paste.Pasted pasted = Paste.read(study, table, guess);
        sound.addAll(pasted.rows());
        Project after = Change.apply(study.project(), pasted.edit().changes());
        Map<String, ? extends Record> before = Rows.of(study.project(), table);
        Map<String, ? extends Record> now = Rows.of(after, table);
        for (int i = 0; i < sound.size(); i++) {
            PastedRow row = sound.get(i);
            Does does = !row.accepted()
                    ? Does.REFUSE
                    : row.isNew()
                            ? Does.ADD
                            : java.util.Objects.equals(before.get(row.id()), now.get(row.id()))
                                    ? Does.SAME
                                    : Does.CHANGE;
            rows.add(new Row(
                    readable.get(i).number(),
                    row.id(),
                    does,
                    row.cells(),
                    row.errors().stream().map(SheetImport::said).toList(),
                    row.notes()));
        }
        return pasted.edit().changes();
    }

    /** What cannot be read in the columns that are taken. */
    static List<String> troubles(FoundTable found, Sheet.Row row) {
        List<String> troubles = new ArrayList<>();
        row.troubles().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(trouble -> {
            int at = trouble.getKey();
            if (at < found.guess().columns().size()
                    && !found.guess().columns().get(at).isEmpty()) {
                troubles.add("column " + FoundTable.letter(at) + ": " + trouble.getValue());
            }
        });
        return troubles;
    }

    private static String said(CellError error) {
        String nearest = error.nearest() == null ? "" : "; did you mean " + error.nearest() + "?";
        String expected = error.expected().isEmpty() ? "" : ", expected " + error.expected();
        return (error.column().isEmpty() ? "" : error.column() + ": ") + "found " + error.found() + expected + nearest;
    }
}
