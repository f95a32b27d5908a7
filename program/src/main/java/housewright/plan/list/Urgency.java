package housewright.plan.list;

import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Unit;
import java.util.ArrayList;
import java.util.List;

/** The latest a unit may end without delaying what follows it: the least is the most urgent. */
final class Urgency {
    private final Grid grid;
    private final Builder builder;
    private final List<Unit> backwards;

    Urgency(Grid grid, Builder builder) {
        this.grid = grid;
        this.builder = builder;
        this.backwards = order(grid, builder).reversed();
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
                latest[unit.index()] = Math.min(
                        latest[unit.index()],
                        latest[next] - grid.units.get(next).ticks());
                leads[unit.index()] |= leads[next];
            }
        }
        for (int index = 0; index < latest.length; index++) {
            if (!leads[index]) {
                latest[index] += grid.length;
            }
        }
        return latest;
    }
}
