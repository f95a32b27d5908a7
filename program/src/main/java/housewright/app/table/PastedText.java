package housewright.app.table;

import java.util.ArrayList;
import java.util.List;

/** Rows of cells from text that a spreadsheet gives: tabs, semicolons or commas between, quotation marks where needed. */
final class PastedText {
    private PastedText() {}

    /** Rows as wide as each is; rows with nothing in them are left out. */
    static List<List<String>> rows(String text) {
        char mark = mark(text);
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i <= text.length(); i++) {
            char c = i == text.length() ? '\n' : text.charAt(i);
            if (quoted && i < text.length()) {
                if (c != '"') {
                    cell.append(c);
                } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    cell.append('"');
                    i++;
                } else {
                    quoted = false;
                }
            } else if (c == '"' && cell.toString().isBlank()) {
                cell.setLength(0);
                quoted = true;
            } else if (c == mark || c == '\n') {
                row.add(cell.toString().strip().replaceAll("\\s*\\R\\s*", " "));
                cell.setLength(0);
                if (c == '\n') {
                    if (row.stream().anyMatch(each -> !each.isEmpty())) {
                        rows.add(List.copyOf(row));
                    }
                    row.clear();
                }
            } else if (c != '\r') {
                cell.append(c);
            }
        }
        return List.copyOf(rows);
    }

    /** A tab where there is one; else what is in most lines, the same number of times. */
    private static char mark(String text) {
        if (text.indexOf('\t') >= 0) {
            return '\t';
        }
        String[] lines = text.strip().split("\\R", 50);
        char best = ',';
        int most = 0;
        for (char mark : new char[] {';', ','}) {
            int alike = 0;
            long first = lines[0].chars().filter(c -> c == mark).count();
            for (String line : lines) {
                alike += first > 0 && line.chars().filter(c -> c == mark).count() == first ? 1 : 0;
            }
            if (alike > most) {
                most = alike;
                best = mark;
            }
        }
        return most == 0 && lines.length > 0 && lines[0].indexOf(',') < 0 ? '\t' : best;
    }
}
