package housewright.paper.xlsx;

import housewright.paper.Column;
import housewright.paper.Spreadsheet;
import housewright.sheet.Archive;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Writes tables as an Office Open XML workbook; equal tables give equal bytes. */
public final class Xlsx {
    /** Excel's own limits, of a sheet's name and of a cell. */
    private static final int MOST_NAME = 31;

    private static final int MOST_TEXT = 32_767;
    private static final String FORBIDDEN = "[\\\\/?*\\[\\]:]";

    private Xlsx() {}

    public static byte[] of(List<Spreadsheet> tables) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (Workbook book = new Workbook(bytes, "Housewright", null)) {
                Set<String> names = new HashSet<>();
                for (Spreadsheet table : tables) {
                    write(table, book.newWorksheet(name(table.name(), names)));
                }
            }
            return Archive.timeless(bytes.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Spreadsheet table, Worksheet sheet) {
        for (int column = 0; column < table.heads().size(); column++) {
            Column head = table.heads().get(column);
            sheet.value(0, column, cut(head.head()));
            sheet.width(column, Math.clamp(head.width() * 1.6, 8, 60));
        }
        sheet.range(0, 0, 0, table.heads().size() - 1).style().bold().set();
        sheet.freezePane(0, 1);
        int line = 1;
        for (List<String> row : table.rows()) {
            for (int column = 0; column < row.size(); column++) {
                String text = row.get(column);
                if (table.heads().get(column).kind() == Column.Kind.NUMBER
                        && text.matches("-?\\d{1,12}(\\.\\d{1,6})?")) {
                    sheet.value(line, column, new BigDecimal(text));
                } else if (!text.isEmpty()) {
                    sheet.value(line, column, cut(text));
                }
            }
            line++;
        }
    }

    private static String cut(String text) {
        return text.length() > MOST_TEXT ? text.substring(0, MOST_TEXT) : text;
    }

    private static String name(String wanted, Set<String> taken) {
        String base = wanted.replaceAll(FORBIDDEN, " ").strip();
        base = base.isEmpty() ? "table" : base.substring(0, Math.min(MOST_NAME, base.length()));
        String name = base;
        for (int n = 2; !taken.add(name.toLowerCase(Locale.ROOT)); n++) {
            String suffix = " " + n;
            name = base.substring(0, Math.min(MOST_NAME - suffix.length(), base.length())) + suffix;
        }
        return name;
    }
}
