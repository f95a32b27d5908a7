package housewright.paper;

import housewright.drawing.Drawings;
import housewright.drawing.State;
import housewright.model.Place;
import housewright.model.SpacePoint;
import housewright.model.Words;
import housewright.signal.Moment;
import housewright.signal.Present;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;

/** Where everything stands: the floor plan and the rooms from the side, and what is at each place. */
final class StagePlan extends Titled {
    StagePlan() {
        super("stage-plan", "Stage plan", "Whoever sets up or carries", "What stands, hangs or is racked where?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Drawings drawings = Drawn.of(study, options);
        List<Sheet> sheets = new ArrayList<>();
        if (study.project().venue().places().values().stream().anyMatch(place -> place.at() != null)) {
            sheets.add(Drawn.sheet(drawings.floorPlan(State.TARGET).sheet(), recipient()));
            drawings.sideViews(State.TARGET).forEach(view -> sheets.add(Drawn.sheet(view.sheet(), recipient())));
        }
        List<Row> rows = rows(study.at(Moment.target()));
        if (!rows.isEmpty()) {
            sheets.add(Sheet.upright(
                    "stage-plan-places",
                    "What is at each place",
                    recipient(),
                    List.of(
                            Cautions.LIFTING,
                            new Block.Table(
                                    "places",
                                    List.of(
                                            Column.text("Place", 18),
                                            Column.text("Room", 12),
                                            Column.text("Along, across, up", 22),
                                            Column.text("What is there", 48)),
                                    rows))));
        }
        return sheets;
    }

    private static List<Row> rows(Study study) {
        List<Row> rows = new ArrayList<>();
        for (Place place : study.project().venue().places().values()) {
            List<String> here = new ArrayList<>();
            for (Present thing : study.supplies().things().values()) {
                if (place.id().equals(thing.equipment().at())) {
                    here.add(Words.said(thing.id()));
                }
            }
            SpacePoint at = place.at();
            rows.add(new Row(
                    place.id(),
                    List.of(
                            Cell.of(Words.said(place.id())),
                            Cell.orBlank(Say.name(place.room())),
                            Cell.orBlank(at == null ? null : at.x() + ", " + at.y() + ", " + at.z()),
                            Cell.of(String.join(", ", here)))));
        }
        return rows;
    }
}
