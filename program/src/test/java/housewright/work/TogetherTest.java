package housewright.work;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.library.BuiltInLibrary;
import housewright.model.LogEntry;
import housewright.model.Project;
import housewright.model.Remarks;
import housewright.model.SiteState;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.study.Study;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which tasks are one round of work. */
class TogetherTest {
    private static final String RACK = """
            equipment:
              one: {model: switch-8-poe, at: rack, unit: 3, life: new}
              two: {model: switch-8-poe, at: rack, unit: 5, life: new}
            """;

    private static List<String> ids(String sections) {
        return WorkTest.work(sections).tasks().stream().map(WorkTask::id).toList();
    }

    @Test
    void likeThingsAtOnePlaceAreOneTaskAndTakeAsLong() {
        Work work = WorkTest.work(RACK);
        WorkTask round = work.find("mount-at-rack").orElseThrow();
        assertThat(round.parts()).hasSize(2);
        assertThat(round.about()).containsExactly("equipment.one", "equipment.two");
        // 8 min a piece and 2 min a rack unit, as practice/1.yaml has it
        assertThat(round.takes().likely()).isEqualTo(20);
        assertThat(ids(RACK.replace("  two: {model: switch-8-poe, at: rack, unit: 5, life: new}\n", "")))
                .contains("mount-one")
                .doesNotContain("mount-at-rack");
    }

    @Test
    void whatTheProjectNamesStaysByItselfAndARoundThatItNamesStaysARound() {
        assertThat(ids(RACK + "tasks: {mount-one: {takes: 1 h}}\n"))
                .contains("mount-one", "mount-two")
                .doesNotContain("mount-at-rack");
        assertThat(ids(RACK.replace("  two: {model: switch-8-poe, at: rack, unit: 5, life: new}\n", "")
                        + "tasks: {mount-at-rack: {takes: 1 h}}\n"))
                .contains("mount-at-rack")
                .doesNotContain("mount-one");
    }

    @Test
    void whatATickOrAPinNamesStaysByItselfAsLongAsItDoesAndAsThoughReadAnew() {
        BuiltInLibrary library = BuiltInLibrary.of(1);
        Project pinned = WorkTest.project(RACK + "people: {ann: {}}\nplan: {pins: {mount-one: {people: [ann]}}}\n");
        Study study = Study.of(pinned, library);
        assertThat(study.work().find("mount-one")).isPresent();
        Project free = Change.apply(pinned, List.of(new Change.Drop(Section.PINS, "mount-one")));
        Study after = study.after(free);
        assertThat(after.work().find("mount-at-rack")).isPresent();
        assertThat(after.signals()).isSameAs(study.signals());
        Study again = after.after(pinned);
        assertThat(again.work().tasks()).isEqualTo(study.work().tasks());
        LogEntry done =
                new LogEntry("mount-one", SiteState.DONE, null, null, List.of(), null, null, null, Remarks.NONE);
        Project ticked = Change.apply(pinned, List.of(new Change.Put(Section.LOG, "mount-one", done)));
        assertThat(again.after(ticked).work()).as("named already").isSameAs(again.work());
    }

    @Test
    void whatComesAfterSomethingOfTheOldHasGoneIsARoundOfItsOwn() {
        String old = """
                equipment:
                  mic: {model: mic-dynamic-vocal, at: desk}
                  old: {model: analog-16, at: rack, unit: 1, life: strike}
                  one: {model: switch-8-poe, at: rack, unit: 8, life: new}
                  two: {model: switch-8-poe, at: rack, unit: 9, life: new}
                  tri: {model: switch-8-poe, at: rack, unit: 1, life: new}
                  for: {model: switch-8-poe, at: rack, unit: 1, life: new}
                cables:
                  C1: {type: mic-cable, from: mic.out, to: old.mic-1, length: 5 m}
                patch: {old: [ch-1 -> main-L]}
                feeds: {voice: {from: mic.pickup, to: old.main-L, carries: audio}}
                """;
        Work work = WorkTest.work(old);
        assertThat(work.find("mount-at-rack").orElseThrow().about()).containsExactly("equipment.one", "equipment.two");
        WorkTask later = work.find("mount-at-rack-later").orElseThrow();
        assertThat(later.about()).containsExactly("equipment.tri", "equipment.for");
        assertThat(later.after()).containsExactly("strike-old");
    }

    @Test
    void aTaskOfAnEndUpHighNeedsTheLiftAndTheOneBelowDoesNot() {
        Work work = WorkTest.work("""
                equipment:
                  switch: {model: switch-8-poe, at: rack, unit: 3}
                  cam:    {model: camera-ptz-net, at: bar}
                cables:
                  C1: {type: cat6, from: switch.port-1, to: cam.net, via: [high], life: new, terminated: site}
                hires: {lift: {kind: aerial-lift, skill: lift-operator}}
                """);
        assertThat(work.find("terminate-C1").orElseThrow().hires()).isEmpty();
        assertThat(work.find("terminate-C1-up").orElseThrow().hires()).containsExactly("lift");
        assertThat(work.find("test-C1").orElseThrow().hires())
                .as("tested from below")
                .isEmpty();
        assertThat(work.find("test-C1").orElseThrow().after()).contains("terminate-C1", "terminate-C1-up");
    }
}
