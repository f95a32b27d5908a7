package housewright.plan.list;

import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/** Puts units on a board one after another, each as early, or as late, as it fits. */
final class Builder {
    private final Grid grid;
    private final Board.Uses uses;
    private final int[][] after;
    /** How much of the work only, or mostly, somebody could do: such people are spared for it. */
    private final double[] wanted;

    Builder(Grid grid) {
        this.grid = grid;
        this.uses = Board.Uses.of(grid);
        List<List<Integer>> next = new ArrayList<>();
        grid.units.forEach(unit -> next.add(new ArrayList<>()));
        for (Unit unit : grid.units) {
            for (int before : unit.before()) {
                next.get(before).add(unit.index());
            }
        }
        after = new int[next.size()][];
        for (int index = 0; index < after.length; index++) {
            after[index] = next.get(index).stream().mapToInt(Integer::intValue).toArray();
        }
        wanted = new double[grid.job.people().size()];
        for (Unit unit : grid.units) {
            for (long crew : unit.crews()) {
                for (long left = crew; left != 0; left &= left - 1) {
                    wanted[Long.numberOfTrailingZeros(left)] += (double) unit.ticks() / unit.crews().length;
                }
            }
        }
    }

    int[] after(int unit) {
        return after[unit];
    }

    Board board() {
        return new Board(grid, uses);
    }

    /**
     * Every unit as early as it fits, the least key first among those whose predecessors are placed.
     *
     * @param key urgency; less is sooner
     * @param earliest position before which a unit may not start
     * @param days days each hire may be used on, or null for any
     */
    Draft forward(double[] key, int[] earliest, boolean @Nullable [][] days, @Nullable Draft before) {
        int count = grid.units.size();
        int[] @Nullable [] starts = new int[count][];
        long[] crews = new long[count];
        int[] waiting = new int[count];
        int[] ready = new int[count];
        var queue = new PriorityQueue<Integer>(
                Comparator.<Integer>comparingDouble(unit -> key[unit]).thenComparing(Comparator.naturalOrder()));
        for (Unit unit : grid.units) {
            waiting[unit.index()] = unit.before().length;
            if (unit.before().length == 0) {
                queue.add(unit.index());
            }
        }
        Board board = board();
        boolean[] out = new boolean[count];
        while (!queue.isEmpty()) {
            Unit unit = grid.units.get(queue.remove());
            int self = unit.index();
            if (out[self] || !early(board, unit, Math.max(ready[self], earliest[self]), days, starts, crews, 0)) {
                out[self] = true;
            }
            for (int next : after[self]) {
                out[next] |= out[self];
                int[] at = starts[self];
                if (at != null) {
                    ready[next] = Math.max(ready[next], Draft.end(unit, at));
                }
                if (--waiting[next] == 0) {
                    queue.add(next);
                }
            }
        }
        return Draft.of(grid, starts, crews, before);
    }

    /**
     * Places a unit as early as it fits.
     *
     * @param preferred crew to take when it is as early as any; 0 for none
     */
    boolean early(
            Board board,
            Unit unit,
            int from,
            boolean @Nullable [][] days,
            int[] @Nullable [] starts,
            long[] crews,
            long preferred) {
        if (unit.neverPossible()) {
            return false;
        }
        if (unit.pieces().length == 1) {
            int ticks = unit.pieces()[0];
            for (int at = from; at + ticks <= grid.length; at++) {
                if (board.fits(unit, ticks, at, days)) {
                    long crew = crew(board, unit, ticks, at, preferred);
                    if (crew >= 0) {
                        board.take(unit, crew, ticks, at);
                        starts[unit.index()] = new int[] {at};
                        crews[unit.index()] = crew;
                        return true;
                    }
                }
            }
            return false;
        }
        int[] best = null;
        long bestCrew = -1;
        for (long crew : unit.crews()) {
            int[] at = pieces(board, unit, crew, from, days);
            if (at != null
                    && (best == null
                            || Draft.end(unit, at) < Draft.end(unit, best)
                            || (Draft.end(unit, at) == Draft.end(unit, best)
                                    && (crew == preferred
                                            || (bestCrew != preferred && cost(crew) < cost(bestCrew)))))) {
                best = at;
                bestCrew = crew;
            }
        }
        if (best == null) {
            return false;
        }
        for (int piece = 0; piece < best.length; piece++) {
            board.take(unit, bestCrew, unit.pieces()[piece], best[piece]);
        }
        starts[unit.index()] = best;
        crews[unit.index()] = bestCrew;
        return true;
    }

    /** Positions of the pieces of a unit with one crew, each as early as it fits; null when they do not all fit. */
    private int @Nullable [] pieces(Board board, Unit unit, long crew, int from, boolean @Nullable [][] days) {
        int[] at = new int[unit.pieces().length];
        int next = from;
        int[] today = new int[grid.job.days()];
        Integer pinned = unit.task().timing().start();
        for (int piece = 0; piece < at.length; piece++) {
            int ticks = unit.pieces()[piece];
            int found = -1;
            for (int each = next; each + ticks <= grid.length && found < 0; each++) {
                if (board.fits(unit, ticks, each, days)
                        && board.crewFits(unit, crew, ticks, each)
                        && board.dayFits(crew, ticks + today[grid.day(each)], grid.day(each))) {
                    found = each;
                }
                if (piece == 0 && pinned != null && grid.real[each] * grid.job.tick() >= pinned) {
                    break;
                }
            }
            if (found < 0 || (piece == 0 && pinned != null && grid.real[found] * grid.job.tick() != pinned)) {
                return null;
            }
            at[piece] = found;
            today[grid.day(found)] += ticks;
            next = found + ticks;
        }
        return at;
    }

    private long crew(Board board, Unit unit, int ticks, int at, long preferred) {
        long best = -1;
        for (long crew : unit.crews()) {
            if (board.crewFits(unit, crew, ticks, at)) {
                if (crew == preferred) {
                    return crew;
                }
                if (best < 0 || cost(crew) < cost(best)) {
                    best = crew;
                }
            }
        }
        return best;
    }

    private double cost(long crew) {
        double cost = 0;
        for (long left = crew; left != 0; left &= left - 1) {
            cost += wanted[Long.numberOfTrailingZeros(left)];
        }
        return cost;
    }

    /** Start positions when every unit of a draft is pushed as late as its finish allows; where it cannot be, as it was. */
    double[] backward(Draft draft) {
        List<Unit> placed = new ArrayList<>();
        for (Unit unit : grid.units) {
            if (draft.starts()[unit.index()] != null) {
                placed.add(unit);
            }
        }
        placed.sort(Comparator.<Unit>comparingInt(unit -> -endOf(unit, draft)).thenComparingInt(unit -> -unit.index()));
        double[] late = new double[grid.units.size()];
        java.util.Arrays.fill(late, grid.length);
        Board board = board();
        int latest = placed.stream().mapToInt(unit -> endOf(unit, draft)).max().orElse(0);
        int[] limit = new int[grid.units.size()];
        java.util.Arrays.fill(limit, latest);
        for (Unit unit : placed) {
            int[] was = java.util.Objects.requireNonNull(draft.starts()[unit.index()]);
            int bound = limit[unit.index()];
            for (int next : after[unit.index()]) {
                if (draft.starts()[next] != null) {
                    bound = Math.min(bound, (int) late[next]);
                }
            }
            int start = was[0];
            for (int piece = was.length - 1; piece >= 0; piece--) {
                int ticks = unit.pieces()[piece];
                start = Math.min(was[piece], bound - ticks);
                for (int at = Math.min(bound, grid.length) - ticks; at >= 0; at--) {
                    if (board.fits(unit, ticks, at, null)
                            && board.crewFits(unit, draft.crews()[unit.index()], ticks, at)) {
                        board.take(unit, draft.crews()[unit.index()], ticks, at);
                        start = at;
                        break;
                    }
                }
                bound = start;
            }
            late[unit.index()] = start;
        }
        return late;
    }

    private static int endOf(Unit unit, Draft draft) {
        int[] at = draft.starts()[unit.index()];
        return at == null ? 0 : Draft.end(unit, at);
    }
}
