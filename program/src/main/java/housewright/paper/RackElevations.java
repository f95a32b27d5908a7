package housewright.paper;

import housewright.drawing.Drawings;
import housewright.drawing.State;
import housewright.model.Model;
import housewright.model.Place;
import housewright.model.Words;
import housewright.signal.Moment;
import housewright.signal.Present;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Each rack from its front, to scale, and what goes into it with its weight. */
final class RackElevations extends Titled {
    RackElevations() {
        super("rack-elevations", "Rack elevations", "Who builds the racks", "What is at which height in which rack?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Drawings drawings = Drawn.of(study, options);
        if (drawings.rackPlaces().isEmpty()) {
            return List.of();
        }
        List<Sheet> sheets = new ArrayList<>();
        drawings.racks(State.TARGET).forEach(drawn -> sheets.add(Drawn.sheet(drawn, recipient())));
        Study target = study.at(Moment.target());
        Say say = Say.of(study.project());
        for (String rack : drawings.rackPlaces()) {
            List<Row> rows = rows(target, rack, say);
            if (!rows.isEmpty()) {
                Place place = study.project().venue().places().get(rack);
                sheets.add(Sheet.upright(
                        "rack-list-" + rack,
                        "Rack " + Words.said(rack)
                                + (place == null || place.rack() == null
                                        ? ""
                                        : ", " + place.rack().units() + " U"),
                        recipient(),
                        List.of(
                                Cautions.LIFTING,
                                new Block.Text("Units are counted from below. Heavy things go lowest; fix the rack or "
                                        + "load it from below before anything is slid out."),
                                new Block.Table(
                                        "racks",
                                        List.of(
                                                Column.number("Unit", 6),
                                                Column.text("Thing", 18),
                                                Column.text("Type", 36),
                                                Column.text("Height", 8),
                                                Column.number(say.massHead("Weight"), 9),
                                                Column.text("State", 9),
                                                Column.text("In", 5)),
                                        rows))));
            }
        }
        return sheets;
    }

    private static List<Row> rows(Study study, String rack, Say say) {
        return study.supplies().things().values().stream()
                .filter(thing -> rack.equals(thing.equipment().at()))
                .filter(thing ->
                        thing.equipment().partOf() == null && thing.equipment().runsOn() == null)
                .sorted(Comparator.comparing(
                                (Present thing) -> thing.equipment().unit(),
                                Comparator.nullsLast(Comparator.reverseOrder()))
                        .thenComparing(Present::id))
                .map(thing -> row(thing, say))
                .toList();
    }

    private static Row row(Present thing, Say say) {
        Model model = thing.model();
        boolean racked = model == null || model.rack() != null;
        return new Row(
                thing.id(),
                List.of(
                        racked ? Cell.orBlank(thing.equipment().unit()) : Cell.NONE,
                        Cell.of(Words.said(thing.id())),
                        model == null ? Cell.BLANK : Cell.of(Say.type(model)),
                        racked ? Cell.orBlank(model == null ? null : model.rack()) : Cell.of("stands"),
                        Cell.orBlank(
                                model == null || model.weight() == null
                                        ? null
                                        : say.mass(model.weight().kilograms())),
                        Cell.of(Say.life(
                                thing.equipment().life(), thing.equipment().was() != null)),
                        Cell.BOX));
    }
}
