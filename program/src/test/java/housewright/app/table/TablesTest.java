package housewright.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.TypeSearch;
import housewright.app.table.Choices.Choice;
import housewright.app.table.Tables.Row;
import housewright.app.table.Tables.View;
import housewright.app.table.Tables.Wanted;
import housewright.model.Project;
import housewright.study.Study;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TablesTest {
    private static final Project DEMO = Halls.demo();
    private static final Study STUDY = Halls.study(DEMO);
    private static final TypeSearch TYPES = new TypeSearch(Halls.LIBRARY);

    private static Wanted wanted(String words, String sort) {
        return new Wanted(words, sort, false, 0, 1000);
    }

    @ParameterizedTest
    @EnumSource
    void everyTableShowsEveryRowAndEveryCellHasAColumn(Table table) {
        View view = Tables.of(STUDY, table).view(wanted("", ""));
        assertThat(view.total()).isEqualTo(Rows.of(DEMO, table).size());
        List<String> columns =
                Tables.columns(table).stream().map(Tables.Column::key).toList();
        assertThat(columns).doesNotHaveDuplicates().containsAll(table.first());
        view.rows().forEach(row -> assertThat(columns).containsAll(row.cells().keySet()));
    }

    @Test
    void rowsAreFoundByWordsAndSortedByNumbers() {
        View view = Tables.of(STUDY, Table.CABLES).view(wanted("floor-left front", "id"));
        assertThat(view.matching()).isGreaterThan(1).isLessThan(view.total());
        assertThat(view.rows()).allMatch(row -> row.cells().toString().contains("floor-left"));
        assertThat(view.rows()).extracting(Row::id).isSortedAccordingTo(Numbering::compare);
    }

    @Test
    void aWindowOfRowsIsTheSameAsThatPartOfAll() {
        Tables tables = Tables.of(STUDY, Table.EQUIPMENT);
        List<Row> all = tables.view(wanted("", "")).rows();
        assertThat(tables.view(new Wanted("", "", false, 10, 5)).rows()).isEqualTo(all.subList(10, 15));
        assertThat(tables.findIndex(all.get(12).id(), wanted("", ""))).contains(12);
    }

    @Test
    void lengthsAndStatesAreWorkedOut() {
        Row cable = Tables.of(STUDY, Table.CABLES).find("C131").orElseThrow();
        assertThat(cable.cell("length")).isEmpty();
        assertThat(cable.cell("runs")).endsWith(" m along its way");
        assertThat(Tables.of(STUDY, Table.FEEDS).view(wanted("", "")).rows())
                .allMatch(row -> !row.cell("state").isEmpty());
    }

    @Test
    void numbersCountBySize() {
        assertThat(Numbering.compare("in-2", "in-10")).isNegative();
        assertThat(Numbering.compare("C09", "C9")).isNegative();
        assertThat(Numbering.up("in-09", 1)).isEqualTo("in-10");
        assertThat(Numbering.up("desk", 1)).isNull();
        assertThat(Numbering.inStyle(List.of("M1", "K-07", "K-12"), "C001")).isEqualTo("K-13");
        assertThat(Numbering.inStyle(List.of(), "C001")).isEqualTo("C001");
    }

    private static List<Choice> choices(Table table, String row, String column, String typed) {
        return Choices.of(STUDY, TYPES, table).find(row, column, typed, 20);
    }

    /** Whoever types a kind of thing is offered such things first, not what only mentions it. */
    @Test
    void aFewLettersOfAKindOfferThingsOfThatKindFirst() {
        assertThat(choices(Table.EQUIPMENT, "", "model", "micro").getFirst().says())
                .contains("microphone")
                .doesNotContain("stand");
        assertThat(choices(Table.EQUIPMENT, "", "model", "micro"))
                .extracting(Choice::word)
                .containsSubsequence("mic-dynamic-vocal", "stand-microphone-boom", "floor-box-12");
        assertThat(choices(Table.EQUIPMENT, "", "model", "stand-micro"))
                .extracting(Choice::word)
                .containsExactly("stand-microphone-boom", "stand-microphone-short");
    }

    @Test
    void whatMayStandInACellIsOffered() {
        assertThat(choices(Table.EQUIPMENT, "", "model", "camera"))
                .extracting(Choice::word)
                .anyMatch(id -> id.startsWith("camera"));
        assertThat(choices(Table.EQUIPMENT, "", "model", "32 desk"))
                .extracting(Choice::word)
                .contains("desk-digital-32-stage-a");
        assertThat(choices(Table.EQUIPMENT, "", "life", ""))
                .extracting(Choice::word)
                .contains("keep", "new", "strike");
        assertThat(choices(Table.CABLES, "C101", "to", "floor-l"))
                .extracting(Choice::text)
                .first()
                .isEqualTo("floor-left.");
        assertThat(choices(Table.CABLES, "C101", "to", "floor-left.front"))
                .extracting(Choice::text)
                .contains("floor-left.front-4")
                .allMatch(text -> text.contains("front-"));
        assertThat(choices(Table.CABLES, "C131", "via", "p-choir, p-lo"))
                .extracting(Choice::text)
                .contains("p-choir, p-loft");
        assertThat(choices(Table.PATCH, "desk", "to", "ch-1"))
                .extracting(Choice::text)
                .contains("ch-1");
        assertThat(choices(Table.QUESTIONS, "", "about", "equipment.desk"))
                .extracting(Choice::text)
                .contains("equipment.desk");
        assertThat(choices(Table.CABLES, "C101", "runs", "1")).isEmpty();
    }

    /** Each row reads with what is offered first for a cell that names something. */
    @ParameterizedTest
    @EnumSource
    void whatIsOfferedForANameReads(Table table) {
        String id = Rows.of(DEMO, table).keySet().stream().findFirst().orElse("");
        for (Tables.Column column : Tables.columns(table)) {
            if (column.names() == null
                    || column.names().isWithinAThing()
                    || column.key().startsWith("was.")
                    || column.key().equals("device")
                    || column.key().equals("model")) {
                continue;
            }
            List<Choice> offered = choices(table, id, column.key(), "");
            if (!offered.isEmpty() && !id.isEmpty()) {
                Halls.made(
                        DEMO,
                        Halls.edits(DEMO, table)
                                .set(
                                        List.of(id),
                                        column.key(),
                                        offered.getFirst().text()));
            }
        }
    }
}
