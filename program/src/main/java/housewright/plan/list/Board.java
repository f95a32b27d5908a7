package housewright.plan.list;

import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is taken so far: people, conditions of places, machines and tools, by position. */
final class Board {
    private final Grid grid;
    private final int[][] site;
    private final int[][] anywhere;
    private final int[][] dayLeft;
    private final int[][] needed;
    private final int[][] spoilt;
    private final int[][] toolsLeft;
    private final boolean[][] hired;
    private final Uses uses;

    /** Which of the shared things each unit uses, by index; worked out once for a grid. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Uses(int[][] needs, int[][] spoils, int[][] tools, int[][] units, int[] hire) {
        static Uses of(Grid grid) {
            int count = grid.units.size();
            int[][] needs = new int[count][];
            int[][] spoils = new int[count][];
            int[][] tools = new int[count][];
            int[][] units = new int[count][];
            int[] hire = new int[count];
            for (Unit unit : grid.units) {
                List<Integer> need = new ArrayList<>();
                List<Integer> spoil = new ArrayList<>();
                for (int index = 0; index < grid.shared.size(); index++) {
                    int self = unit.index();
                    if (Arrays.stream(grid.shared.get(index).needing()).anyMatch(each -> each == self)) {
                        need.add(index);
                    }
                    if (Arrays.stream(grid.shared.get(index).spoiling()).anyMatch(each -> each == self)) {
                        spoil.add(index);
                    }
                }
                needs[unit.index()] = ints(need);
                spoils[unit.index()] = ints(spoil);
                List<Integer> tool = new ArrayList<>();
                List<Integer> wanted = new ArrayList<>();
                for (int index = 0; index < grid.job.tools().size(); index++) {
                    Integer some = unit.task()
                            .means()
                            .tools()
                            .get(grid.job.tools().get(index).id());
                    if (some != null) {
                        tool.add(index);
                        wanted.add(some);
                    }
                }
                tools[unit.index()] = ints(tool);
                units[unit.index()] = ints(wanted);
                String id = unit.task().means().hire();
                hire[unit.index()] = id == null ? -1 : grid.job.hires().indexOf(grid.job.hire(id));
            }
            return new Uses(needs, spoils, tools, units, hire);
        }

        private static int[] ints(List<Integer> some) {
            return some.stream().mapToInt(Integer::intValue).toArray();
        }
    }

    Board(Grid grid, Uses uses) {
        this.grid = grid;
        this.uses = uses;
        site = copy(grid.site);
        anywhere = copy(grid.anywhere);
        dayLeft = copy(grid.dayLeft);
        needed = new int[grid.shared.size()][grid.length];
        spoilt = new int[grid.shared.size()][grid.length];
        hired = new boolean[grid.job.hires().size()][grid.length];
        toolsLeft = new int[grid.job.tools().size()][grid.length];
        for (int tool = 0; tool < toolsLeft.length; tool++) {
            Arrays.fill(toolsLeft[tool], grid.job.tools().get(tool).units());
            int[] taken = grid.toolTaken(grid.job.tools().get(tool).id());
            for (int at = 0; taken != null && at < grid.length; at++) {
                toolsLeft[tool][at] -= taken[at];
            }
        }
    }

    private static int[][] copy(int[][] rows) {
        int[][] copy = new int[rows.length][];
        for (int row = 0; row < rows.length; row++) {
            copy[row] = rows[row].clone();
        }
        return copy;
    }

    /**
     * Whether a piece fits at a position but for its people.
     *
     * @param days for each hire the days it may be used on, or null for any
     */
    boolean fits(Unit unit, int ticks, int at, boolean @Nullable [][] days) {
        if (unit.surroundings()[at] < ticks) {
            return false;
        }
        int self = unit.index();
        int hire = uses.hire()[self];
        if (hire >= 0) {
            if (days != null && !days[hire][grid.day(at)]) {
                return false;
            }
            for (int each = at; each < at + ticks; each++) {
                if (hired[hire][each]) {
                    return false;
                }
            }
        }
        for (int shared : uses.needs()[self]) {
            for (int each = at; each < at + ticks; each++) {
                if (needed[shared][each] > 0 || spoilt[shared][each] > 0) {
                    return false;
                }
            }
        }
        for (int shared : uses.spoils()[self]) {
            for (int each = at; each < at + ticks; each++) {
                if (needed[shared][each] > 0) {
                    return false;
                }
            }
        }
        for (int index = 0; index < uses.tools()[self].length; index++) {
            int[] left = toolsLeft[uses.tools()[self][index]];
            int wanted = uses.units()[self][index];
            for (int each = at; each < at + ticks; each++) {
                if (left[each] < wanted) {
                    return false;
                }
            }
        }
        return true;
    }

    boolean crewFits(Unit unit, long crew, int ticks, int at) {
        int[][] free = unit.task().site().remote() ? anywhere : site;
        for (long left = crew; left != 0; left &= left - 1) {
            int person = Long.numberOfTrailingZeros(left);
            if (free[person][at] < ticks || dayLeft[person][grid.day(at)] < ticks) {
                return false;
            }
        }
        return true;
    }

    /** Whether each of a crew may still work so long on a day. */
    boolean dayFits(long crew, int ticks, int day) {
        for (long left = crew; left != 0; left &= left - 1) {
            if (dayLeft[Long.numberOfTrailingZeros(left)][day] < ticks) {
                return false;
            }
        }
        return true;
    }

    void take(Unit unit, long crew, int ticks, int at) {
        int self = unit.index();
        for (long left = crew; left != 0; left &= left - 1) {
            int person = Long.numberOfTrailingZeros(left);
            occupy(site[person], at, ticks);
            occupy(anywhere[person], at, ticks);
            if (dayLeft[person][grid.day(at)] != Integer.MAX_VALUE) {
                dayLeft[person][grid.day(at)] -= ticks;
            }
        }
        for (int each = at; each < at + ticks; each++) {
            for (int shared : uses.needs()[self]) {
                needed[shared][each]++;
            }
            for (int shared : uses.spoils()[self]) {
                spoilt[shared][each]++;
            }
            for (int index = 0; index < uses.tools()[self].length; index++) {
                toolsLeft[uses.tools()[self][index]][each] -= uses.units()[self][index];
            }
            if (uses.hire()[self] >= 0) {
                hired[uses.hire()[self]][each] = true;
            }
        }
    }

    private static void occupy(int[] free, int at, int ticks) {
        for (int each = at; each < at + ticks; each++) {
            free[each] = 0;
        }
        for (int each = at - 1; each >= 0 && free[each] > at - each; each--) {
            free[each] = at - each;
        }
    }
}
