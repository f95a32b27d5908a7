package housewright.plan.list;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.plan.Effort;
import housewright.plan.Goal;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Limits;
import housewright.plan.Log;
import housewright.plan.Person;
import housewright.plan.RandomJobs;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Window;
import housewright.plan.axis.Grid;
import housewright.plan.axis.Measures;
import housewright.plan.check.PlanChecker;
import housewright.plan.check.Verdict;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ListSchedulerTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 120);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void schedulesAreLegalAndMeasuredAlike(long seed) {
        Job job = RandomJobs.of(10 + (int) (seed % 30), seed);
        Request request = Request.of(job, Effort.repeatable(seed, 1));
        Schedule schedule = ListScheduler.schedule(request, Grid.of(job, Log.NOTHING), 8);

        Verdict verdict = PlanChecker.check(request, schedule);

        assertThat(verdict.breaches()).isEmpty();
        assertThat(Measures.of(job, Log.NOTHING, null, schedule)).isEqualTo(verdict.values());
        assertThat(schedule.slots()).isNotEmpty();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void repairsAreLegalAndLeaveWhatHasBegun(long seed) {
        Job job = RandomJobs.of(10 + (int) (seed % 30), seed);
        Effort effort = Effort.repeatable(seed, 1);
        Schedule first = ListScheduler.schedule(Request.of(job, effort), Grid.of(job, Log.NOTHING), 8);
        Log log = RandomJobs.logOf(job, first, 2, seed);
        Request again = new Request(job, log, first, effort);

        Schedule next = ListScheduler.schedule(again, Grid.of(job, log), 4);

        Verdict verdict = PlanChecker.check(again, next);
        assertThat(verdict.breaches()).isEmpty();
        assertThat(Measures.of(job, log, first, next)).isEqualTo(verdict.values());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void takingTheLiftAboutLessCostsNothingElse(long seed) {
        Job job = RandomJobs.of(10 + (int) (seed % 30), seed);
        Request request = Request.of(job, Effort.repeatable(seed, 1));
        Schedule schedule = ListScheduler.schedule(request, Grid.of(job, Log.NOTHING), 4);
        var before = PlanChecker.check(request, schedule).values();

        Verdict after = PlanChecker.check(request, ListScheduler.fewerHireMoves(request, schedule));

        assertThat(after.breaches()).isEmpty();
        for (Goal goal : List.of(Goal.MISSED, Goal.FINISH, Goal.HIRE_DAYS, Goal.HIRE_MOVES)) {
            assertThat(after.values().get(goal)).as(goal.name()).isLessThanOrEqualTo(before.get(goal));
        }
    }

    /** Six tasks of one length at two spots by turns: taken together the lift moves once. */
    @Test
    void spotsAreTakenTogether() {
        List<Task> tasks = new ArrayList<>();
        for (int index = 0; index < 6; index++) {
            tasks.add(Task.draft("t" + index, 60)
                    .hire("lift")
                    .spot(index % 2 == 0 ? "left" : "right")
                    .done());
        }
        Job job = new Job(
                LocalDate.of(2027, 3, 1),
                1,
                15,
                List.of(new Person(
                        "ann", "Ann", Set.of(), List.of(new Window(540, 1020)), List.of(), Limits.NONE, List.of())),
                List.of(new Hire("lift", "Lift", Set.of(0), null)),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                tasks,
                List.of());
        Request request = Request.of(job, Effort.repeatable(1, 1));
        List<Slot> byTurns = new ArrayList<>();
        for (int index = 0; index < 6; index++) {
            byTurns.add(new Slot("t" + index, List.of(new Window(540 + 60 * index, 600 + 60 * index)), List.of("ann")));
        }
        Schedule schedule = new Schedule(byTurns);
        assertThat(PlanChecker.check(request, schedule).values()).containsEntry(Goal.HIRE_MOVES, 5L);
        assertThat(PlanChecker.check(request, ListScheduler.fewerHireMoves(request, schedule))
                        .values())
                .containsEntry(Goal.HIRE_MOVES, 1L);
    }

    @Test
    void hundredAndSixtyTasksWithEverything() {
        Job job = RandomJobs.of(160, 1);
        Request request = Request.of(job, Effort.repeatable(1, 1));
        assertThat(PlanChecker.check(request, ListScheduler.schedule(request)).breaches())
                .isEmpty();
    }

    @Test
    void nothingMovesWhenNothingHappened() {
        for (long seed = 1; seed <= 20; seed++) {
            Job job = RandomJobs.of(25, seed);
            Effort effort = Effort.repeatable(seed, 1);
            Schedule first = ListScheduler.schedule(Request.of(job, effort), Grid.of(job, Log.NOTHING), 8);
            Request again = new Request(job, Log.NOTHING, first, effort);
            Schedule next = ListScheduler.schedule(again, Grid.of(job, Log.NOTHING), 1);
            long missed = Measures.of(job, Log.NOTHING, null, first).get(Goal.MISSED);
            if (Measures.of(job, Log.NOTHING, null, next).get(Goal.MISSED) == missed) {
                assertThat(next).as("seed %d", seed).isEqualTo(first);
            }
        }
    }

    @Test
    void sameSeedSameSchedule() {
        Job job = RandomJobs.of(40, 3);
        Request request = Request.of(job, Effort.repeatable(7, 1));
        List<Schedule> two = List.of(ListScheduler.schedule(request), ListScheduler.schedule(request));
        assertThat(two.getFirst()).isEqualTo(two.getLast());
    }
}
