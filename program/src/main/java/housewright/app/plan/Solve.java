package housewright.app.plan;

import housewright.plan.Goal;
import housewright.plan.Level;
import housewright.plan.Plan;
import housewright.plan.Progress;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Solved;
import housewright.plan.report.Reports;
import housewright.study.PlanBasis;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A plan that is being made in the background, or was. Safe for several threads. */
public final class Solve {
    /** How far it is. */
    public enum State {
        RUNNING,
        DONE,
        /** By a fault; nothing is lost but the search. */
        FAILED
    }

    private final long revision;
    private final PlanBasis basis;
    private final Request request;
    private final Instant begun;
    private final Map<Goal, Level> levels = new EnumMap<>(Goal.class);
    private int planned;
    private volatile boolean stopped;
    private volatile boolean telling;
    private @Nullable Plan plan;
    private String trouble = "";

    Solve(long revision, PlanBasis basis, Request request, Instant begun) {
        this.revision = revision;
        this.basis = basis;
        this.request = request;
        this.begun = begun;
    }

    /** Runs it on this thread. */
    void run(Planning planning) {
        try {
            Solved solved = planning.search(request, new Listener());
            Plan found = Reports.standing(request, solved);
            telling = !found.missed().isEmpty();
            finish(found, "");
            if (telling) {
                finish(Reports.plan(request, solved), ""); // what clashes takes long to tell where much is missed
            }
        } catch (RuntimeException | LinkageError | OutOfMemoryError e) {
            finish(null, "The search failed: " + e + ". The project is as it was.");
        } finally {
            telling = false;
        }
    }

    private synchronized void finish(@Nullable Plan made, String why) {
        plan = made == null ? plan : made;
        trouble = plan == null ? why : "";
    }

    /** Asks it to end; what it has found until then is its plan. */
    public void stop() {
        stopped = true;
    }

    public boolean isStopped() {
        return stopped;
    }

    public synchronized State state() {
        return plan != null ? State.DONE : trouble.isEmpty() ? State.RUNNING : State.FAILED;
    }

    /** The plan; null while it runs, and where it failed. */
    public synchronized @Nullable Plan plan() {
        return plan;
    }

    /** Whether it is still being worked out what clashes in a plan that is there already. */
    public boolean isTelling() {
        return telling;
    }

    /** Why it failed, as a sentence; empty otherwise. */
    public synchronized String trouble() {
        return trouble;
    }

    /** The best so far and its bounds, the weightiest goal first. */
    public synchronized List<Level> levels() {
        return List.copyOf(levels.values());
    }

    /** Tasks in the best so far; 0 while there is none. */
    public synchronized int planned() {
        return planned;
    }

    /** The revision of the project that it plans. */
    public long revision() {
        return revision;
    }

    public PlanBasis basis() {
        return basis;
    }

    public Request request() {
        return request;
    }

    public Instant begun() {
        return begun;
    }

    private final class Listener implements Progress {
        @Override
        public void better(Schedule schedule, Level level) {
            synchronized (Solve.this) {
                planned = schedule.slots().size();
                levels.put(level.goal(), level);
            }
        }

        @Override
        public void bound(Level level) {
            synchronized (Solve.this) {
                levels.put(level.goal(), level);
            }
        }

        @Override
        public boolean stopped() {
            return stopped;
        }
    }
}
