package housewright.paper.csv;

import housewright.paper.Column;
import housewright.paper.Spreadsheet;
import java.util.List;

/** Writes a table as RFC 4180 has it: commas, CR LF, quotes where needed; UTF-8 with its mark, so that spreadsheets see it. */
public final class Csv {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private Csv() {}

    public static String of(Spreadsheet table) {
        StringBuilder out = new StringBuilder(BYTE_ORDER_MARK);
        line(table.heads().stream().map(Column::head).toList(), out);
        table.rows().forEach(row -> line(row, out));
        return out.toString();
    }

    private static void line(List<String> cells, StringBuilder out) {
        for (int i = 0; i < cells.size(); i++) {
            out.append(i > 0 ? "," : "").append(cell(cells.get(i)));
        }
        out.append("\r\n");
    }

    private static String cell(String text) {
        String safe = isFormula(text) ? "'" + text : text;
        return safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
                ? '"' + safe.replace("\"", "\"\"") + '"'
                : safe;
    }

    /** What a spreadsheet would run instead of showing it; a figure with a sign is none, unless it calls something. */
    private static boolean isFormula(String text) {
        if (text.isEmpty()) {
            return false;
        }
        return switch (text.charAt(0)) {
            case '=', '@', '\t', '\r' -> true;
            case '+', '-' ->
                text.length() > 1
                        && (text.chars().anyMatch(c -> c == '|' || c == '!' || c == '(')
                                || (!Character.isDigit(text.charAt(1)) && text.charAt(1) != ' '));
            default -> false;
        };
    }
}
