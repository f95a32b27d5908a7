package housewright.paper;

import housewright.model.Control;
import housewright.model.Lighting;
import housewright.model.Look;
import housewright.model.Words;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;

/** Every look: what is how bright, in which colour, and what calls it. */
final class LookSheet extends Titled {
    LookSheet() {
        super(
                "look-sheet",
                "Look sheet",
                "Who programmes and who runs the light",
                "How bright and in which colour is each fixture in each look, and what calls it?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Lighting lighting = study.project().lighting();
        if (lighting == null || lighting.looks().isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        List<Row> calls = new ArrayList<>();
        for (Look look : lighting.looks().values()) {
            calls.add(new Row(
                    look.id(),
                    List.of(
                            Cell.of(Words.said(look.id())),
                            Cell.orBlank(look.fade()),
                            Cell.orBlank(calledBy(study, look.id())),
                            Cell.orNone(look.remarks().note()),
                            Cell.BOX)));
        }
        blocks.add(new Block.Table(
                "looks",
                List.of(
                        Column.text("Look", 16),
                        Column.text("Fade", 10),
                        Column.text("Called by", 34),
                        Column.text("Note", 34),
                        Column.text("Stored", 7)),
                calls));
        for (Look look : lighting.looks().values()) {
            List<Row> rows = new ArrayList<>();
            look.levels()
                    .forEach((fixture, level) -> rows.add(new Row(
                            look.id() + " " + fixture,
                            List.of(
                                    Cell.of(Words.said(look.id())),
                                    Cell.of(Words.said(fixture)),
                                    Cell.of(Say.number(level.fraction() * 100, 0)),
                                    Cell.orNone(look.colours().get(fixture))))));
            if (!rows.isEmpty()) {
                blocks.add(new Block.Heading(Words.said(look.id())));
                blocks.add(new Block.Table(
                        "levels",
                        List.of(
                                Column.text("Look", 20),
                                Column.text("Fixture", 24),
                                Column.number("Level, %", 10),
                                Column.text("Colour", 46)),
                        rows));
            }
        }
        return List.of(Sheet.upright("look-sheet", "Looks", recipient(), blocks));
    }

    private static String calledBy(Study study, String look) {
        List<String> controls = new ArrayList<>();
        for (Control each : study.project().controls().values()) {
            if (look.equals(each.calls())) {
                String press = each.press() == null
                        ? ""
                        : each.press().addresses().getFirst().said();
                String at = each.at() == null
                        ? ""
                        : (each.before() == null ? "at " : each.before() + " before ") + Words.said(each.at());
                controls.add(press.isEmpty() ? at : at.isEmpty() ? press : press + " or " + at);
            }
        }
        return String.join("; ", controls);
    }
}
