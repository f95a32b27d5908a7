package housewright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.study.Study;
import housewright.work.WorkTask;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What hangs, and what its points are stated to carry: what nobody knows stays a line to write on. */
class LiftDaysTest {
    private static final String HALL = """
            housewright: 1
            project: {name: Test hall, library: 1}
            venue:
              rooms: {hall: {}}
              places:
                left: {room: hall, at: [1 m, 2 m, 5 m], hang: {limit: 100 kg, stated-by: "A. Rigger, 2026"}}
                right: {room: hall, at: [9 m, 2 m, 5 m], hang: {}}
            equipment:
              old: {model: loudspeaker-powered-10, at: left, life: strike}
              main: {model: loudspeaker-powered-10, at: right, was: {at: left}, life: move}
            people: {lead: {skills: [general]}}
            hires: {lift: {kind: aerial-lift, offered: [2027-05-08, 2027-05-08]}}
            """;

    private static List<String> texts(String about) {
        WorkTask task = Halls.of(HALL).work().tasks().stream()
                .filter(each -> each.overhead() && each.about().contains("equipment." + about))
                .findFirst()
                .orElseThrow();
        Study planned = Halls.of(HALL
                + "plan: {times: {%s: {from: 2027-05-08 09:00, to: 2027-05-08 10:00, people: [lead], hires: [lift]}}}\n"
                        .formatted(task.id()));
        return Papers.find("lift-days").orElseThrow().sheets(planned, Halls.OPTIONS).stream()
                .flatMap(sheet -> sheet.tables().stream())
                .flatMap(table -> table.rows().stream())
                .findFirst()
                .orElseThrow()
                .cells()
                .stream()
                .map(Cell::text)
                .toList();
    }

    @Test
    void whatIsTakenDownHasItsWeight() {
        double weighs = Halls.LIBRARY
                .findModel("loudspeaker-powered-10")
                .orElseThrow()
                .weight()
                .kilograms();
        assertThat(texts("old").get(5)).isEqualTo(Say.number(weighs, 1));
    }

    @Test
    void eachPointHasALimitOrALine() {
        assertThat(texts("old").get(6)).isEqualTo("100 kg, A. Rigger, 2026");
        assertThat(texts("main").get(6)).contains("left 100 kg, A. Rigger, 2026", "right ________");
    }
}
