package housewright.app.table;

import housewright.cable.Lead;
import housewright.cable.Span;
import housewright.file.EntityCells;
import housewright.file.Naming;
import housewright.finding.Finding;
import housewright.finding.Severity;
import housewright.finding.Subject;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Project;
import housewright.signal.FeedProof;
import housewright.signal.PairProof;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A project's tables as they are shown: rows as cells of text, with what is worked out beside them. */
public final class Tables {
    /** The column of the id. */
    public static final String ID = "id";

    /**
     * A column.
     *
     * @param key as {@link EntityCells} has it; {@link #ID} for the id
     * @param title for its head
     * @param says what it is, where the format says more than the key does
     * @param first shown before others
     * @param derived worked out, and not to be edited
     * @param required a row must have it
     * @param list several values, with commas between
     * @param words the words it may be; none where it may be more than a few words
     * @param names what it names; null where it names nothing
     */
    public record Column(
            String key,
            String title,
            @Nullable String says,
            boolean first,
            boolean derived,
            boolean required,
            boolean list,
            List<String> words,
            @Nullable Naming names) {
        public Column {
            words = List.copyOf(words);
        }
    }

    /**
     * A row.
     *
     * @param cells what stands in it, by column; empty cells are left out, worked-out ones are among them
     * @param worst of the findings that are first of all about it; null where there is none
     * @param findings those findings, worst first
     */
    public record Row(
            String id, Map<String, String> cells, @Nullable Severity worst, List<Finding> findings) {
        public Row {
            findings = List.copyOf(findings);
        }

        public String cell(String column) {
            return column.equals(ID) ? id : cells.getOrDefault(column, "");
        }
    }

    /**
     * Which rows are wanted.
     *
     * @param words all of which must occur in a row, in any cell; {@code stop}, {@code fix} and {@code note} with a
     *     hash in front ask for findings
     * @param sort the column to sort by; empty for the order of the file
     * @param from the first row, from 0
     * @param most how many rows
     */
    public record Wanted(String words, String sort, boolean descending, int from, int most) {}

    /**
     * Rows of a table.
     *
     * @param total how many the table has
     * @param matching how many of them are wanted
     * @param from the first of these rows among those wanted, from 0
     */
    public record View(List<Row> rows, int total, int matching, int from) {
        public View {
            rows = List.copyOf(rows);
        }
    }

    private final Study study;
    private final Table table;
    private final Map<String, List<Finding>> findings;

    private Tables(Study study, Table table) {
        this.study = study;
        this.table = table;
        this.findings = new HashMap<>();
        for (Finding finding : study.findingsBeyondFeeds()) {
            Subject subject = finding.subjects().getFirst();
            findings.computeIfAbsent(subject.path(), key -> new ArrayList<>()).add(finding);
        }
    }

    public static Tables of(Study study, Table table) {
        return new Tables(study, table);
    }

    /** How many rows a table has. */
    public static int count(Project project, Table table) {
        return table == Table.PATCH
                ? project.patch().values().stream().mapToInt(List::size).sum()
                : Rows.of(project, table).size();
    }

    /** All columns of a table but the id's, those shown first in front. */
    public static List<Column> columns(Table table) {
        Map<String, EntityCells.Column> known = new LinkedHashMap<>();
        EntityCells.columns(table.rowType()).forEach(column -> known.put(column.key(), column));
        known.remove("key");
        List<Column> columns = new ArrayList<>();
        for (String key : table.first()) {
            columns.add(column(table, Objects.requireNonNull(known.remove(key), key), true));
            columns.addAll(derivedAfter(table, key));
        }
        known.values().forEach(column -> columns.add(column(table, column, false)));
        return List.copyOf(columns);
    }

    private static Column column(Table table, EntityCells.Column column, boolean first) {
        return new Column(
                column.key(),
                title(column.key()),
                column.says(),
                first,
                false,
                column.required(),
                column.list(),
                column.choices(),
                names(table, column.key()));
    }

    private static @Nullable Naming names(Table table, String key) {
        return table == Table.PAIRS
                ? Naming.SPOT
                : table == Table.PATCH
                        ? (key.equals("device") ? Naming.EQUIPMENT : null)
                        : Naming.find(table.path(), key);
    }

    private static String title(String key) {
        String words = key.replace('.', ' ').replace('-', ' ');
        return switch (key) {
            case "at" -> "At";
            case "ip" -> "IP address";
            case "vlan", "vlans" -> key.toUpperCase(Locale.ROOT).replace("VLANS", "VLANs");
            default -> words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        };
    }

    private static List<Column> derivedAfter(Table table, String key) {
        return switch (table) {
            case EQUIPMENT -> key.equals("model") ? List.of(derived("is", "Is", "What the model is")) : List.of();
            case CABLES ->
                key.equals("length")
                        ? List.of(derived("runs", "Runs", "How long it is: as stated, else along its pathways"))
                        : List.of();
            case FEEDS ->
                key.equals("to") ? List.of(derived("state", "State", "What the proof says of it")) : List.of();
            case PATHWAYS ->
                key.equals("length")
                        ? List.of(derived("runs", "Runs", "How long it is: as stated, else between its places"))
                        : List.of();
            default -> List.of();
        };
    }

    private static Column derived(String key, String title, String says) {
        return new Column(key, title, says, true, true, false, false, List.of(), null);
    }

    /** The rows that are wanted. */
    public View view(Wanted wanted) {
        List<String> words =
                List.of(wanted.words().strip().toLowerCase(Locale.ROOT).split("\\s+"));
        boolean all = wanted.words().isBlank();
        Map<String, ? extends Record> rows = Rows.of(study.project(), table);
        if (all && wanted.sort().isEmpty()) {
            int from = Math.clamp(wanted.from(), 0, rows.size());
            List<Row> shown = rows.entrySet().stream()
                    .skip(from)
                    .limit(wanted.most())
                    .map(each -> row(each.getKey(), each.getValue()))
                    .toList();
            return new View(shown, rows.size(), rows.size(), from);
        }
        List<Row> found = new ArrayList<>();
        rows.forEach((id, entity) -> {
            Row row = row(id, entity);
            if (all || matches(row, words)) {
                found.add(row);
            }
        });
        if (!wanted.sort().isEmpty()) {
            Comparator<Row> order = Comparator.comparing((Row row) -> row.cell(wanted.sort()), Numbering::compare);
            found.sort(Comparator.comparing((Row row) -> row.cell(wanted.sort()).isEmpty())
                    .thenComparing(wanted.descending() ? order.reversed() : order));
        }
        int from = Math.clamp(wanted.from(), 0, found.size());
        int to = (int) Math.min(found.size(), (long) from + wanted.most());
        return new View(found.subList(from, to), rows.size(), found.size(), from);
    }

    private static boolean matches(Row row, List<String> words) {
        StringBuilder text = new StringBuilder(row.id());
        row.cells().values().forEach(cell -> text.append('\n').append(cell));
        row.findings()
                .forEach(finding -> text.append("\n#").append(finding.severity().name()));
        String all = text.toString().toLowerCase(Locale.ROOT);
        return words.stream().allMatch(all::contains);
    }

    public Optional<Row> find(String id) {
        Record entity = Rows.of(study.project(), table).get(id);
        return entity == null ? Optional.empty() : Optional.of(row(id, entity));
    }

    /** How many rows of it are wanted up to this one: where to find it; empty where it is not among them. */
    public Optional<Integer> findIndex(String id, Wanted wanted) {
        View all = view(new Wanted(wanted.words(), wanted.sort(), wanted.descending(), 0, Integer.MAX_VALUE));
        for (int i = 0; i < all.rows().size(); i++) {
            if (all.rows().get(i).id().equals(id)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private Row row(String id, Record entity) {
        Map<String, String> cells = EntityCells.of(entity);
        switch (table) {
            case EQUIPMENT -> put(cells, "is", is((Equipment) entity));
            case CABLES ->
                put(
                        cells,
                        "runs",
                        study.cabling()
                                .findLead(id)
                                .map(Lead::span)
                                .map(Tables::said)
                                .orElse(null));
            case PATHWAYS -> {
                Double metres = study.cabling().metres((housewright.model.Pathway) entity);
                put(cells, "runs", metres == null ? null : metres(metres));
            }
            case FEEDS ->
                put(cells, "state", study.findProof(id).map(Tables::said).orElse(null));
            default -> {}
        }
        List<Finding> own = table == Table.PATCH ? List.of() : findings.getOrDefault(table.key() + "." + id, List.of());
        return new Row(id, cells, own.isEmpty() ? null : own.getFirst().severity(), own);
    }

    private static void put(Map<String, String> cells, String key, @Nullable String text) {
        if (text != null && !text.isEmpty()) {
            cells.put(key, text);
        }
    }

    private @Nullable String is(Equipment equipment) {
        Model model = study.types().findModel(equipment.model()).orElse(null);
        return model == null ? null : model.name() == null ? model.kind().word() : model.name();
    }

    private static String said(Span span) {
        return metres(span.metres()) + (span.basis() == Span.Basis.ALONG_PATHWAYS ? " along its way" : "");
    }

    private static String metres(double metres) {
        return String.format(Locale.ROOT, metres == Math.rint(metres) ? "%.0f m" : "%.1f m", metres);
    }

    private static String said(FeedProof proof) {
        if (proof.pairs().isEmpty()) {
            return "unfinished";
        }
        long slowest = 0;
        boolean arrives = false;
        for (PairProof pair : proof.pairs()) {
            arrives |= !pair.hops().isEmpty();
            slowest = Math.max(slowest, pair.delayNanos());
        }
        return proof.state().word()
                + (proof.proven() && arrives ? String.format(Locale.ROOT, ", %.1f ms", slowest / 1e6) : "");
    }
}
