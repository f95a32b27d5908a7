package housewright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.plan.Effort;
import housewright.plan.Goal;
import housewright.plan.Job;
import housewright.plan.Level;
import housewright.plan.Log;
import housewright.plan.Progress;
import housewright.plan.RandomJobs;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Solved;
import housewright.plan.axis.Grid;
import housewright.plan.check.PlanChecker;
import housewright.plan.list.ListScheduler;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class SolverProcessTest {
    private final Job job = RandomJobs.of(20, 8);
    private final Request request = Request.of(job, Effort.repeatable(4, 2));
    private final Schedule first = ListScheduler.schedule(request, Grid.of(job, Log.NOTHING), 1);

    /** Tells of one better plan and then dies as a crash of native code would have it: at once, with no word. */
    static final class Crashing {
        public static void main(String[] args) throws IOException {
            var in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            Wire.Ask ask = Wire.ask(in.readLine());
            System.out.println(Wire.line(new Wire.Answer(ask.first(), new Level(Goal.FINISH, 1000, 500), null)));
            Runtime.getRuntime().halt(134);
        }
    }

    /** Tells of a plan that is not legal. */
    static final class Lying {
        public static void main(String[] args) throws IOException {
            var in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            Wire.Ask ask = Wire.ask(in.readLine());
            List<housewright.plan.Slot> twice = new ArrayList<>(ask.first().slots());
            twice.add(twice.getFirst());
            System.out.println(Wire.line(
                    new Wire.Answer(null, null, new Solved(new Schedule(twice), List.of(), Solved.Ended.PROVED, ""))));
        }
    }

    @Test
    void givesWhatTheSolverFinds() {
        List<Level> heard = new ArrayList<>();
        Solved solved = new SolverProcess().solve(request, first, new Progress() {
            @Override
            public void better(Schedule schedule, Level level) {
                heard.add(level);
            }
        });
        assertThat(solved.remark()).isEmpty();
        assertThat(solved.ended()).isIn(Solved.Ended.PROVED, Solved.Ended.LIMIT);
        assertThat(solved.levels()).isNotEmpty();
        assertThat(heard).isNotEmpty();
        assertThat(PlanChecker.check(request, solved.schedule()).breaches()).isEmpty();
        assertThat(solved).isEqualTo(new housewright.plan.cpsat.CpSatSolver().solve(request, first, Progress.NONE));
    }

    @Test
    void crashCostsTheSolveOnly() {
        Solved solved = new SolverProcess(Crashing.class.getName()).solve(request, first, Progress.NONE);
        assertThat(solved.ended()).isEqualTo(Solved.Ended.BROKEN);
        assertThat(solved.remark()).contains("134");
        assertThat(solved.schedule()).isEqualTo(first);
        assertThat(solved.levels()).containsExactly(new Level(Goal.FINISH, 1000, 500));
    }

    @Test
    void solverThatDoesNotStartCostsTheSolveOnly() {
        Solved solved = new SolverProcess("nobody.Knows").solve(request, first, Progress.NONE);
        assertThat(solved.ended()).isEqualTo(Solved.Ended.BROKEN);
        assertThat(solved.remark()).contains("nobody");
        assertThat(solved.schedule()).isEqualTo(first);
    }

    @Test
    void illegalPlanIsRefused() {
        Solved solved = new SolverProcess(Lying.class.getName()).solve(request, first, Progress.NONE);
        assertThat(solved.ended()).isEqualTo(Solved.Ended.BROKEN);
        assertThat(solved.remark()).contains("planned twice");
        assertThat(solved.schedule()).isEqualTo(first);
    }

    @Test
    void stopsWhenTold() {
        Request endless = Request.of(RandomJobs.of(60, 9), Effort.quick(4, 600));
        Schedule begin = ListScheduler.schedule(endless, Grid.of(endless.job(), Log.NOTHING), 1);
        boolean[] heard = {false};
        Solved solved = new SolverProcess().solve(endless, begin, new Progress() {
            @Override
            public void better(Schedule schedule, Level level) {
                heard[0] = true;
            }

            @Override
            public boolean stopped() {
                return heard[0];
            }
        });
        assertThat(solved.ended()).isEqualTo(Solved.Ended.STOPPED);
        assertThat(PlanChecker.check(endless, solved.schedule()).breaches()).isEmpty();
    }
}
