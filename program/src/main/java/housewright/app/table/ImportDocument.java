package housewright.app.table;

import housewright.model.Doc;
import java.util.List;
import java.util.Map;

/** What {@code import --json} prints. */
public record ImportDocument(
        @Doc("Name of the spreadsheet") String spreadsheet,

        @Doc("The sheet that was read; empty where the workbook is a whole project")
        String sheet,

        @Doc("What it is a list of: equipment, cables, input-list …; project where the workbook is a whole project")
        String as,

        @Doc("The row that its head ends in, as the spreadsheet counts; 0 where it has none")
        int headRow,

        List<ColumnPart> columns,
        List<RowPart> rows,
        int added,
        int changed,

        @Doc("Rows that are in the project as they stand") int same,

        int refused,

        @Doc("Rows that are no rows of the list, such as totals")
        int leftOut,

        @Doc("What to know of how the file was read") List<String> remarks,
        @Doc("The project file was written") boolean applied) {

    /** One column of the sheet. */
    public record ColumnPart(
            @Doc("A, B …") String column,
            @Doc("What stands over it") String head,

            @Doc("The field it is taken for; empty where it is not taken")
            String field) {}

    /** One row of the sheet, or one thing of a project. */
    public record RowPart(
            @Doc("As the spreadsheet counts; 0 for a thing of a project")
            int row,

            @Doc("What it makes or changes; empty where it makes nothing")
            String id,

            SheetImport.Does does,
            @Doc("What is taken of it") List<CellPart> cells,
            @Doc("Why it is refused or left out") List<String> why,

            @Doc("What was read otherwise, or could not be taken")
            List<String> notes) {}

    /** One cell that is taken. */
    public record CellPart(String field, String text) {}

    public static ImportDocument of(String spreadsheet, SheetImport taken, List<String> remarks, boolean applied) {
        FoundTable found = taken.found();
        List<ColumnPart> columns = java.util.stream.IntStream.range(
                        0, found.guess().columns().size())
                .mapToObj(i -> new ColumnPart(
                        FoundTable.letter(i),
                        i < found.guess().head().size() ? found.guess().head().get(i) : "",
                        found.guess().columns().get(i)))
                .toList();
        return document(
                spreadsheet,
                found.sheet(),
                found.kind().word(),
                found.headRow(),
                columns,
                taken.rows().stream().map(ImportDocument::row).toList(),
                remarks,
                applied);
    }

    /** A whole project taken from a workbook. */
    public static ImportDocument of(
            String spreadsheet, List<SheetImport.Row> things, List<String> remarks, boolean applied) {
        return document(
                spreadsheet,
                "",
                "project",
                0,
                List.of(),
                things.stream().map(ImportDocument::row).toList(),
                remarks,
                applied);
    }

    private static ImportDocument document(
            String spreadsheet,
            String sheet,
            String as,
            int headRow,
            List<ColumnPart> columns,
            List<RowPart> rows,
            List<String> remarks,
            boolean applied) {
        return new ImportDocument(
                spreadsheet,
                sheet,
                as,
                headRow,
                columns,
                rows,
                count(rows, SheetImport.Does.ADD),
                count(rows, SheetImport.Does.CHANGE),
                count(rows, SheetImport.Does.SAME),
                count(rows, SheetImport.Does.REFUSE),
                count(rows, SheetImport.Does.LEAVE),
                remarks,
                applied);
    }

    private static int count(List<RowPart> rows, SheetImport.Does does) {
        return (int) rows.stream().filter(row -> row.does() == does).count();
    }

    private static RowPart row(SheetImport.Row row) {
        return new RowPart(
                row.number(),
                row.id(),
                row.does(),
                row.cells().entrySet().stream()
                        .filter(cell -> !cell.getKey().isEmpty())
                        .map((Map.Entry<String, String> cell) -> new CellPart(cell.getKey(), cell.getValue()))
                        .toList(),
                row.why(),
                row.notes());
    }
}
