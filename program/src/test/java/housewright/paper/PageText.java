package housewright.paper;

import java.util.List;
import java.util.StringJoiner;

/** Sheets as text, to hold to a golden file before they become bytes. */
final class PageText {
    private PageText() {}

    static String of(List<Sheet> sheets) {
        StringBuilder out = new StringBuilder();
        for (Sheet sheet : sheets) {
            out.append("== ").append(sheet.id()).append(": ").append(sheet.title());
            out.append(sheet.lying() ? " (lying)" : sheet.large() ? " (large)" : "")
                    .append(", for: ")
                    .append(sheet.recipient())
                    .append('\n');
            sheet.blocks().forEach(block -> out.append(text(block)).append('\n'));
        }
        return out.toString();
    }

    private static String text(Block block) {
        return switch (block) {
            case Block.Heading heading -> "# " + heading.text();
            case Block.Text text -> text.text();
            case Block.Caution caution -> "! " + caution.text();
            case Block.Table table -> table(table);
            case Block.Drawing drawing ->
                "[drawing: %s, %.0f x %.0f mm]".formatted(drawing.title(), drawing.width(), drawing.height());
            case Block.Steps steps -> steps(steps);
            case Block.Labels labels -> labels(labels);
        };
    }

    private static String labels(Block.Labels labels) {
        StringJoiner lines = new StringJoiner("\n");
        lines.add("[labels: " + Say.number(labels.width(), 1) + " x " + Say.number(labels.height(), 1)
                + (labels.outlined() ? " mm, outlined]" : " mm]"));
        for (Label label : labels.labels()) {
            lines.add(Say.number(label.left(), 2) + " " + Say.number(label.top(), 2) + ", "
                    + Say.number(label.points(), 1)
                    + " pt: " + String.join(" / ", label.lines())
                    + (label.code().isEmpty()
                            ? ""
                            : " [" + label.code() + ", " + Say.number(label.side(), 1) + " mm]"));
        }
        return lines.toString();
    }

    private static String steps(Block.Steps steps) {
        StringJoiner lines = new StringJoiner("\n");
        for (int i = 0; i < steps.steps().size(); i++) {
            Block.Step step = steps.steps().get(i);
            lines.add((i + 1) + ". " + (step.where().isEmpty() ? "" : "[" + step.where() + "] ") + step.act()
                    + (step.see().isEmpty() ? "" : " -> " + step.see())
                    + (step.blank().isEmpty() ? "" : " " + step.blank() + ": ____"));
        }
        return lines.toString();
    }

    private static String table(Block.Table table) {
        StringJoiner lines = new StringJoiner("\n");
        StringJoiner heads = new StringJoiner(" | ", table.name() + " | ", "");
        table.columns().forEach(column -> heads.add(column.head()));
        lines.add(heads.toString());
        for (Row row : table.rows()) {
            StringJoiner cells = new StringJoiner(" | ", row.key() + " | ", row.changed() ? " <" : "");
            row.cells().forEach(cell -> cells.add(text(cell)));
            lines.add(cells.toString());
        }
        return lines.toString();
    }

    private static String text(Cell cell) {
        return switch (cell.mark()) {
            case NONE -> cell.text();
            case BLANK -> cell.text() + "____";
            case BOX -> cell.text() + "[ ]";
        };
    }
}
