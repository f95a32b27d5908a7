package housewright.paper;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Cable;
import housewright.model.Life;
import housewright.signal.Moment;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Every cable with both its ends, way by way where it has several. */
final class CableSchedule extends Titled {
    CableSchedule() {
        super(
                "cable-schedule",
                "Cable schedule",
                "Whoever pulls, plugs and tests cable",
                "Which cable goes from where to where, how long is it, and what is on its ends?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Say say = Say.of(study.project());
        List<Row> here = new ArrayList<>();
        List<Row> gone = new ArrayList<>();
        Study target = study.at(Moment.target());
        for (Lead lead : target.cabling().leads()) {
            here.addAll(rows(lead, lead.cable().life(), say));
        }
        for (Lead lead : study.at(Moment.today()).cabling().leads()) {
            if (target.cabling().findLead(lead.id()).isEmpty()) {
                gone.addAll(rows(lead, Life.STRIKE, say));
            }
        }
        List<Sheet> sheets = new ArrayList<>();
        if (!here.isEmpty()) {
            sheets.add(Sheet.lying(
                    "cable-schedule",
                    "Cables after the work",
                    recipient(),
                    List.of(
                            new Block.Text("Lengths without a stated figure are those of the pathways with "
                                    + say.lengthInWords(housewright.cable.Span.SLACK_M)
                                    + " of slack at each end; what nobody knows is left blank to fill in."),
                            Cautions.HEARING,
                            table(here, say))));
        }
        if (!gone.isEmpty()) {
            sheets.add(Sheet.lying(
                    "cable-schedule-gone",
                    "Cables that go",
                    recipient(),
                    List.of(
                            new Block.Text("As they are plugged today. Take out only what the plan says is free."),
                            table(gone, say))));
        }
        return sheets;
    }

    private static Block.Table table(List<Row> rows, Say say) {
        return new Block.Table(
                "cables",
                List.of(
                        Column.id("Cable", 10),
                        Column.text("Label", 9),
                        Column.text("Type", 13),
                        Column.text("From", 16),
                        Column.text("Plug", 9),
                        Column.text("To", 16),
                        Column.text("Plug there", 9),
                        Column.text("Along", 12.5),
                        Column.number(say.lengthHead("Length"), 7),
                        Column.text("Ends", 7),
                        Column.text("State", 8.5),
                        Column.text("Tested", 7)),
                rows);
    }

    private static List<Row> rows(Lead lead, Life life, Say say) {
        List<Row> rows = new ArrayList<>();
        int way = 0;
        for (Joint joint : lead.joints()) {
            way++;
            rows.add(row(lead, lead.joints().size() > 1 ? " way " + way : "", joint.from(), joint.to(), life, say));
        }
        if (rows.isEmpty()) {
            rows.add(row(lead, "", null, null, life, say));
        }
        return rows;
    }

    private static Row row(Lead lead, String way, @Nullable Plug from, @Nullable Plug to, Life life, Say say) {
        Cable cable = lead.cable();
        return new Row(
                cable.id() + way,
                List.of(
                        Cell.of(cable.id() + way),
                        Cell.orNone(cable.label()),
                        Cell.orBlank(cable.type()),
                        Say.socket(from),
                        Say.connector(from),
                        Say.socket(to),
                        Say.connector(to),
                        Cell.of(Say.pathways(lead.pathways())),
                        say.length(lead.span()),
                        Cell.orNone(
                                cable.terminated() == null
                                        ? null
                                        : cable.terminated().word()),
                        Cell.of(Say.life(life, cable.was() != null)),
                        cable.tested() == null ? Cell.BOX : Cell.of(cable.tested())));
    }
}
