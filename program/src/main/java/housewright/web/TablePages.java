package housewright.web;

import housewright.app.Clash;
import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.StoreException;
import housewright.app.TypeSearch;
import housewright.app.table.CellError;
import housewright.app.table.Choices;
import housewright.app.table.ColumnGuess;
import housewright.app.table.ColumnGuess.Guess;
import housewright.app.table.Edit;
import housewright.app.table.Edits;
import housewright.app.table.Paste;
import housewright.app.table.Paste.PastedRow;
import housewright.app.table.Table;
import housewright.app.table.Tables;
import housewright.app.table.Tables.Wanted;
import housewright.library.BuiltInLibrary;
import housewright.web.page.TableDetails;
import housewright.web.page.TablePage;
import housewright.web.page.TablePage.Answer;
import housewright.web.page.TablePage.Clashing;
import housewright.web.view.JtetableGenerated;
import housewright.web.view.JtetableanswerGenerated;
import housewright.web.view.JtetablechoicesGenerated;
import housewright.web.view.JtetabledetailsGenerated;
import housewright.web.view.JtetablepastedGenerated;
import housewright.web.view.JtetablerowsGenerated;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The tables a project is edited in. */
final class TablePages {
    private static final int WINDOW = 100;
    private static final int MOST_ROWS = 1000;
    private static final int MOST_CHOICES = 12;
    private static final int MOST_MENTIONS = 60;
    private static final String AT = "/p/{project}/table/{table}";

    /** Longer than any list of a small hall, as text. */
    private static final int LONGEST_PASTE = 2_000_000;

    private TablePages() {}

    static List<Route> routes() {
        List<Route> routes = new ArrayList<>(List.of(
                Route.page(AT, Need.LOOK, TablePages::show),
                Route.page(AT + "/rows", Need.LOOK, TablePages::rows),
                Route.page(AT + "/choices", Need.LOOK, TablePages::choices),
                Route.page(AT + "/details", Need.LOOK, TablePages::details),
                Route.page(AT + "/paste", Need.LEAD, visit -> pasted(visit, "", List.of(), null)),
                Route.change(AT + "/set", Need.LEAD, TablePages::set),
                Route.change(AT + "/row", Need.LEAD, TablePages::row),
                Route.change(AT + "/add", Need.LEAD, TablePages::add),
                Route.change(AT + "/duplicate", Need.LEAD, TablePages::duplicate),
                Route.change(AT + "/delete", Need.LEAD, TablePages::delete),
                Route.change(AT + "/move", Need.LEAD, TablePages::move),
                Route.change(AT + "/read", Need.LEAD, TablePages::read),
                Route.change(AT + "/take", Need.LEAD, TablePages::take)));
        for (Page page : List.of(Page.EQUIPMENT, Page.CABLES, Page.PATCH, Page.PEOPLE)) {
            Table first = first(page);
            routes.add(Route.page("/p/{project}" + page.path(), Need.LOOK, visit -> show(visit, first)));
        }
        return routes;
    }

    private static Table first(Page page) {
        return switch (page) {
            case CABLES -> Table.CABLES;
            case PATCH -> Table.PATCH;
            case PEOPLE -> Table.PEOPLE;
            default -> Table.EQUIPMENT;
        };
    }

    private static Page page(Table table) {
        return switch (TablePage.together(table).getFirst()) {
            case ROOMS -> Page.VENUE;
            case CABLES -> Page.CABLES;
            case PATCH -> Page.PATCH;
            case FEEDS -> Page.FEEDS;
            case PEOPLE -> Page.PEOPLE;
            default -> Page.EQUIPMENT;
        };
    }

    static Table table(Visit visit) {
        String key = visit.ctx.pathParam("table");
        return Table.find(key).orElseThrow(() -> Refused.notFound("There is no table " + key + "."));
    }

    private static void show(Visit visit) throws StoreException {
        show(visit, table(visit));
    }

    private static void show(Visit visit, Table table) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Wanted wanted = wanted(visit, table, WINDOW);
        String row = query(visit, "row");
        if (!row.isEmpty()) {
            int index = Tables.of(now.study(), table).findIndex(row, wanted).orElse(0);
            wanted = new Wanted(wanted.words(), wanted.sort(), wanted.descending(), 0, Math.max(WINDOW, index + 20));
        }
        TablePage page = TablePage.of(now, Visit.home(job), table, wanted, isAll(visit), visit.session.role.mayDoAll());
        visit.show(
                job,
                now,
                page(table),
                table.title(),
                List.of(),
                (output, frame) -> JtetableGenerated.render(output, null, frame, page));
    }

    private static Wanted wanted(Visit visit, Table table, int most) {
        String sort = query(visit, "sort");
        boolean known = sort.equals(Tables.ID)
                || Tables.columns(table).stream()
                        .anyMatch(column -> column.key().equals(sort));
        return new Wanted(
                query(visit, "words"), known ? sort : "", query(visit, "down").equals("yes"), 0, most);
    }

    private static String query(Visit visit, String name) {
        String text = visit.ctx.queryParam(name);
        return text == null ? "" : text.strip();
    }

    private static boolean isAll(Visit visit) {
        return query(visit, "all").equals("yes");
    }

    private static void rows(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Table table = table(visit);
        Wanted wanted = wanted(visit, table, WINDOW);
        int from = Math.clamp(Visit.number("from", or(query(visit, "from"), "0")), 0, Integer.MAX_VALUE);
        int most = Math.clamp(Visit.number("most", or(query(visit, "most"), Integer.toString(WINDOW))), 1, MOST_ROWS);
        Now now = job.now();
        String upTo = query(visit, "row");
        if (!upTo.isEmpty()) {
            int index = Tables.of(now.study(), table).findIndex(upTo, wanted).orElse(0);
            most = Math.clamp(index - from + 1L, most, MOST_ROWS);
        }
        int count = most;
        TablePage.Part part = TablePage.rows(
                now,
                Visit.home(job),
                table,
                Tables.of(now.study(), table)
                        .view(new Wanted(wanted.words(), wanted.sort(), wanted.descending(), from, count)),
                isAll(visit));
        Visit.write(
                visit.ctx, output -> JtetablerowsGenerated.render(output, null, part, visit.session.role.mayDoAll()));
    }

    private static String or(String text, String otherwise) {
        return text.isEmpty() ? otherwise : text;
    }

    private static void choices(Visit visit) throws StoreException {
        Now now = visit.job().now();
        List<TablePage.Chosen> found = Choices.of(now.study(), types(visit), table(visit))
                .find(query(visit, "row"), query(visit, "column"), query(visit, "text"), MOST_CHOICES)
                .stream()
                .map(each -> new TablePage.Chosen(each.text(), each.word(), each.says(), each.open()))
                .toList();
        Visit.write(visit.ctx, output -> JtetablechoicesGenerated.render(output, null, found));
    }

    private static TypeSearch types(Visit visit) {
        return new TypeSearch((BuiltInLibrary) visit.common.projects().library());
    }

    private static void details(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Table table = table(visit);
        Now now = job.now();
        String id = query(visit, "row");
        TablePage.Details details = TableDetails.of(now, Visit.home(job), table, id, visit.session.role.mayDoAll())
                .orElseThrow(() -> Refused.notFound("There is no " + table.one() + " " + id + " any more."));
        Visit.write(visit.ctx, output -> JtetabledetailsGenerated.render(output, null, details, visit.session.token));
    }

    private static List<String> fields(Visit visit, String name) {
        return visit.ctx.formParams(name);
    }

    /** Cells that a form sends, by column. */
    private static Map<String, String> cells(Visit visit) {
        Map<String, String> cells = new LinkedHashMap<>();
        visit.ctx.formParamMap().keySet().stream()
                .filter(name -> name.startsWith("c-"))
                .forEach(name -> cells.put(name.substring(2), visit.field(name)));
        return cells;
    }

    private static void set(Visit visit) throws StoreException {
        Table table = table(visit);
        List<String> rows = fields(visit, "row");
        String column = visit.field("column");
        String text = visit.field("text");
        Map<String, Map<String, String>> typed = new LinkedHashMap<>();
        rows.forEach(row -> typed.put(row, Map.of(column, text)));
        OpenProject job = visit.job();
        Now now = job.now();
        settle(visit, job, now, table, Edits.of(now.study(), table).set(rows, column, text), typed, rows);
    }

    private static void row(Visit visit) throws StoreException {
        Table table = table(visit);
        String row = visit.field("row");
        OpenProject job = visit.job();
        Now now = job.now();
        Map<String, String> before =
                Tables.of(now.study(), table).find(row).map(Tables.Row::cells).orElse(Map.of());
        Map<String, String> cells = new LinkedHashMap<>(cells(visit));
        cells.entrySet().removeIf(cell -> cell.getValue().equals(before.getOrDefault(cell.getKey(), "")));
        Edit edit = cells.isEmpty()
                ? new Edit.Made(List.of(), "Nothing changed", List.of(row), List.of())
                : Edits.of(now.study(), table).cells(List.of(row), cells);
        settle(visit, job, now, table, edit, Map.of(row, cells), List.of(row));
    }

    private static void add(Visit visit) throws StoreException {
        Table table = table(visit);
        OpenProject job = visit.job();
        Now now = job.now();
        Map<String, String> cells = cells(visit);
        cells.values().removeIf(String::isEmpty);
        Edit edit = Edits.of(now.study(), table).add(visit.field("id"), cells);
        Map<String, Map<String, String>> typed =
                edit instanceof Edit.Made made && !made.rows().isEmpty()
                        ? Map.of(made.rows().getFirst(), cells)
                        : Map.of("", cells);
        settle(visit, job, now, table, edit, typed, List.of());
    }

    private static void duplicate(Visit visit) throws StoreException {
        Table table = table(visit);
        OpenProject job = visit.job();
        Now now = job.now();
        int times = Math.clamp(visit.number("times"), 0, Integer.MAX_VALUE);
        settle(
                visit,
                job,
                now,
                table,
                Edits.of(now.study(), table).duplicate(fields(visit, "row"), times),
                Map.of(),
                List.of());
    }

    private static void delete(Visit visit) throws StoreException {
        Table table = table(visit);
        OpenProject job = visit.job();
        Now now = job.now();
        boolean everywhere = visit.field("everywhere").equals("yes");
        settle(
                visit,
                job,
                now,
                table,
                Edits.of(now.study(), table).delete(fields(visit, "row"), everywhere),
                Map.of(),
                List.of());
    }

    private static void move(Visit visit) throws StoreException {
        Table table = table(visit);
        OpenProject job = visit.job();
        Now now = job.now();
        settle(
                visit,
                job,
                now,
                table,
                Edits.of(now.study(), table).move(fields(visit, "row"), visit.field("before")),
                Map.of(),
                List.of());
    }

    private static void read(Visit visit) throws StoreException {
        pasted(visit, text(visit), fields(visit, "columns"), headed(visit));
    }

    /** Whether the first row is headings; null where nobody has said. */
    private static @Nullable Boolean headed(Visit visit) {
        String said = visit.field("head");
        return said.isEmpty() ? null : said.equals("yes");
    }

    private static String text(Visit visit) {
        String text = visit.ctx.formParam("text");
        if (text != null && text.length() > LONGEST_PASTE) {
            throw Refused.wrong("That is more text than a table takes at once: " + LONGEST_PASTE + " characters.");
        }
        return text == null ? "" : text;
    }

    private static Guess guess(Now now, Table table, String text, List<String> columns, @Nullable Boolean headed) {
        Guess guess = ColumnGuess.of(now.study(), table, text, headed);
        if (guess.rows().size() > Paste.MOST_ROWS) {
            throw Refused.wrong("These are " + guess.rows().size() + " rows, and a table takes up to " + Paste.MOST_ROWS
                    + " at once. Nothing was taken; paste them in parts.");
        }
        return columns.size() == guess.columns().size() ? guess.with(columns) : guess;
    }

    private static void pasted(Visit visit, String text, List<String> columns, @Nullable Boolean headed)
            throws StoreException {
        OpenProject job = visit.job();
        Table table = table(visit);
        Now now = job.now();
        Guess guess = guess(now, table, text, columns, headed);
        Paste.Pasted pasted = Paste.read(now.study(), table, guess);
        TablePage.Pasted page = TableDetails.pasted(
                Visit.home(job) + "/table/" + table.key(), now.revision(), table, text, guess, pasted);
        Visit.write(visit.ctx, output -> JtetablepastedGenerated.render(output, null, page));
    }

    private static void take(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Table table = table(visit);
        Now now = job.now();
        Paste.Pasted pasted =
                Paste.read(now.study(), table, guess(now, table, text(visit), fields(visit, "columns"), headed(visit)));
        Map<String, Map<String, String>> typed = pasted.rows().stream()
                .filter(PastedRow::accepted)
                .collect(Collectors.toMap(PastedRow::id, PastedRow::cells, (one, other) -> one));
        settle(visit, job, now, table, pasted.edit(), typed, List.of());
    }

    /**
     * Makes an edit, and answers with what came of it.
     *
     * @param typed texts of cells, by row and column
     * @param before ids of the rows as the page has them
     */
    private static void settle(
            Visit visit,
            OpenProject job,
            Now now,
            Table table,
            Edit edit,
            Map<String, Map<String, String>> typed,
            List<String> before)
            throws StoreException {
        long base = visit.field("base").isEmpty() ? now.revision() : visit.number("base");
        Answer answer = switch (edit) {
            case Edit.Wrong wrong -> answer(visit, job, table, "wrong", wrong.errors(), List.of(), "");
            case Edit.Held held ->
                new Answer(
                        "held",
                        now.revision(),
                        List.of(),
                        null,
                        List.of(),
                        List.of(),
                        held.mentions().stream()
                                .limit(MOST_MENTIONS)
                                .map(mention -> mention.text())
                                .toList(),
                        held.mentions().size() + " others name what would go.",
                        "",
                        null,
                        0);
            case Edit.Made made ->
                switch (job.edit(visit.author(), base, made.says(), made.changes())) {
                    case Outcome.Accepted accepted -> accepted(visit, job, table, made, accepted, before);
                    case Outcome.Refused refused ->
                        answer(
                                visit,
                                job,
                                table,
                                "wrong",
                                Edits.of(now.study(), table).errors(made, refused.errors(), typed),
                                List.of(),
                                "");
                    case Outcome.Conflict conflict ->
                        answer(visit, job, table, "conflict", List.of(), conflict.clashes(), rowsOf(before));
                    case Outcome.NotDone not -> answer(visit, job, table, "not-done", List.of(), List.of(), not.why());
                };
        };
        write(visit, answer);
    }

    private static String rowsOf(List<String> before) {
        return String.join("\n", before);
    }

    static void write(Visit visit, Answer answer) {
        Visit.write(
                visit.ctx,
                output -> JtetableanswerGenerated.render(output, null, answer, visit.session.role.mayDoAll()));
    }

    /** @param made what was edited; its rows are shown again */
    static Answer accepted(
            Visit visit, OpenProject job, Table table, Edit.Made made, Outcome.Accepted accepted, List<String> before)
            throws StoreException {
        Now now = accepted.now();
        Tables tables = Tables.of(now.study(), table);
        String home = Visit.home(job);
        boolean all = visit.field("all").equals("yes");
        List<TablePage.RowPart> rows = new ArrayList<>();
        for (String id : made.rows().subList(0, Math.min(made.rows().size(), MOST_ROWS))) {
            tables.find(id).ifPresent(row -> rows.add(TablePage.row(now, home, table, row, all)));
        }
        boolean renamed = before.size() == 1 && made.rows().size() == 1 && !before.equals(made.rows());
        String says = accepted.revision() == 0
                ? "It is so already."
                : made.says() + ". " + String.join(" ", made.notes())
                        + (made.notes().isEmpty() ? "" : " ") + Said.effect(accepted.effect());
        return new Answer(
                "accepted",
                now.revision(),
                rows,
                renamed ? before.getFirst() : null,
                List.of(),
                List.of(),
                List.of(),
                says,
                TablePage.answer(now, table),
                accepted.revision() == 0 ? null : made.says(),
                Tables.count(now.project(), table));
    }

    private static Answer answer(
            Visit visit,
            OpenProject job,
            Table table,
            String state,
            List<CellError> errors,
            List<Clash> clashes,
            String says) {
        Now now = job.now();
        Tables tables = Tables.of(now.study(), table);
        boolean all = visit.field("all").equals("yes");
        List<TablePage.RowPart> rows = new ArrayList<>();
        if (state.equals("conflict")) {
            for (String id : fields(visit, "row")) {
                Optional<Tables.Row> row = tables.find(id);
                row.ifPresent(each -> rows.add(TablePage.row(now, Visit.home(job), table, each, all)));
            }
        }
        return new Answer(
                state,
                now.revision(),
                rows,
                null,
                errors,
                clashes.stream()
                        .map(clash -> new Clashing(
                                clash.subject(), gone(clash.was()), gone(clash.kept()), gone(clash.yours())))
                        .toList(),
                List.of(),
                state.equals("conflict") ? "Somebody else has changed the same." : says,
                TablePage.answer(now, table),
                null,
                Tables.count(now.project(), table));
    }

    private static String gone(@Nullable String text) {
        return text == null ? "not there" : text.isEmpty() ? "empty" : text;
    }
}
