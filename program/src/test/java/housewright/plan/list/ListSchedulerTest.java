package housewright.plan.list;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.plan.Effort;
import housewright.plan.Goal;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.RandomJobs;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.axis.Grid;
import housewright.plan.axis.Measures;
import housewright.plan.check.PlanChecker;
import housewright.plan.check.Verdict;
import java.util.List;
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
