package housewright.web.page;

import housewright.app.ProjectStore.Revision;
import housewright.app.ProjectStore.Step;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What changed, newest first.
 *
 * @param earlier the page before these steps; null where they are the first
 */
public record HistoryPage(
        String answer, List<Row> rows, @Nullable String earlier) {
    public HistoryPage {
        rows = List.copyOf(rows);
    }

    /** @param kind of step, where it is not a plain edit */
    public record Row(long number, String href, String says, String kind, String who, String when) {}

    public static HistoryPage of(List<Revision> steps, String href, Instant now, ZoneId zone, boolean whole) {
        List<Row> rows = steps.stream()
                .map(step -> new Row(
                        step.number(),
                        href + "/" + step.number(),
                        step.what().says(),
                        kind(step),
                        step.what().author(),
                        Dates.ago(step.what().at(), now, zone)))
                .toList();
        String answer = rows.isEmpty()
                ? "Nothing has been changed yet."
                : "Revision " + rows.getFirst().number() + ": "
                        + rows.getFirst().says() + ", by " + rows.getFirst().who() + ", "
                        + rows.getFirst().when() + ".";
        return new HistoryPage(
                answer,
                rows,
                whole || rows.isEmpty()
                        ? null
                        : href + "?before=" + rows.getLast().number());
    }

    static String kind(Revision step) {
        Step kind = step.what().step();
        return switch (kind) {
            case BEGIN -> "begun";
            case EDIT -> "";
            case UNDO -> "undo of " + step.what().of();
            case REDO -> "redo of " + step.what().of();
            case RESTORE -> "restored " + step.what().of();
            case IMPORT -> "taken over";
        };
    }
}
