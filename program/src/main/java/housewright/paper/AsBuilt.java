package housewright.paper;

import housewright.cable.Lead;
import housewright.model.CableType;
import housewright.model.Equipment;
import housewright.model.Handover;
import housewright.model.Kind;
import housewright.model.Known;
import housewright.model.LogEntry;
import housewright.model.Remarks;
import housewright.model.SiteState;
import housewright.model.Words;
import housewright.signal.Moment;
import housewright.signal.Present;
import housewright.study.Study;
import housewright.work.WorkTask;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the hall is handed: the register of what stands there, what was tested and measured, and what the set holds. */
final class AsBuilt extends Titled {
    /** The drawings and schedules that make up the set with it. */
    private static final List<Paper> SET = List.of(
            new StagePlan(),
            new SignalDrawings(),
            new RackElevations(),
            new CableSchedule(),
            new PatchSheets(),
            new PowerSchedule(),
            new NetworkSheet(),
            new LightSheets(),
            new LookSheet(),
            new RadioSheet());

    AsBuilt() {
        super(
                "as-built",
                "As-built set",
                "The hall, and whoever repairs or changes it later",
                "What is in the hall now, what was tested and measured, and where is it drawn?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Study target = study.at(Moment.target());
        List<Row> things = new ArrayList<>();
        target.supplies().things().values().forEach(thing -> things.add(thing(thing)));
        List<Row> cables = new ArrayList<>();
        Say say = Say.of(study.project());
        for (Lead lead : target.cabling().leads()) {
            if (CableType.isBought(lead.cable().type())) {
                cables.add(cable(lead, study.project().log().get("test-" + lead.id()), say));
            }
        }
        List<Sheet> sheets = new ArrayList<>();
        if (!things.isEmpty() || !cables.isEmpty()) {
            sheets.add(contents());
        }
        if (!things.isEmpty()) {
            sheets.add(Sheet.lying(
                    "as-built-register",
                    "Register of equipment",
                    recipient(),
                    List.of(
                            new Block.Text("Passwords never stand on paper; the register says who keeps them."),
                            new Block.Table(
                                    "register",
                                    List.of(
                                            Column.text("Thing", 14),
                                            Column.text("Type", 24),
                                            Column.text("At", 12),
                                            Column.id("Serial number", 13),
                                            Column.text("Firmware", 9),
                                            Column.text("Licence", 12),
                                            Column.text("Password kept by", 13),
                                            Column.text("Known", 12),
                                            Column.text("Note", 22)),
                                    things))));
        }
        if (!cables.isEmpty()) {
            sheets.add(Sheet.upright(
                    "as-built-tests",
                    "Cables: length and test",
                    recipient(),
                    List.of(new Block.Table(
                            "tests",
                            List.of(
                                    Column.id("Cable", 10),
                                    Column.text("Type", 20),
                                    Column.number(say.lengthHead("Drawn"), 10),
                                    Column.number(say.lengthHead("Measured"), 11),
                                    Column.text("Tested, by whom, when", 30),
                                    Column.text("Known", 14)),
                            cables))));
        }
        List<Row> noted = noted(study);
        if (!noted.isEmpty()) {
            sheets.add(Sheet.upright(
                    "as-built-log",
                    "What was noted and measured on site",
                    recipient(),
                    List.of(new Block.Table(
                            "log",
                            List.of(
                                    Column.text("Work", 34),
                                    Column.text("Day", 12),
                                    Column.text("Who", 14),
                                    Column.text("Noted", 40)),
                            noted))));
        }
        return sheets;
    }

    private Sheet contents() {
        List<Row> rows = new ArrayList<>();
        SET.forEach(paper ->
                rows.add(new Row(paper.id(), List.of(Cell.of(paper.title()), Cell.of(paper.question()), Cell.BOX))));
        return Sheet.upright(
                "as-built",
                "What the set holds",
                recipient(),
                List.of(
                        new Block.Text(
                                "The as-built set is this register with the papers below, all of the state after the "
                                        + "work. What differs in the room is written into them in red and goes back into the project."),
                        Cautions.MAINS,
                        new Block.Table(
                                "set",
                                List.of(
                                        Column.text("Paper", 26),
                                        Column.text("What it answers", 60),
                                        Column.text("In the set", 12)),
                                rows)));
    }

    private static Row thing(Present thing) {
        Equipment equipment = thing.equipment();
        Handover handover = equipment.handover();
        return new Row(
                thing.id(),
                List.of(
                        Cell.of(Words.said(thing.id())),
                        thing.model() == null ? Cell.BLANK : Cell.of(Say.type(thing.model())),
                        Cell.orBlank(Say.name(equipment.at())),
                        Cell.orBlank(equipment.serial()),
                        handed(thing, handover == null ? null : handover.firmware()),
                        handed(thing, handover == null ? null : handover.licence()),
                        handed(thing, handover == null ? null : handover.password()),
                        Cell.of(known(equipment.remarks())),
                        Cell.orNone(equipment.remarks().note())));
    }

    /** Firmware, licences and passwords have the things that have an address or run programs. */
    private static Cell handed(Present thing, @Nullable String said) {
        Kind kind = thing.model() == null ? Kind.OTHER : thing.model().kind();
        boolean due = thing.equipment().ip() != null || kind == Kind.COMPUTER || kind == Kind.PROGRAM;
        return due ? Cell.orBlank(said) : Cell.orNone(said);
    }

    private static Row cable(Lead lead, @Nullable LogEntry test, Say say) {
        boolean measured =
                lead.cable().remarks().known() == Known.MEASURED && lead.cable().length() != null;
        return new Row(
                lead.id(),
                List.of(
                        Cell.of(lead.id()),
                        Cell.orBlank(lead.cable().type()),
                        say.length(lead.span()),
                        measured ? say.length(lead.span()) : Cell.BLANK,
                        Cell.orBlank(
                                lead.cable().tested() != null ? lead.cable().tested() : tested(test)),
                        Cell.of(known(lead.cable().remarks()))));
    }

    /** What the log says of its test; null where it is not done. */
    private static @Nullable String tested(@Nullable LogEntry test) {
        return test == null || test.state() != SiteState.DONE ? null : said(test);
    }

    private static String said(LogEntry entry) {
        List<String> said = new ArrayList<>();
        if (entry.to() != null) {
            said.add(entry.to().toLocalDate().toString());
        }
        if (!entry.people().isEmpty()) {
            said.add(Planned.said(entry.people()));
        }
        if (entry.remarks().note() != null) {
            said.add(entry.remarks().note());
        }
        return said.isEmpty() ? "done" : String.join(", ", said);
    }

    /** What somebody noted or measured while doing it. */
    private static List<Row> noted(Study study) {
        List<Row> rows = new ArrayList<>();
        for (LogEntry entry : study.project().log().values()) {
            if (entry.remarks().note() != null) {
                String title =
                        study.work().find(entry.id()).map(WorkTask::title).orElse(entry.id());
                rows.add(Row.of(
                        entry.id(),
                        title,
                        entry.to() == null ? "" : entry.to().toLocalDate().toString(),
                        Planned.said(entry.people()),
                        entry.remarks().note()));
            }
        }
        return rows;
    }

    private static String known(@Nullable Remarks remarks) {
        if (remarks == null || remarks.known() == null) {
            return "";
        }
        return remarks.known().word() + (remarks.by() == null ? "" : " by " + Words.said(remarks.by()));
    }
}
