package housewright.plan.list;

import housewright.plan.Goal;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Kept;
import housewright.plan.axis.Grid.Unit;
import housewright.plan.axis.Measures;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Finds legal schedules quickly; the same request gives the same schedule. */
public final class ListScheduler {
    /** Units placed in all, which bounds the work whatever the size. */
    private static final int PLACED = 8_000;

    private static final int LONGER = 8;

    private final Grid grid;
    private final Builder builder;
    private final Random random;
    private final int tolerance;
    private final @Nullable Draft before;
    private Draft best;

    private ListScheduler(Request request, Grid grid) {
        this.grid = grid;
        this.builder = new Builder(grid);
        this.random = new Random(request.effort().seed());
        this.tolerance = request.effort().tolerance() / request.job().tick();
        this.before = request.before() == null ? null : draft(grid, request.before());
        this.best = Draft.of(grid, new int[grid.units.size()][], new long[grid.units.size()], before);
    }

    /** A legal schedule: everything that fits, as little missed as a quick look finds. */
    public static Schedule schedule(Request request) {
        return schedule(request, Grid.of(request.job(), request.log()), rounds(request, 1));
    }

    /** One that took some eight times the work, never worse than {@link #schedule(Request)}. */
    public static Schedule longer(Request request) {
        return schedule(request, Grid.of(request.job(), request.log()), rounds(request, LONGER));
    }

    private static int rounds(Request request, int times) {
        return times * Math.max(6, PLACED / Math.max(1, request.job().tasks().size()));
    }

    /**
     * As {@link #schedule(Request)}, with more or less work.
     *
     * @param rounds orders tried, 1 or more
     */
    public static Schedule schedule(Request request, Grid grid, int rounds) {
        ListScheduler scheduler = new ListScheduler(request, grid);
        if (scheduler.before != null) {
            scheduler.repair();
        }
        scheduler.search(rounds);
        scheduler.fewerHireDays(rounds);
        return grid.schedule(scheduler.best.starts(), scheduler.best.crews());
    }

    /**
     * A schedule in which what is hired is taken from spot to spot less often, where one is found that misses no more, ends no
     * later, takes no more days and, after a snag, moves no more; else the same.
     */
    public static Schedule fewerHireMoves(Request request, Schedule schedule) {
        Grid grid = Grid.of(request.job(), request.log());
        ListScheduler scheduler = new ListScheduler(request, grid);
        Draft old = draft(grid, schedule);
        scheduler.best = Draft.of(grid, old.starts(), old.crews(), scheduler.before);
        return scheduler.together(request, schedule);
    }

    /** Tries the tasks of one spot after another in one go, when the first of them is done or when the last is. */
    private Schedule together(Request request, Schedule schedule) {
        Schedule fewest = schedule;
        for (List<Unit> users : grid.byHire().values()) {
            List<String> spots = users.stream()
                    .map(unit -> unit.task().site().spot())
                    .distinct()
                    .sorted()
                    .toList();
            for (int turn = 0; turn < 4 * spots.size() && spots.size() > 1; turn++) {
                Draft draft = inOneGo(users, spots.get(turn / 2 % spots.size()), turn % 2 == 0);
                Schedule tried = grid.schedule(draft.starts(), draft.crews());
                if (draft.missed() <= best.missed()
                        && draft.moved() <= best.moved()
                        && draft.finish() <= best.finish()
                        && draft.hireDays() <= best.hireDays()
                        && moves(request, tried) < moves(request, fewest)) {
                    best = draft;
                    fewest = tried;
                }
            }
        }
        return fewest;
    }

    private Draft inOneGo(List<Unit> users, String spot, boolean early) {
        double[] key = byStart(best);
        List<Unit> there = users.stream()
                .filter(unit -> unit.task().site().spot().equals(spot))
                .toList();
        double at = there.stream()
                .mapToDouble(unit -> key[unit.index()])
                .reduce(early ? Math::min : Math::max)
                .orElse(0);
        there.forEach(unit -> key[unit.index()] = at + key[unit.index()] * 1e-6);
        return builder.forward(key, earliest(waitingNow()), usedDays(), before);
    }

    private static long moves(Request request, Schedule schedule) {
        Long moves = Measures.of(request.job(), request.log(), null, schedule).get(Goal.HIRE_MOVES);
        return moves == null ? 0 : moves;
    }

    private boolean[] waitingNow() {
        boolean[] waiting = new boolean[grid.promises.size()];
        for (int index = 0; index < waiting.length; index++) {
            waiting[index] = grid.promises.get(index).canWait() && Draft.waits(grid.promises.get(index), best.starts());
        }
        return waiting;
    }

    private boolean[][] usedDays() {
        boolean[][] days = new boolean[grid.job.hires().size()][grid.job.days()];
        for (int hire = 0; hire < days.length; hire++) {
            for (int day : usedDays(hire)) {
                days[hire][day] = true;
            }
        }
        return days;
    }

    private static Draft draft(Grid grid, Schedule schedule) {
        int[] @Nullable [] starts = grid.positions(schedule);
        long[] crews = new long[grid.units.size()];
        schedule.slots().forEach(slot -> {
            Integer unit = grid.unitOf.get(slot.task());
            if (unit != null) {
                crews[unit] = grid.crew(slot.people());
            }
        });
        return Draft.of(grid, starts, crews, null);
    }

    private void search(int rounds) {
        Urgency urgency = new Urgency(grid, builder);
        boolean[] waits = new boolean[grid.promises.size()];
        boolean[] proves = new boolean[grid.promises.size()];
        for (int round = 0; round < rounds; round++) {
            double[] key;
            if (round > 0 && random.nextInt(3) > 0) {
                key = byStart(best);
                shake(key, grid.length * (0.01 + 0.1 * random.nextDouble()));
            } else {
                key = urgency.of(proves);
                if (round > 0) {
                    shake(key, grid.length * 0.3 * random.nextDouble());
                }
            }
            boolean[] waiting = waits.clone();
            if (round > 0 && waiting.length > 0 && random.nextInt(3) == 0) {
                int some = random.nextInt(waiting.length);
                waiting[some] = !waiting[some];
            }
            Draft draft = builder.forward(key, earliest(waiting), null, before);
            for (int again = 0; again < 8 && waitForBroken(draft, waiting, proves); again++) {
                keep(draft);
                draft = builder.forward(byStart(draft), earliest(waiting), null, before);
            }
            if (justified(draft, waiting)) {
                waits = waiting.clone();
            }
        }
    }

    /** Pushed late and then early again, which closes holes; whether that gave the best so far. */
    private boolean justified(Draft draft, boolean[] waiting) {
        boolean best = keep(draft);
        Draft now = draft;
        for (int pass = 0; pass < 2; pass++) {
            double[] key = builder.backward(now);
            optionalLast(key);
            Draft next = builder.forward(key, earliest(waiting), null, before);
            if (!next.betterThan(now)) {
                break;
            }
            now = next;
            best |= keep(now);
        }
        return best;
    }

    /** Lets the old way stand until after the events that a draft spoils; whether there is anything new in that. */
    private boolean waitForBroken(Draft draft, boolean[] waiting, boolean[] proves) {
        boolean changed = false;
        for (int index = 0; index < grid.promises.size(); index++) {
            Kept promise = grid.promises.get(index);
            if (!Draft.kept(grid, promise, draft.starts())) {
                if (promise.canWait() && !waiting[index]) {
                    waiting[index] = true;
                    changed = true;
                } else if (promise.canProve() && !proves[index]) {
                    proves[index] = true;
                    changed = true;
                }
            }
        }
        return changed;
    }

    private boolean keep(Draft draft) {
        if (draft.betterThan(best)) {
            best = draft;
            return true;
        }
        return false;
    }

    private int[] earliest(boolean[] waiting) {
        int[] earliest = new int[grid.units.size()];
        for (int index = 0; index < waiting.length; index++) {
            if (waiting[index]) {
                for (int unit : grid.promises.get(index).apart()) {
                    earliest[unit] =
                            Math.max(earliest[unit], grid.promises.get(index).over());
                }
            }
        }
        return earliest;
    }

    private double[] byStart(Draft draft) {
        double[] key = new double[grid.units.size()];
        for (Unit unit : grid.units) {
            int[] at = draft.starts()[unit.index()];
            key[unit.index()] = at == null ? grid.length * random.nextDouble() : at[0];
        }
        optionalLast(key);
        return key;
    }

    private void optionalLast(double[] key) {
        for (Unit unit : grid.units) {
            if (!unit.task().mandatory()) {
                key[unit.index()] += grid.length;
            }
        }
    }

    private void shake(double[] key, double by) {
        for (int index = 0; index < key.length; index++) {
            key[index] += by * (random.nextDouble() - 0.5);
        }
    }

    /** Tries to do without one of the days on which a machine is hired; the finish may move by the tolerance. */
    private void fewerHireDays(int rounds) {
        if (grid.job.hires().isEmpty() || before != null) {
            return;
        }
        int latest = best.finish() + tolerance;
        boolean[][] days = new boolean[grid.job.hires().size()][grid.job.days()];
        for (boolean[] each : days) {
            Arrays.fill(each, true);
        }
        for (int round = 0; round < Math.max(3, rounds / 3) && best.hireDays() > 1; round++) {
            int hire = random.nextInt(days.length);
            int[] used = usedDays(hire);
            if (used.length < 2) {
                continue;
            }
            boolean[][] fewer = Arrays.stream(days).map(boolean[]::clone).toArray(boolean[][]::new);
            fewer[hire][used[random.nextInt(used.length)]] = false;
            for (int day = 0; day < fewer[hire].length; day++) {
                int each = day;
                fewer[hire][day] &= Arrays.stream(used).anyMatch(some -> some == each);
            }
            Draft draft = builder.forward(byStart(best), earliest(waitingNow()), fewer, before);
            if (draft.missed() <= best.missed() && draft.finish() <= latest && draft.hireDays() < best.hireDays()) {
                best = draft;
                days = fewer;
            }
        }
    }

    private int[] usedDays(int hire) {
        String id = grid.job.hires().get(hire).id();
        return grid.units.stream()
                .filter(unit -> id.equals(unit.task().means().hire()))
                .flatMapToInt(unit -> {
                    int[] at = best.starts()[unit.index()];
                    return at == null
                            ? java.util.stream.IntStream.empty()
                            : Arrays.stream(at).map(grid::day);
                })
                .distinct()
                .sorted()
                .toArray();
    }

    private void repair() {
        Draft old = java.util.Objects.requireNonNull(before);
        boolean[] waiting = new boolean[grid.promises.size()];
        for (int index = 0; index < waiting.length; index++) {
            waiting[index] = grid.promises.get(index).canWait() && Draft.waits(grid.promises.get(index), old.starts());
        }
        Repair repair = new Repair(grid, builder, old);
        Draft plain = repair.with(new int[grid.units.size()]);
        keep(plain);
        keep(repair.with(earliest(waiting)));
        boolean[] more = new boolean[waiting.length];
        Draft draft = plain;
        for (int again = 0; again < 8 && waitForBroken(draft, more, new boolean[more.length]); again++) {
            draft = repair.with(earliest(more));
            keep(draft);
        }
    }
}
