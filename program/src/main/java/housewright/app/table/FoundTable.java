package housewright.app.table;

import housewright.app.table.ColumnGuess.Guess;
import housewright.sheet.Sheet;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A list found in a spreadsheet: under notes and over totals, below a head of one row or two. Which of the project's
 * tables it is, is guessed by the words of its head, the name of its sheet, and what its cells look like.
 *
 * @param sheet its name
 * @param headRow the row of the sheet that its head ends in; 0 where it has none
 * @param headRows how many rows its head has
 * @param rows its rows, without what was left out
 * @param left rows that belong to no list, and why
 * @param guess what each column is; its rows are those above
 */
public record FoundTable(
        String sheet, ListKind kind, int headRow, int headRows, List<Sheet.Row> rows, List<LeftOut> left, Guess guess) {
    /** Enough for any letterhead. */
    private static final int ROWS_LOOKED_AT = 40;

    private static final Pattern TOTAL = Pattern.compile(
            "(?i)(sub[ -]?|grand )?(totals?|sum|count|summe|gesamt|somme|totale)\\b.*|(total|sum) of .*");
    private static final Pattern FIGURE = Pattern.compile("[+-]?[\\d.,]+\\s*\\S{0,4}");
    private static final Pattern UNIT = Pattern.compile("(?i)mm|cm|m|ft|kg|g|lb|a|v|w|kw|va|db|ms|mhz");

    public FoundTable {
        rows = List.copyOf(rows);
        left = List.copyOf(left);
    }

    /** A row that is no row of the list. */
    public record LeftOut(int row, String words, String why) {}

    /**
     * What somebody says of a spreadsheet.
     *
     * @param sheet the sheet to read; empty to find it
     * @param kind what it is a list of; null to guess
     */
    public record Wish(String sheet, @Nullable ListKind kind) {}

    private record Candidate(Sheet sheet, ListKind kind, int head, int headRows, double score) {}

    /** The list that the sheets most likely hold; empty where none has any rows. */
    public static Optional<FoundTable> find(Study study, List<Sheet> sheets, Wish wish) {
        Candidate best = null;
        for (Sheet sheet : sheets) {
            if (sheet.rows().isEmpty()
                    || (!wish.sheet().isEmpty() && !wish.sheet().equals(sheet.name()))) {
                continue;
            }
            for (ListKind kind : wish.kind() == null ? ListKind.all() : List.of(wish.kind())) {
                Candidate found = candidate(sheet, kind);
                best = best == null || found.score() > best.score() ? found : best;
            }
        }
        if (best == null) {
            return Optional.empty();
        }
        return Optional.of(best.head() >= 0 ? headed(study, best) : headless(study, best, wish.kind() == null));
    }

    private static Candidate candidate(Sheet sheet, ListKind kind) {
        Candidate best = new Candidate(sheet, kind, -1, 0, 0);
        double told = told(sheet.name(), kind) ? 3 : 0;
        StringBuilder above = new StringBuilder();
        int last = Math.min(ROWS_LOOKED_AT, sheet.rows().size() - 1);
        for (int i = 0; i < last; i++) {
            List<String> row = sheet.rows().get(i).cells();
            double one = score(kind, row);
            double two = score(kind, both(sheet, i)) > one + 2
                            && isHeadish(sheet.rows().get(i + 1).cells())
                    ? score(kind, both(sheet, i))
                    : 0;
            double score = Math.max(one, two);
            if (score > 0) {
                score += told + (told(above.toString(), kind) ? 2 : 0) - i * 0.01;
                if (score > best.score()) {
                    best = new Candidate(sheet, kind, i, two > one ? 2 : 1, score);
                }
            }
            if (best.score() == 0) {
                row.forEach(cell -> above.append(' ').append(cell));
            }
        }
        return best;
    }

    /** 0 where it is no head: fewer than two columns are named, or most of what stands there names none. */
    private static double score(ListKind kind, List<String> head) {
        int[] fit = kind.table() == null ? InputList.headFit(head) : ColumnGuess.headFit(kind.table(), head);
        long filled = head.stream().filter(cell -> !cell.isEmpty()).count();
        boolean figures =
                head.stream().filter(cell -> FIGURE.matcher(cell).matches()).count() > 1;
        return fit[1] < 2 || fit[1] * 3L < filled || figures ? 0 : fit[0] + (fit[1] * 2L >= filled ? 1 : 0);
    }

    /** Words that may stand over a column: no figures, nothing long. */
    private static boolean isHeadish(List<String> row) {
        return row.stream()
                .allMatch(cell -> cell.length() <= ColumnGuess.LONGEST_HEAD
                        && !FIGURE.matcher(cell).matches());
    }

    private static boolean told(String words, ListKind kind) {
        String small = " " + words.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ") + " ";
        if (kind.table() == null) {
            return small.matches(".* (input|inputs|channel|stage) (list|plot|sheet).*|.* inputs .*");
        }
        String one = kind.table().one().replace("piece of ", "");
        String many = kind.table().title().toLowerCase(Locale.ROOT);
        boolean own = small.contains(" " + one + " ") || small.contains(" " + many + " ");
        boolean addresses = kind.table() == Table.EQUIPMENT
                && small.matches(
                        ".* (address|addresses|dmx|network|fixture|fixtures|kit|gear|inventory|asset|assets) .*");
        return (own && !small.matches(".* input list .*")) || addresses;
    }

    /** Two rows as one head: what stands over several columns is said of each of them. */
    private static List<String> both(Sheet sheet, int at) {
        List<String> upper = sheet.rows().get(at).cells();
        List<String> lower = sheet.rows().get(at + 1).cells();
        List<String> both = new ArrayList<>();
        String over = "";
        for (int i = 0; i < Math.max(upper.size(), lower.size()); i++) {
            String own = i < upper.size() ? upper.get(i) : "";
            String under = i < lower.size() ? lower.get(i) : "";
            over = own.isEmpty() && under.isEmpty() ? "" : own.isEmpty() ? over : own;
            boolean unit = UNIT.matcher(under).matches();
            both.add(
                    under.isEmpty()
                            ? own
                            : over.isEmpty() ? under : unit ? over + " (" + under + ")" : over + " " + under);
        }
        return both;
    }

    private static FoundTable headed(Study study, Candidate found) {
        Sheet sheet = found.sheet();
        List<String> head = found.headRows() == 2
                ? both(sheet, found.head())
                : sheet.rows().get(found.head()).cells();
        int first = found.head() + found.headRows();
        List<LeftOut> left = new ArrayList<>();
        for (Sheet.Row row : sheet.rows().subList(0, found.head())) {
            left.add(left(row, "it stands above the list"));
        }
        List<Sheet.Row> rows = new ArrayList<>();
        for (int i = first; i < sheet.rows().size(); i++) {
            Sheet.Row row = sheet.rows().get(i);
            String why = why(head, row);
            if (why == null && isOtherHead(found, row)) {
                left.add(left(row, "another list begins here; it and what follows is left out"));
                break;
            }
            if (why == null) {
                rows.add(row);
            } else {
                left.add(left(row, why));
            }
        }
        Guess guess = guess(study, found.kind(), head, cells(rows));
        return new FoundTable(
                sheet.name(), found.kind(), sheet.rows().get(first - 1).number(), found.headRows(), rows, left, guess);
    }

    private static Guess guess(Study study, ListKind kind, List<String> head, List<List<String>> cells) {
        return kind.table() == null
                ? InputList.guess(head, cells)
                : ColumnGuess.headed(study, kind.table(), head, cells);
    }

    private static LeftOut left(Sheet.Row row, String why) {
        String words = String.join(
                " · ", row.cells().stream().filter(cell -> !cell.isEmpty()).toList());
        return new LeftOut(row.number(), words.length() > 80 ? words.substring(0, 79) + "…" : words, why);
    }

    /** Why a row under the head is no row of the list; null where it is one. */
    private static @Nullable String why(List<String> head, Sheet.Row row) {
        List<String> filled =
                row.cells().stream().filter(cell -> !cell.isEmpty()).toList();
        if (filled.isEmpty() && row.troubles().isEmpty()) {
            return "nothing stands in it";
        }
        if (!filled.isEmpty() && TOTAL.matcher(filled.getFirst()).matches()) {
            return "it is a total";
        }
        List<String> plainHead = head.stream().map(HeadWords::plain).toList();
        if (filled.size() > 1 && filled.stream().map(HeadWords::plain).allMatch(plainHead::contains)) {
            return "it is the head again";
        }
        long named = head.stream().filter(cell -> !cell.isEmpty()).count();
        boolean alone = filled.size() == 1 && row.troubles().isEmpty() && named > 2;
        if (alone && FIGURE.matcher(filled.getFirst()).matches()) {
            return "a figure stands alone in it";
        }
        return alone && (filled.getFirst().contains(" ") || row.cell(0).equals(filled.getFirst()))
                ? "words stand alone in it, as over a part of the list"
                : null;
    }

    private static boolean isOtherHead(Candidate found, Sheet.Row row) {
        double own = score(found.kind(), row.cells());
        for (ListKind kind : ListKind.all()) {
            double other = kind.equals(found.kind()) ? 0 : score(kind, row.cells());
            if (other >= 7 && other > own) {
                return true;
            }
        }
        return false;
    }

    private static List<List<String>> cells(List<Sheet.Row> rows) {
        return rows.stream().map(Sheet.Row::cells).toList();
    }

    /** Without a head the cells must say what they are. */
    private static FoundTable headless(Study study, Candidate found, boolean any) {
        List<Sheet.Row> rows = found.sheet().rows();
        List<List<String>> cells = cells(rows);
        ListKind kind = found.kind();
        Guess guess = kind.table() == null
                ? InputList.guess(List.of(), cells)
                : ColumnGuess.headless(study, kind.table(), cells);
        if (any) {
            for (Table table : List.of(Table.EQUIPMENT, Table.CABLES, Table.PATCH, Table.RADIO)) {
                Guess other = ColumnGuess.headless(study, table, cells);
                if (named(other) > named(guess) || kind.table() == null) {
                    guess = other;
                    kind = ListKind.of(table);
                }
            }
        }
        return new FoundTable(found.sheet().name(), kind, 0, 0, rows, List.of(), guess);
    }

    private static long named(Guess guess) {
        return guess.columns().stream().filter(column -> !column.isEmpty()).count();
    }

    /** The same list with some columns said by a person: by what stands over them, or their letter. */
    public FoundTable with(Map<String, String> said) {
        List<String> columns = new ArrayList<>(guess.columns());
        said.forEach((theirs, ours) -> {
            int at = column(theirs);
            if (at >= 0) {
                columns.replaceAll(each -> each.equals(ours) ? "" : each); // each of ours once
                columns.set(at, ours);
            }
        });
        return new FoundTable(sheet, kind, headRow, headRows, rows, left, guess.with(columns));
    }

    /** Which column is meant by what stands over it, or by its letter; -1 where none is. */
    public int column(String theirs) {
        for (int i = 0; i < guess.columns().size(); i++) {
            boolean head = i < guess.head().size()
                    && HeadWords.plain(guess.head().get(i)).equals(HeadWords.plain(theirs))
                    && !HeadWords.plain(theirs).isEmpty();
            if (head || letter(i).equalsIgnoreCase(theirs)) {
                return i;
            }
        }
        return -1;
    }

    /** What a spreadsheet calls a column, from 0: A, B … Z, AA. */
    public static String letter(int column) {
        String last = String.valueOf((char) ('A' + column % 26));
        return column < 26 ? last : letter(column / 26 - 1) + last;
    }
}
