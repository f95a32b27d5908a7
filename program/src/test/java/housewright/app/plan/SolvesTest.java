package housewright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.plan.Effort;
import housewright.plan.Level;
import housewright.plan.Log;
import housewright.plan.Plan;
import housewright.plan.RandomJobs;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Solved;
import housewright.plan.Solver;
import housewright.plan.check.PlanChecker;
import housewright.study.PlanBasis;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** Searches in the background. */
class SolvesTest {
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private final Request request = Request.of(RandomJobs.of(30, 12), Effort.repeatable(1, 1));
    private final PlanBasis basis = new PlanBasis(request.job(), Log.NOTHING, new Schedule(List.of()), List.of(), "");

    private static void until(BooleanSupplier done) {
        Instant last = Instant.now().plus(PATIENCE);
        while (!done.getAsBoolean()) {
            assertThat(Instant.now()).as("still waiting").isBefore(last);
            LockSupport.parkNanos(5_000_000);
        }
    }

    private Solves with(Solver solver) {
        return new Solves(() -> solver, () -> Instant.EPOCH);
    }

    @Test
    void oneRunsAtATimeAndStoppingKeepsTheBest() {
        CountDownLatch asked = new CountDownLatch(1);
        try (Solves solves = with((what, first, progress) -> {
            progress.bound(new Level(housewright.plan.Goal.FINISH, 100, 50));
            asked.countDown();
            until(progress::stopped);
            return new Solved(first, List.of(), Solved.Ended.STOPPED, "");
        })) {
            Solve solve = solves.begin("hall", 3, basis, request);
            until(() -> asked.getCount() == 0);
            assertThat(solves.begin("hall", 4, basis, request)).isSameAs(solve);
            assertThat(solves.begin("other", 1, basis, request)).isNotSameAs(solve);
            assertThat(solve.state()).isEqualTo(Solve.State.RUNNING);
            assertThat(solve.planned()).isPositive();
            assertThat(solve.levels()).extracting(Level::bound).contains(50L);

            solve.stop();
            until(() -> solve.state() != Solve.State.RUNNING);

            Plan plan = solve.plan();
            assertThat(plan).isNotNull();
            assertThat(PlanChecker.check(request, plan.schedule()).breaches()).isEmpty();
            assertThat(solve.revision()).isEqualTo(3);
            assertThat(solves.unaccepted()).containsExactly("hall");
            solves.forget("hall");
            assertThat(solves.unaccepted()).isEmpty();
            assertThat(solves.begin("hall", 4, basis, request)).isNotSameAs(solve);
        }
    }

    @Test
    void aSolverThatCrashesCostsTheSearchAndNotWhatWasFound() {
        try (Solves solves = with(new SolverProcess(SolverProcessTest.Crashing.class.getName()))) {
            Solve solve = solves.begin("hall", 1, basis, request);
            until(() -> solve.state() != Solve.State.RUNNING);
            assertThat(solve.state()).isEqualTo(Solve.State.DONE);
            assertThat(solve.plan()).isNotNull().satisfies(plan -> {
                assertThat(plan.ended()).isEqualTo(Solved.Ended.BROKEN);
                assertThat(PlanChecker.check(request, plan.schedule()).breaches())
                        .isEmpty();
            });
        }
    }

    @Test
    void aFaultIsSaidAndTheNextSearchIsAsGoodAsAny() {
        boolean[] faulty = {true};
        try (Solves solves = with((what, first, progress) -> {
            if (faulty[0]) {
                throw new IllegalStateException("a fault");
            }
            return new Solved(first, List.of(), Solved.Ended.LIMIT, "");
        })) {
            Solve broken = solves.begin("hall", 1, basis, request);
            until(() -> broken.state() != Solve.State.RUNNING);
            assertThat(broken.state()).isEqualTo(Solve.State.FAILED);
            assertThat(broken.trouble()).contains("a fault").contains("as it was");
            faulty[0] = false;
            Solve next = solves.begin("hall", 1, basis, request);
            until(() -> next.state() == Solve.State.DONE);
            solves.forget("hall");
            assertThat(solves.find("hall")).isEmpty();
        }
    }
}
