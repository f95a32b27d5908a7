package housewright.app.table;

import housewright.app.table.SheetImport.Does;
import housewright.app.table.SheetImport.Row;
import housewright.model.Project;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a whole project in a workbook has otherwise than the one it came from, thing by thing. */
public final class ProjectDifference {
    private ProjectDifference() {}

    public static List<Row> of(Project before, Project after) {
        List<Row> rows = new ArrayList<>();
        if (!before.about().equals(after.about())) {
            rows.add(row("project", Does.CHANGE, ""));
        }
        for (Section section : Section.values()) {
            things(section.path(), section.of(before), section.of(after), rows);
        }
        things("patch", before.patch(), after.patch(), rows);
        things("pairs", before.pairs(), after.pairs(), rows);
        whole("budget", String.valueOf(before.budget()), String.valueOf(after.budget()), rows);
        whole("practice", String.valueOf(before.practice()), String.valueOf(after.practice()), rows);
        whole("exempt", before.exempt().toString(), after.exempt().toString(), rows);
        return List.copyOf(rows);
    }

    private static void whole(String what, String before, String after, List<Row> rows) {
        if (!before.equals(after)) {
            rows.add(row(what, Does.CHANGE, ""));
        }
    }

    private static void things(String section, Map<String, ?> before, Map<String, ?> after, List<Row> rows) {
        Set<String> ids = new LinkedHashSet<>(before.keySet());
        ids.addAll(after.keySet());
        for (String id : ids) {
            Object was = before.get(id);
            Object is = after.get(id);
            if (is == null) {
                rows.add(row(section + "." + id, Does.CHANGE, "It is not in the workbook, and goes."));
            } else if (!is.equals(was)) {
                rows.add(row(section + "." + id, was == null ? Does.ADD : Does.CHANGE, ""));
            }
        }
        if (before.equals(after) && !List.copyOf(before.keySet()).equals(List.copyOf(after.keySet()))) {
            rows.add(row(section, Does.CHANGE, "Its order is another."));
        }
    }

    private static Row row(String id, Does does, String note) {
        return new Row(0, id, does, Map.of(), List.of(), note.isEmpty() ? List.of() : List.of(note));
    }
}
