package housewright.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.SheetVisibility;

/** Reads the sheets of a workbook: of formulas the value that was worked out last, and nothing is worked out here. */
final class Workbook {
    private static final int MOST_SHEETS = 200;

    private final Limits limits = new Limits();
    private int formulas;
    private int hidden;

    private Workbook() {}

    static SheetReading read(byte[] bytes) throws Unreadable {
        byte[] checked = Parts.check(bytes);
        Workbook reader = new Workbook();
        try (ReadableWorkbook book =
                new ReadableWorkbook(new ByteArrayInputStream(checked), new ReadingOptions(true, true))) {
            List<org.dhatim.fastexcel.reader.Sheet> all = book.getSheets().toList();
            if (all.size() > MOST_SHEETS) {
                throw new Unreadable("It has " + all.size() + " sheets; " + MOST_SHEETS + " are read at most.");
            }
            List<Sheet> sheets = new ArrayList<>();
            for (org.dhatim.fastexcel.reader.Sheet sheet : all) {
                if (sheet.getVisibility() == SheetVisibility.VISIBLE) {
                    sheets.add(reader.sheet(sheet));
                } else {
                    reader.hidden++;
                }
            }
            if (sheets.isEmpty()) {
                throw new Unreadable("It has no sheet that can be seen.");
            }
            return new SheetReading.Read(sheets, reader.remarks());
        } catch (IOException | ExcelReaderException | IllegalArgumentException | IllegalStateException e) {
            throw broken();
        } catch (NullPointerException | IndexOutOfBoundsException e) {
            throw broken(); // the library meets parts that are not there, or numbers of none, in this way
        }
    }

    static Unreadable broken() {
        return new Unreadable(
                "It is damaged: the workbook in it cannot be read. Open it in a spreadsheet program and save it again.");
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (formulas > 0) {
            remarks.add(
                    formulas == 1
                            ? "Of one formula the value was taken that the workbook has for it."
                            : "Of " + formulas + " formulas the values were taken that the workbook has for them.");
        }
        if (hidden > 0) {
            remarks.add(hidden == 1 ? "One hidden sheet was left out." : hidden + " hidden sheets were left out.");
        }
        return remarks;
    }

    private Sheet sheet(org.dhatim.fastexcel.reader.Sheet sheet) throws IOException, Unreadable {
        List<Sheet.Row> rows = new ArrayList<>();
        limits.nextSheet();
        try (Stream<Row> stream = sheet.openStream()) {
            for (Iterator<Row> each = stream.iterator(); each.hasNext(); ) {
                Sheet.Row row = row(each.next());
                if (!row.cells().isEmpty()) {
                    rows.add(limits.row(row));
                }
            }
        }
        return new Sheet(sheet.getName(), rows);
    }

    private Sheet.Row row(Row row) throws Unreadable {
        List<String> cells = new ArrayList<>();
        Map<Integer, String> troubles = new HashMap<>();
        for (Cell cell : row) {
            if (cell == null) {
                continue;
            }
            String text = text(cell, troubles);
            boolean anything = !text.isEmpty() || troubles.containsKey(cell.getColumnIndex());
            if (anything) {
                limits.cell(text.isEmpty() ? "?" : text, cell.getColumnIndex(), row.getRowNum());
                while (cells.size() <= cell.getColumnIndex()) {
                    cells.add("");
                }
                cells.set(cell.getColumnIndex(), text);
            }
        }
        return new Sheet.Row(row.getRowNum(), cells, troubles);
    }

    private String text(Cell cell, Map<Integer, String> troubles) {
        String raw = cell.getRawValue();
        return switch (cell.getType()) {
            case EMPTY -> "";
            case STRING -> plain(cell.getText());
            case BOOLEAN -> "1".equals(raw) ? "yes" : "no";
            case NUMBER -> Numbers.text(raw, cell);
            case ERROR -> {
                troubles.put(cell.getColumnIndex(), "an error of the spreadsheet" + (raw == null ? "" : ", " + raw));
                yield "";
            }
            case FORMULA -> {
                if (raw == null || raw.isEmpty()) {
                    troubles.put(
                            cell.getColumnIndex(),
                            "a formula without a value; open the workbook in a spreadsheet program and save it");
                    yield "";
                }
                if (raw.startsWith("#")) {
                    troubles.put(cell.getColumnIndex(), "a formula that gives an error, " + raw);
                    yield "";
                }
                formulas++;
                yield cell.getValue() instanceof Number
                        ? Numbers.text(raw, cell)
                        : cell.getValue() instanceof Boolean ? ("1".equals(raw) ? "yes" : "no") : plain(raw);
            }
        };
    }

    private static String plain(String text) {
        return text.strip();
    }
}
