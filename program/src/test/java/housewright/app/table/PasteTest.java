package housewright.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.table.ColumnGuess.Guess;
import housewright.app.table.Paste.PastedRow;
import housewright.model.Project;
import housewright.sheet.Delimited;
import housewright.study.Study;
import java.util.List;
import org.junit.jupiter.api.Test;

class PasteTest {
    private static final Project DEMO = Halls.demo();
    private static final Study STUDY = Halls.study(DEMO);

    /** Whoever pasted it knows better than the guess, either way. */
    @Test
    void theFirstRowIsHeadingsWhereSomebodySaysSo() {
        String text = "Number\tLength\nC801\t4 m\n";
        assertThat(ColumnGuess.of(STUDY, Table.CABLES, text, null).rows()).hasSize(1);
        assertThat(ColumnGuess.of(STUDY, Table.CABLES, text, false).rows()).hasSize(2);
        String own = "ours\thow far\nC801\t4 m\n";
        assertThat(ColumnGuess.of(STUDY, Table.CABLES, own, null).head()).isEmpty();
        Guess said = ColumnGuess.of(STUDY, Table.CABLES, own, true);
        assertThat(said.head()).containsExactly("ours", "how far");
        assertThat(said.columns()).containsExactly("id", "length");
        assertThat(said.rows()).containsExactly(List.of("C801", "4 m"));
    }

    /** What list it is and of when stands over many a list; one line of data does not. */
    @Test
    void aTitleOverTheHeadingsIsPassedOver() {
        String list = "Where?\tWhat\tRemarks\nstage\tDI box\told\nbooth\tmixer\t\n";
        Guess plain = ColumnGuess.of(STUDY, Table.EQUIPMENT, list);
        assertThat(plain.columns()).containsExactly("at", "model", "note");
        String titled = "Inventory as of 2025\t\t\n\t\t\n" + list;
        assertThat(ColumnGuess.of(STUDY, Table.EQUIPMENT, titled)).isEqualTo(plain);
        assertThat(ColumnGuess.of(STUDY, Table.EQUIPMENT, titled, true)).isEqualTo(plain);
        assertThat(ColumnGuess.of(STUDY, Table.EQUIPMENT, titled, false).rows().getFirst())
                .contains("Inventory as of 2025");
        String unheaded = "X7\t\t\nX8\tpiano\tstage\nX9\tpiano\tstage\n";
        assertThat(ColumnGuess.of(STUDY, Table.EQUIPMENT, unheaded).rows()).hasSize(3);
    }

    @Test
    void aListOfCablesIsReadByTheWordsOfTheTrade() {
        String text = """
                Cable no.\tSource\tDestination\tLength (m)\tStatus\tComments
                X1\tlectern-mic.out\tfloor-left.front-4\t12.5\tNew\t"says ""left""\"
                X2\tnobody.out\tfloor-left.front-3\t8\tnew\t
                X3\ttable-mic.out\tfloor-left.front-2\ta lot\tnew\t
                """;
        Guess guess = ColumnGuess.of(STUDY, Table.CABLES, text);
        assertThat(guess.columns()).containsExactly("id", "from", "to", "length", "life", "note");
        Paste.Pasted pasted = Paste.read(STUDY, Table.CABLES, guess);
        assertThat(pasted.rows()).extracting(PastedRow::accepted).containsExactly(true, false, false);
        assertThat(pasted.rows().get(1).errors().getFirst().column()).isEqualTo("from");
        assertThat(pasted.rows().get(2).errors().getFirst().column()).isEqualTo("length");
        Project after = Halls.made(DEMO, pasted.edit());
        assertThat(after.cables().get("X1").length().metres()).isEqualTo(12.5);
        assertThat(after.cables().get("X1").remarks().note()).isEqualTo("says \"left\"");
        assertThat(after.cables()).doesNotContainKeys("X2", "X3");
    }

    @Test
    void withoutAHeadTheCellsSayWhatTheyAre() {
        String text = "spot-1,Camera,desk,192.168.10.77\nspot-2,camera-ptz-20x,bar-1-mid,192.168.10.78\n"
                + "spot-3,camera-ptz-20x,rack-rear,192.168.10.79\n";
        Guess guess = ColumnGuess.of(STUDY, Table.EQUIPMENT, text);
        assertThat(guess.head()).isEmpty();
        assertThat(guess.columns()).containsExactly("id", "model", "at", "ip");
        Paste.Pasted pasted = Paste.read(STUDY, Table.EQUIPMENT, guess);
        assertThat(pasted.accepted()).isEqualTo(2); // "Camera" is no model
        assertThat(pasted.rows().getFirst().errors().getFirst().column()).isEqualTo("model");
    }

    /** Heads in another language, and names that are none of ours: what the addresses belong to is not guessed. */
    @Test
    void aThingThatNothingNamesIsRefused() {
        Guess guess = ColumnGuess.of(
                STUDY,
                Table.EQUIPMENT,
                "Gerät vorn\t192.168.10.99\tVLAN\nGerät Mitte\t192.168.10.98\t\nGerät hinten\t192.168.10.97\t\n");
        assertThat(guess.columns()).containsExactly("", "ip", "");
        Paste.Pasted pasted = Paste.read(STUDY, Table.EQUIPMENT, guess);
        assertThat(pasted.accepted()).isZero();
        assertThat(pasted.rows().getFirst().errors().getFirst().found()).contains("which thing it is");
    }

    @Test
    void namesBecomeIdsAndTypesAreKnownByTheirNames() {
        String name = STUDY.types().findModel("camera-ptz-20x").orElseThrow().name();
        Guess guess = ColumnGuess.of(
                STUDY, Table.EQUIPMENT, "Name\tType\tLocation\nCamera Balcony\t" + name + "\tRack rear\n");
        Paste.Pasted pasted = Paste.read(STUDY, Table.EQUIPMENT, guess);
        Project after = Halls.made(DEMO, pasted.edit());
        assertThat(after.equipment().get("camera-balcony").model()).isEqualTo("camera-ptz-20x");
        assertThat(after.equipment().get("camera-balcony").at()).isEqualTo("rack-rear");
        assertThat(after.equipment().get("camera-balcony").label()).isEqualTo("Camera Balcony");
    }

    @Test
    void headsInTheirOwnWordsAreHeads() {
        Guess guess = ColumnGuess.of(
                STUDY,
                Table.EQUIPMENT,
                "Item\tMake & model\tWhere is it\tQty\tComment\nVocal mic 1\tcamera-ptz-20x\track rear\t1\told\n");
        assertThat(guess.columns()).containsExactly("id", "model", "at", "", "note");
        assertThat(guess.rows()).hasSize(1);
    }

    @Test
    void aRowOfWhichNothingIsReadIsRefused() {
        Guess guess =
                ColumnGuess.of(STUDY, Table.EQUIPMENT, "Type\tColour of it\tQty\ncamera-ptz-20x\t\t2\n\t\tmany\n");
        Paste.Pasted pasted = Paste.read(STUDY, Table.EQUIPMENT, guess);
        assertThat(pasted.rows()).extracting(PastedRow::accepted).containsExactly(true, false);
        assertThat(pasted.edit().changes()).hasSize(1);
    }

    @Test
    void rowsOfIdsAreNoHead() {
        Guess guess = ColumnGuess.of(STUDY, Table.PATCH, "desk\tlink:1\tch-1\ndesk\tlink:2\tch-2\n");
        assertThat(guess.head()).isEmpty();
    }

    @Test
    void aRowWhoseIdIsThereChangesIt() {
        Guess guess = ColumnGuess.of(STUDY, Table.CABLES, "id;length\nC101;11 m\nC101;12 m\n");
        Paste.Pasted pasted = Paste.read(STUDY, Table.CABLES, guess);
        assertThat(pasted.rows()).extracting(PastedRow::accepted).containsExactly(true, false);
        Project after = Halls.made(DEMO, pasted.edit());
        assertThat(after.cables().get("C101").length().metres()).isEqualTo(11);
        assertThat(after.cables().get("C101").to())
                .isEqualTo(DEMO.cables().get("C101").to());
    }

    @Test
    void rowsWithoutIdsAreNumberedOn() {
        Guess guess =
                ColumnGuess.of(STUDY, Table.CABLES, "from,to\nlectern-mic.out,desk.mic-9\ntable-mic.out,desk.mic-10\n");
        Paste.Pasted pasted = Paste.read(STUDY, Table.CABLES, guess);
        assertThat(pasted.rows()).allMatch(PastedRow::isNew);
        assertThat(pasted.rows())
                .extracting(PastedRow::id)
                .doesNotHaveDuplicates()
                .allMatch(id -> id.matches("C\\d+"));
    }

    @Test
    void whatIsNoListIsNothingToRead() {
        assertThat(ColumnGuess.of(STUDY, Table.CABLES, "").rows()).isEmpty();
        assertThat(ColumnGuess.of(STUDY, Table.CABLES, "", true).rows()).isEmpty();
        Paste.Pasted pasted = Paste.read(STUDY, Table.CABLES, ColumnGuess.of(STUDY, Table.CABLES, "just some words"));
        assertThat(pasted.edit().rows().size() + pasted.rows().size()).isLessThanOrEqualTo(2);
    }

    @Test
    void cellsAreSplitAsSpreadsheetsWriteThem() {
        assertThat(Delimited.pasted("a\t\"b\nc\"\r\n\r\nd\te\n"))
                .containsExactly(List.of("a", "b c"), List.of("d", "e"));
        assertThat(Delimited.pasted("a,\"b, c\",\"d \"\"e\"\"\"\n")).containsExactly(List.of("a", "b, c", "d \"e\""));
        assertThat(Delimited.pasted("a;b,5\nc;d,6\n")).containsExactly(List.of("a", "b,5"), List.of("c", "d,6"));
    }
}
