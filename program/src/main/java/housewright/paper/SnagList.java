package housewright.paper;

import housewright.model.LogEntry;
import housewright.model.SiteState;
import housewright.model.Words;
import housewright.study.Study;
import housewright.work.WorkTask;
import java.util.ArrayList;
import java.util.List;

/** What is not right yet: what the log says holds a task or a delivery up, and lines for the rest. */
final class SnagList extends Titled {
    private static final int LINES = 16;

    SnagList() {
        super("snag-list", "Snag list", "Everybody on site", "What is not right yet, who sees to it, by when?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        if (study.project().equipment().isEmpty() && study.project().log().isEmpty()) {
            return List.of();
        }
        List<Row> rows = new ArrayList<>();
        for (LogEntry entry : study.project().log().values()) {
            if (entry.state() == SiteState.BLOCKED || entry.state() == SiteState.LATE) {
                rows.add(row(study, entry));
            }
        }
        int known = rows.size();
        for (int i = 1; i <= LINES; i++) {
            rows.add(new Row(
                    "line-" + i, List.of(Cell.BLANK, Cell.BLANK, Cell.BLANK, Cell.BLANK, Cell.BLANK, Cell.BOX)));
        }
        return List.of(Sheet.lying(
                "snag-list",
                title(),
                recipient(),
                List.of(
                        new Block.Text((known == 0
                                        ? "The log holds nothing up. "
                                        : "From the log: " + Say.count(known, "line") + ". ")
                                + "One line a snag, the moment it is seen; whoever writes it down need not mend it. Whatever could hurt somebody is"
                                + " made safe and kept away from first, and told to the lead at once."),
                        new Block.Table(
                                "snags",
                                List.of(
                                        Column.text("What is not right", 40),
                                        Column.text("Where, which thing or cable", 26),
                                        Column.text("Seen by, when", 16),
                                        Column.text("Who sees to it", 16),
                                        Column.text("By when", 14),
                                        Column.text("Right", 6)),
                                rows))));
    }

    private static Row row(Study study, LogEntry entry) {
        WorkTask task = study.work().find(entry.id()).orElse(null);
        boolean order = study.project().orders().containsKey(entry.id());
        String what = task != null ? task.title() : (order ? "Order " : "") + Words.said(entry.id());
        String held = entry.state() == SiteState.LATE ? "late" : "held up";
        String why = entry.why() == null ? "" : ": " + entry.why();
        List<String> where = task == null
                ? List.of()
                : task.places().stream().map(Words::said).toList();
        return new Row(
                "log-" + entry.id(),
                List.of(
                        Cell.of(what + ", " + held + why),
                        Cell.orBlank(String.join(", ", where)),
                        Cell.orBlank(entry.remarks().by()),
                        Cell.orBlank(String.join(
                                ", ", entry.people().stream().map(Words::said).toList())),
                        Cell.orBlank(
                                entry.until() == null
                                        ? null
                                        : entry.until().toString().replace('T', ' ')),
                        Cell.BOX));
    }
}
