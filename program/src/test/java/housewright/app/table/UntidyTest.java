package housewright.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.table.SheetImport.Does;
import housewright.app.table.SheetImport.Row;
import housewright.file.ProjectReader;
import housewright.model.Cable;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.sheet.Sheet;
import housewright.sheet.SheetReader;
import housewright.sheet.SheetReading;
import housewright.sheet.Untidy;
import housewright.study.Study;
import housewright.testing.Golden;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;

/** Spreadsheets as people keep them, held to what must become of each: the sheet, the head, the columns, every row. */
class UntidyTest {
    private static final Project DEMO = Halls.demo();
    private static final Study STUDY = Halls.study(DEMO);

    private static final Map<String, SheetImport> TAKEN = new ConcurrentHashMap<>();

    private static SheetImport taken(String name) {
        return TAKEN.computeIfAbsent(name, UntidyTest::take);
    }

    private static SheetImport take(String name) {
        SheetReading.Read read = (SheetReading.Read) SheetReader.read(name, Untidy.get(name));
        FoundTable found = FoundTable.find(STUDY, read.sheets(), new FoundTable.Wish("", null))
                .orElseThrow();
        return SheetImport.of(STUDY, found);
    }

    @Test
    void eachComesToWhatItMust() {
        StringBuilder all = new StringBuilder();
        for (String name : Untidy.names()) {
            SheetImport taken = taken(name);
            FoundTable found = taken.found();
            all.append("== ").append(name).append('\n');
            all.append(found.sheet()).append(", ").append(found.kind().word()).append(", head ");
            all.append(found.headRow())
                    .append(", columns ")
                    .append(found.guess().columns())
                    .append('\n');
            int shown = 0;
            for (Row row : taken.rows()) {
                if (name.startsWith("twenty") && shown++ > 3 && row.does() != Does.REFUSE) {
                    continue;
                }
                all.append(row.number())
                        .append(' ')
                        .append(row.does())
                        .append(' ')
                        .append(row.id());
                all.append(row.cells().isEmpty() || row.does() == Does.LEAVE ? "" : " " + row.cells());
                all.append(row.why().isEmpty() ? "" : " -- " + String.join("; ", row.why()))
                        .append('\n');
                row.notes().forEach(note -> all.append("    ").append(note).append('\n'));
            }
            for (Does does : Does.values()) {
                all.append(does).append(' ').append(taken.count(does)).append("  ");
            }
            all.append("\n\n");
            assertThat(ProjectReader.check(name, Change.apply(DEMO, taken.changes()), Halls.LIBRARY))
                    .as(name)
                    .isEmpty();
        }
        assertThat(Untidy.names()).hasSizeGreaterThanOrEqualTo(15);
        Golden.hold(Path.of("src/test/resources/housewright/sheet/untidy.txt"), all.toString());
    }

    @Test
    void twentyThousandRowsAreTakenButThoseThatAreWrong() {
        SheetImport taken = taken("twenty-thousand.csv");
        assertThat(taken.count(Does.ADD)).isEqualTo(19_980);
        assertThat(taken.count(Does.REFUSE)).isEqualTo(20);
        Project after = Change.apply(DEMO, taken.changes());
        assertThat(after.cables()).hasSize(DEMO.cables().size() + 19_980).containsKey("Z00001");
        assertThat(after.cables().get("Z00001").length().metres()).isEqualTo(2.5);
    }

    @Test
    void aPersonCorrectsTheGuess() {
        SheetReading.Read read =
                (SheetReading.Read) SheetReader.read("twice-and-wrong.csv", Untidy.get("twice-and-wrong.csv"));
        FoundTable found = FoundTable.find(STUDY, read.sheets(), new FoundTable.Wish("", null))
                .orElseThrow();
        FoundTable other = found.with(Map.of("Colour of case", "note", "D", ""));
        assertThat(other.guess().columns()).containsExactly("id", "model", "at", "", "note");
        assertThat(SheetImport.of(STUDY, other).rows().getFirst().cells()).containsEntry("note", "red");
    }

    @Test
    void inEarSendsThatNameMixesPlainlyArePatched() {
        Project hall = Halls.of("""
                equipment:
                  desk: {model: desk-digital-32-stage-a}
                  box: {model: stagebox-16x8-stage-a}
                cables:
                  C001: {type: cat6-screened, from: desk.link, to: box.link}
                """);
        Sheet sheet = new Sheet(
                "Input list",
                List.of(
                        new Sheet.Row(1, List.of("Ch", "Source", "Mic", "Socket", "In-ear sends")),
                        new Sheet.Row(
                                2, List.of("1", "Ann", "mic-dynamic-vocal", "1", "mix 1, 2 (-6,5 dB) / Aux 3 +2 dB")),
                        new Sheet.Row(3, List.of("2", "Ben", "mic-dynamic-vocal", "2", "Ben's pack")),
                        new Sheet.Row(4, List.of("3", "Cem", "mic-dynamic-vocal", "3", "mix 99")),
                        new Sheet.Row(5, List.of("4", "Dot", "mic-dynamic-vocal", "4", "1, 2")),
                        new Sheet.Row(6, List.of("5", "Eve", "mic-dynamic-vocal", "nowhere", "mix 1")),
                        new Sheet.Row(7, List.of("6", "Fay", "mic-dynamic-vocal", "6", "mix 12 dB"))));
        Project after = Change.apply(hall, sent(hall, sheet).changes());
        assertThat(after.patch().get("desk"))
                .filteredOn(entry -> entry.from().toString().startsWith("ch-"))
                .extracting(entry -> entry.join().text() + " " + entry.gain())
                .containsExactly("ch-1 -> mix-1 null", "ch-1 -> mix-2 -6.5 dB", "ch-1 -> mix-3 2 dB");
        assertThat(after.equipment().get("ann").remarks().note()).isNull();
        assertThat(after.equipment().get("ben").remarks().note()).isEqualTo("Sends: Ben's pack");
        assertThat(after.equipment().get("cem").remarks().note()).isEqualTo("Sends: mix 99");
        assertThat(after.equipment().get("dot").remarks().note())
                .as("a number alone may be anything")
                .isEqualTo("Sends: 1, 2");
        assertThat(after.equipment().get("eve").remarks().note())
                .as("on no channel")
                .isEqualTo("Sends: mix 1");
        assertThat(after.equipment().get("fay").remarks().note())
                .as("no digit of a gain is the number of a mix")
                .isEqualTo("Sends: mix 12 dB");
        SheetImport twice = sent(after, sheet);
        assertThat(twice.changes()).as("taken already").isEmpty();
        assertThat(twice.rows().getFirst().notes()).anyMatch(note -> note.contains("mix-1, mix-2, mix-3 already"));
    }

    private static SheetImport sent(Project hall, Sheet sheet) {
        Study study = Study.of(hall, Halls.LIBRARY);
        return SheetImport.of(
                study,
                FoundTable.find(study, List.of(sheet), new FoundTable.Wish("", null))
                        .orElseThrow());
    }

    @Test
    void anInputListMakesCableChannelAndFeedWhereItIsPlain() {
        Project hall = Halls.of("""
                venue: {rooms: {hall: {}}, places: {stage: {room: hall}, desk: {room: hall}}}
                equipment:
                  desk: {model: desk-digital-32-stage-a, at: desk}
                  box: {model: stagebox-16x8-stage-a, at: stage}
                cables:
                  C001: {type: cat6-screened, from: desk.link, to: box.link}
                """);
        Study study = Study.of(hall, Halls.LIBRARY);
        Sheet sheet = new Sheet(
                "Input list",
                List.of(
                        new Sheet.Row(1, List.of("Ch", "Source", "Mic", "Socket", "Position")),
                        new Sheet.Row(2, List.of("3", "Lead vocal", "mic-dynamic-vocal", "Box 2", "stage")),
                        new Sheet.Row(3, List.of("4", "Piano", "mic-condenser-small", "5", "stage")),
                        new Sheet.Row(4, List.of("5", "Late", "mic-condenser-small", "5", "stage"))));
        FoundTable found = FoundTable.find(study, List.of(sheet), new FoundTable.Wish("", null))
                .orElseThrow();
        assertThat(found.kind()).isEqualTo(ListKind.INPUTS);
        SheetImport taken = SheetImport.of(study, found);
        Project after = Change.apply(hall, taken.changes());
        assertThat(after.equipment().get("lead-vocal").model()).isEqualTo("mic-dynamic-vocal");
        assertThat(after.equipment().get("lead-vocal").label()).isEqualTo("Lead vocal");
        assertThat(after.cables().values())
                .extracting(Cable::to)
                .extracting(String::valueOf)
                .contains("box.in-2", "box.in-5");
        assertThat(after.patch().get("desk"))
                .extracting(entry -> entry.join().text())
                .containsExactly("link:2 -> ch-3", "link:5 -> ch-4");
        assertThat(after.feeds().get("lead-vocal").from())
                .extracting(String::valueOf)
                .containsExactly("lead-vocal.pickup");
        assertThat(after.feeds().get("lead-vocal").to()).isEmpty();
        assertThat(taken.rows().get(2).notes()).anyMatch(note -> note.contains("plugged into box.in-5 already"));
        Study again = Study.of(after, Halls.LIBRARY);
        SheetImport twice = SheetImport.of(
                again,
                FoundTable.find(again, List.of(sheet), new FoundTable.Wish("", null))
                        .orElseThrow());
        assertThat(twice.changes()).as("taken a second time it changes nothing").isEmpty();
    }
}
