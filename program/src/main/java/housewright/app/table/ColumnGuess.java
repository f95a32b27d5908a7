package housewright.app.table;

import housewright.file.EntityCells.Reading;
import housewright.file.Naming;
import housewright.model.Project;
import housewright.sheet.Delimited;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Guesses which column of a table each column of somebody else's list is: by the words over it, then by what its cells
 * look like.
 */
public final class ColumnGuess {
    /** Columns that some cable lists have beside the thing: the port of it. Put together with it to one end. */
    static final String FROM_PORT = "from:port";

    static final String TO_PORT = "to:port";

    /** Enough to see what a column holds. */
    private static final int LOOKED_AT = 40;

    static final int LONGEST_HEAD = 60;

    /** Lines over the headings, such as what list it is and of when. */
    private static final int MOST_TITLE = 6;

    /**
     * A guess.
     *
     * @param head what stands over each column; none where the list has no head
     * @param columns our column for each of theirs; empty where it is none
     * @param rows the rows without the head
     */
    public record Guess(List<String> head, List<String> columns, List<List<String>> rows) {
        public Guess {
            head = List.copyOf(head);
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }

        /** The same rows, read with other columns. */
        public Guess with(List<String> others) {
            return new Guess(head, others, rows);
        }
    }

    private final Study study;
    private final Table table;
    private final List<Tables.Column> columns = new ArrayList<>();
    private final Map<Naming, Set<String>> known = new HashMap<>();

    private ColumnGuess(Study study, Table table) {
        this.study = study;
        this.table = table;
        columns.addAll(columns(table));
    }

    private static final Map<Table, List<Tables.Column>> COLUMNS = new EnumMap<>(Table.class);

    static {
        for (Table table : Table.values()) {
            List<Tables.Column> columns = new ArrayList<>();
            if (table != Table.PATCH) {
                columns.add(new Tables.Column(Tables.ID, "Id", null, true, false, true, false, List.of(), null));
            }
            Tables.columns(table).stream().filter(column -> !column.derived()).forEach(columns::add);
            if (table == Table.CABLES) {
                columns.add(port(FROM_PORT, "From, port"));
                columns.add(port(TO_PORT, "To, port"));
            }
            COLUMNS.put(table, List.copyOf(columns));
        }
    }

    private static Tables.Column port(String key, String title) {
        return new Tables.Column(key, title, null, false, false, false, false, List.of(), null);
    }

    /** What a column of a list may be in a table. */
    public static List<Tables.Column> columns(Table table) {
        return COLUMNS.getOrDefault(table, List.of());
    }

    /** @param head what stands over each column, found by whoever has read the sheet */
    static Guess headed(Study study, Table table, List<String> head, List<List<String>> rows) {
        int width =
                Math.max(head.size(), rows.stream().mapToInt(List::size).max().orElse(0));
        return new ColumnGuess(study, table).guess(padded(head, width), true, rows, width);
    }

    static Guess headless(Study study, Table table, List<List<String>> rows) {
        int width = rows.stream().mapToInt(List::size).max().orElse(0);
        return new ColumnGuess(study, table).guess(padded(List.of(), width), false, rows, width);
    }

    /** How well a row would do as a head of the table: the fits of the columns it names, and how many it names. */
    static int[] headFit(Table table, List<String> row) {
        Map<String, Integer> best = new HashMap<>();
        for (String cell : row) {
            if (!cell.isEmpty() && cell.length() <= LONGEST_HEAD) {
                HeadWords.fits(table, cell).entrySet().stream()
                        .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                        .ifPresent(most -> best.merge(most.getKey(), most.getValue(), Math::max));
            }
        }
        return new int[] {best.values().stream().mapToInt(Integer::intValue).sum(), best.size()};
    }

    public static Guess of(Study study, Table table, String text) {
        return of(study, table, Delimited.pasted(text));
    }

    /** @param headed the first row is headings, as somebody has said; null where nobody has */
    public static Guess of(Study study, Table table, String text, @Nullable Boolean headed) {
        return new ColumnGuess(study, table).guess(Delimited.pasted(text), headed);
    }

    /** @param rows cells of any sheet, a head among them or not */
    public static Guess of(Study study, Table table, List<List<String>> rows) {
        return new ColumnGuess(study, table).guess(rows, null);
    }

    private Guess guess(List<List<String>> all, @Nullable Boolean said) {
        if (all.isEmpty()) {
            return new Guess(List.of(), List.of(), List.of());
        }
        List<List<String>> rows = Boolean.FALSE.equals(said) ? all : withoutTitle(all);
        int width = rows.stream().mapToInt(List::size).max().orElse(0);
        List<String> first = padded(rows.getFirst(), width);
        boolean headed = said == null ? isHead(first, rows) : said;
        return guess(first, headed, headed ? rows.subList(1, rows.size()) : rows, width);
    }

    private Guess guess(List<String> first, boolean headed, List<List<String>> rows, int width) {
        List<List<String>> body = rows.stream().map(row -> padded(row, width)).toList();
        Map<Integer, String> found = new TreeMap<>();
        record Pair(int theirs, String ours, double score) {}
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            int at = i;
            List<String> cells = body.stream()
                    .map(row -> row.get(at))
                    .filter(cell -> !cell.isEmpty())
                    .limit(LOOKED_AT)
                    .toList();
            for (int c = 0; c < columns.size(); c++) {
                Tables.Column column = columns.get(c);
                double word = headed ? word(column, first.get(i)) : 0;
                boolean lacking = column.key().equals(Tables.ID) && cells.size() * 2 < Math.min(body.size(), LOOKED_AT);
                double shape = cells.isEmpty() || lacking || !mayBeGuessed(column) ? 0 : shape(column, cells);
                double score = word * 2 + (word == 0 && shape < 0.6 ? 0 : shape) - c * 1e-3;
                if (word > 0 || (shape >= 0.6 && !isWorded(headed, first.get(i)))) {
                    pairs.add(new Pair(i, column.key(), score));
                }
            }
        }
        pairs.sort((a, b) -> Double.compare(b.score(), a.score()));
        for (Pair pair : pairs) {
            if (!found.containsKey(pair.theirs()) && !found.containsValue(pair.ours())) {
                found.put(pair.theirs(), pair.ours());
            }
        }
        List<String> ours = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            ours.add(found.getOrDefault(i, ""));
        }
        return new Guess(headed ? first : List.of(), ours, body);
    }

    /** What nobody writes into a list without a word over it is not looked for. */
    private static boolean mayBeGuessed(Tables.Column column) {
        return column.first() || column.key().equals("ip");
    }

    /** Somebody has written what it is, and we have no such column. */
    private boolean isWorded(boolean headed, String head) {
        return headed
                && !head.isBlank()
                && columns.stream().noneMatch(each -> word(each, head) > 0)
                && head.length() > 12;
    }

    private static List<String> padded(List<String> row, int width) {
        List<String> padded = new ArrayList<>(row);
        while (padded.size() < width) {
            padded.add("");
        }
        return padded;
    }

    /** A word among others counts for less than one alone, and never makes a head without one. */
    private double word(Tables.Column column, String head) {
        int fit = HeadWords.fit(table, column, head);
        boolean mayHint = column.first() || column.key().equals(Tables.ID);
        return fit == 0 && mayHint && HeadWords.hints(table, column, head) ? 0.5 : fit;
    }

    /** From the headings on, where nothing but a title, one cell wide, stands over them. */
    private List<List<String>> withoutTitle(List<List<String>> rows) {
        for (int i = 0; i < Math.min(rows.size() - 1, MOST_TITLE); i++) {
            if (rows.get(i).stream().filter(cell -> !cell.isBlank()).count() > 1) {
                return i > 0 && isHead(rows.get(i), rows.subList(i, rows.size())) ? rows.subList(i, rows.size()) : rows;
            }
        }
        return rows;
    }

    private boolean isHead(List<String> first, List<List<String>> rows) {
        long named = first.stream()
                .filter(head -> columns.stream().anyMatch(column -> HeadWords.fit(table, column, head) > 0))
                .count();
        long hinted = first.stream()
                .filter(head -> columns.stream()
                        .anyMatch(column ->
                                HeadWords.fit(table, column, head) > 0 || HeadWords.hints(table, column, head)))
                .count();
        long filled = first.stream().filter(cell -> !cell.isEmpty()).count();
        return hinted * 2 >= filled && named > 0 && rows.size() > 1;
    }

    /** The share of the cells that may stand in the column; no more than a fair guess where anything may. */
    private double shape(Tables.Column column, Collection<String> cells) {
        if (column.key().equals(Tables.ID)) {
            boolean alike = cells.stream().distinct().count() == cells.size();
            double share = share(cells, cell -> cell.matches("[A-Za-z0-9][A-Za-z0-9-]{0,40}") && !cell.matches("\\d+"));
            return alike ? share * 0.7 : 0;
        }
        Naming naming = column.names();
        if (naming != null && naming.isWithinAThing()) {
            return share(
                    cells,
                    cell -> cell.matches("[^.\\s]+\\.[^.\\s]+")
                            && things().contains(cell.substring(0, cell.indexOf('.'))));
        }
        if (naming != null && naming != Naming.SUBJECT) {
            Set<String> ids = known.computeIfAbsent(naming, each -> Words.of(study, each));
            return share(cells, cell -> ids.contains(Words.plain(cell)));
        }
        if (!column.words().isEmpty()) {
            return share(cells, cell -> column.words().contains(cell.toLowerCase(Locale.ROOT)));
        }
        if (column.key().equals("ip")) {
            return share(cells, cell -> cell.matches("\\d{1,3}(\\.\\d{1,3}){3}"));
        }
        if (column.key().indexOf(':') >= 0) {
            return 0; // a port without its thing looks like anything
        }
        boolean anything = reads(column, "no such thing at all");
        return anything ? 0 : share(cells, cell -> !cell.matches("\\d+") && reads(column, cell)) * 0.9;
    }

    private Set<String> things() {
        return study.project().equipment().keySet();
    }

    private boolean reads(Tables.Column column, String cell) {
        return Rows.read(table, "x", null, Map.of(column.key(), cell)) instanceof Reading.Read
                || !isRefusedFor(column, cell);
    }

    private boolean isRefusedFor(Tables.Column column, String cell) {
        return Rows.read(table, "x", null, Map.of(column.key(), cell)) instanceof Reading.Refused refused
                && refused.errors().stream().anyMatch(error -> error.path().startsWith(column.key()));
    }

    private static double share(Collection<String> cells, java.util.function.Predicate<String> fits) {
        return cells.stream().filter(fits).count() / (double) cells.size();
    }

    /** What people write for the ids of a project. */
    static final class Words {
        private Words() {}

        static String plain(String text) {
            return Edits.slug(text);
        }

        static Set<String> of(Study study, Naming naming) {
            return byWord(study, naming).keySet();
        }

        /** Ids by what they are written like: by themselves, and types by their names. */
        static Map<String, String> byWord(Study study, Naming naming) {
            Project project = study.project();
            Map<String, String> words = new LinkedHashMap<>();
            switch (naming) {
                case MODEL ->
                    study.types().modelIds().forEach(id -> {
                        words.put(plain(id), id);
                        study.types()
                                .findModel(id)
                                .map(model -> model.name())
                                .ifPresent(name -> words.putIfAbsent(plain(name), id));
                    });
                case CABLE_TYPE ->
                    study.types().cableTypeIds().forEach(id -> {
                        words.put(plain(id), id);
                        study.types()
                                .findCableType(id)
                                .map(type -> type.name())
                                .ifPresent(name -> words.putIfAbsent(plain(name), id));
                    });
                case ADAPTER -> study.types().adapterIds().forEach(id -> words.put(plain(id), id));
                default ->
                    naming.sections()
                            .forEach(section -> Table.find(section)
                                    .map(each -> Rows.of(project, each).keySet())
                                    .orElse(Set.of())
                                    .forEach(id -> words.putIfAbsent(plain(id), id)));
            }
            return words;
        }

        static String all(Collection<String> words) {
            return words.stream().collect(Collectors.joining(", "));
        }

        static @Nullable String id(Study study, Naming naming, String written) {
            return byWord(study, naming).get(plain(written));
        }
    }
}
