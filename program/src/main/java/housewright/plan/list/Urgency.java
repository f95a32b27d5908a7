package housewright.plan.list;

import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** The latest a unit may end without delaying what follows it: the least is the most urgent. */
final class Urgency {
    private final Grid grid;
    private final Builder builder;
    private final List<Unit> backwards;
    /** Where each piece of a unit may start, by its people's times and its place's. */
    private final List<BitSet[]> starts;

    Urgency(Grid grid, Builder builder) {
        this.grid = grid;
        this.builder = builder;
        this.backwards = order(grid, builder).reversed();
        this.starts = grid.units.stream()
                .map(unit -> Arrays.stream(unit.pieces())
                        .mapToObj(ticks -> grid.starts(unit, ticks))
                        .toArray(BitSet[]::new))
                .toList();
    }

    /** Units in an order in which each stands after those before it. */
    static List<Unit> order(Grid grid, Builder builder) {
        int[] waiting = new int[grid.units.size()];
        List<Unit> order = new ArrayList<>();
        for (Unit unit : grid.units) {
            waiting[unit.index()] = unit.before().length;
            if (unit.before().length == 0) {
                order.add(unit);
            }
        }
        for (int index = 0; index < order.size(); index++) {
            for (int next : builder.after(order.get(index).index())) {
                if (--waiting[next] == 0) {
                    order.add(grid.units.get(next));
                }
            }
        }
        return order;
    }

    /**
     * Positions.
     *
     * @param proves promises whose new way is to be proven before the event
     */
    double[] of(boolean[] proves) {
        double[] latest = new double[grid.units.size()];
        double[] begins = new double[latest.length];
        boolean[] leads = new boolean[latest.length];
        for (Unit unit : grid.units) {
            latest[unit.index()] = unit.due();
            leads[unit.index()] = unit.task().mandatory();
        }
        for (int index = 0; index < proves.length; index++) {
            if (proves[index]) {
                for (int unit : grid.promises.get(index).proof()) {
                    latest[unit] =
                            Math.min(latest[unit], grid.promises.get(index).begins());
                }
            }
        }
        for (Unit unit : backwards) {
            for (int next : builder.after(unit.index())) {
                latest[unit.index()] = Math.min(latest[unit.index()], begins[next]);
                leads[unit.index()] |= leads[next];
            }
            begins[unit.index()] = begin(unit, latest[unit.index()]);
            latest[unit.index()] = begins[unit.index()] + unit.ticks();
        }
        for (int index = 0; index < latest.length; index++) {
            if (!leads[index]) {
                latest[index] += grid.length;
            }
        }
        return latest;
    }

    /** The latest at which a unit may begin to end by then; where its times allow none, as if they were open. */
    private double begin(Unit unit, double end) {
        BitSet[] may = starts.get(unit.index());
        double at = end;
        for (int piece = may.length - 1; piece >= 0; piece--) {
            int latest = (int) Math.floor(at - unit.pieces()[piece]);
            int found = latest < 0 ? -1 : may[piece].previousSetBit(latest);
            at = found < 0 ? at - unit.pieces()[piece] : found;
        }
        return at;
    }
}
