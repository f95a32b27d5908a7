package housewright.paper;

import housewright.cable.Line;
import housewright.model.Circuit;
import housewright.model.Words;
import housewright.power.CircuitLoad;
import housewright.power.Supplies;
import housewright.power.Supply;
import housewright.signal.Moment;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;

/** What is on which circuit and outlet, and what it takes. */
final class PowerSchedule extends Titled {
    PowerSchedule() {
        super(
                "power-schedule",
                "Power schedule",
                "The electrician, and whoever plugs mains leads",
                "What is on which circuit and outlet, and how much does it take?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Supplies supplies = study.at(Moment.target()).supplies();
        List<Row> circuits = new ArrayList<>();
        supplies.circuits().forEach(load -> circuits.add(circuit(load)));
        List<Row> things = new ArrayList<>();
        supplies.supplies().forEach(supply -> things.add(thing(supply, supplies)));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Cautions.MAINS);
        if (!circuits.isEmpty()) {
            blocks.add(new Block.Heading("Circuits"));
            blocks.add(new Block.Text("Currents are reckoned from the types' power at a power factor of "
                    + Say.number(Supplies.POWER_FACTOR, 2)
                    + "; what starts together takes more for a moment. Where a figure is missing, read the plate."));
            blocks.add(new Block.Table(
                    "circuits",
                    List.of(
                            Column.text("Circuit", 12),
                            Column.text("Rating", 9),
                            Column.text("Voltage", 9),
                            Column.text("Phase", 8),
                            Column.number("Power, W", 9),
                            Column.number("Current, A", 10),
                            Column.text("No figure for", 22),
                            Column.text("Note", 30)),
                    circuits));
        }
        if (!things.isEmpty()) {
            blocks.add(new Block.Heading("What is plugged into what"));
            blocks.add(new Block.Table(
                    "things",
                    List.of(
                            Column.text("Thing", 18),
                            Column.text("At", 13),
                            Column.text("Outlet", 21),
                            Column.text("Lead", 10),
                            Column.text("Circuit", 10),
                            Column.number("Own, W", 8),
                            Column.number("Through it, W", 10),
                            Column.text("Done", 6)),
                    things));
        }
        return blocks.size() == 1
                ? List.of()
                : List.of(Sheet.lying("power-schedule", "Circuits and outlets", recipient(), blocks));
    }

    private static Row circuit(CircuitLoad load) {
        Circuit circuit = load.circuit();
        Double amperes = load.amperes();
        boolean complete = load.unknown().isEmpty();
        return new Row(
                circuit.id(),
                List.of(
                        Cell.of(circuit.id()),
                        Cell.orBlank(circuit.rating()),
                        Cell.orBlank(circuit.voltage()),
                        Cell.orBlank(circuit.phase()),
                        Cell.of(Say.number(load.watts(), 0)),
                        Cell.orBlank(amperes == null ? null : Say.number(amperes, 1)),
                        complete
                                ? Cell.NONE
                                : Cell.of(String.join(
                                        ", ",
                                        load.unknown().stream().map(Words::said).toList())),
                        Cell.orNone(circuit.remarks().note())));
    }

    private static Row thing(Supply supply, Supplies supplies) {
        Line lead = supply.lead();
        String at = supply.thing().equipment().at();
        return new Row(
                supply.id(),
                List.of(
                        Cell.of(Words.said(supply.id())),
                        Cell.orBlank(Say.name(at)),
                        supply.outlet() == null
                                ? Cell.of("on the circuit")
                                : Cell.of(supply.outlet().saidPort()),
                        Cell.orNone(lead == null ? null : String.join(", ", lead.ids())),
                        Cell.orBlank(supply.circuit()),
                        supply.known() ? Cell.of(Say.number(supply.own(), 0)) : Cell.BLANK,
                        supplies.below(supply.id()).isEmpty()
                                ? Cell.NONE
                                : Cell.of((supplies.isKnownThrough(supply.id()) ? "" : "at least ")
                                        + Say.number(supplies.through(supply.id()), 0)),
                        Cell.BOX));
    }
}
