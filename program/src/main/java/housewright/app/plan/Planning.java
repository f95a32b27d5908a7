package housewright.app.plan;

import housewright.plan.Goal;
import housewright.plan.Level;
import housewright.plan.Plan;
import housewright.plan.Progress;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Solved;
import housewright.plan.Solver;
import housewright.plan.axis.Frozen;
import housewright.plan.axis.Least;
import housewright.plan.check.PlanChecker;
import housewright.plan.check.Verdict;
import housewright.plan.list.ListScheduler;
import housewright.plan.report.Reports;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Makes a plan: a legal one at once, then the best that a solver finds; whatever is shown has passed the checker. */
public final class Planning {
    /** What is to be said of a plan by rules of thumb alone. */
    private static final String UNSEARCHED = "Made by rules of thumb alone; a search may find a better one.";

    private final Solver solver;

    public Planning(Solver solver) {
        this.solver = solver;
    }

    /** A legal plan in a moment, without the solver. */
    public static Plan quick(Request request) {
        Schedule first = first(request);
        return Reports.plan(
                request,
                withAllGoals(
                        request,
                        fewerMoves(request, new Solved(first, known(request, first), Solved.Ended.LIMIT, UNSEARCHED))));
    }

    /** What is known of the bounds before any search; nothing where something is missed, since less work may end earlier. */
    private static List<Level> known(Request request, Schedule schedule) {
        Map<Goal, Long> values = PlanChecker.check(request, schedule).values();
        if (values.getOrDefault(Goal.MISSED, 1L) > 0) {
            return List.of();
        }
        List<Level> levels = new ArrayList<>();
        Least.of(request.job(), request.log()).forEach((goal, least) -> {
            long value = values.getOrDefault(goal, 0L);
            levels.add(new Level(goal, value, Math.min(least, value)));
        });
        return levels;
    }

    /** What is to be said of a schedule that is there already, whether or not it can be kept as it is. */
    public static Plan standing(Request request, Schedule schedule) {
        return Reports.standing(
                request, withAllGoals(request, new Solved(schedule, List.of(), Solved.Ended.LIMIT, "")));
    }

    /**
     * The best plan found; never worse than {@link #quick}.
     *
     * @param progress hears of the quick one first
     */
    public Plan plan(Request request, Progress progress) {
        return Reports.plan(request, search(request, progress));
    }

    /** As {@link #plan}, without what is to be said of it. */
    Solved search(Request request, Progress progress) {
        Schedule first = first(request);
        long missed = value(PlanChecker.check(request, first), Goal.MISSED);
        progress.better(first, new Level(Goal.MISSED, missed, 0));
        if (progress.stopped()) {
            return withAllGoals(
                    request, fewerMoves(request, new Solved(first, known(request, first), Solved.Ended.STOPPED, "")));
        }
        Schedule begin = begin(request, first);
        Solved solved = solver.solve(request, begin, progress);
        Verdict verdict = PlanChecker.check(request, solved.schedule());
        if (!verdict.legal() || value(verdict, Goal.MISSED) > missed) {
            String why = verdict.legal()
                    ? "it misses more"
                    : verdict.breaches().getFirst().says();
            solved = new Solved(
                    begin, List.of(), Solved.Ended.BROKEN, "The solver's plan was not taken: %s.".formatted(why));
        }
        return withAllGoals(request, fewerMoves(request, solved));
    }

    /** What is hired is taken from spot to spot no more often than need be, where that costs nothing else. */
    private static Solved fewerMoves(Request request, Solved solved) {
        Schedule fewer = ListScheduler.fewerHireMoves(request, solved.schedule());
        return PlanChecker.check(request, fewer).legal()
                ? new Solved(fewer, solved.levels(), solved.ended(), solved.remark())
                : solved;
    }

    /** A longer look where that found a better one. */
    private static Schedule begin(Request request, Schedule first) {
        Schedule longer = ListScheduler.longer(request);
        Verdict verdict = PlanChecker.check(request, longer);
        Verdict was = PlanChecker.check(request, first);
        int better = Arrays.stream(Goal.values())
                .mapToInt(goal -> Long.compare(value(verdict, goal), value(was, goal)))
                .filter(difference -> difference != 0)
                .findFirst()
                .orElse(0);
        return verdict.legal() && better < 0 ? longer : first;
    }

    private static long value(Verdict verdict, Goal goal) {
        Long value = verdict.values().get(goal);
        return value == null ? 0 : value;
    }

    /** Were the list scheduler ever wrong, what is begun and nothing else is still a plan, and says that all is missed. */
    private static Schedule first(Request request) {
        Schedule listed = ListScheduler.schedule(request);
        return PlanChecker.check(request, listed).legal()
                ? listed
                : new Schedule(Frozen.slots(request.job(), request.log()));
    }

    /** The values of all goals as the checker counts them, with what is known of their bounds. */
    private static Solved withAllGoals(Request request, Solved solved) {
        Map<Goal, Long> values = PlanChecker.check(request, solved.schedule()).values();
        List<Level> levels = new ArrayList<>();
        Arrays.stream(Goal.values()).filter(values::containsKey).forEach(goal -> {
            long value = values.getOrDefault(goal, 0L);
            long bound = solved.levels().stream()
                    .filter(level -> level.goal() == goal)
                    .mapToLong(Level::bound)
                    .findFirst()
                    .orElse(0);
            levels.add(new Level(goal, value, Math.min(bound, value)));
        });
        return new Solved(solved.schedule(), levels, solved.ended(), solved.remark());
    }
}
