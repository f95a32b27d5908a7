package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.AcceptedPlan;
import housewright.model.LogEntry;
import housewright.model.Pin;
import housewright.model.Project;
import housewright.model.Remarks;
import housewright.model.SiteState;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The accepted plan, the pins and the log in the project file. */
class PlanInFileTest {
    private static final String TEXT = Files.resource("example.yaml");
    private static final Project PROJECT = project(TEXT);

    private static Project project(String text) {
        return ((ReadResult.Loaded) read(text)).project();
    }

    private static ReadResult read(String text) {
        return ProjectReader.read("hall.yaml", text.getBytes(java.nio.charset.StandardCharsets.UTF_8), new NoLibrary());
    }

    @Test
    void theyAreReadAsTheyAreWritten() {
        assertThat(PROJECT.plan()).isNotNull().satisfies(plan -> {
            assertThat(plan.times().get("mount-desk").stretches()).hasSize(2);
            assertThat(plan.times().get("mount-desk").hires()).containsExactly("lift");
            assertThat(plan.pins().get("move-media").from()).isEqualTo("2027-02-16T19:00:00");
        });
        assertThat(PROJECT.log().get("pull-C001").remarks().by()).isEqualTo("lead");
        assertThat(project(ProjectWriter.yaml(PROJECT))).isEqualTo(PROJECT);
        assertThat(project(ProjectWriter.json(PROJECT))).isEqualTo(PROJECT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10:10, people: [visitor]|10:10, people: [visiter]|plan.times.pull-C001.people|visitor",
                "hires: [lift]}|hires: [lyft]}|plan.times.mount-desk.hires|lift",
                "move-media: {from|mov-media: {from|plan.pins.mov-media|move-media",
                "  pull-C001: {state|  pul-C001: {state|log.pul-C001|pull-C001",
                "  pull-C001: {state|  mount-dsek: {state|log.mount-dsek|mount-desk",
                "o1: {state: late|o2: {state: late|log.o2|",
                "state: done|state: finished|log.pull-C001.state|done",
                "state: late, until: 2027-02-17 12:00, why|state: late, why|log.o1|until",
                "to: 2027-02-15 10:30, people: [visitor], by|to: 2027-02-15 08:30, people: [visitor], by|log.pull-C001|after the beginning",
            })
    void whatIsWrongIsSaidWithItsPlaceAndWhatWasExpected(
            String right, String wrong, String path, @org.jspecify.annotations.Nullable String says) {
        assertThat(TEXT).contains(right);

        ReadResult result = read(TEXT.replace(right, wrong));

        assertThat(result)
                .isInstanceOfSatisfying(
                        ReadResult.Refused.class,
                        refused -> assertThat(refused.errors()).anySatisfy(error -> {
                            assertThat(error.path()).startsWith(path);
                            assertThat(error.text()).contains(says == null ? "log" : says);
                        }));
    }

    @Test
    void aTaskThatTheChangeNoLongerImpliesMayStandInThePlanButNotInTheLog() {
        assertThat(read(TEXT.replace("    pull-C001:  {from", "    pull-C999:  {from")))
                .isInstanceOf(ReadResult.Loaded.class);
        assertThat(read(TEXT.replace("  pull-C001: {state", "  pull-C999: {state")))
                .isInstanceOf(ReadResult.Refused.class);
    }

    @Test
    void aTickAndAPinAreChangesThatLeaveTheRestOfTheTextAsItWas() {
        LogEntry done = new LogEntry(
                "mount-desk",
                SiteState.DONE,
                LocalDateTime.parse("2027-02-15T10:45"),
                LocalDateTime.parse("2027-02-15T14:05"),
                List.of("visitor"),
                null,
                null,
                null,
                Remarks.NONE);
        Pin pin = new Pin("pull-C001", null, List.of("lead"), Remarks.NONE);
        List<Change> changes = List.of(
                new Change.Put(Section.LOG, "mount-desk", done), new Change.Put(Section.PINS, "pull-C001", pin));
        Project after = Change.apply(PROJECT, ChangeText.read(ChangeText.write(changes)));

        String edited = ProjectText.edit(TEXT, "hall.yaml", PROJECT, after);

        assertThat(project(edited)).isEqualTo(after);
        List<String> kept = new java.util.ArrayList<>(TEXT.lines().toList());
        kept.removeAll(edited.lines().toList());
        assertThat(kept).singleElement().asString().contains("mount-desk: {state: begun");
        assertThat(changes).flatExtracting(Change::subjects).containsExactly("log.mount-desk", "plan.pins.pull-C001");
        assertThat(Change.apply(after, Change.between(after, PROJECT))).isEqualTo(PROJECT);
    }

    @Test
    void anAcceptedPlanLeavesThePinsAlone() {
        AcceptedPlan plan = new AcceptedPlan(LocalDateTime.parse("2027-02-12T08:00"), 7, Map.of(), Map.of());
        List<Change> changes = List.of(new Change.Accept(plan));

        Project after = Change.apply(PROJECT, ChangeText.read(ChangeText.write(changes)));

        assertThat(after.plan()).isNotNull().satisfies(held -> {
            assertThat(held.times()).isEmpty();
            assertThat(held.pins()).containsOnlyKeys("move-media");
        });
        assertThat(Change.between(PROJECT, after)).isEqualTo(changes);
        assertThat(Change.apply(after, Change.between(after, PROJECT))).isEqualTo(PROJECT);
        String edited = ProjectText.edit(TEXT, "hall.yaml", PROJECT, after);
        assertThat(project(edited)).isEqualTo(after);
        assertThat(edited).contains("# what happened on site").contains("# the plan that holds");
    }

    @Test
    void withoutPlanAndPinsTheSectionGoes() {
        Project after = Change.apply(
                PROJECT, List.of(new Change.Accept(AcceptedPlan.NONE), new Change.Drop(Section.PINS, "move-media")));

        assertThat(after.plan()).isNull();
        assertThat(project(ProjectText.edit(TEXT, "hall.yaml", PROJECT, after))).isEqualTo(after);
    }

    @Test
    void aRenamedCableTakesItsTimesAndItsTickWithIt() {
        Project renamed = Mentions.renamed(PROJECT, Section.CABLES, "C001", "C100");

        assertThat(renamed.plan().times()).containsKey("pull-C100").doesNotContainKey("pull-C001");
        assertThat(renamed.log()).containsKey("pull-C100").doesNotContainKey("pull-C001");
        Project fewer = Mentions.without(PROJECT, Section.CABLES, List.of("C001"));
        assertThat(fewer.plan().times()).containsOnlyKeys("mount-desk");
        assertThat(fewer.log()).doesNotContainKey("pull-C001");
    }

    @Test
    void renamedTasksOrdersAndPeopleAreFollowed() {
        Project renamed = Mentions.renamed(PROJECT, Section.TASKS, "move-media", "copy-media");
        renamed = Mentions.renamed(renamed, Section.ORDERS, "o1", "order-1");
        renamed = Mentions.renamed(renamed, Section.PEOPLE, "visitor", "technician");

        assertThat(renamed.plan().pins()).containsOnlyKeys("copy-media");
        assertThat(renamed.log()).containsOnlyKeys("pull-C001", "mount-desk", "copy-media", "order-1");
        assertThat(renamed.plan().times().get("pull-C001").people()).containsExactly("technician");
        assertThat(ProjectReader.check("edit", renamed, new NoLibrary())).isEmpty();
        Project without = Mentions.without(PROJECT, Section.TASKS, List.of("move-media"));
        assertThat(without.log()).doesNotContainKey("move-media");
        assertThat(ProjectReader.check("edit", without, new NoLibrary())).isEmpty();
    }
}
