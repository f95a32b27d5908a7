package housewright.plan.list;

import housewright.plan.Job;
import housewright.plan.Weights;
import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Kept;
import housewright.plan.axis.Grid.Unit;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Positions and crews of all units, with what they cost.
 *
 * @param starts of each unit's pieces; null where it is left out
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Draft(int[] @Nullable [] starts, long[] crews, long missed, int moved, int finish, int hireDays, long idle) {

    static Draft of(Grid grid, int[] @Nullable [] starts, long[] crews, @Nullable Draft before) {
        long missed = 0;
        int moved = 0;
        int finish = 0;
        for (Unit unit : grid.units) {
            int[] at = starts[unit.index()];
            if (at == null) {
                missed += Weights.USUAL.out(unit.task());
            } else if (end(unit, at) > unit.due()) {
                missed += Weights.USUAL.late(unit.task());
            }
            if (at != null && unit.counts()) {
                finish = Math.max(finish, end(unit, at));
            }
            if (before != null) {
                int[] was = before.starts[unit.index()];
                if (was != null
                        && (at == null || was[0] != at[0] || before.crews[unit.index()] != crews[unit.index()])) {
                    moved++;
                }
            }
        }
        for (Kept promise : grid.promises) {
            if (!kept(grid, promise, starts)) {
                missed += Weights.USUAL.promise();
            }
        }
        return new Draft(starts, crews, missed, moved, finish, hireDays(grid, starts), idle(grid, starts, crews));
    }

    static int end(Unit unit, int[] starts) {
        return starts[starts.length - 1] + unit.pieces()[starts.length - 1];
    }

    static boolean kept(Grid grid, Kept promise, int[] @Nullable [] starts) {
        return (promise.canWait() && waits(promise, starts)) || (promise.canProve() && proves(grid, promise, starts));
    }

    static boolean waits(Kept promise, int[] @Nullable [] starts) {
        for (int unit : promise.apart()) {
            int[] at = starts[unit];
            if (at != null && at[0] < promise.over()) {
                return false;
            }
        }
        return true;
    }

    static boolean proves(Grid grid, Kept promise, int[] @Nullable [] starts) {
        for (int unit : promise.proof()) {
            int[] at = starts[unit];
            if (at == null || end(grid.units.get(unit), at) > promise.begins()) {
                return false;
            }
        }
        return true;
    }

    private static int hireDays(Grid grid, int[] @Nullable [] starts) {
        Set<Integer> days = new HashSet<>();
        for (Unit unit : grid.units) {
            String hire = unit.task().means().hire();
            int[] at = starts[unit.index()];
            if (hire != null && at != null) {
                int which = grid.job.hires().indexOf(grid.job.hire(hire));
                for (int each : at) {
                    if (!grid.hiredAlready.get(which).contains(grid.day(each))) {
                        days.add(which * 10_000 + grid.day(each));
                    }
                }
            }
        }
        return days.size() + grid.hiredAlready.stream().mapToInt(Set::size).sum();
    }

    /** Ticks between work within people's days on site, without the road. */
    private static long idle(Grid grid, int[] @Nullable [] starts, long[] crews) {
        int people = grid.job.people().size();
        int days = grid.job.days();
        int[] first = new int[people * days];
        int[] last = new int[people * days];
        int[] work = new int[people * days];
        for (Unit unit : grid.units) {
            int[] at = starts[unit.index()];
            if (at == null || unit.task().site().remote()) {
                continue;
            }
            for (int piece = 0; piece < at.length; piece++) {
                int from = grid.real[at[piece]];
                int day = from * grid.job.tick() / Job.DAY;
                for (long left = crews[unit.index()]; left != 0; left &= left - 1) {
                    int cell = Long.numberOfTrailingZeros(left) * days + day;
                    first[cell] = work[cell] == 0 ? from : Math.min(first[cell], from);
                    last[cell] = Math.max(last[cell], from + unit.pieces()[piece]);
                    work[cell] += unit.pieces()[piece];
                }
            }
        }
        long idle = 0;
        for (int cell = 0; cell < work.length; cell++) {
            idle += last[cell] - first[cell] - work[cell];
        }
        return idle;
    }

    /** Whether this one is better: by what is missed, then by what moved, by the finish, hire days and idle time. */
    boolean betterThan(Draft other) {
        long[] mine = {missed, moved, finish, hireDays, idle};
        long[] theirs = {other.missed, other.moved, other.finish, other.hireDays, other.idle};
        return java.util.Arrays.compare(mine, theirs) < 0;
    }
}
