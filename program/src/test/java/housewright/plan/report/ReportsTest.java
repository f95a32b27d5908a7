package housewright.plan.report;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.plan.Effort;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.RandomJobs;
import housewright.plan.Ready;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Solved;
import housewright.plan.Task;
import housewright.plan.Window;
import housewright.plan.axis.Grid;
import housewright.plan.check.PlanChecker;
import housewright.plan.check.Verdict;
import housewright.plan.list.ListScheduler;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReportsTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private static Plan plan(Request request) {
        Schedule schedule = ListScheduler.schedule(request, Grid.of(request.job(), request.log()), 4);
        return Reports.plan(request, new Solved(schedule, List.of(), Solved.Ended.LIMIT, ""));
    }

    /** All at their latest at once: nobody is booked twice, nothing more is late or out of order, no promise more is broken. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void allMaySlipToTheirLatestTogether(long seed) {
        Job job = RandomJobs.of(14, seed);
        Request request = Request.of(job, Effort.repeatable(seed, 1));
        Plan plan = plan(request);
        Verdict before = PlanChecker.check(request, plan.schedule());
        List<Slot> slipped = new ArrayList<>();
        for (Planned planned : plan.tasks()) {
            Slot slot = planned.slot();
            slipped.add(
                    planned.slackMinutes() == 0
                            ? slot
                            : new Slot(
                                    slot.task(),
                                    List.of(new Window(
                                            planned.latestStart(), planned.latestStart() + slot.end() - slot.start())),
                                    slot.people()));
        }
        Verdict after = PlanChecker.check(request, new Schedule(slipped));
        assertThat(after.breaches().stream().filter(breach -> !breach.rule().equals("day-limit")))
                .isEmpty();
        assertThat(after.late()).isEqualTo(before.late());
        assertThat(before.broken()).containsAll(after.broken());
    }

    /** What is ready is what could be put at this moment without anything of its own in the way, and most waits for the first. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void readyTasksAreUndoneAndHaveNothingBeforeThem(long seed) {
        Job job = RandomJobs.of(20, seed);
        Request request = Request.of(job, Effort.repeatable(seed, 1));
        Schedule schedule = plan(request).schedule();
        Log log = RandomJobs.logOf(job, schedule, 2, seed);
        Map<String, Slot> done = new HashMap<>();
        log.done().forEach(slot -> done.put(slot.task(), slot));
        int before = Integer.MAX_VALUE;
        for (Ready ready : Reports.ready(job, log, schedule, "p0")) {
            Task task = job.task(ready.task());
            assertThat(done.keySet()).containsAll(task.timing().after()).doesNotContain(task.id());
            assertThat(ready.minutes()).isLessThanOrEqualTo(before);
            before = ready.minutes();
            for (String waiting : ready.waiting()) {
                assertThat(done).doesNotContainKey(waiting);
            }
        }
    }
}
