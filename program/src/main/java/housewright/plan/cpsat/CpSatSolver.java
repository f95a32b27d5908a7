package housewright.plan.cpsat;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import housewright.plan.Effort;
import housewright.plan.Goal;
import housewright.plan.Level;
import housewright.plan.Progress;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Solved;
import housewright.plan.Solver;
import housewright.plan.Weights;
import housewright.plan.axis.Bound;
import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Unit;
import housewright.plan.axis.Measures;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Solves with CP-SAT, in this process. */
public final class CpSatSolver implements Solver {
    /** Units from which on the usual simplifying of the model takes longer than it is worth. */
    private static final int LARGE = 130;
    /** Units up to which idle time is looked at. */
    private static final int IDLE_UP_TO = 200;
    /** What the solver counts as one unit of its work takes some seconds; measured on the machine of 2 cores. */
    private static final double SECONDS_A_UNIT = 5;

    private volatile boolean stopped;
    private volatile @Nullable CpSolver running;

    public CpSatSolver() {}

    /** Loads the native library, which takes most of a second the first time. */
    public static void load() {
        Loader.loadNativeLibraries();
    }

    /** Ends the search as soon as may be, from any thread; the best so far is the answer. */
    public void stop() {
        stopped = true;
        CpSolver now = running;
        if (now != null) {
            now.stopSearch();
        }
    }

    @Override
    public Solved solve(Request request, Schedule first, Progress progress) {
        load();
        return new Search(request, first, progress).run();
    }

    /** One request. */
    private final class Search {
        private final Request request;
        private final Progress progress;
        private final Effort effort;
        private final Grid grid;
        private final Bound bound;
        private final @Nullable Found before;
        private final long brokenAlready;
        private final Map<Goal, Long> bounds = new EnumMap<>(Goal.class);
        private Found best;
        private double left;
        private boolean allProved = true;

        Search(Request request, Schedule first, Progress progress) {
            this.request = request;
            this.progress = progress;
            this.effort = request.effort();
            this.grid = Grid.of(request.job(), request.log());
            this.bound = Bound.of(grid);
            this.best = found(first);
            Schedule old = request.before();
            this.before = old == null ? null : found(old);
            this.brokenAlready = (long) grid.brokenAlready * Weights.USUAL.promise();
            this.left = effort.seconds();
        }

        private Found found(Schedule schedule) {
            long[] crews = new long[grid.units.size()];
            schedule.slots().forEach(slot -> {
                Integer unit = grid.unitOf.get(slot.task());
                if (unit != null) {
                    crews[unit] = grid.crew(slot.people());
                }
            });
            return new Found(grid.positions(schedule), crews);
        }

        Solved run() {
            if (!grid.units.isEmpty() && grid.length > 0) {
                levels();
            } else {
                bounds.put(Goal.MISSED, value(best, Goal.MISSED));
                bounds.put(Goal.FINISH, value(best, Goal.FINISH));
            }
            Schedule schedule = grid.schedule(best.starts(), best.crews());
            Map<Goal, Long> values = measures(best);
            List<Level> levels = new ArrayList<>();
            bounds.forEach((goal, least) -> {
                long value = values.getOrDefault(goal, 0L);
                levels.add(new Level(goal, value, Math.min(least, value)));
            });
            Solved.Ended ended = stopped || progress.stopped()
                    ? Solved.Ended.STOPPED
                    : allProved ? Solved.Ended.PROVED : Solved.Ended.LIMIT;
            return new Solved(schedule, levels, ended, "");
        }

        private void levels() {
            long missed = value(best, Goal.MISSED);
            bounds.put(Goal.MISSED, missed == brokenAlready ? missed : brokenAlready);
            if (missed > brokenAlready) {
                level(new Wanted(Goal.MISSED, false, 0, grid.length, Integer.MAX_VALUE, false), 0.4);
                missed = value(best, Goal.MISSED);
            }
            boolean all = missed == brokenAlready;
            long may = missed - brokenAlready;
            if (before != null) {
                level(new Wanted(Goal.MOVED, all, may, grid.length, Integer.MAX_VALUE, false), 1);
                return;
            }
            bounds.put(Goal.FINISH, all ? minute(bound.finish) : 0L);
            boolean people = !request.job().people().isEmpty();
            level(new Wanted(Goal.FINISH, all, may, grid.length, Integer.MAX_VALUE, false), people ? 0.65 : 1);
            int finish = finish(best) + effort.tolerance() / request.job().tick();
            if (!grid.byHire().isEmpty()) {
                level(new Wanted(Goal.HIRE_DAYS, all, may, finish, Integer.MAX_VALUE, false), 0.7);
            }
            int days = value(best, Goal.HIRE_DAYS).intValue()
                    - grid.hiredAlready.stream().mapToInt(java.util.Set::size).sum();
            if (people && grid.units.size() <= IDLE_UP_TO) {
                level(new Wanted(Goal.IDLE, all, may, Math.max(finish(best), finish), days, true), 1);
            }
        }

        private Map<Goal, Long> measures(Found found) {
            return Measures.of(
                    request.job(), request.log(), request.before(), grid.schedule(found.starts(), found.crews()));
        }

        private Long value(Found found, Goal goal) {
            Long value = measures(found).get(goal);
            return value == null ? 0 : value;
        }

        private int finish(Found found) {
            int finish = 0;
            for (Unit unit : grid.units) {
                int[] at = found.starts()[unit.index()];
                if (at != null && unit.counts()) {
                    finish = Math.max(finish, at[at.length - 1] + unit.pieces()[at.length - 1]);
                }
            }
            return finish;
        }

        private long minute(int position) {
            return Math.max(grid.endMinute(Math.clamp(position, 0, grid.length)), grid.frozenFinish);
        }

        /** Makes one goal small, with a share of the work that is left. */
        private void level(Wanted wanted, double share) {
            if (stopped || progress.stopped() || left <= 0.01) {
                allProved = false;
                return;
            }
            Model model = new Model(grid, bound, wanted, best, before);
            CpSolver solver = new CpSolver();
            double budget = left * share;
            parameters(solver, budget);
            Told told = new Told(model, wanted);
            running = solver;
            CpSolverStatus status = stopped ? CpSolverStatus.UNKNOWN : solver.solve(model.model, told);
            running = null;
            left -= effort.repeatable() ? solver.response().getDeterministicTime() * SECONDS_A_UNIT : solver.wallTime();
            boolean some = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
            if (some) {
                take(wanted, model.read(solver::value));
            }
            allProved &= status == CpSolverStatus.OPTIMAL;
            if (some) {
                long least = goalValue(wanted, solver.bestObjectiveBound());
                bounds.merge(wanted.goal(), least, Math::max);
                progress.bound(level(wanted, best));
            } else {
                bounds.putIfAbsent(wanted.goal(), 0L);
            }
        }

        /** Keeps what is found where it is no worse than what there was. */
        private void take(Wanted wanted, Found found) {
            Map<Goal, Long> is = measures(found);
            Map<Goal, Long> was = measures(best);
            if (is.getOrDefault(wanted.goal(), 0L) < was.getOrDefault(wanted.goal(), 0L)
                    && (wanted.goal() == Goal.MISSED
                            || is.getOrDefault(Goal.MISSED, 0L) <= was.getOrDefault(Goal.MISSED, 0L))) {
                best = found;
            }
        }

        private Level level(Wanted wanted, Found found) {
            long value = value(found, wanted.goal());
            return new Level(wanted.goal(), value, Math.min(value, bounds.getOrDefault(wanted.goal(), 0L)));
        }

        /** A bound of the model, which counts positions and only what is open, in the units of the goal. */
        private long goalValue(Wanted wanted, double modelBound) {
            long least = (long) Math.ceil(modelBound - 1e-6);
            return switch (wanted.goal()) {
                case MISSED -> least + brokenAlready;
                case MOVED -> least;
                case FINISH -> minute((int) least);
                case HIRE_DAYS ->
                    least
                            + grid.hiredAlready.stream()
                                    .mapToInt(java.util.Set::size)
                                    .sum();
                case HIRE_MOVES, IDLE -> 0; // days and crews were kept, so this bounds nothing else
            };
        }

        private void parameters(CpSolver solver, double budget) {
            var parameters = solver.getParameters();
            parameters.setRandomSeed((int) (effort.seed() & 0x7fffffff));
            if (grid.units.size() > LARGE) {
                parameters.setCpModelProbingLevel(0).setSymmetryLevel(0).setMaxPresolveIterations(1);
            }
            if (effort.repeatable()) {
                parameters.setNumWorkers(1).setMaxDeterministicTime(budget / SECONDS_A_UNIT);
            } else {
                parameters.setNumWorkers(8).setMaxTimeInSeconds(budget);
            }
        }

        /** Hears of each better plan. */
        private final class Told extends CpSolverSolutionCallback {
            private final Model model;
            private final Wanted wanted;

            Told(Model model, Wanted wanted) {
                this.model = model;
                this.wanted = wanted;
            }

            @Override
            public void onSolutionCallback() {
                Found found = model.read(this::value);
                long least = goalValue(wanted, bestObjectiveBound());
                bounds.merge(wanted.goal(), least, Math::max);
                progress.better(grid.schedule(found.starts(), found.crews()), Search.this.level(wanted, found));
                if (stopped || progress.stopped()) {
                    stopSearch();
                }
            }
        }
    }
}
