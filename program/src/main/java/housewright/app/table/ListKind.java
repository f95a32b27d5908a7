package housewright.app.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a list in a spreadsheet is a list of.
 *
 * @param word as a command has it: {@code cables}, {@code input-list}
 * @param table whose rows it has; null for an input list, of which each row is a source with all that takes it to the desk
 */
public record ListKind(String word, @Nullable Table table) {
    public static final ListKind INPUTS = new ListKind("input-list", null);

    public static ListKind of(Table table) {
        return new ListKind(table.key(), table);
    }

    /** The likelier first. */
    public static List<ListKind> all() {
        List<ListKind> all = new ArrayList<>(List.of(of(Table.EQUIPMENT), of(Table.CABLES), INPUTS));
        for (Table table : Table.values()) {
            if (table != Table.EQUIPMENT && table != Table.CABLES) {
                all.add(of(table));
            }
        }
        return List.copyOf(all);
    }

    public static Optional<ListKind> find(String word) {
        return all().stream().filter(kind -> kind.word().equals(word)).findFirst();
    }

    public String title() {
        return table == null ? "Input list" : table.title();
    }

    /** What a column of such a list may be. */
    public List<Tables.Column> columns() {
        return table == null ? InputList.COLUMNS : ColumnGuess.columns(table);
    }
}
