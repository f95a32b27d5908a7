package housewright.plan.list;

import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Takes out of an old draft only what can no longer stay, and puts it into the earliest hole that leaves the rest alone. */
final class Repair {
    private final Grid grid;
    private final Builder builder;
    private final Draft old;
    private final List<Unit> order;

    Repair(Grid grid, Builder builder, Draft old) {
        this.grid = grid;
        this.builder = builder;
        this.old = old;
        List<Unit> sorted = new ArrayList<>(Urgency.order(grid, builder));
        int[] rank = new int[grid.units.size()];
        for (int index = 0; index < sorted.size(); index++) {
            rank[sorted.get(index).index()] = index;
        }
        // Those that had a time in order of it; the order of precedence decides between the others.
        sorted.sort(Comparator.<Unit>comparingInt(unit -> {
                    int[] at = old.starts()[unit.index()];
                    return at == null ? Integer.MAX_VALUE : at[0];
                })
                .thenComparingInt(unit -> rank[unit.index()]));
        this.order = sorted;
    }

    /** The repaired draft when units may not start before given positions. */
    Draft with(int[] earliest) {
        boolean[] leaves = new boolean[grid.units.size()];
        while (true) {
            int[] @Nullable [] starts = new int[grid.units.size()][];
            long[] crews = new long[grid.units.size()];
            Board board = builder.board();
            for (Unit unit : order) {
                if (!leaves[unit.index()] && !stays(board, unit, starts, crews, earliest)) {
                    leaves[unit.index()] = true;
                }
            }
            if (refill(board, starts, crews, earliest, leaves)) {
                return Draft.of(grid, starts, crews, old);
            }
        }
    }

    private boolean stays(Board board, Unit unit, int[] @Nullable [] starts, long[] crews, int[] earliest) {
        int[] at = old.starts()[unit.index()];
        long crew = old.crews()[unit.index()];
        if (at == null || unit.neverPossible() || at[0] < earliest[unit.index()] || !has(unit.crews(), crew)) {
            return false;
        }
        for (int before : unit.before()) {
            int[] ends = old.starts()[before];
            if (ends == null || Draft.end(grid.units.get(before), ends) > at[0]) {
                return false;
            }
        }
        int[] today = new int[grid.job.days()];
        for (int piece = 0; piece < at.length; piece++) {
            int ticks = unit.pieces()[piece];
            int day = grid.day(at[piece]);
            today[day] += ticks;
            if (!board.fits(unit, ticks, at[piece], null)
                    || !board.crewFits(unit, crew, ticks, at[piece])
                    || !board.dayFits(crew, today[day], day)) {
                return false;
            }
        }
        for (int piece = 0; piece < at.length; piece++) {
            board.take(unit, crew, unit.pieces()[piece], at[piece]);
        }
        starts[unit.index()] = at;
        crews[unit.index()] = crew;
        return true;
    }

    private static boolean has(long[] crews, long crew) {
        return java.util.Arrays.stream(crews).anyMatch(each -> each == crew);
    }

    /** Places what left; false when more has to leave, which is marked then. */
    private boolean refill(Board board, int[] @Nullable [] starts, long[] crews, int[] earliest, boolean[] leaves) {
        boolean[] out = new boolean[grid.units.size()];
        for (Unit unit : Urgency.order(grid, builder)) {
            int self = unit.index();
            int from = earliest[self];
            for (int before : unit.before()) {
                out[self] |= out[before];
                int[] at = starts[before];
                if (at != null) {
                    from = Math.max(from, Draft.end(grid.units.get(before), at));
                }
            }
            if (leaves[self]
                    && (out[self] || !builder.early(board, unit, from, null, starts, crews, old.crews()[self]))) {
                out[self] = true;
            }
            int[] at = starts[self];
            boolean again = false;
            for (int next : builder.after(self)) {
                int[] follows = starts[next];
                if (follows != null && (at == null || follows[0] < Draft.end(unit, at)) && !leaves[next]) {
                    leaves[next] = true;
                    again = true;
                }
            }
            if (again) {
                return false;
            }
        }
        return true;
    }
}
