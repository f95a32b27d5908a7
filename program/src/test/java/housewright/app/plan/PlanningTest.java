package housewright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.plan.Effort;
import housewright.plan.Goal;
import housewright.plan.Level;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.Progress;
import housewright.plan.RandomJobs;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Solved;
import housewright.plan.check.PlanChecker;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanningTest {
    private final Request request = Request.of(RandomJobs.of(30, 12), Effort.repeatable(1, 1));

    @Test
    void brokenSolverLeavesAPlan() {
        Plan plan = new Planning(
                        (asked, first, progress) -> new Solved(first, List.of(), Solved.Ended.BROKEN, "It broke."))
                .plan(request, Progress.NONE);
        assertThat(plan.levels().getFirst().value())
                .isLessThanOrEqualTo(Planning.quick(request).levels().getFirst().value());
        assertThat(PlanChecker.check(request, plan.schedule()).breaches()).isEmpty();
        assertThat(plan.remark()).isEqualTo("It broke.");
        assertThat(plan.levels())
                .extracting(Level::goal)
                .containsExactly(Goal.MISSED, Goal.FINISH, Goal.HIRE_DAYS, Goal.HIRE_MOVES, Goal.IDLE);
    }

    @Test
    void solverThatLeavesEverythingOutIsNotBelieved() {
        Plan plan = new Planning((asked, first, progress) ->
                        new Solved(new Schedule(List.of()), List.of(), Solved.Ended.PROVED, ""))
                .plan(request, Progress.NONE);
        assertThat(plan.ended()).isEqualTo(Solved.Ended.BROKEN);
        assertThat(plan.remark()).contains("misses more");
        assertThat(plan.levels().getFirst().value())
                .isLessThanOrEqualTo(Planning.quick(request).levels().getFirst().value());
    }

    @Test
    void whoeverStopsAtOnceHasTheQuickPlan() {
        List<Schedule> heard = new ArrayList<>();
        Plan plan = new Planning((asked, first, progress) -> {
                    throw new AssertionError("not asked");
                })
                .plan(request, new Progress() {
                    @Override
                    public void better(Schedule schedule, Level level) {
                        heard.add(schedule);
                    }

                    @Override
                    public boolean stopped() {
                        return true;
                    }
                });
        assertThat(plan.ended()).isEqualTo(Solved.Ended.STOPPED);
        assertThat(heard).hasSize(1);
        assertThat(plan.schedule()).isEqualTo(Planning.quick(request).schedule());
    }

    @Test
    void everyTaskSaysWhyItIsNotEarlierAndHowFarItMaySlip() {
        Plan plan = Planning.quick(request);
        assertThat(plan.tasks()).isNotEmpty();
        assertThat(PlanChecker.check(request, plan.schedule()).breaches()).isEmpty();
        for (Planned planned : plan.tasks()) {
            assertThat(planned.why()).as(planned.slot().task()).endsWith(".");
            assertThat(planned.slackMinutes()).as(planned.slot().task()).isNotNegative();
        }
        assertThat(plan.missed().isEmpty()).isEqualTo(plan.clashes().isEmpty());
    }
}
