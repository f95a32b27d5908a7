package housewright.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.dhatim.fastexcel.Worksheet;

/** Writes workbooks; the same sheets give the same bytes. */
public final class SheetWriter {
    private static final String PROGRAM = "Housewright";
    private static final int WIDEST = 60;

    private SheetWriter() {}

    /**
     * A workbook (.xlsx). The first row of each sheet is its head: bold, and it stays in sight.
     *
     * @throws IllegalArgumentException where a cell is longer than a workbook's may be
     */
    public static byte[] workbook(List<Sheet> sheets) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (org.dhatim.fastexcel.Workbook book = new org.dhatim.fastexcel.Workbook(bytes, PROGRAM, null)) {
            for (Sheet sheet : sheets) {
                write(book.newWorksheet(sheet.name()), sheet);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // no disk is written
        }
        return Archive.timeless(bytes.toByteArray());
    }

    private static void write(Worksheet into, Sheet sheet) {
        int[] widths = new int[SheetReader.MOST_COLUMNS];
        for (Sheet.Row row : sheet.rows()) {
            for (int column = 0; column < row.cells().size(); column++) {
                String text = row.cells().get(column);
                if (text.length() > SheetReader.LONGEST_CELL) {
                    throw new IllegalArgumentException("A cell of " + text.length() + " characters");
                }
                put(into, row.number() - 1, column, text);
                widths[column] = Math.max(widths[column], Math.min(WIDEST, text.length() + 2));
            }
        }
        for (int column = 0; column < widths.length; column++) {
            if (widths[column] > 0) {
                into.width(column, Math.max(8, widths[column]));
            }
        }
        if (!sheet.rows().isEmpty()) {
            int last = Math.max(0, sheet.rows().getFirst().cells().size() - 1);
            into.range(0, 0, 0, last).style().bold().set();
            into.freezePane(1, 1);
        }
    }

    /** A number only where the very same text comes back. */
    private static void put(Worksheet into, int row, int column, String text) {
        if (text.isEmpty()) {
            return;
        }
        if (text.matches("-?(0|[1-9]\\d{0,8})(\\.\\d{0,5}[1-9])?") && !text.equals("-0")) {
            into.value(row, column, new BigDecimal(text));
        } else {
            into.value(row, column, text);
        }
    }
}
