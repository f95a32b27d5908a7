package housewright.paper;

import housewright.card.Card;
import housewright.card.Cards;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The cards that hang beside the gear, a page each. */
final class VolunteerCards implements Paper {
    @Override
    public String id() {
        return "volunteer-cards";
    }

    @Override
    public String title() {
        return "Volunteer cards";
    }

    @Override
    public String recipient() {
        return "Whoever runs a service";
    }

    @Override
    public String question() {
        return "What do I do next?";
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        return Cards.of(study).stream().map(this::sheet).toList();
    }

    private Sheet sheet(Card card) {
        List<Block> blocks = new ArrayList<>();
        card.first().forEach(text -> blocks.add(new Block.Text(text)));
        if (!card.steps().isEmpty()) {
            blocks.add(new Block.Steps(steps(card)));
        }
        for (Card.Lookup table : card.tables()) {
            blocks.add(new Block.Heading(table.title()));
            blocks.add(table(card, table));
        }
        if (!card.cautions().isEmpty()) {
            blocks.add(new Block.Caution(String.join(" ", card.cautions())));
        }
        for (Card.Call call : card.calls()) {
            blocks.add(new Block.Text("Call about " + call.about() + ": "
                    + (call.said().isEmpty() ? "……………………" : call.said()) + ", number ……………………"));
        }
        if (!card.toFillIn().isEmpty()) {
            blocks.add(new Block.Text(
                    "Write in by hand what is left blank: nobody has told the plan yet. What you see is what such things"
                            + " mostly show; put it right where yours shows something else."));
        }
        return Sheet.card(
                card.id(), card.part() == null ? card.title() : card.title() + ", " + card.part(), recipient(), blocks);
    }

    /** Where to go is said once, until it is somewhere else. */
    private static List<Block.Step> steps(Card card) {
        List<Block.Step> steps = new ArrayList<>();
        String at = "";
        for (Card.Step step : card.steps()) {
            String where = Objects.requireNonNullElse(step.where(), "");
            steps.add(new Block.Step(
                    where.equals(at) ? "" : where,
                    step.act(),
                    Objects.requireNonNullElse(step.see(), ""),
                    Objects.requireNonNullElse(step.blank(), "")));
            at = where;
        }
        return steps;
    }

    private static Block table(Card card, Card.Lookup table) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < table.heads().size(); i++) {
            columns.add(Column.text(table.heads().get(i), table.widths().get(i)));
        }
        List<Row> rows = table.rows().stream()
                .map(row -> Row.of(String.join(", ", row.subList(0, 2)), row.toArray(String[]::new)))
                .toList();
        return new Block.Table(card.id(), columns, rows);
    }
}
