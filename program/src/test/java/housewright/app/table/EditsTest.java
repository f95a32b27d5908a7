package housewright.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.model.Project;
import housewright.model.change.Change;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class EditsTest {
    /** Rows of each table that the quick tests try; the slow ones try all. */
    private static final int SOME = 15;

    private static final Project DEMO = Halls.demo();

    private static final Project LIGHTS = Halls.of("""
        venue:
          places: {bar: {}}
        models:
          lamp: {kind: fixture, light: {modes: {six: 6}}, ports: {dmx-in: {in: dmx, connector: XLR-5M}}}
        equipment:
          lamp-1: {model: lamp, at: bar, label: Lamp 1, serial: A7, ip: 10.0.0.9, light: {universe: 1, address: 500, mode: six}}
          lamp-2: {model: lamp, at: bar, light: {universe: 2, address: 1, mode: six}}
        """);

    private static CellError only(Edit edit) {
        assertThat(edit).isInstanceOf(Edit.Wrong.class);
        List<CellError> errors = ((Edit.Wrong) edit).errors();
        assertThat(errors).hasSize(1);
        return errors.getFirst();
    }

    @Test
    void aCellIsSetInSeveralRowsAtOnce() {
        Project after =
                Halls.made(DEMO, Halls.edits(DEMO, Table.CABLES).set(List.of("C101", "C102"), "length", "12 m"));
        assertThat(after.cables().get("C101").length().metres()).isEqualTo(12);
        assertThat(after.cables().get("C102").length().metres()).isEqualTo(12);
        assertThat(Change.between(DEMO, after)).hasSize(2);
    }

    @Test
    void aCellThatDoesNotReadSaysWhatItCouldBe() {
        CellError error = only(Halls.edits(DEMO, Table.CABLES).set(List.of("C101"), "length", "12"));
        assertThat(error.column()).isEqualTo("length");
        assertThat(error.expected()).contains("m");
    }

    @Test
    void aWrongNameIsSaidInItsCellWithTheNearest() {
        Edits edits = Halls.edits(DEMO, Table.CABLES);
        Map<String, String> cells = Map.of("to", "floor-lft.front-1");
        Edit.Made made = (Edit.Made) edits.cells(List.of("C101"), cells);
        List<CellError> errors = edits.errors(
                made,
                ProjectReader.check("edit", Change.apply(DEMO, made.changes()), Halls.LIBRARY),
                Map.of("C101", cells));
        assertThat(errors).singleElement().satisfies(error -> {
            assertThat(error.row()).isEqualTo("C101");
            assertThat(error.column()).isEqualTo("to");
            assertThat(error.nearest()).isEqualTo("floor-left.front-1");
        });
    }

    @Test
    void aWrongPortOfTheRightThingIsMendedAtThePort() {
        Edits edits = Halls.edits(DEMO, Table.CABLES);
        Map<String, String> cells = Map.of("to", "floor-left.frnt-1");
        Edit.Made made = (Edit.Made) edits.cells(List.of("C101"), cells);
        assertThat(edits.errors(
                        made,
                        ProjectReader.check("edit", Change.apply(DEMO, made.changes()), Halls.LIBRARY),
                        Map.of("C101", cells)))
                .extracting(CellError::nearest)
                .containsExactly("floor-left.front-1");
    }

    @Test
    void aNewThingIsNamedAfterOthersOfItsModelElseAfterItsKind() {
        Edits edits = Halls.edits(DEMO, Table.EQUIPMENT);
        assertThat(edits.proposedId(Map.of("model", "mic-dynamic-vocal"))).isEqualTo("vocal-3");
        Project empty = Halls.of("");
        assertThat(Halls.edits(empty, Table.EQUIPMENT).proposedId(Map.of("model", "camera-ptz-20x")))
                .isEqualTo("camera");
        Project one = Halls.made(empty, Halls.edits(empty, Table.EQUIPMENT).add("", Map.of("model", "camera-ptz-20x")));
        assertThat(Halls.edits(one, Table.EQUIPMENT).proposedId(Map.of("model", "camera-ptz-20x")))
                .isEqualTo("camera-2");
        assertThat(Halls.edits(DEMO, Table.CABLES).proposedId(Map.of())).matches("C\\d{3}");
    }

    @Test
    void anIdThatIsTakenOrNoneIsRefusedWithOneThatWouldDo() {
        Edits edits = Halls.edits(DEMO, Table.PLACES);
        assertThat(only(edits.add("desk", Map.of())).nearest()).isEqualTo("desk-2");
        assertThat(only(edits.add("Stage left!", Map.of())).nearest()).isEqualTo("stage-left");
    }

    @Test
    void copiesCountUpWhatAPersonWouldCountUp() {
        Project after = Halls.made(LIGHTS, Halls.edits(LIGHTS, Table.EQUIPMENT).duplicate(List.of("lamp-1"), 3));
        assertThat(after.equipment().keySet()).containsExactly("lamp-1", "lamp-3", "lamp-4", "lamp-5", "lamp-2");
        var first = after.equipment().get("lamp-3");
        assertThat(first.label()).isEqualTo("Lamp 2");
        assertThat(first.serial()).isNull();
        assertThat(first.ip()).isEqualTo("10.0.0.10");
        assertThat(first.light().address()).isEqualTo(506);
        // 512 has no room for six more; universe 2 begins with lamp-2 on channels 1 to 6
        var second = after.equipment().get("lamp-4");
        assertThat(second.light().universe()).isEqualTo(2);
        assertThat(second.light().address()).isEqualTo(7);
        assertThat(after.equipment().get("lamp-5").light().address()).isEqualTo(13);
    }

    @Test
    void aCopiedCableGoesToTheNextFreePorts() {
        Project hall = Halls.of("""
            models:
              source: {kind: other, ports: {"out-{1..4}": {out: analog-audio, connector: XLR-3M}}}
              box: {kind: stage-box, ports: {"in-{1..4}": {in: analog-audio, connector: XLR-3F}}}
            equipment:
              a: {model: source}
              b: {model: box}
            cables:
              C009: {type: mic-cable, from: a.out-1, to: b.in-1}
              C010: {type: mic-cable, from: a.out-2, to: b.in-3}
            """);
        Project after = Halls.made(hall, Halls.edits(hall, Table.CABLES).duplicate(List.of("C009"), 2));
        assertThat(after.cables().keySet()).containsExactly("C009", "C011", "C012", "C010");
        assertThat(after.cables().get("C011").from().text()).isEqualTo("a.out-3");
        assertThat(after.cables().get("C011").to().text()).isEqualTo("b.in-2");
        assertThat(after.cables().get("C012").from().text()).isEqualTo("a.out-4");
        assertThat(after.cables().get("C012").to().text()).isEqualTo("b.in-4");
    }

    @ParameterizedTest
    @EnumSource
    void copiesOfTheDemoHaveIdsOfTheirOwnAndRead(Table table) {
        for (String id : List.copyOf(Rows.of(DEMO, table).keySet())) {
            Edit edit = Halls.edits(DEMO, table).duplicate(List.of(id), 2);
            Project after = Halls.made(DEMO, edit);
            Edit.Made made = (Edit.Made) edit;
            assertThat(made.rows())
                    .doesNotHaveDuplicates()
                    .doesNotContainAnyElementsOf(Rows.of(DEMO, table).keySet());
            if (made.rows().size() < 2) {
                assertThat(made.notes()).as("why " + id + " was not copied").isNotEmpty();
            }
            assertThat(Rows.of(after, table))
                    .hasSize(Rows.of(DEMO, table).size() + made.rows().size());
        }
    }

    private static List<String> all(Table table) {
        return List.copyOf(Rows.of(DEMO, table).keySet());
    }

    /** Some of the rows, always the same. */
    private static List<String> some(Table table) {
        List<String> all = new ArrayList<>(all(table));
        Collections.shuffle(all, new Random(20261130));
        return all.subList(0, Math.min(SOME, all.size()));
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "PATCH")
    @Tag("slow")
    void anyRowRenamedAndNamedBackIsTheSameProject(Table table) {
        renamedAndNamedBack(table, all(table));
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "PATCH")
    void renamedAndNamedBackItIsTheSameProject(Table table) {
        renamedAndNamedBack(table, some(table));
    }

    private static void renamedAndNamedBack(Table table, List<String> ids) {
        String ranges = String.join(" ", ranges());
        for (String id : ids) {
            if (ranges.contains(" " + id + " ")) {
                continue; // named in a range with others, it is written out on its own from then on
            }
            Project renamed = Halls.made(DEMO, Halls.edits(DEMO, table).rename(id, "quite-another-9"));
            assertThat(Rows.of(renamed, table)).containsKey("quite-another-9").doesNotContainKey(id);
            assertThat(Halls.made(renamed, Halls.edits(renamed, table).rename("quite-another-9", id)))
                    .as(id)
                    .isEqualTo(DEMO);
        }
    }

    /** Every thing that the demo names by a range. */
    private static List<String> ranges() {
        List<String> named = new ArrayList<>(List.of(""));
        java.util.regex.Matcher range = java.util.regex.Pattern.compile("([A-Za-z0-9-]+\\{[^{}\\s]*}[A-Za-z0-9-]*)\\.")
                .matcher(housewright.file.ProjectWriter.yaml(DEMO));
        while (range.find()) {
            named.addAll(new housewright.model.NamePattern(range.group(1)).names());
        }
        named.add("");
        return named;
    }

    @Test
    void whatOthersNameIsNotTakenAwayByItself() {
        Edit edit = Halls.edits(DEMO, Table.EQUIPMENT).delete(List.of("stage-box"), false);
        assertThat(edit).isInstanceOf(Edit.Held.class);
        assertThat(((Edit.Held) edit).mentions())
                .extracting(mention -> mention.subject())
                .contains("cables.M1", "cables.C221");
    }

    @ParameterizedTest
    @EnumSource
    @Tag("slow")
    void anyRowTakenAwayEverywhereLeavesAProjectThatReads(Table table) {
        takenAway(table, all(table));
    }

    @ParameterizedTest
    @EnumSource
    void whatIsTakenAwayEverywhereLeavesAProjectThatReads(Table table) {
        takenAway(table, some(table));
    }

    private static void takenAway(Table table, List<String> ids) {
        for (String id : ids) {
            Project after = Halls.made(DEMO, Halls.edits(DEMO, table).delete(List.of(id), true));
            assertThat(Rows.of(after, table)).doesNotContainKey(id);
        }
    }

    @Test
    void aCableKeepsItsOtherEndWhenAThingGoes() {
        Project after = Halls.made(DEMO, Halls.edits(DEMO, Table.EQUIPMENT).delete(List.of("lectern-mic"), true));
        assertThat(after.cables().get("C101").from().text()).isEqualTo("unknown");
        assertThat(after.cables().get("C101").to().text()).isEqualTo("floor-left.front-1");
        Project both =
                Halls.made(DEMO, Halls.edits(DEMO, Table.EQUIPMENT).delete(List.of("lectern-mic", "floor-left"), true));
        assertThat(both.cables()).doesNotContainKey("C101");
    }

    @Test
    void rowsAreMoved() {
        Project after = Halls.made(DEMO, Halls.edits(DEMO, Table.CABLES).move(List.of("C103"), "C101"));
        assertThat(List.copyOf(after.cables().keySet()).subList(0, 3)).containsExactly("C103", "C101", "C102");
    }

    @Test
    void aPatchEntryIsARow() {
        String id = List.copyOf(Rows.of(DEMO, Table.PATCH).keySet()).getFirst();
        Project after = Halls.made(DEMO, Halls.edits(DEMO, Table.PATCH).set(List.of(id), "gain", "-6 dB"));
        assertThat(EntityRow.cell(after, Table.PATCH, id, "gain")).isEqualTo("-6 dB");
        Project less = Halls.made(DEMO, Halls.edits(DEMO, Table.PATCH).delete(List.of(id), false));
        assertThat(Rows.of(less, Table.PATCH)).doesNotContainKey(id);
        assertThat(only(Halls.edits(DEMO, Table.PATCH).add("", Map.of("device", "desk", "from", "ch-1")))
                        .column())
                .isEqualTo("to");
    }

    /** Random edits of cells, each set back at once. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aCellSetBackIsTheSameProject(long seed) {
        Random random = new Random(seed);
        Table table = Table.values()[random.nextInt(Table.values().length)];
        List<String> ids = new ArrayList<>(Rows.of(DEMO, table).keySet());
        if (ids.isEmpty()) {
            return;
        }
        String id = ids.get(random.nextInt(ids.size()));
        List<Tables.Column> columns = Tables.columns(table).stream()
                .filter(column -> !column.derived())
                .toList();
        String column = columns.get(random.nextInt(columns.size())).key();
        String was = EntityRow.cell(DEMO, table, id, column);
        String other = EntityRow.cell(DEMO, table, ids.get(random.nextInt(ids.size())), column);
        if (!(Halls.edits(DEMO, table).set(List.of(id), column, other) instanceof Edit.Made made)) {
            return;
        }
        Project after = Change.apply(DEMO, made.changes());
        if (made.rows().equals(List.of(id))) {
            Edit back = Halls.edits(after, table).set(List.of(id), column, was);
            assertThat(Change.apply(after, ((Edit.Made) back).changes()))
                    .as(table + " " + id + " " + column)
                    .isEqualTo(DEMO);
        }
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 150);
    }

    private static final class EntityRow {
        static String cell(Project project, Table table, String id, String column) {
            Record row = Objects.requireNonNull(Rows.of(project, table).get(id));
            return housewright.file.EntityCells.of(row).getOrDefault(column, "");
        }
    }
}
