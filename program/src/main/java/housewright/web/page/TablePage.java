package housewright.web.page;

import housewright.app.Now;
import housewright.app.table.CellError;
import housewright.app.table.Table;
import housewright.app.table.Tables;
import housewright.app.table.Tables.Column;
import housewright.app.table.Tables.Row;
import housewright.app.table.Tables.View;
import housewright.app.table.Tables.Wanted;
import housewright.finding.Severity;
import housewright.signal.FeedProof;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A table as a page.
 *
 * @param answer the title line
 * @param holds what belongs in it
 * @param href of the table itself, without a query
 * @param tabs the tables of the same page
 * @param all every column is shown
 * @param edits whoever looks may edit
 */
public record TablePage(
        Table table,
        String answer,
        String holds,
        String href,
        List<Tab> tabs,
        List<Head> heads,
        boolean all,
        String words,
        String sort,
        boolean down,
        Part rows,
        boolean edits) {
    /** Columns that a phone has room for beside the id. */
    private static final int ON_A_PHONE = 2;

    public TablePage {
        tabs = List.copyOf(tabs);
        heads = List.copyOf(heads);
    }

    /** A table of the same page. */
    public record Tab(String label, String href, boolean here, int count) {}

    /**
     * The head of a column.
     *
     * @param says what it is; empty where its title says it
     * @param sorted ascending, descending or none
     * @param href sorts by it
     * @param phone a phone shows it
     */
    public record Head(
            String key, String title, String says, boolean derived, String sorted, String href, boolean phone) {}

    /**
     * Rows of it.
     *
     * @param next how many there are up to the last of these; the next window begins there
     */
    public record Part(List<RowPart> rows, int total, int matching, int from, int next, long revision) {
        public Part {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A row.
     *
     * @param anchor its id as part of an address
     * @param base the revision that it shows
     * @param mark stop, fix or note; empty where nothing is found
     * @param finding the worst, in words
     * @param more how many more findings there are
     * @param href of its findings
     */
    public record RowPart(
            String id,
            String anchor,
            long base,
            List<CellPart> cells,
            String mark,
            String finding,
            int more,
            String href) {
        public RowPart {
            cells = List.copyOf(cells);
        }
    }

    /** @param state of a feed, as a mark; empty elsewhere */
    public record CellPart(String key, String text, boolean derived, boolean phone, String state) {}

    /** The tables that share a page, that of this table's first. */
    public static List<Table> together(Table table) {
        return Stream.of(
                        List.of(Table.ROOMS, Table.PLACES, Table.PATHWAYS, Table.CIRCUITS),
                        List.of(Table.EQUIPMENT),
                        List.of(Table.CABLES),
                        List.of(Table.PATCH, Table.NETWORK_SENDS, Table.RADIO, Table.PAIRS),
                        List.of(Table.FEEDS),
                        List.of(
                                Table.PEOPLE,
                                Table.EVENTS,
                                Table.HIRES,
                                Table.TASKS,
                                Table.FILES,
                                Table.QUESTIONS,
                                Table.ORDERS))
                .filter(group -> group.contains(table))
                .findFirst()
                .orElse(List.of(table));
    }

    public static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    public static TablePage of(Now now, String home, Table table, Wanted wanted, boolean all, boolean edits) {
        String href = home + "/table/" + table.key();
        Tables tables = Tables.of(now.study(), table);
        List<Column> columns = columns(table, all);
        List<Head> heads = new ArrayList<>();
        List<Column> phone = onAPhone(columns);
        for (Column column : columns) {
            boolean sorted = wanted.sort().equals(column.key());
            String query = "?sort=" + encoded(column.key()) + (sorted && !wanted.descending() ? "&down=yes" : "")
                    + (wanted.words().isEmpty() ? "" : "&words=" + encoded(wanted.words())) + (all ? "&all=yes" : "");
            heads.add(new Head(
                    column.key(),
                    column.title(),
                    column.says() == null ? "" : column.says(),
                    column.derived(),
                    sorted ? wanted.descending() ? "descending" : "ascending" : "none",
                    href + query,
                    phone.contains(column)));
        }
        List<Tab> tabs = together(table).stream()
                .map(each -> new Tab(
                        each.title(), home + "/table/" + each.key(), each == table, Tables.count(now.project(), each)))
                .toList();
        Part rows = rows(now, home, table, tables.view(wanted), all);
        return new TablePage(
                table,
                answer(now, table),
                table.holds(),
                href,
                tabs.size() == 1 ? List.of() : tabs,
                heads,
                all,
                wanted.words(),
                wanted.sort(),
                wanted.descending(),
                rows,
                edits);
    }

    private static List<Column> columns(Table table, boolean all) {
        return Tables.columns(table).stream()
                .filter(column -> all || column.first())
                .toList();
    }

    /** The first that are edited; of feeds, their state. */
    private static List<Column> onAPhone(List<Column> columns) {
        return columns.stream()
                .filter(column -> !column.derived() || column.key().equals("state"))
                .sorted(Comparator.comparing(column -> !column.key().equals("state")))
                .limit(ON_A_PHONE)
                .toList();
    }

    public static Part rows(Now now, String home, Table table, View view, boolean all) {
        List<Column> columns = columns(table, all);
        return new Part(
                view.rows().stream()
                        .map(row -> row(row, columns, home, table, now.revision()))
                        .toList(),
                view.total(),
                view.matching(),
                view.from(),
                view.from() + view.rows().size(),
                now.revision());
    }

    public static RowPart row(Now now, String home, Table table, Row row, boolean all) {
        return row(row, columns(table, all), home, table, now.revision());
    }

    private static RowPart row(Row row, List<Column> columns, String home, Table table, long revision) {
        List<CellPart> cells = new ArrayList<>();
        List<Column> phone = onAPhone(columns);
        for (Column column : columns) {
            String text = row.cell(column.key());
            String state = table == Table.FEEDS && column.key().equals("state") ? text.replaceAll(",.*$", "") : "";
            cells.add(new CellPart(column.key(), text, column.derived(), phone.contains(column), state));
        }
        Severity worst = row.worst();
        return new RowPart(
                row.id(),
                anchor(row.id()),
                revision,
                cells,
                worst == null ? "" : worst.name().toLowerCase(Locale.ROOT),
                row.findings().isEmpty() ? "" : row.findings().getFirst().message(),
                Math.max(0, row.findings().size() - 1),
                home + "/findings?about=" + encoded(table.key() + "." + row.id()));
    }

    /** An id that an element may have. */
    public static String anchor(String id) {
        return id.replaceAll("[^A-Za-z0-9-]+", "_");
    }

    /** The title line. */
    public static String answer(Now now, Table table) {
        int total = Tables.count(now.project(), table);
        if (total == 0) {
            return "No " + table.title().toLowerCase(Locale.ROOT) + " yet";
        }
        String counted = counted(total, table);
        if (table == Table.FEEDS) {
            long proven =
                    now.study().proofs().stream().filter(FeedProof::proven).count();
            return proven + " of " + counted + " proven";
        }
        Set<String> ids = now.study().findingsBeyondFeeds().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .map(finding -> finding.subjects().getFirst().path())
                .filter(path -> path.startsWith(table.key() + "."))
                .collect(Collectors.toSet());
        return ids.isEmpty()
                ? counted
                : counted + "; " + ids.size() + (ids.size() == 1 ? " has" : " have") + " something to settle";
    }

    private static String counted(int total, Table table) {
        String title = table.title().toLowerCase(Locale.ROOT);
        return total
                + " "
                + (table == Table.EQUIPMENT
                        ? total == 1 ? "piece of equipment" : "pieces of equipment"
                        : table == Table.PATCH
                                ? total == 1 ? "patch entry" : "patch entries"
                                : total == 1 ? table.one() : title);
    }

    /**
     * What came of an edit, for the script of the page.
     *
     * @param state accepted, wrong, conflict, held or not-done
     * @param rows as they are now
     * @param was the id that the one row had before; null where it is the same
     */
    public record Answer(
            String state,
            long revision,
            List<RowPart> rows,
            @Nullable String was,
            List<CellError> errors,
            List<Clashing> clashes,
            List<String> mentions,
            String says,
            String title,
            @Nullable String undo,
            int total) {
        public Answer {
            rows = List.copyOf(rows);
            errors = List.copyOf(errors);
            clashes = List.copyOf(clashes);
            mentions = List.copyOf(mentions);
        }
    }

    /** Two edits of the same. */
    public record Clashing(String subject, String was, String kept, String yours) {}

    /** A choice for a cell. */
    public record Chosen(String text, String word, String says, boolean open) {}

    /**
     * A row with all its columns, to be read or edited beside the table.
     *
     * @param id empty for a new one
     */
    public record Details(
            Table table,
            String href,
            String home,
            String id,
            String proposed,
            long base,
            List<Field> fields,
            List<Told> findings,
            List<PortPart> ports,
            List<PlacePart> places,
            boolean edits) {
        public Details {
            fields = List.copyOf(fields);
            findings = List.copyOf(findings);
            ports = List.copyOf(ports);
            places = List.copyOf(places);
        }
    }

    /** @param first shown at once; others on request */
    public record Field(
            String key, String title, String says, String text, boolean derived, boolean first, List<String> words) {
        public Field {
            words = List.copyOf(words);
        }
    }

    /** A finding of a row. */
    public record Told(String mark, String message, String fix) {}

    /** A port of a thing. */
    public record PortPart(String name, String what, boolean free, String cables, String far, String href) {}

    /** A port or point of a thing whose inside is patched, and where it goes. */
    public record PlacePart(String name, String joins, String href) {}

    /** What may be joined to a port, or patched from or to a place. */
    public record Offers(
            String title, String action, List<Offer> offers, int more, List<String> missing, boolean edits) {
        public Offers {
            offers = List.copyOf(offers);
            missing = List.copyOf(missing);
        }
    }

    /** @param value sent back where it is chosen */
    public record Offer(String value, String words, String by, String assumed) {}

    /**
     * What was pasted, as it would be taken.
     *
     * @param text as pasted
     * @param theirs heads and first cells of each of their columns
     * @param headed the first row is headings
     */
    public record Pasted(
            String href,
            long base,
            String text,
            List<Theirs> theirs,
            List<Choice> choices,
            List<PastedPart> rows,
            long accepted,
            int total,
            boolean headed) {
        public Pasted {
            theirs = List.copyOf(theirs);
            choices = List.copyOf(choices);
            rows = List.copyOf(rows);
        }
    }

    /** @param ours the key of our column; empty where it is none */
    public record Theirs(String head, String sample, String ours) {}

    public record Choice(String key, String title) {}

    public record PastedPart(int number, String id, boolean isNew, boolean accepted, String cells, String why) {}
}
