package housewright.study;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.LogEntry;
import housewright.model.Project;
import housewright.model.Remarks;
import housewright.model.SiteState;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.plan.Effort;
import housewright.plan.Log;
import housewright.plan.Slot;
import housewright.plan.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Pins, log and accepted plan, laid on the axis of the job: the example of a refit on its day. */
class PlanBasisTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(1);
    private static final LocalDateTime NOW = LocalDateTime.parse("2027-05-08T09:50");

    private static Project project(String from, String to) {
        try {
            String text = Files.readString(Path.of("../examples/on-site.yaml"));
            assertThat(text).contains(from);
            ReadResult result = ProjectReader.read(
                    "on-site.yaml", text.replace(from, to).getBytes(java.nio.charset.StandardCharsets.UTF_8), LIBRARY);
            return ((ReadResult.Loaded) result).project();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static PlanBasis basis(Project project) {
        return Study.of(project, LIBRARY).planBasis(NOW, project.log());
    }

    @Test
    void whatIsDoneBegunAndBlockedIsSo() {
        PlanBasis basis = basis(project("", ""));
        Log log = basis.log();
        int nine = basis.job().minute(LocalDateTime.parse("2027-05-08T09:00"));

        assertThat(log.now()).isEqualTo(nine + 50);
        assertThat(log.done())
                .contains(new Slot("copy-old-desk", List.of(new Window(nine, nine + 35)), List.of("lead")));
        assertThat(log.done()).extracting(Slot::task).containsOnly("print-labels", "copy-old-desk", "receive-desk");
        // ten minutes in all, five of them gone: the example of a labour unit, as work has it
        assertThat(log.begun()).singleElement().satisfies(begun -> {
            assertThat(begun.task()).isEqualTo("strike-old-desk");
            assertThat(begun.start()).isEqualTo(nine + 45);
            assertThat(begun.left())
                    .isEqualTo(basis.job().task("strike-old-desk").length().planned(5) - 5);
        });
        assertThat(log.blocked()).containsExactly(Map.entry("replug-at-hall-later", nine + 120));
        assertThat(basis.assumed()).anyMatch(each -> each.contains("as long as planned"));
    }

    @Test
    void aDayThatTheLogFillsIsTold() {
        String right = "to: 2027-05-08 09:35, people: [lead]";

        assertThat(basis(project(right, right)).assumed()).noneMatch(each -> each.startsWith("By the log"));
        assertThat(basis(project(right, "to: 2027-05-08 19:35, people: [lead]")).assumed())
                .contains(
                        "By the log lead has worked 10 h 35 min on 2027-05-08, and a day is 10 h at most: nothing more is"
                                + " planned for lead that day. Where that is not so, mend the times in the log.");
    }

    @Test
    void whatNobodyKnowsTheEndOfIsNeverPlanned() {
        PlanBasis basis = basis(project("{state: blocked, until: 2027-05-08 11:00, why", "{state: blocked, why"));

        assertThat(basis.log().blocked()).containsEntry("replug-at-hall-later", Log.NEVER);
    }

    @Test
    void pinsHoldPeopleAndStarts() {
        PlanBasis basis = basis(
                project(
                        "pins: {train-desk: {people: [lead],",
                        "pins: {align-hall: {from: 2027-05-08 14:02}, align-foyer: {from: 2027-05-08 09:00}, train-desk: {people: [visitor],"));

        assertThat(basis.job().task("train-desk").crew().pinned()).containsExactly("visitor");
        assertThat(basis.job().task("align-hall").timing().start())
                .isEqualTo(basis.job().minute(LocalDateTime.parse("2027-05-08T14:00")));
        assertThat(basis.job().task("align-foyer").timing().start()).isNull();
        assertThat(basis.assumed())
                .anyMatch(each -> each.contains("align-foyer") && each.contains("is past"))
                .anyMatch(each -> each.contains("align-hall") && each.contains("steps of 5 min"));
    }

    @Test
    void theAcceptedPlanIsThatOfWhichLittleMovesAndWhatIsGoneIsLeftOut() {
        PlanBasis basis = basis(project("    mount-desk: {from", "    mount-gone: {from"));

        assertThat(basis.isAccepted()).isTrue();
        assertThat(basis.accepted().byTask()).doesNotContainKey("mount-gone").containsKey("configure-desk");
        assertThat(basis.assumed()).anyMatch(each -> each.startsWith("1 task of the accepted plan"));
        assertThat(basis.request(Effort.quick(1, 1)).before()).isEqualTo(basis.accepted());
        assertThat(basis.anew(Effort.quick(1, 1)).before()).isNull();
    }

    @Test
    void aLateDeliveryComesWhenTheLogSaysSo() {
        Project project = project("log:\n", "log:\n  desk: {state: late, until: 2027-05-08 11:00}\n");

        assertThat(basis(project).log().late())
                .containsExactly(
                        Map.entry("desk", basis(project).job().minute(LocalDateTime.parse("2027-05-08T11:00"))));
        assertThat(Study.of(project, LIBRARY).findings().due())
                .anySatisfy(finding -> assertThat(finding.message()).contains("comes 2027-05-08"));
    }

    @Test
    void ordersAreWantedOnTheDayOnWhichTheAcceptedPlanBeginsWhatUsesThem() {
        Project project = project(
                "    mount-desk: {from: 2027-05-08 09:35, to: 2027-05-08",
                "    mount-desk: {from: 2027-05-06 09:35, to: 2027-05-06");
        Study study = Study.of(project, LIBRARY);

        assertThat(study.neededByPlan()).containsEntry("desk", LocalDate.parse("2027-05-06"));
        assertThat(study.orders().lines())
                .filteredOn(line -> "desk".equals(line.order()))
                .allMatch(line -> line.planned());
    }

    @Test
    void aTickLeavesWhatRestsOnTheDesignAndTellsWhatRestsOnTheLog() {
        Project project = project("", "");
        Study before = Study.of(project, LIBRARY);
        LogEntry late = new LogEntry(
                "desk",
                SiteState.LATE,
                null,
                null,
                List.of(),
                null,
                null,
                LocalDateTime.parse("2027-05-10T12:00"),
                Remarks.NONE);
        Project ticked = Change.apply(project, List.of(new Change.Put(Section.LOG, "desk", late)));
        Study after = before.after(ticked);

        assertThat(after.work()).isSameAs(before.work());
        assertThat(after.signals()).isSameAs(before.signals());
        assertThat(after.project()).isSameAs(ticked);
        assertThat(after.findings().due()).hasSize(before.findings().due().size() + 1);
        assertThat(after.findings().due())
                .isEqualTo(Study.of(ticked, LIBRARY).findings().due());
        Project changed = Change.apply(ticked, List.of(new Change.Drop(Section.CABLES, "C4")));
        assertThat(after.after(changed).work()).isNotSameAs(before.work());
    }
}
