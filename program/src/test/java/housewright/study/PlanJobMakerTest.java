package housewright.study;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.plan.Condition;
import housewright.plan.Delivery;
import housewright.plan.Effort;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Limits;
import housewright.plan.Log;
import housewright.plan.Promise;
import housewright.plan.Ready;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Task;
import housewright.plan.Timing;
import housewright.plan.Tool;
import housewright.plan.Visit;
import housewright.plan.Window;
import housewright.plan.check.PlanChecker;
import housewright.plan.list.ListScheduler;
import housewright.plan.report.Reports;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a plan is asked for, out of projects of a few lines. Monday is 1 March 2027. */
class PlanJobMakerTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);
    private static final int HOUR = 60;

    private static final String PLACES = """
            venue:
              rooms: {hall: {floor: 0 m, ceiling: 6 m}, store: {floor: 0 m}}
              places:
                desk: {room: hall, at: [10 m, 3 m, 0.9 m]}
                rack: {room: store, at: [0 m, 0 m, 0.3 m], rack: {units: 12}}
                bar:  {room: hall, at: [5 m, 3 m, 5 m], hang: {limit: 100 kg, stated-by: engineer 2026}}
            """;

    /** Somebody for the whole of the first week. */
    private static final String ANN =
            "people: {ann: {skills: [general], free: [{days: mon-sun, from: \"08:00\", to: \"18:00\", between: [2027-03-01, 2027-03-07]}]}}\n";

    private static final String SWAP = """
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
              shut: {never: yes, from: mic.pickup, to: desk.main-R, carries: audio}
            """;

    private static PlanJob made(String sections) {
        String text = "housewright: 1\nproject: {name: A job}\n" + PLACES + sections;
        BuiltInLibrary library = BuiltInLibrary.of(1);
        return switch (ProjectReader.read("job.yaml", text.getBytes(StandardCharsets.UTF_8), library)) {
            case ReadResult.Loaded loaded -> Study.of(loaded.project(), library).planJob(MONDAY);
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors() + "\n" + text);
        };
    }

    private static Job job(String sections) {
        return made(sections).job();
    }

    private static int at(int day, int hour) {
        return day * Job.DAY + hour * HOUR;
    }

    // ---- whether there is anything to plan ----

    @Test
    void nothingToDoAndNobodyToDoItAreSaid() {
        assertThat(made(ANN).unplanned()).startsWith("There is nothing to do");
        assertThat(made("tasks: {sweep: {takes: 1 h}}\n").unplanned()).startsWith("Nobody is free");
        assertThat(made(ANN + "tasks: {sweep: {takes: 1 h}}\n").unplanned()).isEmpty();
    }

    // ---- days and people ----

    @Test
    void theAxisRunsFromTheFirstDayKnownToTheLast() {
        Job job = job(ANN + """
                hires: {lift: {kind: aerial-lift, offered: [2027-03-03, 2027-03-09]}}
                events: {sunday: {from: 2027-02-28 10:00, to: 2027-02-28 11:00}}
                """);
        assertThat(job.firstDay()).isEqualTo(LocalDate.of(2027, 2, 28));
        assertThat(job.days()).isEqualTo(10);
        assertThat(job("people: {ann: {}}\n").firstDay()).isEqualTo(MONDAY);
    }

    @Test
    void freeTimesBecomeWindowsOnTheirDaysAndTimesSaidTwiceAreOne() {
        Job job = job("""
                people:
                  ann:
                    role: lead
                    free:
                      - {days: "mon, wed", from: "09:00", to: "12:00", between: [2027-03-01, 2027-03-05]}
                      - {days: mon, from: "11:00", to: "14:00", between: [2027-03-01, 2027-03-05]}
                      - {days: fri, from: "20:00", to: "00:00", between: [2027-03-01, 2027-03-05]}
                    remote: [{days: tue, from: "19:00", to: "20:00", between: [2027-03-01, 2027-03-05]}]
                  ben: {skills: [audio]}
                """);
        assertThat(job.person("ann").onSite())
                .containsExactly(
                        new Window(at(0, 9), at(0, 14)),
                        new Window(at(2, 9), at(2, 12)),
                        new Window(at(4, 20), at(5, 0)));
        assertThat(job.person("ann").remote()).containsExactly(new Window(at(1, 19), at(1, 20)));
        assertThat(job.person("ann").name()).isEqualTo("lead");
        assertThat(job.person("ann").limits()).isEqualTo(Limits.USUAL);
        assertThat(job.person("ben").onSite()).isEmpty();
        assertThat(job.person("ben").name()).isEqualTo("ben");
        assertThat(job.person("ben").skills()).containsExactly("audio");
    }

    @Test
    void aVisitTakesTheRoadOffItsFirstAndItsLastDay() {
        PlanJob made = made("""
                people:
                  ann:
                    free: [{days: mon-fri, from: "08:00", to: "18:00", between: [2027-03-01, 2027-03-05]}]
                    visits:
                      - {from: 2027-03-02, to: 2027-03-03, way-there: 2 h 30 min, way-back: 1 h}
                      - {from: 2027-03-05, to: 2027-03-09, way-there: 1 h, way-back: 1 h}
                      - {from: 2027-03-04, to: 2027-03-03}
                      - {from: 2027-06-01, to: 2027-06-02}
                tasks: {sweep: {takes: 4 h}}
                """);
        assertThat(made.job().person("ann").visits()).containsExactly(new Visit(1, 2, 150, 60), new Visit(4, 4, 60, 0));
        assertThat(made.assumed()).anyMatch(each -> each.startsWith("A visit of ann ends on 2027-03-03, before"));
        Request request = Request.of(made.job(), Effort.repeatable(1, 1));
        Schedule schedule = ListScheduler.schedule(request);
        assertThat(PlanChecker.check(request, schedule).breaches()).isEmpty();
        assertThat(schedule.byTask().get("sweep").start()).isEqualTo(at(1, 10) + 30);
    }

    @Test
    void whatAsksForNoSkillAsksForSomebodyWhoDoesAnything() {
        String task =
                "tasks: {sweep: {takes: 1 h}, wire: {takes: 1 h, skills: [mains]}, call: {takes: 1 h, who: [ann]}}\n";
        Job known = job("people: {ann: {skills: [general]}, el: {skills: [mains]}}\n" + task);
        assertThat(known.task("sweep").crew().skills()).containsExactly("general");
        assertThat(known.task("wire").crew().skills()).containsExactly("mains");
        assertThat(known.task("call").crew().skills()).isEmpty();
        assertThat(job("people: {el: {skills: [mains]}, ann: {}}\n" + task)
                        .task("sweep")
                        .crew()
                        .skills())
                .isEmpty();
    }

    // ---- remote ----

    @Test
    void whatIsDoneFromAfarIsDueBeforeTheFirstDayOnSite() {
        String file = """
                equipment: {desk: {model: analog-16, at: desk, life: new}}
                files: {show: {for: desk, takes: 2 h, where: remote}}
                """;
        String afar = "remote: [{days: mon-sun, from: \"18:00\", to: \"20:00\", between: [2027-02-20, 2027-03-07]}]";
        Job job = job(file + ANN.replace("]}}\n", "]}}\n").replace("free:", afar + ", free:"));
        Task prepare = job.task("prepare-show");
        assertThat(prepare.site().remote()).isTrue();
        assertThat(prepare.site().place()).isNull();
        assertThat(job.at(prepare.timing().due())).isEqualTo(MONDAY.atStartOfDay());
        assertThat(job(file + ANN).task("prepare-show").timing().due())
                .as("nobody has time from afar: it is made on site")
                .isEqualTo(Timing.NO_DUE);
    }

    // ---- hires ----

    @Test
    void aHireIsOfferedByTheDay() {
        Job job = job(ANN + """
                hires:
                  lift: {kind: aerial-lift, offered: [2027-03-02, 2027-03-04], skill: lift-operator}
                  crane: {}
                tasks: {fix: {takes: 1 h, needs: [lift]}}
                """);
        assertThat(job.hire("lift")).isEqualTo(new Hire("lift", "aerial-lift", Set.of(1, 2, 3), "lift-operator"));
        assertThat(job.hire("crane").days()).isEmpty();
        assertThat(job.task("fix").means().hire()).isEqualTo("lift");
        assertThat(job.task("fix").crew().skills()).containsExactly("lift-operator");
        assertThat(job.tools()).isEmpty();
    }

    @Test
    void twoHiresAtOnceAreHadOnDaysOfBothAndShutEachOut() {
        String hires = """
                people:
                  ann: {skills: [general, lift-operator], free: [{days: mon-sun, from: "08:00", to: "18:00", between: [2027-03-01, 2027-03-07]}]}
                  ben: {skills: [general], free: [{days: mon-sun, from: "08:00", to: "18:00", between: [2027-03-01, 2027-03-07]}]}
                hires:
                  lift:  {kind: aerial-lift, offered: [2027-03-02, 2027-03-04], skill: lift-operator}
                  tower: {kind: access-tower, offered: [2027-03-04, 2027-03-05]}
                tasks:
                  both:  {takes: 8 h, needs: [lift, tower], who: [ann]}
                  paint: {takes: 8 h, needs: [tower], who: [ben]}
                """;
        Job job = job(hires);
        assertThat(job.hire("lift+tower"))
                .isEqualTo(new Hire("lift+tower", "aerial-lift and access-tower", Set.of(3), "lift-operator"));
        assertThat(job.tools()).containsExactly(new Tool("lift", "lift", 1), new Tool("tower", "tower", 1));
        assertThat(job.task("both").means().tools()).isEqualTo(Map.of("lift", 1, "tower", 1));
        assertThat(job.task("paint").means().tools()).isEqualTo(Map.of("tower", 1));
        Request request = Request.of(job, Effort.repeatable(1, 1));
        Schedule schedule = ListScheduler.schedule(request);
        assertThat(PlanChecker.check(request, schedule).breaches()).isEmpty();
        assertThat(schedule.byTask().get("both").start() / Job.DAY).isEqualTo(3);
        assertThat(schedule.byTask().get("paint").start() / Job.DAY)
                .as("the tower is with the other on the first day")
                .isEqualTo(4);
    }

    @Test
    void hiredEquipmentIsFetchedBeforeItIsUsedAndTakenBackAfter() {
        Job job = job(ANN + """
                equipment: {reel: {model: analog-16, at: desk, life: hire}}
                tasks: {use: {takes: 1 h, needs: [reel]}}
                """);
        assertThat(job.task("use").timing().after()).containsExactly("fetch-reel");
        assertThat(job.task("return-reel").timing().after()).containsExactly("use");
    }

    // ---- deliveries ----

    @Test
    void deliveriesComeAfterTheDayTheyArePromisedFor() {
        PlanJob made = made(ANN + """
                equipment:
                  a: {model: analog-16, at: desk, life: new}
                  b: {model: analog-16, at: desk, life: new}
                  c: {model: analog-16, at: desk, life: new}
                  d: {model: analog-16, at: desk, life: new}
                  e: {model: analog-16, at: desk, life: new}
                orders:
                  here: {for: [a], arrived: 2027-03-02}
                  said: {for: [b], promised: 2027-03-02}
                  lead: {for: [c], placed: 2027-03-01, lead: 2 d}
                  open: {for: [d], lead: 3 d}
                  none: {for: [e]}
                """);
        Job job = made.job();
        assertThat(job.delivery("here")).isEqualTo(new Delivery("here", "here", at(1, 0), at(1, 0), 0));
        assertThat(job.delivery("said").expected()).isEqualTo(at(2, 0));
        assertThat(job.delivery("said").lateChance()).isPositive();
        assertThat(job.deliveries())
                .filteredOn(Delivery::promised)
                .extracting(Delivery::id)
                .containsExactly("here", "said");
        List<Ready> ready = Reports.ready(
                job, new Log(at(5, 10), List.of(), List.of(), Map.of(), Map.of()), new Schedule(List.of()), "ann");
        assertThat(ready)
                .filteredOn(each -> each.task().startsWith("receive-"))
                .extracting(Ready::task)
                .as("what nobody has promised is not there to be unpacked")
                .containsExactly("receive-said");
        assertThat(job.delivery("said").latest()).isGreaterThan(at(2, 0)).isLessThanOrEqualTo(job.end());
        assertThat(job.delivery("lead").expected()).isEqualTo(at(3, 0));
        assertThat(job.delivery("open").expected()).isEqualTo(at(4, 0));
        assertThat(job.delivery("none").expected()).isZero();
        assertThat(made.assumed())
                .anyMatch(each -> each.startsWith("Order open is not placed"))
                .anyMatch(each -> each.startsWith("Order none has neither"))
                .anyMatch(each -> each.contains("one in five comes up to 7 days late"))
                .noneMatch(each -> each.startsWith("Order said"));
    }

    @Test
    void whatNoOrderHasIsPlannedAsIfItWereThere() {
        assertThat(made(ANN + "equipment: {a: {model: analog-16, at: desk, life: new}}\n")
                        .assumed())
                .anyMatch(each -> each.startsWith("What tasks use and no order has (such as a)"));
    }

    // ---- events, promises and the way back ----

    @Test
    void anEventShutsEveryRoomUnlessItIsElsewhereAndOneWithoutATimeIsLeftOut() {
        PlanJob made = made(ANN + """
                events:
                  service: {from: 2027-03-03 10:00, to: 2027-03-03 12:00, deadline: yes}
                  away: {from: 2027-03-04 10:00, to: 2027-03-04 12:00, at: elsewhere}
                  someday: {}
                """);
        assertThat(made.job().place("hall").open())
                .containsExactly(new Window(0, at(2, 10)), new Window(at(2, 12), at(7, 0)));
        assertThat(made.job().events()).extracting(each -> each.id()).containsExactly("service", "away");
        assertThat(made.job().deadline()).isEqualTo(at(2, 10));
        assertThat(made.assumed()).contains("Event someday has no time, and is left out.");
    }

    @Test
    void onlyWhatIsEnteredIsKeptWholeAndThatIsSaid() {
        String events = "events: {before: {from: 2027-03-02 10:00, to: 2027-03-02 12:00, needs: [old-voice]}}\n";
        assertThat(made(ANN + SWAP + events).assumed()).anyMatch(each -> each.startsWith("Only the events"));
        assertThat(made(ANN + SWAP).assumed()).anyMatch(each -> each.startsWith("No event in the hall"));
        assertThat(made(ANN + events.replace(", needs: [old-voice]", "")).assumed())
                .as("nothing is taken apart")
                .noneMatch(each -> each.startsWith("Only the events") || each.startsWith("No event in"));
    }

    @Test
    void aPromiseHoldsWhatTakesTheOldApartAgainstWhatProvesTheNew() {
        Job job = job(ANN + SWAP + """
                tasks: {prove-voice: {}}
                events:
                  before: {from: 2027-03-02 10:00, to: 2027-03-02 12:00, needs: [old-voice]}
                  after: {from: 2027-03-07 10:00, to: 2027-03-07 12:00, needs: all, deadline: yes}
                  hymns: {from: 2027-03-06 10:00, to: 2027-03-06 12:00}
                """);
        Promise old = job.promises().stream()
                .filter(each -> each.event().equals("before"))
                .findFirst()
                .orElseThrow();
        assertThat(old.capability()).isEqualTo("old-voice");
        assertThat(old.worksToday()).isTrue();
        assertThat(old.takenApartBy()).contains("replug-C1", "strike-old");
        assertThat(job.promises())
                .filteredOn(each -> each.event().equals("after"))
                .extracting(Promise::capability)
                .contains("voice")
                .doesNotContain("shut");
        assertThat(job.promises())
                .filteredOn(each -> each.capability().equals("voice"))
                .allMatch(each -> !each.worksToday() && each.provenBy().equals(Set.of("prove-voice")));
        assertThat(job.promises()).noneMatch(each -> each.event().equals("hymns"));
    }

    @Test
    void theOldIsKeptUntilTheFirstServiceHasPassedWhereSomebodyHasTimeForItThen() {
        String parts = """
                equipment: {old: {model: desk-digital-32-stage-a, at: rack, unit: 3, life: strike}}
                events: {first: {from: 2027-03-07 10:00, to: 2027-03-07 12:00, needs: [], deadline: yes}}
                """;
        Task waits = job(parts + ANN).task("strike-old");
        assertThat(waits.mandatory()).isFalse();
        assertThat(waits.timing().earliest()).isEqualTo(at(6, 12));
        assertThat(waits.timing().due()).isEqualTo(at(7, 0));
        assertThat(waits.timing().after()).as("backed up before it goes").containsExactly("copy-old");
        Task before = job(parts + ANN.replace("2027-03-07]", "2027-03-06]")).task("strike-old");
        assertThat(before.timing().earliest()).isZero();
        Task noSkill =
                job(parts + ANN + "tasks: {strike-old: {skills: [mains]}}\n").task("strike-old");
        assertThat(noSkill.timing().earliest())
                .as("nobody with the skill is there")
                .isZero();
    }

    @Test
    void nothingIsTakenApartBetweenTheRehearsalAndTheService() {
        String events = """
                events:
                  rehearsal: {from: 2027-03-06 10:00, to: 2027-03-06 12:00, needs: all}
                  first: {from: 2027-03-07 10:00, to: 2027-03-07 12:00, needs: all, deadline: yes}
                """;
        Job job = job(ANN + SWAP + events);
        Task rehearse = job.task("rehearse-first");
        assertThat(rehearse.timing().start()).isEqualTo(at(5, 10));
        assertThat(job.dueOf(job.task("replug-C1"))).isEqualTo(at(5, 10));
        assertThat(job.dueOf(job.task("mount-desk"))).isEqualTo(job.deadline());
        Task free = job(ANN
                        + SWAP
                        + events.replace(
                                "  rehearsal: {from: 2027-03-06 10:00, to: 2027-03-06 12:00, needs: all}\n", ""))
                .task("rehearse-first");
        assertThat(free.timing().start()).isNull();
        assertThat(free.timing().after())
                .as("it has no time of its own: all that first")
                .contains("replug-C1");
    }

    // ---- tasks ----

    @Test
    void aTaskHasItsOrderItsLengthAndItsRoom() {
        Job job = job(ANN + """
                equipment: {lamp: {model: led-par, at: bar, life: new, secondary: fitted, light: {address: 1, aim: [1 m, 1 m, 1 m]}}}
                tasks:
                  short: {takes: 3 min}
                  long: {takes: 6 h, after: [short], conditions: [quiet]}
                """);
        assertThat(job.task("long").timing().after()).containsExactly("short");
        assertThat(job.task("long").length().mayPause()).isTrue();
        assertThat(job.task("short").length().mayPause()).isFalse();
        assertThat(job.task("short").length().planned(job.tick())).isEqualTo(5);
        assertThat(job.task("long").site().place()).isEqualTo("building");
        assertThat(job.task("long").site().needs()).containsExactly(Condition.QUIET);
        assertThat(job.task("focus-lamp").site().needs()).containsExactly(Condition.DARK);
        assertThat(job.task("focus-lamp").site().spoils()).doesNotContain(Condition.DARK);
        assertThat(job.task("mount-lamp").site().place()).isEqualTo("hall");
        assertThat(job.task("mount-lamp").site().spot()).isEqualTo("bar");
        assertThat(job.task("mount-lamp").site().needs()).containsExactly(Condition.EMPTY);
        assertThat(job.task("mount-lamp").site().spoils()).contains(Condition.DARK, Condition.QUIET);
        assertThat(job.task("mount-lamp").crew().count()).isEqualTo(2);
    }

    @Test
    void aCrewIsAsManyAsAreNamed() {
        Job job = job("people: {ann: {}, ben: {}}\ntasks: {teach: {takes: 1 h, who: [ann, ben]}}\n");
        assertThat(job.task("teach").crew().count()).isEqualTo(2);
        assertThat(job.task("teach").crew().pinned()).isEqualTo(List.of("ann", "ben"));
    }

    @Test
    void whatGoesAndNoFeedTellsOfIsSaidToBeTakenForGranted() {
        String lamp = ANN
                + SWAP.replace(
                        "equipment:\n", "equipment:\n  lamp: {model: tungsten-fresnel-1000, at: bar, life: strike}\n");
        String service = "events: {service: {from: 2027-03-03 10:00, to: 2027-03-03 11:00, needs: %s}}\n";
        assertThat(made(lamp + service.formatted("[old-voice]")).assumed())
                .anySatisfy(each -> assertThat(each).contains("no feed tells of: lamp is used by no feed"));
        // the old desk is used by a feed, and where nothing is held nobody needs the lamp
        assertThat(made(ANN + SWAP + service.formatted("[old-voice]")).assumed())
                .noneMatch(each -> each.contains("no feed tells of"));
        assertThat(made(lamp).assumed()).noneMatch(each -> each.contains("no feed tells of"));
    }
}
