package housewright.app.table;

import housewright.file.EntityCells.Reading;
import housewright.file.FileError;
import housewright.file.Mentions;
import housewright.file.Mentions.Mention;
import housewright.file.ProjectReader;
import housewright.model.Equipment;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.Types;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Works out the edits on a table of a project. */
public final class Edits {
    private static final String ID_EXPECTED = "an id of letters, digits and hyphens, such as camera-3";

    /** One for each row of the longest list that is taken at once. */
    private static final int MOST_ERRORS = 25_000;

    private final Study study;
    private final Project project;
    private final Table table;

    private Edits(Study study, Table table) {
        this.study = study;
        this.project = study.project();
        this.table = table;
    }

    public static Edits of(Study study, Table table) {
        return new Edits(study, table);
    }

    private Types types() {
        return study.types();
    }

    /** Puts a text into a column of one or several rows; an empty one takes the cell away. */
    public Edit set(Collection<String> rows, String column, String text) {
        if (column.equals(Tables.ID)) {
            return rows.size() == 1
                    ? rename(rows.iterator().next(), text)
                    : new Edit.Wrong(List.of(
                            new CellError("", Tables.ID, "several rows", "one row: every id is its own", null)));
        }
        return cells(rows, Map.of(column, text));
    }

    /** Puts texts into several columns of each row. */
    public Edit cells(Collection<String> rows, Map<String, String> cells) {
        Map<String, ? extends Record> all = Rows.of(project, table);
        Project after = project;
        List<CellError> errors = new ArrayList<>();
        List<String> changed = new ArrayList<>();
        for (String id : rows) {
            Record before = all.get(id);
            if (before == null) {
                errors.add(new CellError(id, "", "no such row: somebody has taken it away", "", null));
                continue;
            }
            Record row = read(id, before, cells, errors);
            if (row != null) {
                after = Change.apply(after, Rows.put(after, table, before, id, row));
                changed.add(
                        row instanceof PatchRow patch && patch.entry() != null && patch.device() != null
                                ? PatchRow.id(patch.device(), patch.entry())
                                : id);
            }
        }
        if (!errors.isEmpty()) {
            return new Edit.Wrong(errors);
        }
        String what = String.join(", ", cells.keySet());
        return made(after, "Set " + what + " of " + said(changed), changed, List.of());
    }

    private @Nullable Record read(
            String id, @Nullable Record before, Map<String, String> cells, List<CellError> errors) {
        switch (Rows.read(table, id, before, cells)) {
            case Reading.Read read -> {
                List<CellError> lacking = Rows.lacking(table, id, read.entity());
                if (lacking.isEmpty()) {
                    return read.entity();
                }
                errors.addAll(lacking);
            }
            case Reading.Refused refused -> refused.errors().forEach(error -> errors.add(error(id, error, cells)));
        }
        return null;
    }

    private CellError error(String id, FileError error, Map<String, String> cells) {
        String path = error.path().replaceAll("\\[\\d+].*$", "");
        String column = path;
        while (!cells.containsKey(column) && column.indexOf('.') > 0) {
            column = column.substring(0, column.lastIndexOf('.'));
        }
        boolean own = cells.containsKey(column);
        return CellError.of(id, own ? column : path, error, own ? cells.get(column) : null);
    }

    private Edit.Made made(Project after, String says, List<String> rows, List<String> notes) {
        return new Edit.Made(Change.between(project, after), says, rows, notes);
    }

    private String said(List<String> rows) {
        return rows.size() == 1 ? rows.getFirst() : rows.size() + " rows of " + table.title();
    }

    /**
     * Errors that the whole project would have, in the words of the cells.
     *
     * @param typed the texts put into cells, by row and column
     */
    public List<CellError> errors(Edit.Made made, List<FileError> errors, Map<String, Map<String, String>> typed) {
        return Rows.errors(Change.apply(project, made.changes()), table, errors, typed);
    }

    /**
     * Adds a row at the end.
     *
     * @param id empty for one made from what the row is
     */
    public Edit add(String id, Map<String, String> cells) {
        Set<String> taken = Rows.of(project, table).keySet();
        String own = id.isBlank() ? proposedId(cells) : id.strip();
        if (table != Table.PATCH) {
            CellError wrong = wrongId(own, own, taken);
            if (wrong != null) {
                return new Edit.Wrong(List.of(wrong));
            }
        }
        List<CellError> errors = new ArrayList<>();
        Record row = read(own, null, cells, errors);
        if (row == null) {
            return new Edit.Wrong(errors);
        }
        if (row instanceof PatchRow patch && patch.device() != null && patch.entry() != null) {
            own = PatchRow.id(patch.device(), patch.entry());
            if (taken.contains(own)) {
                return new Edit.Wrong(List.of(new CellError(own, "to", "a patch that is there already", "", null)));
            }
        }
        Project after = Change.apply(project, Rows.put(project, table, null, own, row));
        return made(after, "Added " + own, List.of(own), List.of());
    }

    /** An id for a new row with these cells. */
    public String proposedId(Map<String, String> cells) {
        Set<String> ids = Rows.of(project, table).keySet();
        return switch (table) {
            case EQUIPMENT -> {
                String model = cells.getOrDefault("model", "").strip();
                yield Numbering.first(stem(model), ids);
            }
            case CABLES -> Numbering.inStyle(ids, "C001");
            case QUESTIONS -> Numbering.inStyle(ids, "q1");
            case ORDERS -> Numbering.inStyle(ids, "o1");
            case PATHWAYS -> Numbering.inStyle(ids, "p1");
            case PATCH -> "new";
            default -> Numbering.first(table.one().replace(' ', '-'), ids);
        };
    }

    /** What others of the model are called before their numbers, else the word for its kind. */
    private String stem(String model) {
        for (Equipment each : project.equipment().values()) {
            String stem = each.id().replaceFirst("-\\d+$", "");
            if (model.equals(each.model()) && !stem.equals(each.id())) {
                return stem;
            }
        }
        return types().findModel(model).map(each -> each.kind().word()).orElse("equipment");
    }

    private @Nullable CellError wrongId(String row, String id, Set<String> taken) {
        if (!id.matches("[A-Za-z0-9][A-Za-z0-9-]{0,99}")) {
            String slug = slug(id);
            return new CellError(
                    row,
                    Tables.ID,
                    "\"" + id + "\"",
                    ID_EXPECTED,
                    slug.isEmpty() || taken.contains(slug) ? null : slug);
        }
        return taken.contains(id)
                ? new CellError(
                        row,
                        Tables.ID,
                        "\"" + id + "\", which another " + table.one() + " has",
                        "an id of its own",
                        Numbering.next(id, taken::contains))
                : null;
    }

    /** Words as an id: {@code Stage Left} is {@code stage-left}. */
    static String slug(String words) {
        String plain = java.text.Normalizer.normalize(words, java.text.Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        return plain.replaceAll("^-+|-+$", "");
    }

    /** Gives a row another id, wherever it is named. */
    public Edit rename(String id, String to) {
        String wanted = to.strip();
        Section section = table.section();
        Set<String> taken = Rows.of(project, table).keySet();
        if (!taken.contains(id)) {
            return new Edit.Wrong(
                    List.of(new CellError(id, Tables.ID, "no such row: somebody has taken it away", "", null)));
        }
        if (wanted.equals(id)) {
            return new Edit.Made(List.of(), "Nothing changed", List.of(id), List.of());
        }
        if (table == Table.PATCH) {
            return new Edit.Wrong(List.of(
                    new CellError(id, Tables.ID, "an entry of a patch", "its places to be changed instead", null)));
        }
        CellError wrong = wrongId(id, wanted, taken);
        if (wrong != null) {
            return new Edit.Wrong(List.of(wrong));
        }
        if (section == null) {
            Project after = Change.apply(
                    project,
                    List.of(
                            new Change.Pair(id, List.of()),
                            new Change.Pair(wanted, project.pairs().getOrDefault(id, List.of()))));
            return made(after, "Renamed " + id + " to " + wanted, List.of(wanted), List.of());
        }
        int mentions = Mentions.of(project, section, List.of(id)).size();
        Project after = Mentions.renamed(project, section, id, wanted);
        List<String> notes = mentions == 0
                ? List.of()
                : List.of("Renamed in " + mentions + (mentions == 1 ? " other place." : " other places."));
        return made(after, "Renamed " + id + " to " + wanted, List.of(wanted), notes);
    }

    /**
     * Takes rows away.
     *
     * @param everywhere with every mention of them; else it is refused where others name them
     */
    public Edit delete(Collection<String> rows, boolean everywhere) {
        Section section = table.section();
        Set<String> gone = new LinkedHashSet<>(rows);
        gone.retainAll(Rows.of(project, table).keySet());
        if (gone.isEmpty()) {
            return new Edit.Made(List.of(), "Nothing changed", List.of(), List.of());
        }
        String says = "Took away " + said(List.copyOf(gone));
        if (section == null) {
            Project after = project;
            for (String id : gone) {
                after = Change.apply(after, Rows.drop(after, table, id));
            }
            return made(after, says, List.of(), List.of());
        }
        List<Mention> mentions = Mentions.of(project, section, gone);
        if (!mentions.isEmpty() && !everywhere) {
            return new Edit.Held(mentions);
        }
        Project after = mentions.isEmpty()
                ? Change.apply(
                        project,
                        gone.stream()
                                .map(id -> (Change) new Change.Drop(section, id))
                                .toList())
                : Mentions.without(project, section, gone);
        return made(after, says, List.of(), fallen(after, gone));
    }

    private List<String> fallen(Project after, Set<String> gone) {
        List<String> notes = new ArrayList<>();
        for (Section each : Section.values()) {
            List<String> fell = each.of(project).keySet().stream()
                    .filter(id -> !each.of(after).containsKey(id))
                    .filter(id -> each != table.section() || !gone.contains(id))
                    .toList();
            if (!fell.isEmpty()) {
                notes.add("With " + (gone.size() == 1 ? "it" : "them") + " went " + String.join(", ", fell) + " of "
                        + each.path() + ".");
            }
        }
        return notes;
    }

    /**
     * Moves rows.
     *
     * @param before the row in front of which they go; empty for the end
     */
    public Edit move(Collection<String> rows, String before) {
        List<String> order = new ArrayList<>(Rows.of(project, table).keySet());
        Set<String> moved = new LinkedHashSet<>(rows);
        moved.retainAll(order);
        if (moved.contains(before) || moved.isEmpty()) {
            return new Edit.Made(List.of(), "Nothing changed", List.copyOf(moved), List.of());
        }
        order.removeAll(moved);
        int at = before.isEmpty() ? order.size() : order.indexOf(before);
        order.addAll(at < 0 ? order.size() : at, moved);
        Section section = table.section();
        String says = "Moved " + said(List.copyOf(moved));
        List<Change> changes = new ArrayList<>();
        if (section != null) {
            changes.add(new Change.Arrange(section, order));
        } else if (table == Table.PATCH) {
            Map<String, List<PatchEntry>> byDevice = new LinkedHashMap<>();
            Map<String, ? extends Record> all = Rows.of(project, table);
            for (String id : order) {
                PatchRow row = (PatchRow) all.get(id);
                if (row != null && row.device() != null && row.entry() != null) {
                    byDevice.computeIfAbsent(row.device(), key -> new ArrayList<>())
                            .add(row.entry());
                }
            }
            byDevice.forEach((device, entries) -> changes.add(new Change.Repatch(device, entries)));
        }
        Project after = Change.apply(project, changes);
        return made(after, says, List.copyOf(moved), List.of());
    }

    /** Copies rows so many times, each numbered up from the last. */
    public Edit duplicate(Collection<String> rows, int times) {
        return new Copies(study, table).make(rows, times);
    }

    /** What a file of the project would be refused for; none where it reads. */
    static List<FileError> check(Study study, Project after) {
        return ProjectReader.check("edit", after, study.types().library(), MOST_ERRORS);
    }
}
