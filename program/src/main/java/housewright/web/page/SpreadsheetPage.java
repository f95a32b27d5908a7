package housewright.web.page;

import housewright.app.table.FoundTable;
import housewright.app.table.ListKind;
import housewright.app.table.SheetImport;
import housewright.app.table.SheetImport.Does;
import housewright.app.table.SheetImport.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A list from a spreadsheet on its way into a project.
 *
 * @param answer what can be taken, as the title
 * @param file name of what was uploaded; empty where nothing is
 * @param trouble why it cannot be read; empty where it can
 * @param remarks what to know of how it was read
 * @param sheets the sheets there are, and the kinds of list
 * @param columns none where the workbook is a whole project
 * @param rows what becomes of each, as far as it is shown
 * @param more rows that are not shown
 * @param takeable something would change
 */
public record SpreadsheetPage(
        String answer,
        String file,
        String trouble,
        List<String> remarks,
        String sheet,
        List<String> sheets,
        String as,
        List<Choice> kinds,
        String head,
        List<Column> columns,
        List<Choice> fields,
        List<Shown> rows,
        long more,
        boolean takeable,
        long base) {
    /** Rows of a kind that the page shows; what is refused is never cut short below this. */
    private static final int MOST = 300;

    private static final int SAMPLES = 3;

    public SpreadsheetPage {
        remarks = List.copyOf(remarks);
        sheets = List.copyOf(sheets);
        kinds = List.copyOf(kinds);
        columns = List.copyOf(columns);
        fields = List.copyOf(fields);
        rows = List.copyOf(rows);
    }

    /** A word to be chosen, and what it is called. */
    public record Choice(String word, String title) {}

    /**
     * A column of theirs.
     *
     * @param samples its first cells
     * @param field what it is taken for; empty where it is not taken
     */
    public record Column(String letter, String head, List<String> samples, String field) {}

    /** @param state as its mark is called */
    public record Shown(
            String row, String state, String does, String id, String cells, String why, List<String> notes) {}

    public static SpreadsheetPage none(String file, String trouble) {
        String answer = trouble.isEmpty() ? "Take a list from a spreadsheet" : "This spreadsheet cannot be taken";
        return new SpreadsheetPage(
                answer, file, trouble, List.of(), "", List.of(), "", List.of(), "", List.of(), List.of(), List.of(), 0,
                false, 0);
    }

    public static SpreadsheetPage of(
            String file, List<String> sheets, List<String> remarks, SheetImport taken, long base) {
        FoundTable found = taken.found();
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < found.guess().columns().size(); i++) {
            int at = i;
            List<String> samples = found.rows().stream()
                    .map(row -> row.cell(at))
                    .filter(cell -> !cell.isEmpty())
                    .limit(SAMPLES)
                    .toList();
            String head = i < found.guess().head().size() ? found.guess().head().get(i) : "";
            if (!samples.isEmpty() || !head.isEmpty()) {
                columns.add(new Column(
                        FoundTable.letter(i),
                        head,
                        samples,
                        found.guess().columns().get(i)));
            }
        }
        String head = found.headRow() == 0
                ? "It has no head; the cells say what they are."
                : "Its head is in row" + (found.headRows() == 2 ? "s " + (found.headRow() - 1) + " and " : " ")
                        + found.headRow() + ".";
        return new SpreadsheetPage(
                answer(taken.rows()),
                file,
                "",
                remarks,
                found.sheet(),
                sheets,
                found.kind().word(),
                ListKind.all().stream()
                        .map(kind -> new Choice(kind.word(), kind.title()))
                        .toList(),
                head,
                columns,
                found.kind().columns().stream()
                        .map(column -> new Choice(column.key(), column.title()))
                        .toList(),
                shown(taken.rows()),
                Math.max(0, taken.rows().size() - shown(taken.rows()).size()),
                !taken.changes().isEmpty(),
                base);
    }

    /** A whole project in a workbook. */
    public static SpreadsheetPage whole(String file, List<Row> things, long base) {
        return new SpreadsheetPage(
                things.isEmpty() ? "This workbook is the project as it is" : answer(things),
                file,
                "",
                List.of("It is a whole project: what is not in it goes."),
                "",
                List.of(),
                "",
                List.of(),
                "",
                List.of(),
                List.of(),
                shown(things),
                Math.max(0, things.size() - shown(things).size()),
                !things.isEmpty(),
                base);
    }

    private static String answer(List<Row> rows) {
        List<String> parts = new ArrayList<>();
        part(rows, Does.ADD, "would be added", parts);
        part(rows, Does.CHANGE, "changed", parts);
        part(rows, Does.REFUSE, "refused", parts);
        return parts.isEmpty() ? "Nothing in it differs from the project" : String.join(", ", parts);
    }

    private static void part(List<Row> rows, Does does, String words, List<String> parts) {
        long count = rows.stream().filter(row -> row.does() == does).count();
        if (count > 0) {
            parts.add(count + (parts.isEmpty() ? (count == 1 ? " row " : " rows ") : " ") + words);
        }
    }

    /** What is refused first, since it wants looking at. */
    private static List<Shown> shown(List<Row> rows) {
        List<Shown> shown = new ArrayList<>();
        for (Does does : List.of(Does.REFUSE, Does.CHANGE, Does.ADD, Does.LEAVE, Does.SAME)) {
            rows.stream()
                    .filter(row -> row.does() == does)
                    .limit(MOST)
                    .map(SpreadsheetPage::shown)
                    .forEach(shown::add);
        }
        return shown;
    }

    private static Shown shown(Row row) {
        return new Shown(
                row.number() == 0 ? "" : Integer.toString(row.number()),
                switch (row.does()) {
                    case ADD, CHANGE -> "proven";
                    case REFUSE -> "stop";
                    case SAME, LEAVE -> "note";
                },
                switch (row.does()) {
                    case ADD -> "new";
                    case CHANGE -> "changed";
                    case SAME -> "as it is";
                    case REFUSE -> "refused";
                    case LEAVE -> "left out";
                },
                row.id(),
                row.cells().entrySet().stream()
                        .map(cell -> cell.getKey().isEmpty() ? cell.getValue() : cell.getKey() + " " + cell.getValue())
                        .collect(Collectors.joining("; ")),
                String.join("; ", row.why())
                        + (row.why().isEmpty() || row.cells().isEmpty() ? "" : ":"),
                row.notes());
    }

    /** Whether the sheet that is read can be chosen. */
    public boolean severalSheets() {
        return sheets.size() > 1;
    }
}
