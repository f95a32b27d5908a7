package housewright.plan.check;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.plan.Condition;
import housewright.plan.Delivery;
import housewright.plan.Effort;
import housewright.plan.Event;
import housewright.plan.Goal;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Limits;
import housewright.plan.Log;
import housewright.plan.Person;
import housewright.plan.Place;
import housewright.plan.Promise;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Tool;
import housewright.plan.Visit;
import housewright.plan.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One legal schedule; each case changes one thing of it and names the one rule that breaks. */
class PlanCheckerTest {
    private static final int MORNING = 9 * 60;

    private static Job job(UnaryOperator<Task.Draft> first, UnaryOperator<Task.Draft> second) {
        List<Window> day = List.of(new Window(MORNING, 20 * 60), new Window(Job.DAY + MORNING, Job.DAY + 20 * 60));
        return new Job(
                LocalDate.of(2027, 3, 1),
                2,
                15,
                List.of(
                        new Person(
                                "ann",
                                "Ann",
                                Set.of("audio", "height"),
                                day,
                                List.of(),
                                new Limits(360, 240, 30),
                                List.of()),
                        new Person(
                                "bob",
                                "Bob",
                                Set.of("general"),
                                day,
                                List.of(new Window(0, 120)),
                                Limits.NONE,
                                List.of()),
                        new Person(
                                "cat",
                                "Cat",
                                Set.of("general"),
                                day,
                                List.of(),
                                Limits.NONE,
                                List.of(new Visit(0, 0, 60, 60)))),
                List.of(new Hire("lift", "Lift", Set.of(0), "height")),
                List.of(new Tool("tester", "Tester", 1)),
                List.of(new Place(
                        "hall",
                        "Hall",
                        List.of(new Window(0, 19 * 60)),
                        Map.of(Condition.DARK, List.of(new Window(900, 1200))))),
                List.of(new Delivery("part", "Part", 10 * 60, 20 * 60, 0)),
                List.of(new Event("service", "Service", new Window(12 * 60, 13 * 60), "hall", false)),
                List.of(
                        first.apply(Task.draft("a", 60).at("hall")).done(),
                        second.apply(Task.draft("b", 60).at("hall")).done()),
                List.of(new Promise("service", "sound", true, Set.of("a"), Set.of("b"))));
    }

    private static Slot slot(String task, int from, int to, String... people) {
        return new Slot(task, List.of(new Window(from, to)), List.of(people));
    }

    private static List<String> rules(Job job, Log log, Slot... slots) {
        return PlanChecker.check(new Request(job, log, null, Effort.repeatable(1, 1)), new Schedule(List.of(slots)))
                .breaches()
                .stream()
                .map(Breach::rule)
                .distinct()
                .toList();
    }

    private static final UnaryOperator<Task.Draft> AS_IT_IS = draft -> draft;

    private static Job plain() {
        return job(AS_IT_IS, AS_IT_IS);
    }

    @Test
    void legalOneIsLegal() {
        assertThat(rules(plain(), Log.NOTHING, slot("a", MORNING, 600, "ann"), slot("b", MORNING, 600, "bob")))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "free, 480, 540, ann",
        "free, 540, 600, cat",
        "grid, 550, 610, ann",
        "length, 540, 615, ann",
        "length, 540, 585, ann",
        "event, 705, 765, ann",
        "closed, 1110, 1170, ann",
        "horizon, 2850, 2910, ann",
        "crew, 540, 600, ann bob",
        "unknown-person, 540, 600, dan",
    })
    void oneTaskMisplaced(String rule, int from, int to, String people) {
        assertThat(rules(plain(), Log.NOTHING, slot("a", from, to, people.split(" "))))
                .contains(rule);
    }

    private static List<String> changed(UnaryOperator<Task.Draft> first) {
        return rules(job(first, AS_IT_IS), Log.NOTHING, slot("a", MORNING, 600, "bob"));
    }

    @Test
    void wishesOfTheTask() {
        assertThat(changed(draft -> draft.skills("audio"))).containsExactly("skill");
        assertThat(changed(draft -> draft.skills("general"))).isEmpty();
        assertThat(changed(draft -> draft.by("ann"))).containsExactly("pinned-person");
        assertThat(changed(draft -> draft.by("bob"))).isEmpty();
        assertThat(changed(draft -> draft.startsAt(600))).containsExactly("pinned-start");
        assertThat(changed(draft -> draft.startsAt(MORNING))).isEmpty();
        assertThat(changed(draft -> draft.hire("lift"))).containsExactly("operator");
        assertThat(changed(draft -> draft.waitsFor("part"))).containsExactly("delivery");
        assertThat(changed(draft -> draft.earliest(570))).containsExactly("earliest");
        assertThat(changed(draft -> draft.after("b"))).containsExactly("after");
        assertThat(changed(draft -> draft.needs(Condition.DARK))).containsExactly("condition-time");
        assertThat(changed(draft -> draft.tool("tester", 2))).containsExactly("tool");
    }

    @Test
    void hireOnAnotherDay() {
        Job job = job(draft -> draft.hire("lift"), AS_IT_IS);
        assertThat(rules(job, Log.NOTHING, slot("a", 540, 600, "ann"))).isEmpty();
        Job second = new Job(
                job.firstDay(),
                2,
                15,
                job.people(),
                job.hires(),
                job.tools(),
                List.of(Place.of("hall")),
                job.deliveries(),
                job.events(),
                job.tasks(),
                job.promises());
        assertThat(rules(second, Log.NOTHING, slot("a", Job.DAY + 540, Job.DAY + 600, "ann")))
                .containsExactly("hire-day");
    }

    @Test
    void twoThatDoNotGoTogether() {
        Slot a = slot("a", MORNING, 600, "ann");
        Slot b = slot("b", MORNING, 600, "bob");
        assertThat(rules(plain(), Log.NOTHING, a, slot("b", 570, 630, "ann"))).containsExactly("double-booked");
        assertThat(rules(
                        job(draft -> draft.needs(Condition.QUIET), draft -> draft.spoils(Condition.QUIET)),
                        Log.NOTHING,
                        a,
                        b))
                .containsExactly("condition");
        assertThat(rules(
                        job(draft -> draft.needs(Condition.QUIET), draft -> draft.needs(Condition.QUIET)),
                        Log.NOTHING,
                        a,
                        b))
                .containsExactly("condition");
        assertThat(rules(job(draft -> draft.needs(Condition.EMPTY), AS_IT_IS), Log.NOTHING, a, b))
                .containsExactly("condition");
        assertThat(rules(job(draft -> draft.needs(Condition.QUIET), AS_IT_IS), Log.NOTHING, a, b))
                .isEmpty();
        assertThat(rules(
                        job(draft -> draft.hire("lift"), draft -> draft.hire("lift")),
                        Log.NOTHING,
                        a,
                        slot("b", 570, 630, "ann")))
                .contains("hire-busy");
        assertThat(rules(job(draft -> draft.tool("tester", 1), draft -> draft.tool("tester", 1)), Log.NOTHING, a, b))
                .containsExactly("tool");
        assertThat(rules(job(AS_IT_IS, draft -> draft.after("a")), Log.NOTHING, b))
                .containsExactly("after");
        assertThat(rules(plain(), Log.NOTHING, a, a)).contains("task-twice");
    }

    @Test
    void longDaysAndBreaks() {
        UnaryOperator<Task.Draft> four =
                draft -> draft.length(housewright.plan.Length.of(240)).at(null);
        Job job = job(four, four);
        assertThat(rules(job, Log.NOTHING, slot("a", 540, 780, "ann"), slot("b", 795, 1035, "ann")))
                .contains("day-limit", "break");
        assertThat(rules(job, Log.NOTHING, slot("a", 540, 780, "ann"), slot("b", 810, 1050, "ann")))
                .containsExactly("day-limit");
        assertThat(rules(job, Log.NOTHING, slot("a", 540, 780, "bob"), slot("b", 780, 1020, "bob")))
                .isEmpty();
    }

    @Test
    void pausesOnlyWhereTheyMayBe() {
        Slot paused = new Slot("a", List.of(new Window(540, 570), new Window(630, 660)), List.of("bob"));
        assertThat(rules(plain(), Log.NOTHING, paused)).containsExactly("pause");
        assertThat(rules(job(Task.Draft::mayPause, AS_IT_IS), Log.NOTHING, paused))
                .isEmpty();
    }

    @Test
    void whatHasBegunStays() {
        Log log = new Log(
                570,
                List.of(slot("b", 545, 565, "bob")),
                List.of(new Log.Begun("a", 550, List.of("ann"), 30)),
                Map.of(),
                Map.of());
        assertThat(rules(plain(), log, slot("a", 550, 600, "ann"), slot("b", 545, 565, "bob")))
                .isEmpty();
        assertThat(rules(plain(), log, slot("a", 550, 600, "bob"), slot("b", 545, 565, "bob")))
                .contains("begun-stays");
        assertThat(rules(plain(), log, slot("a", 550, 600, "ann"), slot("b", 600, 660, "bob")))
                .containsExactly("done-stays");
        Log now = new Log(600, List.of(), List.of(), Map.of("part", 700), Map.of("a", 800));
        assertThat(rules(plain(), now, slot("a", 585, 645, "ann"))).containsExactly("past", "blocked");
    }

    @Test
    void missedIsCounted() {
        Job job = plain();
        Verdict verdict = PlanChecker.check(
                Request.of(job, Effort.repeatable(1, 1)), new Schedule(List.of(slot("a", MORNING, 600, "ann"))));
        assertThat(verdict.legal()).isTrue();
        assertThat(verdict.out()).containsExactly("b");
        assertThat(verdict.broken()).hasSize(1);
        assertThat(verdict.values()).containsEntry(Goal.MISSED, 10_300L).containsEntry(Goal.FINISH, 600L);
        List<Slot> both = new ArrayList<>(List.of(slot("a", MORNING, 600, "ann"), slot("b", MORNING, 600, "bob")));
        assertThat(PlanChecker.check(Request.of(job, Effort.repeatable(1, 1)), new Schedule(both))
                        .values())
                .containsEntry(Goal.MISSED, 0L);
        both.set(1, slot("b", 780, 840, "bob"));
        assertThat(PlanChecker.check(Request.of(job, Effort.repeatable(1, 1)), new Schedule(both))
                        .broken())
                .hasSize(1);
        both.set(0, slot("a", 780, 840, "ann"));
        assertThat(PlanChecker.check(Request.of(job, Effort.repeatable(1, 1)), new Schedule(both))
                        .broken())
                .isEmpty();
    }
}
