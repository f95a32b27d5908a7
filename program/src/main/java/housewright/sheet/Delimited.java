package housewright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Rows of cells from delimited text: tabs, semicolons or commas between, quotation marks where a cell has one of them or
 * a line break in it (RFC 4180, with the marks that spreadsheets of other countries write).
 */
public final class Delimited {
    private static final char[] MARKS = {'\t', ';', ','};
    private static final int LINES_LOOKED_AT = 200;

    private final String text;
    private final char mark;

    private Delimited(String text, char mark) {
        this.text = text;
        this.mark = mark;
    }

    /** As a spreadsheet gives them to be pasted; an open quotation mark runs to the end. */
    public static List<List<String>> pasted(String text) {
        try {
            return rows(text, false).stream().map(Sheet.Row::cells).toList();
        } catch (Unreadable e) {
            return List.of(List.of(e.why)); // longer than any clipboard: whoever pastes sees why
        }
    }

    /** Rows with anything in them, numbered by the line they begin in. */
    static List<Sheet.Row> read(String text) throws Unreadable {
        return rows(text, true);
    }

    private static List<Sheet.Row> rows(String text, boolean strict) throws Unreadable {
        Character said = said(text);
        if (said != null) {
            String rest = text.substring(text.indexOf('\n') + 1);
            return new Delimited(rest, said).rows(2, strict);
        }
        return new Delimited(text, mark(text)).rows(1, strict);
    }

    /** Some programs write the mark into the first line: {@code sep=;}. */
    private static @Nullable Character said(String text) {
        int end = text.indexOf('\n');
        String first = end < 0 ? "" : text.substring(0, end).strip();
        return first.length() == 5 && first.startsWith("sep=") ? Character.valueOf(first.charAt(4)) : null;
    }

    /** What stands in most lines the same number of times, quoted parts aside; a tab where there is none. */
    private static char mark(String text) {
        char best = '\t';
        int most = 0;
        for (char mark : MARKS) {
            Map<Integer, Integer> lines = new HashMap<>();
            int counted = 0;
            int count = 0;
            boolean quoted = false;
            for (int i = 0; i <= text.length() && counted < LINES_LOOKED_AT; i++) {
                char c = i == text.length() ? '\n' : text.charAt(i);
                if (c == '"') {
                    quoted = !quoted;
                } else if (c == mark && !quoted) {
                    count++;
                } else if (c == '\n') {
                    if (count > 0) {
                        lines.merge(count, 1, Integer::sum);
                    }
                    quoted = false;
                    count = 0;
                    counted++;
                }
            }
            int alike =
                    lines.values().stream().mapToInt(Integer::intValue).max().orElse(0);
            if (alike > most) {
                most = alike;
                best = mark;
            }
        }
        return best;
    }

    private List<Sheet.Row> rows(int firstLine, boolean strict) throws Unreadable {
        List<Sheet.Row> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        int line = firstLine;
        int began = line;
        int opened = 0;
        boolean quoted = false;
        Limits limits = new Limits();
        for (int i = 0; i <= text.length(); i++) {
            char c = i == text.length() ? '\n' : text.charAt(i);
            line += c == '\n' && i < text.length() ? 1 : 0;
            if (quoted && i < text.length()) {
                if (c != '"') {
                    cell.append(c);
                } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    cell.append('"');
                    i++;
                } else {
                    quoted = false;
                }
            } else if (quoted && strict) {
                throw new Unreadable("The quotation mark that opens a cell in line " + opened
                        + " is not closed, so nobody knows where the cell ends. Close it, or take it away.");
            } else if (c == '"' && cell.toString().isBlank()) {
                cell.setLength(0);
                quoted = true;
                opened = line;
            } else if (c == mark || c == '\n') {
                row.add(limits.cell(cell.toString().strip().replaceAll("\\s*\\R\\s*", " "), row.size(), began));
                cell.setLength(0);
                if (c == '\n') {
                    if (row.stream().anyMatch(each -> !each.isEmpty())) {
                        rows.add(limits.row(new Sheet.Row(began, trimmed(row))));
                    }
                    row.clear();
                    began = line;
                }
            } else if (c != '\r') {
                cell.append(c);
            }
        }
        return List.copyOf(rows);
    }

    /** Without the empty cells at the end. */
    private static List<String> trimmed(List<String> row) {
        int end = row.size();
        while (end > 0 && row.get(end - 1).isEmpty()) {
            end--;
        }
        return row.subList(0, end);
    }
}
