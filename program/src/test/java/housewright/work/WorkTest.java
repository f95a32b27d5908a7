package housewright.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Project;
import housewright.model.RoomCondition;
import housewright.model.TaskKind;
import housewright.study.Study;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each difference implies, on jobs of a few lines. */
class WorkTest {
    private static final String PLACES = """
            venue:
              rooms: {hall: {floor: 0 m, ceiling: 6 m}, store: {floor: 0 m}}
              places:
                desk: {room: hall, at: [10 m, 3 m, 0.9 m]}
                rack: {room: store, at: [0 m, 0 m, 0.3 m], rack: {units: 12}}
                bar:  {room: hall, at: [5 m, 3 m, 5 m], hang: {limit: 100 kg, stated-by: engineer 2026}}
                wall: {room: hall, at: [5 m, 0 m, 3 m], hang: {limit: 30 kg, stated-by: engineer 2026}}
                nowhere: {room: hall}
              pathways:
                low:  {from: desk, to: rack, kind: trunking, length: 20 m, height: 0.3 m}
                high: {from: rack, to: bar, kind: tray, length: 30 m, height: 5.5 m}
                odd:  {from: desk, to: nowhere}
            """;

    static Project project(String sections) {
        String text = "housewright: 1\nproject: {name: A job}\n" + PLACES + sections;
        return switch (ProjectReader.read("job.yaml", text.getBytes(StandardCharsets.UTF_8), BuiltInLibrary.of(1))) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors() + "\n" + text);
        };
    }

    static Work work(String sections) {
        return Study.of(project(sections), BuiltInLibrary.of(1)).work();
    }

    private static List<String> ids(Work work) {
        return work.tasks().stream().map(WorkTask::id).toList();
    }

    private static WorkTask task(Work work, String id) {
        return work.find(id).orElseThrow(() -> new AssertionError(id + " is not among " + ids(work)));
    }

    @Test
    void whatStaysAsItIsMakesNoWork() {
        Work work = work("""
                equipment:
                  mic:  {model: mic-dynamic-vocal, at: desk}
                  desk: {model: analog-16, at: desk}
                cables:
                  C1: {type: mic-cable, from: mic.out, to: desk.mic-1, length: 5 m}
                feeds:
                  voice: {from: mic.pickup, to: desk.main-L, carries: audio}
                """);
        assertThat(work.tasks()).isEmpty();
        assertThat(work.notes()).isEmpty();
    }

    @Test
    void aRunIsPulledMadeOffTestedAndPluggedIn() {
        Work work = work("""
                equipment:
                  switch: {model: switch-8-poe, at: rack, unit: 3}
                  pc:     {model: computer-media, at: desk}
                cables:
                  C1: {type: cat6, from: switch.port-1, to: pc.net, via: [low], life: new, terminated: site}
                """);
        assertThat(ids(work))
                .containsExactly("print-labels", "pull-C1", "terminate-C1", "test-C1", "connect-switch", "connect-pc");
        assertThat(task(work, "pull-C1").does()).containsExactly(TaskKind.PULL, TaskKind.LABEL);
        assertThat(task(work, "terminate-C1").after()).containsExactly("pull-C1");
        assertThat(task(work, "test-C1").after()).containsExactly("terminate-C1");
        assertThat(task(work, "connect-pc").after()).containsExactly("test-C1");
        assertThat(task(work, "pull-C1").unordered()).containsExactly("C1");
        assertThat(task(work, "terminate-C1").skills()).containsExactly("termination");
        // 15 min set-up, 20 m of trunking at 25 s, 4 m of slack at 20 s, two labels at a minute, as practice/1.yaml has
        // it
        assertThat(task(work, "pull-C1").takes().likely())
                .isEqualTo(Math.round(15 + 20 * 25 / 60.0 + 4 * 20 / 60.0 + 2));
    }

    @Test
    void aLooseLeadIsTriedOnTheBenchAndPluggedInWithItsDevice() {
        Work work = work("""
                equipment:
                  mic:  {model: mic-dynamic-vocal, at: desk}
                  desk: {model: analog-16, at: desk, life: new}
                cables:
                  C1: {type: mic-cable, from: mic.out, to: desk.mic-1, length: 5 m, life: new, terminated: bought}
                """);
        assertThat(ids(work)).containsExactly("print-labels", "leads-desk", "mount-desk", "train-desk");
        assertThat(task(work, "leads-desk").does()).containsExactly(TaskKind.LEADS, TaskKind.LABEL, TaskKind.TEST);
        assertThat(task(work, "mount-desk").does()).contains(TaskKind.MOUNT, TaskKind.CONNECT);
        assertThat(task(work, "mount-desk").about()).containsExactly("equipment.desk", "cables.C1");
    }

    @Test
    void whatIsUpHighNeedsAWayUpTwoPeopleAndAnEmptyFloor() {
        String fixture = "equipment: {lamp: {model: led-par, at: bar, life: new, secondary: fitted}}\n";
        WorkTask with = task(
                work(fixture + "hires: {lift: {kind: aerial-lift, per-day: 100, skill: lift-operator}}\n"),
                "mount-lamp");
        assertThat(with.hires()).containsExactly("lift");
        assertThat(with.skills()).contains("lift-operator");
        assertThat(with.crew()).isEqualTo(2);
        assertThat(with.conditions()).containsExactly(RoomCondition.EMPTY);
        assertThat(with.heightM()).isEqualTo(5.0);
        assertThat(with.rooms()).containsExactly("hall");
        assertThat(with.cautions()).anyMatch(each -> each.startsWith("Work at height, 5 m up"));
        WorkTask without = task(work(fixture), "mount-lamp");
        assertThat(without.hires()).isEmpty();
        assertThat(without.assumed()).anyMatch(each -> each.contains("no lift or tower"));
    }

    @Test
    void anAddressOverheadIsSetUpThereUnlessTheTypeTakesItFromTheFloor() {
        String lamp = """
                equipment:
                  lamp: {model: MODEL, at: bar, secondary: fitted, light: {universe: 1, address: 5, mode: 1ch}, was: {light: {address: 9}}}
                models:
                  by-cable: {kind: fixture, light: {modes: {1ch: 1}, rdm: yes}}
                  by-display: {kind: fixture, light: {modes: {1ch: 1}, rdm: no}}
                hires: {lift: {kind: aerial-lift, per-day: 100, skill: lift-operator}}
                """;
        WorkTask unknown = task(work(lamp.replace("MODEL", "led-profile-26")), "address-lamp");
        assertThat(unknown.hires()).containsExactly("lift");
        assertThat(unknown.assumed()).anyMatch(each -> each.contains("can be set from the floor"));
        WorkTask display = task(work(lamp.replace("MODEL", "by-display")), "address-lamp");
        assertThat(display.hires()).containsExactly("lift");
        assertThat(display.assumed()).noneMatch(each -> each.contains("from the floor"));
        WorkTask cable = task(work(lamp.replace("MODEL", "by-cable")), "address-lamp");
        assertThat(cable.hires()).isEmpty();
        assertThat(cable.crew()).isEqualTo(1);
    }

    @Test
    void betweenReachAndStepsATowerServesBothHands() {
        String camera = "equipment: {cam: {model: camera-ptz-12x, at: wall, life: new, secondary: fitted}}\n";
        assertThat(task(work(camera + "hires: {tower: {kind: access-tower, skill: work-at-height}}\n"), "mount-cam")
                        .hires())
                .containsExactly("tower");
        assertThat(task(work(camera), "mount-cam").conditions()).containsExactly(RoomCondition.EMPTY);
        assertThat(task(work(camera), "mount-cam").cautions()).anyMatch(each -> each.startsWith("From steps"));
    }

    @Test
    void anEndUpThereIsMadeOffByTwoFromTheTowerAndTheOtherByOneFromTheFloor() {
        String run = """
                equipment:
                  cam:  {model: camera-ptz-12x, at: wall, life: new, secondary: fitted}
                  net:  {model: switch-8-poe, at: rack, life: new}
                cables: {C1: {type: cat6, from: net.port-1, to: cam.net, via: [low], terminated: site, life: new}}
                """;
        Work work = work(run + "hires: {tower: {kind: access-tower, skill: work-at-height}}\n");
        WorkTask up = task(work, "terminate-C1-up");
        assertThat(up.hires()).containsExactly("tower");
        assertThat(up.skills()).contains("work-at-height");
        assertThat(up.crew()).isEqualTo(2);
        WorkTask down = task(work, "terminate-C1");
        assertThat(down.hires()).isEmpty();
        assertThat(down.crew()).isEqualTo(1);
        WorkTask steps = task(work(run), "terminate-C1");
        assertThat(steps.hires()).isEmpty();
        assertThat(steps.cautions()).anyMatch(each -> each.contains("with somebody within call"));
    }

    @Test
    void whatADeviceHoldsIsCopiedBeforeAnyOfItsCablesIsPulledOut() {
        Work work = work("""
                equipment:
                  mic: {model: mic-dynamic-vocal, at: desk}
                  di:  {model: mic-dynamic-vocal, at: desk}
                  old: {model: analog-16, at: desk, life: strike}
                  new: {model: desk-digital-16-stage-a, at: desk, life: new}
                cables:
                  O1: {type: mic-cable, from: di.out, to: old.mic-2, length: 5 m, life: strike}
                  C1: {type: mic-cable, from: mic.out, to: new.mic-1, length: 5 m, was: {to: old.mic-1}}
                """);
        assertThat(task(work, "take-out-O1").after()).contains("copy-old");
        List<String> order = ids(work);
        assertThat(order.indexOf("copy-old")).isLessThan(order.indexOf("replug-C1"));
        assertThat(work.downstream(List.of("copy-old"))).contains("replug-C1");
    }

    @Test
    void whatNobodyHasSaidIsTakenForGrantedAloud() {
        Work work = work("""
                equipment:
                  mic:  {model: mic-dynamic-vocal, at: nowhere, life: new}
                  thing: {at: desk, life: new}
                  pc:   {model: computer-media, at: desk}
                cables:
                  C1: {type: mic-cable, from: mic.out, to: unknown, via: [odd], life: new, terminated: site}
                  O1: {type: hdmi, from: pc.hdmi-1, to: unknown, life: strike}
                """);
        assertThat(task(work, "mount-at-hall").assumed())
                .contains(
                        "work from the floor: nobody has said where nowhere is",
                        "a thing of usual size: its type is not known");
        assertThat(task(work, "pull-C1").assumed())
                .anyMatch(each -> each.startsWith("a length of 10 m"))
                .anyMatch(each -> each.contains("odd is open like a tray"))
                .anyMatch(each -> each.contains("height of a pathway"));
        assertThat(task(work, "take-out-O1").assumed()).anyMatch(each -> each.startsWith("a length of 10 m"));
    }

    @Test
    void theOldIsCopiedTakenOutAndMakesRoom() {
        Work work = work("""
                equipment:
                  old:  {model: desk-digital-32-stage-a, at: rack, unit: 3, life: strike}
                  new:  {model: switch-8-poe, at: rack, unit: 3, life: new}
                  else: {model: switch-8-poe, at: rack, unit: 12, life: new}
                  amp:  {model: amplifier-2x800, at: rack, unit: 10}
                cables:
                  O1: {type: mic-cable, from: old.out-1, to: amp.in-1, length: 2 m, life: strike}
                tasks: {mount-new: {}}
                """);
        assertThat(task(work, "copy-old").title()).startsWith("Save the settings");
        assertThat(task(work, "take-out-O1").after()).containsExactly("copy-old");
        assertThat(task(work, "strike-old").after()).containsExactly("take-out-O1");
        assertThat(task(work, "mount-new").after()).containsExactly("strike-old");
        assertThat(task(work, "mount-else").after()).isEmpty();
        assertThat(task(work, "take-out-O1").mayWait()).isFalse();
        assertThat(task(work, "strike-old").mayWait()).isFalse();
    }

    @Test
    void aFixtureIsAddressedOnTheGroundWhereItStillHasToGoUp() {
        Work work = work("""
                equipment:
                  new:  {model: led-par, at: bar, life: new, secondary: fitted, light: {universe: 1, address: 7, mode: 6ch, aim: [1 m, 1 m, 1 m]}}
                  kept: {model: led-par, at: bar, secondary: fitted, light: {universe: 1, address: 1, mode: 6ch},
                         was: {secondary: missing, light: {address: 33}}}
                """);
        assertThat(task(work, "mount-new").after()).containsExactly("address-new");
        assertThat(task(work, "address-new").overhead()).isFalse();
        assertThat(task(work, "address-kept").overhead()).isTrue();
        assertThat(task(work, "focus-new").conditions()).containsExactly(RoomCondition.DARK);
        assertThat(ids(work)).contains("secure-kept").doesNotContain("focus-kept", "secure-new");
    }

    @Test
    void aFeedIsProvenLastAndWhatStopsItIsKnown() {
        Work work = work("""
                equipment:
                  mic:  {model: mic-dynamic-vocal, at: desk}
                  old:  {model: analog-16, at: desk, life: strike}
                  desk: {model: analog-16, at: desk, life: new}
                cables:
                  C1: {type: mic-cable, from: mic.out, to: desk.mic-1, length: 5 m, was: {to: old.mic-1}}
                patch:
                  desk: [ch-1 -> main-L]
                  old:  [ch-1 -> main-L]
                feeds:
                  voice: {from: mic.pickup, to: desk.main-L, carries: audio}
                  old-voice: {from: mic.pickup, to: old.main-L, carries: audio}
                tasks: {prove-voice: {}}
                """);
        WorkTask prove = task(work, "prove-voice");
        assertThat(prove.proves()).containsExactly("voice");
        assertThat(prove.after()).contains("replug-C1", "configure-desk");
        assertThat(task(work, "replug-C1").takesApart()).containsExactly("old-voice");
        assertThat(task(work, "strike-old").takesApart()).containsExactly("old-voice");
        assertThat(task(work, "mount-desk").takesApart()).isEmpty();
    }

    @Test
    void theProjectsOwnWordsStandAboveWhatIsWorkedOut() {
        String sections = """
                equipment:
                  switch: {model: switch-8-poe, at: rack, unit: 3}
                  pc:     {model: computer-media, at: desk}
                people: {ann: {skills: [general, termination, network]}}
                cables:
                  C1: {type: cat6, from: switch.port-1, to: pc.net, via: [low], life: new, terminated: site}
                """;
        Work changed = work(
                sections + "tasks: {pull-C1: {takes: 2 h, who: [ann], after: [print-labels], conditions: [quiet]}}\n");
        assertThat(task(changed, "pull-C1").takes()).isEqualTo(new Minutes(90, 120, 240));
        assertThat(task(changed, "pull-C1").who()).containsExactly("ann");
        assertThat(task(changed, "pull-C1").conditions()).containsExactly(RoomCondition.QUIET);
        assertThat(task(changed, "pull-C1").changed()).isTrue();
        Work skipped = work(sections + "tasks: {terminate-C1: {skip: yes}}\n");
        assertThat(ids(skipped)).doesNotContain("terminate-C1");
        assertThat(task(skipped, "test-C1").after()).containsExactly("pull-C1");
        Work covered = work(sections + "tasks: {by-the-firm: {takes: 1 h, covers: [pull-C1, terminate-C1]}}\n");
        assertThat(ids(covered)).doesNotContain("pull-C1", "terminate-C1").contains("by-the-firm");
        assertThat(task(covered, "test-C1").after()).containsExactly("by-the-firm");
        assertThat(task(covered, "by-the-firm").about()).contains("cables.C1");
    }

    @Test
    void anOwnTaskGoesBetweenMountingAndWhatUsesIt() {
        Work work = work("""
                equipment:
                  box: {model: power-outlet-wall-2, at: desk, life: new}
                  old: {model: analog-16, at: desk, life: strike}
                people: {el: {skills: [mains]}}
                tasks:
                  wiring: {takes: 1 h, who: [el], needs: [box, old], covers: [wire-box]}
                """);
        assertThat(task(work, "wiring").after()).contains("mount-box");
        assertThat(task(work, "strike-old").after()).contains("wiring");
        assertThat(task(work, "wiring").skills()).contains("mains");
        assertThat(task(work, "wiring").cautions()).anyMatch(each -> each.contains("licensed electrician"));
    }

    @Test
    void whatIsWiredInGoesMovesAndIsExchangedByAnElectrician() {
        Work work = work("""
                equipment:
                  strip: {model: power-distributor-32a-6, at: rack, unit: 1, life: move, was: {at: desk}}
                  dim:   {model: dimmer-pack-6, at: rack, unit: 4, was: {model: power-distributor-32a-6}}
                  box:   {model: power-outlet-wall-2, at: desk}
                  mic:   {model: analog-16, at: rack, unit: 8, life: move, was: {at: desk}}
                cables:
                  C1: {type: mains-3x1.5, from: dim.out-1, to: box.mains, life: strike}
                  C2: {type: mains-3x1.5, from: strip.out-1, to: box.mains, was: {to: dim.mains}}
                """);
        for (String id : List.of("move-strip", "mount-dim", "take-out-C1", "replug-C2")) {
            assertThat(task(work, id).skills()).as(id).contains("mains");
            assertThat(task(work, id).cautions()).as(id).anyMatch(each -> each.contains("licensed electrician"));
        }
        WorkTask round = task(work, "wire-at-rack");
        assertThat(round.about()).containsExactlyInAnyOrder("equipment.strip", "equipment.dim");
        assertThat(round.after()).contains("move-strip", "mount-dim");
        assertThat(round.skills()).containsExactly("mains");
        assertThat(task(work, "move-mic").skills()).doesNotContain("mains");
    }

    @Test
    void nobodyWorksHighUpOrWithALiftAloneWhateverTheProjectSays() {
        String sections = """
                equipment: {lamp: {model: led-par, at: bar, life: new, secondary: fitted}}
                hires: {lift: {kind: aerial-lift, skill: lift-operator}, van: {kind: transport}}
                tasks:
                  mount-lamp: {crew: 1}
                  paint: {takes: 1 h, crew: 1, needs: [lift]}
                  fetch: {takes: 1 h, crew: 1, needs: [van]}
                """;
        Work work = work(sections);
        for (String id : List.of("mount-lamp", "paint")) {
            assertThat(task(work, id).crew()).as(id).isEqualTo(2);
            assertThat(task(work, id).assumed()).as(id).anyMatch(each -> each.startsWith("two people"));
        }
        assertThat(task(work, "fetch").crew()).isEqualTo(1);
        assertThat(task(work(sections.replace("crew: 1", "crew: 3")), "paint").crew())
                .isEqualTo(3);
    }

    @Test
    void tasksThatWaitForEachOtherAreToldAndDoNotStopTheRest() {
        Work work = work("""
                equipment: {amp: {model: amplifier-2x800, at: rack, unit: 3, life: new}}
                tasks:
                  one: {after: [two]}
                  two: {after: [one]}
                  mount-amp: {after: [lunch]}
                  lunch: {needs: [amp]}
                """);
        assertThat(ids(work)).contains("one", "two", "mount-amp", "lunch");
        assertThat(work.notes()).anyMatch(each -> each.contains("wait for each other"));
    }

    @Test
    void aSkillThatNobodyHasIsTold() {
        assertThat(work("""
                people: {ann: {skills: [general]}}
                equipment: {lamp: {model: led-par, at: bar, life: new, light: {address: 1, aim: [1 m, 1 m, 1 m]}}}
                """).notes()).contains("Nobody on the job has the skill lighting, which 1 task asks for.");
    }

    @Test
    void aCompanysOwnFigureStandsInForTheBuiltInOne() {
        String one = """
                equipment: {amp: {model: amplifier-2x800, at: rack, unit: 3, life: new}}
                """;
        Work own = work(one + """
                practice:
                  labour:
                    mount-rack: {per: piece, least: 1 h, likely: 2 h, most: 3 h, crew: 3, skills: [strong], source: our own records}
                """);
        assertThat(task(own, "mount-amp").takes().likely()).isGreaterThan(119);
        assertThat(task(own, "mount-amp").crew()).isEqualTo(3);
        assertThat(task(own, "mount-amp").skills()).contains("strong");
        assertThat(task(work(one), "mount-amp").takes().likely()).isLessThan(60);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "practice: {labour: {replug: {per: end, least: 2 h, likely: 1 h, most: 3 h, source: ours}}} | least, likely and most",
                "practice: {labour: {replug: {per: end, least: 1 h, likely: 1 h, most: 3 h}}} | no source",
                "practice: {drums: {a: {for: [cat66], lengths: [100 m], source: ours}}} | cat6",
                "tasks: {a: {after: [pull-C99]}} | a task of this project",
                "tasks: {pull-C99: {takes: 1 h}} | a cable of this project",
            })
    void whatCannotBeIsRefusedWhenItIsRead(String sections, String complaint) {
        ReadResult read = ProjectReader.read(
                "job.yaml",
                ("housewright: 1\nproject: {name: A job}\n" + sections + "\n").getBytes(StandardCharsets.UTF_8),
                BuiltInLibrary.of(1));
        assertThat(read).isInstanceOf(ReadResult.Refused.class);
        assertThat(((ReadResult.Refused) read).errors().toString()).contains(complaint);
    }

    /** Three points 2, 4 and 9 give 4.5 and 1.167: reference value W-95, by the PERT formulas. */
    @Test
    void threePointsGiveTheMeanAndDeviationOfPert() {
        Minutes minutes = new Minutes(2, 4, 9);
        assertThat(minutes.mean()).isCloseTo(4.5, within(1e-9));
        assertThat(minutes.deviation()).isCloseTo(1.1667, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({
        "pull-C501, PULL, C501",
        "take-out-O1, TAKE_OUT, O1",
        "plan-network, PLAN_NETWORK, ''",
        "terminator-a, TERMINATOR, a"
    })
    void anIdSaysWhatATaskIsAbout(String id, TaskKind kind, String about) {
        assertThat(TaskKind.find(id)).contains(new TaskKind.Named(kind, about));
    }

    @Test
    void noKindsWordBeginsAnothers() {
        for (TaskKind one : TaskKind.values()) {
            for (TaskKind other : TaskKind.values()) {
                if (one != other) {
                    assertThat(other.word() + "-x").doesNotStartWith(one.word() + "-");
                }
            }
        }
        assertThat(TaskKind.find("lunch")).isEmpty();
    }
}
