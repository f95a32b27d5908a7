package housewright.plan.axis;

import housewright.plan.Condition;
import housewright.plan.Delivery;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Person;
import housewright.plan.Place;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Window;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A job and what has happened, as numbers on the axis of working time. A position on the axis is one tick in which somebody
 * could work; {@link #real} says which tick of the clock it is. What is done or begun is not planned again: it only takes
 * people, rooms and machines away from the rest.
 */
public final class Grid {
    /** Longest piece, in minutes, of a task that may pause. */
    static final int PIECE = 60;

    private static final long[] NOBODY = {};

    public final Job job;
    public final Log log;
    /** Positions. */
    public final int length;
    /** Tick of the clock of each position; one more at the end, the tick after the last. */
    public final int[] real;
    /** Open tasks in the order of the job. */
    public final List<Unit> units;
    /** Index among {@link #units} by task id. */
    public final Map<String, Integer> unitOf;
    /** For each person and position, how many positions from there on the person is free without a gap: on site. */
    public final int[][] site;
    /** The same for on site or from afar. */
    public final int[][] anywhere;
    /** Ticks each person may still work on each day; {@link Integer#MAX_VALUE} where the day is shorter than the limit. */
    public final int[][] dayLeft;
    /** Conditions that open tasks need of places: those who need one and those who spoil it. */
    public final List<Shared> shared;
    /** Promises that open tasks bear on, in numbers. */
    public final List<Kept> promises;
    /** Weight of promises that what is done or begun has broken already. */
    public final int brokenAlready;
    /** Days each hire is had anyway, since what is done or begun uses it. */
    public final List<Set<Integer>> hiredAlready;
    /** What is done or begun. */
    public final List<Slot> frozen;
    /** Position by which the deadline is. */
    public final int deadline;
    /** Position before which nothing of what is begun is counted as ended, for the finish. */
    public final int frozenFinish;

    private final Map<String, int[]> surroundings = new HashMap<>();
    private final Map<Long, List<Window>> stretchesOnSite = new HashMap<>();
    private final Map<Long, List<Window>> stretchesAnywhere = new HashMap<>();
    private final Map<Times, long[]> possible = new HashMap<>();
    private final Map<Times, BitSet> openOf = new HashMap<>();
    private final Map<Times, BitSet> startsOf = new HashMap<>();
    private final Openings openings;
    private final Map<String, int[]> toolTaken = new HashMap<>();

    /**
     * A task still to do.
     *
     * @param index its own
     * @param pieces lengths in ticks, in order
     * @param before open tasks that must be ended before, by index
     * @param surroundings for each position, for how many on the place, the hire and the time would let it be done
     * @param crews every crew that has it all, as bits of people; for a task of nobody the one crew 0
     * @param due position by which it must end
     * @param counts whether the finish waits for it
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    public record Unit(
            int index,
            Task task,
            int[] pieces,
            int[] before,
            int[] surroundings,
            long[] crews,
            int due,
            boolean counts,
            boolean neverPossible) {
        /** Ticks altogether. */
        public int ticks() {
            return Arrays.stream(pieces).sum();
        }
    }

    /** What the times of a piece hang on; arrays count as the same only where they are one. */
    @SuppressWarnings("ArrayRecordComponent") // compared by identity on purpose: like tasks share them
    private record Times(int[] surroundings, long[] crews, int ticks, boolean remote) {}

    /** A condition of a place: tasks that need it, alone, and tasks that spoil it. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    public record Shared(String place, Condition condition, int[] needing, int[] spoiling) {}

    /**
     * A promise: kept when all of {@code apart} start at or after {@code over}, or all of {@code proof} end by {@code begins}.
     *
     * @param canWait whether the old way still serves, so that nothing done took it apart before
     * @param canProve whether the new way can be proven before at all
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    public record Kept(int[] apart, int over, int[] proof, int begins, boolean canWait, boolean canProve, int index) {}

    private Grid(Job job, Log log) {
        this.job = job;
        this.log = log;
        this.frozen = Frozen.slots(job, log);
        Map<String, Slot> frozenByTask = new HashMap<>();
        frozen.forEach(slot -> frozenByTask.put(slot.task(), slot));
        int tick = job.tick();

        List<List<Window>> siteWindows = new ArrayList<>();
        List<List<Window>> allWindows = new ArrayList<>();
        List<Window> everybody = new ArrayList<>();
        for (Person person : job.people()) {
            Free free = Free.of(job, person);
            List<Window> taken = taken(frozen, person.id());
            taken.addAll(breaksAfter(taken, free.breaks(), person));
            taken.add(new Window(-1, Math.max(0, log.now())));
            siteWindows.add(inTicks(Windows.without(free.onSite(), taken)));
            allWindows.add(inTicks(Windows.without(free.anywhere(), taken)));
            everybody.addAll(allWindows.getLast());
        }
        List<Task> open = job.tasks().stream()
                .filter(task -> !frozenByTask.containsKey(task.id()))
                .toList();
        for (Task task : open) {
            if (task.crew().count() == 0) {
                List<Window> whole = List.of(new Window(Math.max(0, log.now()), Math.max(job.end(), log.now() + 1)));
                String place = task.site().place();
                List<Window> hours = place == null || job.place(place).open().isEmpty()
                        ? whole
                        : Windows.intersect(
                                whole, Windows.union(job.place(place).open()));
                everybody.addAll(inTicks(hours));
            }
        }
        List<Window> axis = Windows.union(everybody);
        this.length = axis.stream().mapToInt(Window::length).sum();
        this.real = new int[length + 1];
        int position = 0;
        for (Window each : axis) {
            for (int at = each.from(); at < each.to(); at++) {
                real[position++] = at;
            }
        }
        real[length] = length == 0 ? Math.ceilDiv(log.now(), tick) : real[length - 1] + 1;

        this.site = runs(siteWindows);
        this.anywhere = runs(allWindows);
        this.dayLeft = daysLeft(allWindows);
        this.hiredAlready = hiredAlready();
        this.deadline = atOrAfter(Math.floorDiv(job.deadline(), tick));
        openings = new Openings(job, log, frozen);
        toolsTaken();

        this.unitOf = new LinkedHashMap<>();
        for (int index = 0; index < open.size(); index++) {
            unitOf.put(open.get(index).id(), index);
        }
        Map<String, long[]> crewCache = new HashMap<>();
        List<Unit> made = new ArrayList<>();
        for (Task task : open) {
            made.add(unit(task, made.size(), frozenByTask, crewCache));
        }
        this.units = List.copyOf(made);
        this.shared = sharedConditions();
        List<Kept> kept = new ArrayList<>();
        int broken = 0;
        for (int index = 0; index < job.promises().size(); index++) {
            Kept each = promise(index, frozenByTask);
            if (each == null) {
                continue;
            }
            if (!each.canWait() && !each.canProve()) {
                broken++;
            } else {
                kept.add(each);
            }
        }
        this.promises = List.copyOf(kept);
        this.brokenAlready = broken;
        this.frozenFinish = frozen.stream()
                .filter(slot -> counts(job.task(slot.task())))
                .mapToInt(Slot::end)
                .max()
                .orElse(0);
    }

    /** The axis of a job, given what has happened. */
    public static Grid of(Job job, Log log) {
        return new Grid(job, log);
    }

    /** Whether the finish waits for a task: it is mandatory and due by the deadline. */
    public boolean counts(Task task) {
        return task.mandatory() && job.dueOf(task) <= job.deadline();
    }

    /** First position at or after a tick of the clock; {@link #length} when there is none. */
    public int atOrAfter(int realTick) {
        int found = Arrays.binarySearch(real, 0, length, realTick);
        return found >= 0 ? found : -found - 1;
    }

    /** Day of a position; the job's first is 0. */
    public int day(int position) {
        return real[position] * job.tick() / Job.DAY;
    }

    /** Minute of the clock at which what occupies the positions before this one is over; 0 when nothing is. */
    public int endMinute(int position) {
        return position == 0 ? 0 : (real[position - 1] + 1) * job.tick();
    }

    public int[][] free(Unit unit) {
        return unit.task().site().remote() ? anywhere : site;
    }

    /** Ticks in which a tool is taken by what is begun. */
    public int @Nullable [] toolTaken(String tool) {
        return toolTaken.get(tool);
    }

    /**
     * The schedule that positions stand for, together with what is done and begun.
     *
     * @param starts for each unit the positions of its pieces; null where it is left out
     */
    public Schedule schedule(int[] @Nullable [] starts, long[] crews) {
        List<Slot> slots = new ArrayList<>(frozen);
        for (Unit unit : units) {
            int[] at = starts[unit.index()];
            if (at == null) {
                continue;
            }
            List<Window> pieces = new ArrayList<>();
            for (int piece = 0; piece < at.length; piece++) {
                int from = real[at[piece]] * job.tick();
                pieces.add(new Window(from, from + unit.pieces()[piece] * job.tick()));
            }
            slots.add(new Slot(unit.task().id(), Windows.union(pieces), Crews.names(job, crews[unit.index()])));
        }
        return new Schedule(slots);
    }

    /** The positions of a schedule's pieces by unit, null where the axis does not hold them as they are. */
    public int[] @Nullable [] positions(Schedule schedule) {
        int[] @Nullable [] starts = new int[units.size()][];
        Map<String, Slot> slots = schedule.byTask();
        for (Unit unit : units) {
            Slot slot = slots.get(unit.task().id());
            if (slot != null) {
                starts[unit.index()] = positions(unit, slot);
            }
        }
        return starts;
    }

    private int @Nullable [] positions(Unit unit, Slot slot) {
        int[] at = new int[unit.pieces().length];
        int window = 0;
        int minute = slot.start();
        for (int piece = 0; piece < at.length; piece++) {
            int minutes = unit.pieces()[piece] * job.tick();
            while (window < slot.pieces().size()
                    && minute + minutes > slot.pieces().get(window).to()) {
                window++;
                minute = window < slot.pieces().size()
                        ? slot.pieces().get(window).from()
                        : 0;
            }
            if (window == slot.pieces().size() || minute % job.tick() != 0) {
                return null;
            }
            int position = atOrAfter(minute / job.tick());
            if (position == length || real[position] != minute / job.tick()) {
                return null;
            }
            at[piece] = position;
            minute += minutes;
        }
        return at;
    }

    /** People by id, as bits. */
    public long crew(List<String> people) {
        return Crews.bits(job, people);
    }

    private static List<Window> taken(List<Slot> frozen, String person) {
        List<Window> taken = new ArrayList<>();
        for (Slot slot : frozen) {
            if (slot.people().contains(person)) {
                taken.addAll(slot.pieces());
            }
        }
        return taken;
    }

    /** Where work that is done or begun ran into a break, the break follows it. */
    private static List<Window> breaksAfter(List<Window> taken, List<Window> breaks, Person person) {
        return taken.stream()
                .filter(piece -> breaks.stream().anyMatch(piece::overlaps))
                .map(piece ->
                        new Window(piece.to(), piece.to() + person.limits().breakLength()))
                .toList();
    }

    /** Narrowed to whole ticks. */
    private List<Window> inTicks(List<Window> minutes) {
        List<Window> ticks = new ArrayList<>();
        for (Window each : minutes) {
            int from = Math.ceilDiv(Math.max(0, each.from()), job.tick());
            int to = Math.floorDiv(Math.min(each.to(), job.end()), job.tick());
            if (from < to) {
                ticks.add(new Window(from, to));
            }
        }
        return ticks;
    }

    private int[][] runs(List<List<Window>> windows) {
        int[][] runs = new int[windows.size()][];
        for (int person = 0; person < windows.size(); person++) {
            runs[person] = run(windows.get(person));
        }
        return runs;
    }

    /** For each position, how many from there on lie in one window without a gap of the clock. */
    private int[] run(List<Window> ticks) {
        int[] run = new int[length];
        for (Window each : ticks) {
            int from = atOrAfter(each.from());
            int to = atOrAfter(each.to());
            for (int at = to - 1; at >= from; at--) {
                run[at] = at + 1 < to && real[at + 1] == real[at] + 1 ? run[at + 1] + 1 : 1;
            }
        }
        return run;
    }

    private int[][] daysLeft(List<List<Window>> windows) {
        int[][] left = new int[windows.size()][job.days()];
        for (int person = 0; person < windows.size(); person++) {
            int limit = job.people().get(person).limits().minutesADay() / job.tick();
            int[] worked = new int[job.days()];
            for (Window piece :
                    Windows.byDay(taken(frozen, job.people().get(person).id()), job.days())) {
                worked[piece.from() / Job.DAY] += Math.ceilDiv(piece.length(), job.tick());
            }
            int[] free = new int[job.days()];
            for (Window each : windows.get(person)) {
                free[each.from() * job.tick() / Job.DAY] += each.length();
            }
            for (int day = 0; day < job.days(); day++) {
                int may = Math.max(0, limit - worked[day]);
                left[person][day] = free[day] <= may ? Integer.MAX_VALUE : may;
            }
        }
        return left;
    }

    private List<Set<Integer>> hiredAlready() {
        List<Set<Integer>> days = new ArrayList<>();
        for (Hire hire : job.hires()) {
            Set<Integer> had = new HashSet<>();
            for (Slot slot : frozen) {
                if (hire.id().equals(job.task(slot.task()).means().hire())) {
                    slot.pieces().forEach(piece -> had.add(piece.from() / Job.DAY));
                }
            }
            days.add(had);
        }
        return days;
    }

    private void toolsTaken() {
        for (Slot slot : frozen) {
            Task task = job.task(slot.task());
            task.means().tools().forEach((tool, units) -> {
                int[] taken = toolTaken.computeIfAbsent(tool, key -> new int[length]);
                for (Window piece : slot.pieces()) {
                    for (int at = atOrAfter(piece.from() / job.tick());
                            at < atOrAfter(Math.ceilDiv(piece.to(), job.tick()));
                            at++) {
                        taken[at] += units;
                    }
                }
            });
        }
    }

    private Unit unit(Task task, int index, Map<String, Slot> frozenByTask, Map<String, long[]> crewCache) {
        int tick = job.tick();
        int planned = task.length().planned(tick);
        int[] pieces;
        if (task.length().mayPause() && planned > PIECE) {
            int longest = Math.max(1, PIECE / tick);
            int ticks = planned / tick;
            pieces = new int[Math.ceilDiv(ticks, longest)];
            Arrays.fill(pieces, longest);
            pieces[pieces.length - 1] = ticks - longest * (pieces.length - 1);
        } else {
            pieces = new int[] {planned / tick};
        }
        int earliest = Math.max(task.timing().earliest(), Math.max(0, log.now()));
        Integer blocked = log.blocked().get(task.id());
        boolean never = blocked != null && blocked == Log.NEVER;
        if (blocked != null && !never) {
            earliest = Math.max(earliest, blocked);
        }
        for (String id : task.timing().deliveries()) {
            Delivery delivery = job.delivery(id);
            int comes = log.late().getOrDefault(id, delivery.expected());
            never |= comes == Log.NEVER;
            earliest = Math.max(earliest, comes == Log.NEVER ? 0 : comes);
        }
        List<Integer> before = new ArrayList<>();
        for (String id : task.timing().after()) {
            Slot ended = frozenByTask.get(id);
            if (ended != null) {
                earliest = Math.max(earliest, ended.end());
            } else if (unitOf.containsKey(id)) {
                before.add(unitOf.get(id));
            }
        }
        int[] around = never ? new int[length] : surroundings(task, earliest, pieces.length > 1);
        String key = task.crew() + "/" + task.means().hire();
        long[] crews = crewCache.computeIfAbsent(key, any -> Crews.of(job, task));
        long[] possible = possible(task, pieces, around, crews);
        return new Unit(
                index,
                task,
                pieces,
                before.stream().mapToInt(Integer::intValue).distinct().toArray(),
                around,
                possible,
                atOrAfter(Math.floorDiv(job.dueOf(task), tick)),
                counts(task),
                possible.length == 0);
    }

    private int[] surroundings(Task task, int earliest, boolean inPieces) {
        String place = task.site().remote() ? null : task.site().place();
        Integer pinned = task.timing().start();
        String key = place + "|"
                + (place == null
                        ? ""
                        : task.site().needs().stream().sorted().toList() + "|"
                                + task.site().spoils().stream().sorted().toList())
                + "|" + task.means().hire() + "|" + earliest + "|" + pinned + "|" + inPieces;
        return surroundings.computeIfAbsent(key, any -> {
            List<Window> may = List.of(new Window(0, job.end()));
            if (earliest > 0) {
                may = Windows.without(may, List.of(new Window(-1, earliest)));
            }
            if (pinned != null) {
                may = Windows.without(may, List.of(new Window(-1, Math.max(0, pinned))));
            }
            if (place != null) {
                may = Windows.intersect(may, openings.of(task, job.place(place)));
            }
            if (task.means().hire() != null) {
                may = Windows.intersect(may, openings.of(job.hire(task.means().hire())));
            }
            int[] run = run(inTicks(may));
            if (pinned != null) {
                int only = atOrAfter(Math.ceilDiv(pinned, job.tick()));
                // A pinned task in pieces begins at its pin and goes on when it can.
                if (inPieces) {
                    if (only < length && real[only] * job.tick() != pinned) {
                        Arrays.fill(run, 0);
                    }
                } else {
                    for (int at = 0; at < length; at++) {
                        if (at != only || real[at] * job.tick() != pinned) {
                            run[at] = 0;
                        }
                    }
                }
            }
            return run;
        });
    }

    /** The crews that could do each piece at some time, were there nothing else to do. */
    private long[] possible(Task task, int[] pieces, int[] around, long[] crews) {
        int longest = Arrays.stream(pieces).max().orElse(0);
        boolean remote = task.site().remote();
        BitSet open = open(around, longest);
        return possible.computeIfAbsent(
                new Times(around, crews, longest, remote),
                any -> Arrays.stream(crews)
                        .filter(crew -> {
                            for (Window stretch : stretches(crew, remote)) {
                                int at = open.nextSetBit(stretch.from());
                                if (at >= 0 && at + longest <= stretch.to()) {
                                    return true;
                                }
                            }
                            return false;
                        })
                        .toArray());
    }

    /** Where place, hire and time leave room for a piece. */
    private BitSet open(int[] surroundings, int ticks) {
        return openOf.computeIfAbsent(new Times(surroundings, NOBODY, ticks, false), any -> {
            BitSet open = new BitSet(length);
            for (int at = 0; at < length; at++) {
                if (surroundings[at] >= ticks) {
                    open.set(at);
                }
            }
            return open;
        });
    }

    /** Where a whole crew is free together without a gap, in positions: few for most, however long the axis is. */
    private List<Window> stretches(long crew, boolean remote) {
        return (remote ? stretchesAnywhere : stretchesOnSite).computeIfAbsent(crew, any -> {
            int[][] free = remote ? anywhere : site;
            List<Window> found = new ArrayList<>();
            for (int at = 0; at < length; ) {
                int run = Math.min(length - at, crewFree(free, crew, at));
                if (run > 0) {
                    found.add(new Window(at, at + run));
                }
                at += Math.max(run, 1);
            }
            return found;
        });
    }

    /** For how many positions from one on a whole crew is free; without end for a crew of nobody. */
    public static int crewFree(int[][] free, long crew, int at) {
        int least = Integer.MAX_VALUE;
        for (long left = crew; left != 0; left &= left - 1) {
            least = Math.min(least, free[Long.numberOfTrailingZeros(left)][at]);
        }
        return least;
    }

    /** Positions at which a piece of some length may start with some crew, were there nothing else to do. */
    public BitSet starts(Unit unit, int ticks) {
        Times times = new Times(
                unit.surroundings(), unit.crews(), ticks, unit.task().site().remote());
        return (BitSet)
                startsOf.computeIfAbsent(times, any -> starting(unit, ticks)).clone();
    }

    private BitSet starting(Unit unit, int ticks) {
        BitSet may = new BitSet(length);
        for (long crew : unit.crews()) {
            for (Window stretch : stretches(crew, unit.task().site().remote())) {
                if (stretch.length() >= ticks) {
                    may.set(stretch.from(), stretch.to() - ticks + 1);
                }
            }
        }
        may.and(open(unit.surroundings(), ticks));
        return may;
    }

    private List<Shared> sharedConditions() {
        List<Shared> all = new ArrayList<>();
        for (Place place : job.places()) {
            for (Condition condition : Condition.values()) {
                List<Integer> needing = new ArrayList<>();
                List<Integer> spoiling = new ArrayList<>();
                for (Unit unit : units) {
                    if (unit.task().site().remote()
                            || !place.id().equals(unit.task().site().place())) {
                        continue;
                    }
                    if (unit.task().site().needs().contains(condition)) {
                        needing.add(unit.index());
                    } else if (Openings.spoils(unit.task(), condition)) {
                        spoiling.add(unit.index());
                    }
                }
                if (!needing.isEmpty() && needing.size() + spoiling.size() > 1) {
                    all.add(new Shared(place.id(), condition, ints(needing), ints(spoiling)));
                }
            }
        }
        return List.copyOf(all);
    }

    private @Nullable Kept promise(int index, Map<String, Slot> frozenByTask) {
        var promise = job.promises().get(index);
        Window when = job.event(promise.event()).when();
        if (when.to() <= log.now() && log.now() > 0) {
            return null; // it is over
        }
        boolean canWait = promise.worksToday();
        List<Integer> apart = new ArrayList<>();
        for (String id : promise.takenApartBy()) {
            Slot done = frozenByTask.get(id);
            if (done == null) {
                apart.add(unitOf.get(id));
            } else if (done.start() < when.to()) {
                canWait = false;
            }
        }
        boolean canProve = !promise.provenBy().isEmpty();
        List<Integer> proof = new ArrayList<>();
        for (String id : promise.provenBy()) {
            Slot done = frozenByTask.get(id);
            if (done == null) {
                proof.add(unitOf.get(id));
            } else if (done.end() > when.from()) {
                canProve = false;
            }
        }
        return new Kept(
                ints(apart),
                atOrAfter(Math.ceilDiv(when.to(), job.tick())),
                ints(proof),
                atOrAfter(Math.floorDiv(when.from(), job.tick())),
                canWait,
                canProve,
                index);
    }

    private static int[] ints(List<Integer> some) {
        return some.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Days on which a machine is wanted, at the least, by what is still open: its work over the longest day it can have. */
    public Map<Integer, List<Unit>> byHire() {
        Map<Integer, List<Unit>> all = new TreeMap<>();
        for (Unit unit : units) {
            String hire = unit.task().means().hire();
            if (hire != null) {
                all.computeIfAbsent(job.hires().indexOf(job.hire(hire)), key -> new ArrayList<>())
                        .add(unit);
            }
        }
        return all;
    }
}
