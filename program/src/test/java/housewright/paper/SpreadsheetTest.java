package housewright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.paper.csv.Csv;
import housewright.paper.xlsx.Xlsx;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;

/** Tables as spreadsheets, read back by other means. */
class SpreadsheetTest {
    private static final Spreadsheet AWKWARD = new Spreadsheet(
            "awkward",
            List.of(Column.text("What, exactly", 10), Column.number("Length, m", 5)),
            List.of(List.of("says \"on\"", "12.5"), List.of("=HYPERLINK(\"x\")", "about 3"), List.of("-6 dB", "")));

    /** RFC 4180, section 2: lines end in CRLF (1), quotes around what holds commas or quotes (6), quotes doubled (7). */
    @Test
    void csvIsAsTheRfcHasIt() {
        assertThat(Csv.of(AWKWARD))
                .isEqualTo("\uFEFF\"What, exactly\",\"Length, m\"\r\n\"says \"\"on\"\"\",12.5\r\n"
                        + "\"'=HYPERLINK(\"\"x\"\")\",about 3\r\n-6 dB,\r\n");
    }

    /** What is run though it begins as a figure does (OWASP, CSV injection). */
    @Test
    void aFigureThatCallsSomethingIsText() {
        for (String formula : List.of("-2+3+cmd|' /C calc'!A0", "+1+WEBSERVICE(A1)", "- 1*SUM(A1:A2)")) {
            Spreadsheet table =
                    new Spreadsheet("t", List.of(Column.text("a", 1)), List.of(List.of(formula), List.of("-10 dBV")));
            assertThat(Csv.of(table)).endsWith("'" + formula + "\r\n-10 dBV\r\n");
        }
    }

    @Test
    void aWorkbookReadsBackEqualAndKnowsNoTime() throws IOException {
        List<Spreadsheet> tables = new ArrayList<>(List.of(AWKWARD));
        for (Paper paper : Papers.all()) {
            tables.addAll(Spreadsheet.of(paper.sheets(Halls.example("refit"), Halls.OPTIONS)));
        }
        byte[] book = Xlsx.of(tables);
        assertThat(Xlsx.of(tables)).isEqualTo(book);
        try (ReadableWorkbook read = new ReadableWorkbook(new ByteArrayInputStream(book))) {
            assertThat(read.getSheets().count()).isEqualTo(tables.size());
            for (int i = 0; i < tables.size(); i++) {
                Spreadsheet table = tables.get(i);
                List<Row> rows = read.getSheet(i).orElseThrow().read();
                assertThat(cells(rows.getFirst(), table))
                        .isEqualTo(table.heads().stream().map(Column::head).toList());
                // lines to write on by hand are no rows to a reader
                assertThat(rows.stream().skip(1).map(row -> cells(row, table)).filter(SpreadsheetTest::isWritten))
                        .containsExactlyElementsOf(table.rows().stream()
                                .filter(SpreadsheetTest::isWritten)
                                .toList());
            }
            assertThat(read.getSheet(0)
                            .orElseThrow()
                            .read()
                            .get(1)
                            .getCell(1)
                            .getType()
                            .name())
                    .isEqualTo("NUMBER");
            assertThat(read.getSheet(0)
                            .orElseThrow()
                            .read()
                            .get(2)
                            .getCell(0)
                            .getType()
                            .name())
                    .isEqualTo("STRING");
        }
    }

    private static List<String> cells(Row row, Spreadsheet table) {
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < table.heads().size(); column++) {
            cells.add(row.getOptionalCell(column)
                    .map(cell -> cell.getRawValue() == null ? "" : cell.getRawValue())
                    .orElse(""));
        }
        return cells;
    }

    private static boolean isWritten(List<String> cells) {
        return cells.stream().anyMatch(cell -> !cell.isEmpty());
    }
}
