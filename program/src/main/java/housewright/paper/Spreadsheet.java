package housewright.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Tables of one name, from all sheets of a paper, as one.
 *
 * @param heads the first is "Sheet" where the tables come from several sheets
 */
public record Spreadsheet(String name, List<Column> heads, List<List<String>> rows) {
    public Spreadsheet {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** Those of a paper, in the order of their first tables; none where it has no table, but those of cards. */
    public static List<Spreadsheet> of(List<Sheet> sheets) {
        Map<String, List<Sheet>> named = new LinkedHashMap<>();
        for (Sheet sheet : sheets.stream().filter(each -> !each.large()).toList()) {
            for (Block.Table table : sheet.tables()) {
                List<Sheet> these = named.computeIfAbsent(table.name(), name -> new ArrayList<>());
                if (!these.contains(sheet)) {
                    these.add(sheet);
                }
            }
        }
        List<Spreadsheet> all = new ArrayList<>();
        named.forEach((name, these) -> all.add(joined(name, these)));
        return List.copyOf(all);
    }

    private static Spreadsheet joined(String name, List<Sheet> sheets) {
        boolean several = sheets.size() > 1;
        List<Column> heads = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Sheet sheet : sheets) {
            for (Block.Table table : sheet.tables()) {
                if (!table.name().equals(name)) {
                    continue;
                }
                if (heads.isEmpty()) {
                    if (several) {
                        heads.add(Column.text("Sheet", 12));
                    }
                    heads.addAll(table.columns());
                }
                for (Row row : table.rows()) {
                    List<String> cells = new ArrayList<>();
                    if (several) {
                        cells.add(sheet.title());
                    }
                    row.cells().forEach(cell -> cells.add(cell.text()));
                    rows.add(cells);
                }
            }
        }
        return new Spreadsheet(name, heads, rows);
    }
}
