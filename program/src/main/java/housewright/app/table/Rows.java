package housewright.app.table;

import housewright.file.EntityCells;
import housewright.file.EntityCells.Reading;
import housewright.file.FileError;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The rows of a project's tables, patch and pairs included, and the changes that put them. */
final class Rows {
    private Rows() {}

    /** By id, in the order of the file. */
    static Map<String, ? extends Record> of(Project project, Table table) {
        Section section = table.section();
        if (section != null) {
            return section.of(project);
        }
        Map<String, Record> rows = new LinkedHashMap<>();
        if (table == Table.PATCH) {
            project.patch()
                    .forEach((device, entries) -> entries.forEach(
                            entry -> rows.putIfAbsent(PatchRow.id(device, entry), PatchRow.of(device, entry))));
        } else {
            project.pairs().forEach((id, channels) -> rows.put(id, new PairRow(id, channels)));
        }
        return rows;
    }

    static Reading read(Table table, String id, @Nullable Record before, Map<String, String> cells) {
        return EntityCells.read(table.rowType(), table.path(), table == Table.PATCH ? "entry" : id, before, cells);
    }

    /**
     * What puts a row in place of another, or at the end.
     *
     * @param before null where it is new
     */
    static List<Change> put(Project project, Table table, @Nullable Record before, String id, Record row) {
        Section section = table.section();
        if (section != null) {
            return List.of(new Change.Put(section, id, row));
        }
        if (row instanceof PairRow pair) {
            return List.of(new Change.Pair(id, pair.channels()));
        }
        return patch(project, (PatchRow) row, before instanceof PatchRow was ? was : null);
    }

    private static List<Change> patch(Project project, PatchRow row, @Nullable PatchRow before) {
        PatchEntry entry = row.entry();
        String device = row.device();
        if (entry == null || device == null) {
            throw new IllegalArgumentException("An entry of a patch needs its device, a source and a destination");
        }
        List<PatchEntry> entries = new ArrayList<>(project.patch().getOrDefault(device, List.of()));
        if (before != null && device.equals(before.device())) {
            entries.replaceAll(each -> each.equals(before.entry()) ? entry : each);
            return List.of(new Change.Repatch(device, entries));
        }
        List<Change> changes = new ArrayList<>();
        if (before != null) {
            changes.addAll(drop(project, Table.PATCH, before.id()));
        }
        entries.add(entry);
        changes.add(new Change.Repatch(device, entries));
        return changes;
    }

    static List<Change> drop(Project project, Table table, String id) {
        Section section = table.section();
        if (section != null) {
            return List.of(new Change.Drop(section, id));
        }
        if (table == Table.PAIRS) {
            return List.of(new Change.Pair(id, List.of()));
        }
        if (!(of(project, table).get(id) instanceof PatchRow row) || row.device() == null) {
            return List.of();
        }
        List<PatchEntry> entries = new ArrayList<>(project.patch().getOrDefault(row.device(), List.of()));
        entries.remove(row.entry());
        return List.of(new Change.Repatch(row.device(), entries));
    }

    /** A row lacks what no row of the table can be without. */
    static List<CellError> lacking(Table table, String id, Record row) {
        List<CellError> errors = new ArrayList<>();
        if (row instanceof PatchRow patch) {
            if (patch.device() == null) {
                errors.add(new CellError(id, "device", "nothing", "the device the patch is set in", null));
            }
            if (patch.from() == null) {
                errors.add(new CellError(id, "from", "nothing", "where the signal arrives, such as link:1", null));
            }
            if (patch.to().isEmpty()) {
                errors.add(new CellError(id, "to", "nothing", "where it goes, such as ch-1", null));
            }
        } else if (row instanceof PairRow pair && pair.channels().isEmpty()) {
            errors.add(new CellError(id, "channels", "nothing", "channels, left first", null));
        }
        return errors;
    }

    /** Errors of a whole project as errors of the cells of these rows; those of other rows are left as they are said. */
    static List<CellError> errors(
            Project project, Table table, List<FileError> errors, Map<String, Map<String, String>> typed) {
        List<CellError> found = new ArrayList<>();
        for (FileError error : errors) {
            found.add(error(project, table, error, typed));
        }
        return List.copyOf(found);
    }

    private static CellError error(
            Project project, Table table, FileError error, Map<String, Map<String, String>> typed) {
        String path = error.path();
        String start = table.path() + ".";
        if (!path.startsWith(start)) {
            return new CellError("", "", path + ": " + error.found(), error.expected(), error.nearest());
        }
        String rest = path.substring(start.length());
        String row = rest.split("[.\\[]", 2)[0];
        String cell = rest.substring(row.length());
        if (table == Table.PATCH) {
            List<PatchEntry> entries = project.patch().getOrDefault(row, List.of());
            int close = cell.indexOf(']');
            int index = close < 0 ? -1 : Integer.parseInt(cell.substring(1, close)) - 1;
            String device = row;
            row = index < 0 || index >= entries.size() ? row : PatchRow.id(device, entries.get(index));
            String column = index < 0 ? "device" : side(error, entries.get(index));
            return CellError.of(row, column, error, text(typed, row, column));
        }
        String column = table == Table.PAIRS ? "channels" : column(table, cell);
        return CellError.of(row, column, error, text(typed, row, column));
    }

    private static @Nullable String text(Map<String, Map<String, String>> typed, String row, String column) {
        return typed.getOrDefault(row, Map.of()).get(column);
    }

    private static String side(FileError error, PatchEntry entry) {
        String found = error.found().replace("\"", "");
        return entry.from().text().contains(found) ? "from" : "to";
    }

    /** The longest column that the path within the row begins with. */
    private static String column(Table table, String cell) {
        String plain = cell.replaceAll("\\[\\d+]", "").replaceFirst("^\\.", "");
        String longest = "";
        for (EntityCells.Column column : EntityCells.columns(table.rowType())) {
            boolean begins = plain.equals(column.key()) || plain.startsWith(column.key() + ".");
            if (begins && column.key().length() > longest.length()) {
                longest = column.key();
            }
        }
        return longest;
    }
}
