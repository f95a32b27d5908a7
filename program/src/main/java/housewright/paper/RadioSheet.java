package housewright.paper;

import housewright.model.RadioLink;
import housewright.model.Ref;
import housewright.model.Words;
import housewright.signal.Moment;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every radio link and its frequency. */
final class RadioSheet extends Titled {
    RadioSheet() {
        super(
                "radio-frequencies",
                "Radio frequency sheet",
                "Who sets the radio microphones and in-ears",
                "Which transmitter is on which frequency, and which receiver hears it?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Study target = study.at(Moment.target());
        List<Row> rows = target.project().radio().values().stream()
                .filter(each -> target.moment().isThere("radio", each.id(), each.life()))
                .sorted(Comparator.comparingDouble(each -> each.frequency() == null
                        ? Double.MAX_VALUE
                        : each.frequency().hertz()))
                .map(RadioSheet::row)
                .toList();
        if (rows.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Caution("Which bands may be used, at what power and with which licence, is for the country's "
                        + "radio authority to say, and changes: ask before you switch on. Frequencies here are as the project "
                        + "states them; scan the room before you rely on them."));
        blocks.add(Cautions.HEARING);
        blocks.add(new Block.Table(
                "radio",
                List.of(
                        Column.text("Link", 14),
                        Column.text("Frequency", 15),
                        Column.text("Bandwidth", 11),
                        Column.text("Transmitter", 20),
                        Column.text("Receiver", 20),
                        Column.text("State", 8),
                        Column.text("Note", 24),
                        Column.text("Scanned", 8),
                        Column.text("Set", 5)),
                rows));
        return List.of(Sheet.lying("radio-frequencies", "Radio frequencies", recipient(), blocks));
    }

    private static Row row(RadioLink link) {
        return new Row(
                link.id(),
                List.of(
                        Cell.of(Words.said(link.id())),
                        Cell.orBlank(link.frequency()),
                        Cell.orBlank(link.bandwidth()),
                        Cell.of(said(link.from())),
                        Cell.of(said(link.to())),
                        Cell.of(Say.life(link.life(), false)),
                        Cell.orNone(link.remarks().note()),
                        Cell.BOX,
                        Cell.BOX));
    }

    private static String said(Ref ref) {
        return ref.isRange() ? ref.text() : ref.addresses().getFirst().saidPort();
    }
}
