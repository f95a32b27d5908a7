package housewright.cli;

import housewright.app.table.FoundTable;
import housewright.app.table.SheetImport;
import housewright.app.table.SheetImport.Does;
import housewright.app.table.SheetImport.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What a list from a spreadsheet is taken for, and what becomes of each row. */
final class ImportText {
    private static final int FIRST_ROWS = 3;
    private static final int MOST_ROWS = 40;
    private static final int WIDEST = 24;

    private final Page page;
    private final boolean all;

    ImportText(Page page, boolean all) {
        this.page = page;
        this.all = all;
    }

    Page list(String spreadsheet, SheetImport taken, List<String> remarks, boolean written, String command) {
        FoundTable found = taken.found();
        String sheet = spreadsheet.endsWith(found.sheet()) ? "" : ", sheet " + found.sheet();
        String head = found.headRow() == 0
                ? "without a head"
                : "its head in row" + (found.headRows() == 2 ? "s " + (found.headRow() - 1) + " and " : " ")
                        + found.headRow();
        page.wrapped(spreadsheet + sheet + ": read as " + found.kind().word() + ", " + head + ".");
        remarks.forEach(page::wrapped);
        page.blank();
        columns(found);
        page.blank();
        int shown = 0;
        for (Row row : taken.rows()) {
            boolean plain = row.does() == Does.SAME;
            if (plain && !all) {
                continue;
            }
            if (shown++ >= MOST_ROWS && !all) {
                page.line("  … and more rows; --all lists them all.");
                break;
            }
            row(row);
        }
        page.blank().wrapped(sum(taken.rows(), written));
        if (!written && !taken.changes().isEmpty()) {
            page.line("Take them: " + command);
        }
        return page;
    }

    private void columns(FoundTable found) {
        List<String> head = found.guess().head();
        for (int i = 0; i < found.guess().columns().size(); i++) {
            int at = i;
            String ours = found.guess().columns().get(i);
            String theirs = i < head.size() ? head.get(i) : "";
            String first = found.rows().stream()
                    .map(row -> row.cell(at))
                    .filter(cell -> !cell.isEmpty())
                    .limit(FIRST_ROWS)
                    .map(cell -> cell.length() > WIDEST ? cell.substring(0, WIDEST - 1) + "…" : cell)
                    .collect(Collectors.joining(" | "));
            if (!theirs.isEmpty() || !first.isEmpty()) {
                page.hanging(
                        String.format(
                                Locale.ROOT,
                                "  %-2s %-22s %-14s ",
                                FoundTable.letter(i),
                                cut(theirs, 22),
                                ours.isEmpty() ? "not taken" : ours),
                        first);
            }
        }
    }

    private static String cut(String text, int most) {
        return text.length() > most ? text.substring(0, most - 1) + "…" : text;
    }

    private void row(Row row) {
        String where = row.number() == 0 ? "" : "row " + row.number() + "  ";
        switch (row.does()) {
            case ADD -> page.hanging(Ink.GOOD, "  + ", where + row.id() + cells(row));
            case CHANGE -> page.hanging(Ink.FIX, "  ~ ", where + row.id() + cells(row));
            case SAME -> page.hanging(Ink.FAINT, "  = ", where + row.id() + ", as it is");
            case REFUSE ->
                page.hanging(
                        Ink.STOP,
                        "  ■ ",
                        where + (row.id().isEmpty() ? "" : row.id() + " ") + "refused: " + ended(row.why()));
            case LEAVE ->
                page.hanging(
                        Ink.FAINT, "  · ", where + "left out: " + String.join("; ", row.why()) + said(row.cells()));
        }
        row.notes().forEach(note -> page.hanging("      ", note));
    }

    private static String ended(List<String> why) {
        String words = String.join("; ", why);
        return words.endsWith("?") ? words : words + ".";
    }

    private static String said(Map<String, String> cells) {
        String words = cells.getOrDefault("", "");
        return words.isEmpty() ? "." : " (" + words + ").";
    }

    private static String cells(Row row) {
        String cells = row.cells().entrySet().stream()
                .map(cell -> cell.getKey() + " " + cell.getValue())
                .collect(Collectors.joining(", "));
        return cells.isEmpty() ? "" : ": " + cells;
    }

    private static String sum(List<Row> rows, boolean written) {
        List<String> parts = new ArrayList<>();
        part(rows, Does.ADD, written ? "added" : "to be added", parts);
        part(rows, Does.CHANGE, written ? "changed" : "to be changed", parts);
        part(rows, Does.SAME, "as they are", parts);
        part(rows, Does.REFUSE, "refused", parts);
        part(rows, Does.LEAVE, "left out", parts);
        return parts.isEmpty() ? "Nothing differs." : String.join(", ", parts) + ".";
    }

    private static void part(List<Row> rows, Does does, String words, List<String> parts) {
        long count = rows.stream().filter(row -> row.does() == does).count();
        if (count > 0) {
            parts.add(count + " " + words);
        }
    }

    Page whole(String spreadsheet, List<Row> things, boolean written, String command) {
        page.wrapped(spreadsheet + " is a whole project.").blank();
        for (Row row : things.subList(0, all ? things.size() : Math.min(MOST_ROWS, things.size()))) {
            row(row);
        }
        if (!all && things.size() > MOST_ROWS) {
            page.line("  … and " + (things.size() - MOST_ROWS) + " more; --all lists them all.");
        }
        page.wrapped(sum(things, written));
        if (!written && !things.isEmpty()) {
            page.line("Take it: " + command);
        }
        return page;
    }
}
