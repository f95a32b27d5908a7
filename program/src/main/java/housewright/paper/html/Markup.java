package housewright.paper.html;

import housewright.paper.Block;
import housewright.paper.Cell;
import housewright.paper.Code;
import housewright.paper.Column;
import housewright.paper.Label;
import housewright.paper.Row;
import java.util.List;

/** Blocks as well-formed markup, the same for the screen and for the printed page. */
public final class Markup {
    private final StringBuilder out = new StringBuilder();

    /** @return text escaped for markup */
    public static String escaped(String text) {
        return Html.escaped(text);
    }

    /** The head of a sheet. */
    public Markup head(String title, String recipient, String question) {
        out.append("<div class=\"head\"><h1>").append(Html.escaped(title)).append("</h1><p class=\"for\">For: ");
        out.append(Html.escaped(recipient))
                .append(". ")
                .append(Html.escaped(question))
                .append("</p></div>\n");
        return this;
    }

    public Markup raw(String markup) {
        out.append(markup);
        return this;
    }

    public Markup blocks(List<Block> blocks) {
        blocks.forEach(this::block);
        return this;
    }

    public Markup block(Block block) {
        switch (block) {
            case Block.Heading heading -> element("h2", heading.text());
            case Block.Text text -> element("p", text.text());
            case Block.Caution caution -> caution(caution);
            case Block.Table table -> table(table);
            case Block.Drawing drawing ->
                out.append("<div class=\"drawing\">").append(drawing.svg()).append("</div>\n");
            case Block.Steps steps -> steps(steps);
            case Block.Labels labels -> labels(labels);
        }
        return this;
    }

    private void element(String tag, String text) {
        out.append('<').append(tag).append('>').append(Html.escaped(text));
        out.append("</").append(tag).append(">\n");
    }

    private void caution(Block.Caution caution) {
        out.append("<p class=\"caution\"><b>Caution</b> ")
                .append(Html.escaped(caution.text()))
                .append("</p>\n");
    }

    private void table(Block.Table table) {
        double sum = table.columns().stream().mapToDouble(Column::width).sum();
        out.append("<div class=\"table\" tabindex=\"0\"><table><colgroup>");
        for (Column column : table.columns()) {
            out.append("<col style=\"width:")
                    .append(Html.num(100 * column.width() / sum))
                    .append("%\"/>");
        }
        out.append("</colgroup>\n<thead><tr>");
        for (Column column : table.columns()) {
            out.append("<th")
                    .append(classes(column))
                    .append('>')
                    .append(Html.escaped(column.head()))
                    .append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (Row row : table.rows()) {
            out.append(row.changed() ? "<tr class=\"changed\">" : "<tr>");
            for (int i = 0; i < row.cells().size(); i++) {
                cell(row.cells().get(i), table.columns().get(i));
            }
            out.append("</tr>\n");
        }
        out.append("</tbody></table></div>\n");
    }

    private void cell(Cell cell, Column column) {
        out.append("<td").append(classes(column)).append('>').append(Html.escaped(cell.text()));
        switch (cell.mark()) {
            case NONE -> {}
            case BLANK -> out.append("<span class=\"blank\">&#160;</span>");
            case BOX -> out.append("<span class=\"box\">&#160;</span>");
        }
        out.append("</td>");
    }

    private static String classes(Column column) {
        return switch (column.kind()) {
            case TEXT -> "";
            case ID -> " class=\"id\"";
            case NUMBER -> " class=\"number\"";
        };
    }

    private void steps(Block.Steps steps) {
        out.append("<table class=\"steps\"><colgroup><col style=\"width:6%\"/><col style=\"width:58%\"/>");
        out.append("<col style=\"width:36%\"/></colgroup>\n<tbody>\n");
        for (int i = 0; i < steps.steps().size(); i++) {
            Block.Step step = steps.steps().get(i);
            out.append("<tr><td class=\"number\">").append(i + 1).append("</td><td>");
            if (!step.where().isEmpty()) {
                out.append("<b>").append(Html.escaped(step.where())).append("</b><br/>");
            }
            out.append(Html.escaped(step.act())).append("</td><td><span class=\"box\">&#160;</span> ");
            out.append(Html.escaped(step.see()));
            if (!step.blank().isEmpty()) {
                out.append(step.see().isEmpty() ? "" : "<br/>").append(Html.escaped(step.blank()));
                out.append(": <span class=\"blank\">&#160;</span>");
            }
            out.append("</td></tr>\n");
        }
        out.append("</tbody></table>\n");
    }

    private void labels(Block.Labels labels) {
        out.append("<div class=\"labels\" tabindex=\"0\" style=\"width:").append(mm(labels.width()));
        out.append(";height:").append(mm(labels.height())).append("\">\n");
        for (Label label : labels.labels()) {
            out.append(
                    labels.outlined()
                            ? "<div class=\"label outlined\" style=\"left:"
                            : "<div class=\"label\" style=\"left:");
            out.append(mm(label.left())).append(";top:").append(mm(label.top()));
            out.append(";width:").append(mm(label.width()));
            out.append(";height:").append(mm(label.height())).append("\">");
            out.append("<div class=\"said\" style=\"left:")
                    .append(mm(Label.INSET))
                    .append(";top:")
                    .append(mm(Label.INSET));
            out.append(";font-size:").append(Html.num(label.points())).append("pt\">");
            for (int i = 0; i < label.lines().size(); i++) {
                String line = Html.escaped(label.lines().get(i));
                out.append(i < label.bold() ? "<div class=\"first\">" : "<div>")
                        .append(line)
                        .append("</div>");
            }
            out.append("</div>");
            if (!label.code().isEmpty()) {
                code(label);
            }
            out.append("</div>\n");
        }
        out.append("</div>\n");
    }

    private void code(Label label) {
        Code code = Code.of(label.code());
        String side = mm(label.side());
        String all = Integer.toString(code.modules());
        out.append("<div class=\"code\" style=\"left:").append(mm(label.width() - Label.INSET - label.side()));
        out.append(";top:")
                .append(mm((label.height() - label.side()) / 2))
                .append(";width:")
                .append(side);
        out.append(";height:")
                .append(side)
                .append("\"><svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(side);
        out.append("\" height=\"")
                .append(side)
                .append("\" viewBox=\"0 0 ")
                .append(all)
                .append(' ')
                .append(all);
        out.append("\"><path fill=\"#000\" d=\"").append(code.path()).append("\"/></svg></div>");
    }

    private static String mm(double value) {
        return Html.num(value) + "mm";
    }

    public boolean isEmpty() {
        return out.isEmpty();
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
