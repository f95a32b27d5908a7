package housewright.app.paper;

import housewright.app.paper.Binding.State;
import housewright.paper.Block;
import housewright.paper.Column;
import housewright.paper.Paper;
import housewright.paper.Papers;
import housewright.paper.Row;
import housewright.paper.Sheet;
import housewright.paper.html.HtmlPage;
import housewright.paper.html.Markup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The contents page: what is in the binder, what changed, and which sheets to throw away. */
final class Contents {
    static final String TITLE = "Contents";
    static final String QUESTION = "Which sheets are there, which changed, and which are superseded?";
    private static final String RECIPIENT = "Everybody on the job";

    private final Manifest manifest;
    private final Map<String, State> states;
    private final String hall;
    private final String first;

    /** @param first what is said where this is the first issue, as a sentence */
    Contents(Manifest manifest, Map<String, State> states, String hall, String first) {
        this.manifest = manifest;
        this.states = states;
        this.hall = hall;
        this.first = first;
    }

    /** To print. */
    Sheet sheet() {
        return sheet(List.of(new Block.Text(summary()), table(null)));
    }

    /**
     * To print at the front of one PDF of all that goes on paper.
     *
     * @param pages on which the sheets of each paper begin, by its id
     */
    Sheet numbered(Map<String, List<Integer>> pages) {
        boolean labels = manifest.sheets().stream().anyMatch(Contents::isOnLabels);
        String apart = labels ? " What has no page here is printed on labels, from a PDF of its own." : "";
        return sheet(List.of(new Block.Text(summary() + apart), table(pages)));
    }

    private static boolean isOnLabels(Manifest.Entry each) {
        return Papers.find(each.paper()).filter(Paper::isOnLabels).isPresent();
    }

    private Block.Table table(@Nullable Map<String, List<Integer>> pages) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.text("Paper", 20),
                Column.text("Sheet", 34),
                Column.id("Revision", 10),
                Column.text("Date", 12),
                Column.text("Since the last", 14)));
        if (pages != null) {
            columns.add(Column.number("Page", 8));
        }
        Map<String, Integer> met = new HashMap<>();
        List<Row> rows = new ArrayList<>();
        for (Manifest.Entry each : manifest.sheets()) {
            String paper = Papers.find(each.paper()).map(Paper::title).orElse(each.paper());
            List<String> cells =
                    new ArrayList<>(List.of(paper, each.title(), each.revision(), each.date(), said(each)));
            if (pages != null) {
                int at = met.merge(each.paper(), 1, Integer::sum) - 1;
                List<Integer> known = pages.getOrDefault(each.paper(), List.of());
                cells.add(at < known.size() ? known.get(at).toString() : "");
            }
            rows.add(Row.of(each.id(), cells.toArray(String[]::new)));
        }
        return new Block.Table("contents", columns, rows);
    }

    private Sheet sheet(List<Block> front) {
        List<Block> blocks = new ArrayList<>(front);
        List<Row> superseded = superseded();
        if (!superseded.isEmpty()) {
            blocks.add(new Block.Heading("Superseded: throw these away"));
            blocks.add(new Block.Table(
                    "superseded",
                    List.of(
                            Column.text("Sheet", 40),
                            Column.id("Revision", 12),
                            Column.text("Date", 14),
                            Column.text("In its place", 24)),
                    superseded));
        }
        return Sheet.upright("contents", TITLE, RECIPIENT, blocks);
    }

    private String summary() {
        String what = hall + ", revision " + manifest.revision() + " of " + manifest.date() + ". ";
        if (manifest.before() == null) {
            return what + first;
        }
        return what + "It takes the place of revision " + manifest.before()
                + ". A row of a table that changed since has a bar in the margin; what is gone, and what is drawn, has"
                + " none. A sheet that says the same keeps its revision, and what is printed of it stays good.";
    }

    private String said(Manifest.Entry each) {
        return switch (states.getOrDefault(each.id(), State.SAME)) {
            case NEW -> manifest.before() == null ? "" : "new";
            case CHANGED -> "changed";
            case SAME -> "";
        };
    }

    private List<Row> superseded() {
        List<Row> rows = new ArrayList<>();
        for (Manifest.Entry each : manifest.sheets()) {
            Manifest.Before before = each.before();
            if (before != null && states.get(each.id()) == State.CHANGED) {
                rows.add(Row.of(
                        each.id(), each.title(), before.revision(), before.date(), "revision " + each.revision()));
            }
        }
        for (Manifest.Entry each : manifest.withdrawn()) {
            rows.add(Row.of(each.id(), each.title(), each.revision(), each.date(), "nothing: withdrawn"));
        }
        return rows;
    }

    /** To open in a browser; {@code files} are those of each paper. */
    String page(Map<String, List<String>> files) {
        Markup out = new Markup();
        out.raw("<h1>" + Markup.escaped(hall) + "</h1>\n<p class=\"for\">" + Markup.escaped(summary()) + "</p>\n");
        Map<String, List<Manifest.Entry>> byPaper = new LinkedHashMap<>();
        manifest.sheets()
                .forEach(each -> byPaper.computeIfAbsent(each.paper(), id -> new ArrayList<>())
                        .add(each));
        out.raw("<div class=\"table\"><table><thead><tr><th>Paper</th><th>For</th><th>Question</th><th>Sheets</th>"
                + "<th>Files</th></tr></thead><tbody>\n");
        byPaper.forEach((id, entries) -> {
            Paper paper = Papers.find(id).orElse(null);
            out.raw("<tr><td><a href=\"" + id + ".html\">");
            out.raw(Markup.escaped(paper == null ? id : paper.title())).raw("</a></td><td>");
            out.raw(Markup.escaped(paper == null ? "" : paper.recipient())).raw("</td><td>");
            out.raw(Markup.escaped(paper == null ? "" : paper.question())).raw("</td><td>");
            out.raw(entries.size() + changes(entries)).raw("</td><td>");
            for (String file : files.getOrDefault(id, List.of())) {
                if (!file.endsWith(".html")) {
                    out.raw("<a href=\"" + file + "\">" + kind(id, file) + "</a> ");
                }
            }
            out.raw("</td></tr>\n");
        });
        out.raw("</tbody></table></div>\n");
        out.raw(
                "<p><a href=\"contents.pdf\">Contents to print</a> <a href=\"binder.pdf\">All in one PDF</a>, its pages numbered through; labels are by themselves.</p>\n");
        sheet().blocks().stream().skip(2).forEach(out::block);
        return HtmlPage.page(hall + ": papers", out.toString());
    }

    private String changes(List<Manifest.Entry> entries) {
        List<String> said = new ArrayList<>();
        for (State state : List.of(State.CHANGED, State.NEW)) {
            long count = entries.stream()
                    .filter(each -> states.get(each.id()) == state && manifest.before() != null)
                    .count();
            if (count > 0) {
                said.add(count + (state == State.NEW ? " new" : " changed"));
            }
        }
        return said.isEmpty() ? "" : ", " + String.join(", ", said);
    }

    private static String kind(String paper, String file) {
        return file.equals(paper + ".pdf") ? "PDF" : file.equals(paper + ".xlsx") ? "XLSX" : file;
    }
}
