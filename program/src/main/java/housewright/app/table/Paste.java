package housewright.app.table;

import housewright.app.table.ColumnGuess.Guess;
import housewright.file.EntityCells.Reading;
import housewright.file.FileError;
import housewright.file.Naming;
import housewright.model.Cable;
import housewright.model.Equipment;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Rows of somebody's list read into a table: each accepted, or refused with why; the accepted ones are one batch. A row
 * whose id is there already changes that row.
 */
public final class Paste {
    /** Rows that name rows that name wrong rows: more rounds than that nobody needs. */
    private static final int MOST_ROUNDS = 20;

    /** More than any list of a small hall has. */
    public static final int MOST_ROWS = 5000;

    /**
     * A row that was read.
     *
     * @param number from 1, as pasted, without the head
     * @param id of the row it makes or changes; empty where it makes none
     * @param isNew it makes a row
     * @param cells as they are taken
     * @param errors why it is refused; none where it is accepted
     * @param notes what was read otherwise than it stands there
     */
    public record PastedRow(
            int number,
            String id,
            boolean isNew,
            Map<String, String> cells,
            List<CellError> errors,
            List<String> notes) {
        public PastedRow {
            errors = List.copyOf(errors);
            notes = List.copyOf(notes);
        }

        public boolean accepted() {
            return errors.isEmpty();
        }
    }

    /** @param edit of all accepted rows */
    public record Pasted(List<PastedRow> rows, Edit.Made edit) {
        public Pasted {
            rows = List.copyOf(rows);
        }

        public long accepted() {
            return rows.stream().filter(PastedRow::accepted).count();
        }
    }

    private final Study study;
    private final Table table;
    private final Guess guess;
    private final Map<String, Tables.Column> columns = new HashMap<>();
    private final Map<Naming, Map<String, String>> words = new HashMap<>();
    private final Map<String, ? extends Record> existing;
    private final Map<String, String> labelled = new HashMap<>();
    private final Map<String, String> lastNamed = new HashMap<>();
    private final SocketWords sockets;

    private Paste(Study study, Table table, Guess guess) {
        this.existing = Rows.of(study.project(), table);
        this.sockets = new SocketWords(study);
        this.study = study;
        this.table = table;
        this.guess = guess;
        ColumnGuess.columns(table).forEach(column -> columns.put(column.key(), column));
        columns.remove(Tables.ID);
        existing.forEach((id, entity) -> {
            String label = label(entity);
            if (label != null) {
                labelled.merge(Edits.slug(label), id, (one, other) -> ""); // of two that say the same, neither
            }
        });
    }

    private static @Nullable String label(Record entity) {
        return entity instanceof Equipment thing ? thing.label() : entity instanceof Cable cable ? cable.label() : null;
    }

    public static Pasted read(Study study, Table table, Guess guess) {
        return new Paste(study, table, guess).read();
    }

    private Pasted read() {
        List<PastedRow> rows = new ArrayList<>();
        Set<String> taken = new LinkedHashSet<>(existing.keySet());
        Set<String> pasted = new HashSet<>();
        for (int i = 0; i < guess.rows().size(); i++) {
            PastedRow row = row(i + 1, guess.rows().get(i), taken);
            if (!row.id().isEmpty() && !pasted.add(row.id())) {
                row = refused(
                        row,
                        List.of(new CellError(
                                row.id(),
                                Tables.ID,
                                "\"" + row.id() + "\" in a row above, too",
                                "an id of its own",
                                null)));
            }
            taken.add(row.id());
            rows.add(row);
        }
        Project after = applied(rows);
        List<FileError> errors = Edits.check(study, after);
        for (int round = 0; round < MOST_ROUNDS && !errors.isEmpty() && refuse(rows, after, errors); round++) {
            after = applied(rows);
            errors = Edits.check(study, after);
        }
        if (!errors.isEmpty()) { // no row can be blamed: better none than a project that no file may hold
            List<CellError> all = List.of(new CellError(
                    "",
                    "",
                    errors.getFirst().path() + ": " + errors.getFirst().found(),
                    "rows that go together",
                    null));
            rows.replaceAll(row -> row.accepted() ? refused(row, all) : row);
            after = study.project();
        }
        List<String> ids =
                rows.stream().filter(PastedRow::accepted).map(PastedRow::id).toList();
        String says = "Pasted " + ids.size() + (ids.size() == 1 ? " row" : " rows") + " into " + table.title();
        return new Pasted(rows, new Edit.Made(Change.between(study.project(), after), says, ids, List.of()));
    }

    private Project applied(List<PastedRow> rows) {
        List<Change> changes = new ArrayList<>();
        Map<String, List<PatchEntry>> patch = new LinkedHashMap<>();
        for (PastedRow row : rows) {
            Record before = row.isNew() ? null : existing.get(row.id());
            if (!row.accepted() || !(Rows.read(table, row.id(), before, row.cells()) instanceof Reading.Read read)) {
                continue;
            }
            if (read.entity() instanceof PatchRow entry && entry.device() != null && entry.entry() != null) {
                patch.computeIfAbsent(
                                entry.device(),
                                device ->
                                        new ArrayList<>(study.project().patch().getOrDefault(device, List.of())))
                        .add(entry.entry());
            } else {
                changes.addAll(Rows.put(study.project(), table, before, row.id(), read.entity()));
            }
        }
        patch.forEach((device, entries) -> changes.add(new Change.Repatch(device, entries)));
        return Change.apply(study.project(), changes);
    }

    /** Refuses the rows that errors are in; whether any was. */
    private boolean refuse(List<PastedRow> rows, Project after, List<FileError> errors) {
        Map<String, Map<String, String>> typed = new HashMap<>();
        rows.forEach(row -> typed.put(row.id(), row.cells()));
        Map<String, List<CellError>> byRow = new LinkedHashMap<>();
        Rows.errors(after, table, errors, typed)
                .forEach(error -> byRow.computeIfAbsent(error.row(), key -> new ArrayList<>())
                        .add(error));
        boolean any = false;
        for (int i = 0; i < rows.size(); i++) {
            List<CellError> own = byRow.getOrDefault(rows.get(i).id(), List.of());
            if (rows.get(i).accepted() && !own.isEmpty()) {
                rows.set(i, refused(rows.get(i), own));
                any = true;
            }
        }
        return any;
    }

    private static PastedRow refused(PastedRow row, List<CellError> errors) {
        List<CellError> all = new ArrayList<>(row.errors());
        all.addAll(errors);
        return new PastedRow(row.number(), row.id(), row.isNew(), row.cells(), all, row.notes());
    }

    private PastedRow row(int number, List<String> theirs, Set<String> taken) {
        List<String> notes = new ArrayList<>();
        Map<String, String> cells = new LinkedHashMap<>();
        String id = "";
        for (int i = 0; i < theirs.size() && i < guess.columns().size(); i++) {
            String key = guess.columns().get(i);
            String text = theirs.get(i).strip();
            if (key.isEmpty() || text.isEmpty()) {
                continue;
            }
            if (key.equals(Tables.ID)) {
                id = idOf(text, cells, notes);
            } else {
                Tables.Column column = columns.get(key);
                String head = i < guess.head().size() ? guess.head().get(i) : "";
                String taken1 = column == null ? text : text(column, text, HeadWords.unit(head));
                boolean plain = taken1.equalsIgnoreCase(text) || taken1.startsWith(text + " ");
                if (!plain) {
                    notes.add("Read \"" + text + "\" as " + taken1 + ".");
                }
                cells.put(key, taken1);
            }
        }
        end("from", ColumnGuess.FROM_PORT, cells, notes);
        end("to", ColumnGuess.TO_PORT, cells, notes);
        boolean isNew = table == Table.PATCH || id.isEmpty() || !existing.containsKey(id);
        if (id.isEmpty() && cells.isEmpty()) {
            String none = "nothing in any column that is read";
            return new PastedRow(
                    number, "", true, cells, List.of(new CellError("", Tables.ID, none, "a cell of it", null)), notes);
        }
        if (id.isEmpty() && table == Table.EQUIPMENT && !cells.containsKey("model") && !cells.containsKey("label")) {
            String none = "nothing that says which thing it is";
            return new PastedRow(
                    number,
                    "",
                    true,
                    cells,
                    List.of(new CellError("", Tables.ID, none, "an id, a label or a type in some column", null)),
                    notes);
        }
        if (id.isEmpty() && table != Table.PATCH) {
            id = proposed(cells, taken);
            notes.add("Named " + id + ".");
        }
        Record before = isNew ? null : existing.get(id);
        List<CellError> errors = new ArrayList<>();
        switch (Rows.read(table, id, before, cells)) {
            case Reading.Read read -> {
                errors.addAll(Rows.lacking(table, id, read.entity()));
                if (read.entity() instanceof PatchRow patch && patch.device() != null && patch.entry() != null) {
                    id = PatchRow.id(patch.device(), patch.entry());
                    if (taken.contains(id)) {
                        errors.add(new CellError(id, "to", "a patch that is there already", "", null));
                    }
                }
            }
            case Reading.Refused refused -> {
                for (FileError error : refused.errors()) {
                    String column = error.path().replaceAll("\\[\\d+].*$", "");
                    errors.add(CellError.of(id, column, error, cells.get(column)));
                }
            }
        }
        return new PastedRow(number, id, isNew, cells, errors, notes);
    }

    private String proposed(Map<String, String> cells, Set<String> taken) {
        String kind = table == Table.EQUIPMENT ? cells.getOrDefault("model", "") : "";
        String last = lastNamed.get(kind);
        String next = last == null ? Edits.of(study, table).proposedId(cells) : Numbering.next(last, taken::contains);
        String proposed = taken.contains(next) ? Numbering.next(next, taken::contains) : next;
        lastNamed.put(kind, proposed);
        return proposed;
    }

    private String idOf(String text, Map<String, String> cells, List<String> notes) {
        if (text.matches("[A-Za-z0-9][A-Za-z0-9-]*")) {
            return text;
        }
        String slug = Edits.slug(text);
        String known = labelled.getOrDefault(slug, "");
        if (!existing.containsKey(slug) && !known.isEmpty()) {
            notes.add("Is labelled \"" + text + "\".");
            return known;
        }
        notes.add("Named " + slug + ".");
        if (columns.containsKey("label") && !guess.columns().contains("label")) {
            cells.put("label", text);
        }
        return slug;
    }

    /** A thing and its port, of two columns, as one end of a cable. */
    private void end(String key, String portKey, Map<String, String> cells, List<String> notes) {
        String port = cells.remove(portKey);
        if (port == null) {
            return;
        }
        String thing = cells.getOrDefault(key, "");
        String whole = thing.isEmpty() ? port : thing + " " + port;
        String end = sockets.find(whole);
        cells.put(key, end == null ? (thing.isEmpty() ? port : thing + "." + port) : end);
        if (end != null && !end.equals(thing + "." + port)) {
            notes.add("Read \"" + whole + "\" as " + end + ".");
        }
    }

    /** As the project writes it: ids for what they are called, small letters for words, units from the head. */
    private String text(Tables.Column column, String text, String unit) {
        Naming naming = column.names();
        if (naming != null && !naming.isWithinAThing() && naming != Naming.SUBJECT) {
            Map<String, String> known = words.computeIfAbsent(naming, each -> ColumnGuess.Words.byWord(study, each));
            List<String> ids = new ArrayList<>();
            for (String each : column.list() ? text.split("\\s*[,;/]\\s*") : new String[] {text}) {
                String id = known.get(ColumnGuess.Words.plain(each));
                ids.add(id == null ? each : id);
            }
            return String.join(", ", ids);
        }
        if (naming != null && naming.isWithinAThing() && !column.list()) {
            boolean split = guess.columns().contains(column.key() + ":port");
            String spot = split || text.equals("unknown") ? null : sockets.find(text);
            return spot == null ? text : spot;
        }
        if (!column.words().isEmpty() && !column.words().contains(text)) {
            String small = text.toLowerCase(Locale.ROOT).replace(' ', '-');
            String word = word(column, small);
            return word == null ? text : word;
        }
        if (!column.list() && column.words().isEmpty() && !FREE.contains(column.key())) {
            String point = withPoint(text);
            boolean bare = point.matches("[+-]?\\d+(\\.\\d+)?");
            return bare && !unit.isEmpty() ? point + " " + unit : point;
        }
        return text;
    }

    /** Columns in which a comma is a comma. */
    private static final Set<String> FREE =
            Set.of("note", "label", "serial", "by", "asks", "answer", "name", "role", "supplier");

    /** A comma before other than three digits is a decimal one; before three nobody knows, and it is refused as it is. */
    private static String withPoint(String text) {
        return text.matches("[+-]?\\d+,(\\d{1,2}|\\d{4,})(\\s*[^\\d\\s,.;/]+\\S*)?")
                ? text.replaceFirst(",", ".")
                : text;
    }

    private static @Nullable String word(Tables.Column column, String small) {
        if (column.words().contains(small)) {
            return small;
        }
        if (column.words().equals(List.of("yes", "no"))) {
            return switch (small) {
                case "y", "x", "true", "1" -> "yes";
                case "n", "false", "0", "-" -> "no";
                default -> null;
            };
        }
        return column.words().stream()
                .filter(word -> word.equalsIgnoreCase(small))
                .findFirst()
                .orElse(null);
    }
}
