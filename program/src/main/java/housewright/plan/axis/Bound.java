package housewright.plan.axis;

import housewright.plan.axis.Grid.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.TreeSet;

/**
 * The earliest finish that the work could have, whatever the plan, when all of it is done: by what must follow what, and by
 * the hours of every group of people against the work that cannot do without them. What cannot begin before some time, or
 * has work after it, leaves fewer hours, so such parts of the work are looked at for themselves.
 */
public final class Bound {
    private static final int GROUPS_OF = 7;
    private static final int CUTS = 14;

    private final Grid grid;
    /** Earliest start of each unit's first piece, and what must follow its end in ticks, by precedence alone. */
    public final int[] head;

    public final int[] tail;

    /** Position by which each unit could end at the earliest, had it all people to itself; beyond the axis when never. */
    public final int[] earliestEnd;

    /** Position; no plan with everything in it finishes before. */
    public final int finish;

    /** Whether some of what counts cannot be done within the horizon at all, or all of it cannot. */
    public final boolean impossible;

    private boolean fails;

    private Bound(Grid grid) {
        this.grid = grid;
        this.head = new int[grid.units.size()];
        this.tail = new int[grid.units.size()];
        this.earliestEnd = new int[grid.units.size()];
        int chain = chains();
        this.finish = Math.min(grid.length, byHours(chain));
        this.impossible = fails;
    }

    public static Bound of(Grid grid) {
        return new Bound(grid);
    }

    private int chains() {
        int finish = 0;
        boolean changed = true;
        BitSet[][] may = new BitSet[grid.units.size()][];
        for (Unit unit : grid.units) {
            may[unit.index()] = Arrays.stream(unit.pieces())
                    .mapToObj(ticks -> grid.starts(unit, ticks))
                    .toArray(BitSet[]::new);
        }
        int[] end = earliestEnd;
        Arrays.fill(head, -1);
        while (changed) {
            changed = false;
            for (Unit unit : grid.units) {
                int from = 0;
                for (int before : unit.before()) {
                    from = Math.max(from, end[before]);
                }
                int first = -1;
                for (int piece = 0; piece < unit.pieces().length && from >= 0; piece++) {
                    int at = from > grid.length ? -1 : may[unit.index()][piece].nextSetBit(from);
                    if (piece == 0) {
                        first = at;
                    }
                    from = at < 0 ? grid.length + 1 : at + unit.pieces()[piece];
                }
                first = first < 0 ? grid.length : first;
                if (first != head[unit.index()] || from != end[unit.index()]) {
                    head[unit.index()] = first;
                    end[unit.index()] = from;
                    changed = true;
                }
            }
        }
        changed = true;
        while (changed) {
            changed = false;
            for (Unit unit : grid.units) {
                if (unit.counts()) {
                    for (int before : unit.before()) {
                        int after = tail[unit.index()] + unit.ticks();
                        if (grid.units.get(before).counts() && after > tail[before]) {
                            tail[before] = after;
                            changed = true;
                        }
                    }
                }
            }
        }
        for (Unit unit : grid.units) {
            if (unit.counts()) {
                fails |= end[unit.index()] > grid.length || unit.neverPossible();
                finish = Math.max(finish, Math.min(grid.length, end[unit.index()] + tail[unit.index()]));
            }
        }
        return finish;
    }

    private int byHours(int least) {
        int finish = least;
        int people = grid.job.people().size();
        List<Long> groups = new ArrayList<>();
        if (people <= GROUPS_OF) {
            for (long group = 1; group < 1L << people; group++) {
                groups.add(group);
            }
        } else {
            for (int person = 0; person < people; person++) {
                groups.add(1L << person);
            }
            groups.add((1L << people) - 1);
        }
        for (boolean onSite : new boolean[] {true, false}) {
            int[] heads = cuts(head);
            int[] tails = cuts(tail);
            for (long group : groups) {
                int[] need = new int[grid.units.size()];
                for (Unit unit : grid.units) {
                    if (unit.counts() && (!onSite || !unit.task().site().remote())) {
                        need[unit.index()] = Arrays.stream(unit.crews())
                                        .mapToInt(crew -> Long.bitCount(crew & group))
                                        .min()
                                        .orElse(0)
                                * unit.ticks();
                    }
                }
                for (int from : heads) {
                    int[] hours = hours(group, onSite, from);
                    for (int until : tails) {
                        int work = 0;
                        for (int unit = 0; unit < need.length; unit++) {
                            if (head[unit] >= from && tail[unit] >= until) {
                                work += need[unit];
                            }
                        }
                        if (work > 0) {
                            int at = Arrays.binarySearch(hours, work);
                            at = at < 0 ? -at - 1 : at;
                            while (at > 0 && hours[at - 1] >= work) {
                                at--;
                            }
                            fails |= at + until > grid.length;
                            finish = Math.max(finish, at + until);
                        }
                    }
                }
            }
        }
        return finish;
    }

    private static int[] cuts(int[] values) {
        int[] all = Arrays.stream(values).sorted().toArray();
        TreeSet<Integer> some = new TreeSet<>(List.of(0));
        for (int cut = 0; cut < CUTS && all.length > 0; cut++) {
            some.add(all[(int) ((long) cut * all.length / CUTS)]);
        }
        return some.stream().mapToInt(Integer::intValue).toArray();
    }

    /** For each position, ticks that a group could work from one position up to there. */
    private int[] hours(long group, boolean onSite, int from) {
        int[] hours = new int[grid.length + 1];
        int[][] free = onSite ? grid.site : grid.anywhere;
        for (int person = 0; person < free.length; person++) {
            if ((group >> person & 1) == 0) {
                continue;
            }
            int worked = 0;
            int today = 0;
            int day = -1;
            for (int at = from; at < grid.length; at++) {
                if (grid.day(at) != day) {
                    day = grid.day(at);
                    today = 0;
                }
                if (free[person][at] > 0 && today < grid.dayLeft[person][day]) {
                    worked++;
                    today++;
                }
                hours[at + 1] += worked;
            }
        }
        return hours;
    }

    /** Ticks that one person could work between two positions. */
    public int hours(int person, boolean onSite, int from, int to) {
        int[] hours = hours(1L << person, onSite, Math.max(0, from));
        return to <= from ? 0 : hours[Math.clamp(to, 0, grid.length)];
    }
}
