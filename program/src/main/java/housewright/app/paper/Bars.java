package housewright.app.paper;

import housewright.paper.Block;
import housewright.paper.Row;
import housewright.paper.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The bars in the margin beside rows that say something else than they did. */
final class Bars {
    private Bars() {}

    /** @param before hashes of the rows that the sheet had, as by {@link Hash#rows(Sheet)} */
    static Sheet marked(Sheet sheet, Map<String, String> before) {
        List<Block> blocks = sheet.blocks().stream()
                .map(block -> block instanceof Block.Table table ? marked(table, before) : block)
                .toList();
        return sheet.with(blocks);
    }

    private static Block marked(Block.Table table, Map<String, String> before) {
        Map<String, String> now = Hash.rows(table);
        List<Row> rows = new ArrayList<>();
        for (Row row : table.rows()) {
            String key = Hash.key(table, row);
            rows.add(Objects.equals(now.get(key), before.get(key)) ? row : row.marked());
        }
        return new Block.Table(table.name(), table.columns(), rows);
    }
}
