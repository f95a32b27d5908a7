package housewright.plan.cpsat;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import housewright.plan.Goal;
import housewright.plan.Tool;
import housewright.plan.Weights;
import housewright.plan.axis.Bound;
import housewright.plan.axis.Grid;
import housewright.plan.axis.Grid.Kept;
import housewright.plan.axis.Grid.Shared;
import housewright.plan.axis.Grid.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/** The model of one solve. Every variable is made together with its value in the schedule to begin with. */
final class Model {
    private static final int LONGEST_CUTS = 4;

    final CpModel model = new CpModel();
    private final Grid grid;
    private final Bound bound;
    private final Wanted wanted;
    private final Found hint;
    private final @Nullable Found before;

    private final int hintedFinish;
    private final IntVar[][] start;
    private final Literal[] done;
    /** For each unit its literal of each person; null where the person is never of the crew. */
    private final @Nullable Literal[][] has;

    private final IntervalVar[][] interval;
    private final Map<String, Map<Integer, Literal>> days = new HashMap<>();

    /** What is made small, and no less than what is known already. */
    private final LinearExprBuilder objective = LinearExpr.newBuilder();

    Model(Grid grid, Bound bound, Wanted wanted, Found hint, @Nullable Found before) {
        this.grid = grid;
        this.bound = bound;
        this.wanted = wanted;
        this.hint = hint;
        this.before = before;
        this.hintedFinish = hintedFinish();
        int count = grid.units.size();
        start = new IntVar[count][];
        done = new Literal[count];
        has = new Literal[count][grid.job.people().size()];
        interval = new IntervalVar[count][];
        for (Unit unit : grid.units) {
            unit(unit);
        }
        for (Unit unit : grid.units) {
            order(unit);
        }
        people();
        conditions();
        machines();
        tools();
        dayLimits();
        missed();
        finish();
        hireDays();
        moved();
        idle();
        model.minimize(objective);
    }

    /** The schedule of a solution. */
    Found read(ToLongFunction<LinearArgument> value) {
        int[] @Nullable [] starts = new int[start.length][];
        long[] crews = new long[start.length];
        for (int unit = 0; unit < start.length; unit++) {
            if (value.applyAsLong((LinearArgument) done[unit]) == 0) {
                continue;
            }
            starts[unit] = Arrays.stream(start[unit])
                    .mapToInt(each -> (int) value.applyAsLong(each))
                    .toArray();
            for (int person = 0; person < has[unit].length; person++) {
                Literal of = has[unit][person];
                if (of != null && value.applyAsLong((LinearArgument) of) == 1) {
                    crews[unit] |= 1L << person;
                }
            }
        }
        return new Found(starts, crews);
    }

    private Literal literal(boolean value) {
        BoolVar made = model.newBoolVar("");
        model.addHint(made, value);
        return made;
    }

    private void unit(Unit unit) {
        int self = unit.index();
        int[] at = hint.starts()[self];
        int pieces = unit.pieces().length;
        done[self] =
                wanted.all() ? model.trueLiteral() : unit.neverPossible() ? model.falseLiteral() : literal(at != null);
        start[self] = new IntVar[pieces];
        interval[self] = new IntervalVar[pieces];
        int[][] free = grid.free(unit);
        long ever = Arrays.stream(unit.crews()).reduce(0, (a, b) -> a | b);
        long always = Arrays.stream(unit.crews()).reduce(-1, (a, b) -> a & b);
        for (int person = 0; person < has[self].length; person++) {
            if ((ever >> person & 1) == 0) {
                continue;
            }
            boolean mine = at != null && (hint.crews()[self] >> person & 1) == 1;
            has[self][person] = (always >> person & 1) == 1 ? done[self] : literal(mine);
            if (wanted.sameDays() && at != null && (always >> person & 1) == 0) {
                model.addEquality((LinearArgument) person(self, person), mine ? 1 : 0);
            }
        }
        for (int piece = 0; piece < pieces; piece++) {
            int ticks = unit.pieces()[piece];
            BitSet may = grid.starts(unit, ticks);
            if (wanted.all()) {
                may.clear(Math.max(0, Math.min(grid.length, unit.due() - ticks + 1)), grid.length + 1);
            }
            narrow(may, unit, piece, at);
            if (may.isEmpty()) {
                may.set(at == null ? 0 : at[piece]); // only where it is left out anyway
            }
            start[self][piece] = model.newIntVarFromDomain(domain(may), "");
            model.addHint(start[self][piece], at == null ? may.nextSetBit(0) : at[piece]);
            interval[self][piece] = model.newOptionalFixedSizeIntervalVar(start[self][piece], ticks, done[self], "");
            for (int person = 0; person < has[self].length; person++) {
                if ((ever >> person & 1) == 1) {
                    BitSet own = new BitSet();
                    for (int each = may.nextSetBit(0); each >= 0; each = may.nextSetBit(each + 1)) {
                        own.set(each, free[person][each] >= ticks);
                    }
                    if (own.cardinality() < may.cardinality() && !own.isEmpty()) {
                        model.addLinearExpressionInDomain(start[self][piece], domain(own))
                                .onlyEnforceIf(person(self, person));
                    } else if (own.isEmpty()) {
                        model.addEquality((LinearArgument) person(self, person), 0);
                    }
                }
            }
        }
        crew(unit, ever);
    }

    /** Cuts off starts that leave no room for what must come before or after. */
    private void narrow(BitSet may, Unit unit, int piece, int @Nullable [] at) {
        int from = bound.head[unit.index()];
        int left = 0;
        for (int each = 0; each < unit.pieces().length; each++) {
            from += each < piece ? unit.pieces()[each] : 0;
            left += each < piece ? 0 : unit.pieces()[each];
        }
        may.clear(0, Math.min(from, grid.length));
        if (wanted.all() && unit.counts()) {
            int end = (wanted.goal() == Goal.FINISH ? hintedFinish : wanted.finish()) - bound.tail[unit.index()];
            may.clear(Math.clamp(end - left + 1, 0, grid.length), grid.length + 1);
        }
        if (at != null) {
            may.set(at[piece]);
        }
    }

    private int hintedFinish() {
        int finish = 0;
        for (Unit unit : grid.units) {
            int[] at = hint.starts()[unit.index()];
            if (unit.counts() && at != null) {
                finish = Math.max(finish, at[at.length - 1] + unit.pieces()[at.length - 1]);
            }
        }
        return finish;
    }

    private Literal person(int unit, int person) {
        return java.util.Objects.requireNonNull(has[unit][person]);
    }

    private void crew(Unit unit, long ever) {
        int self = unit.index();
        if (unit.crews().length <= 1) {
            return;
        }
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int person = 0; person < has[self].length; person++) {
            if ((ever >> person & 1) == 1) {
                sum.add((LinearArgument) person(self, person));
            }
        }
        sum.addTerm((LinearArgument) done[self], -unit.task().crew().count());
        model.addEquality(sum, 0);
        List<String> skills = new ArrayList<>(unit.task().crew().skills());
        String hire = unit.task().means().hire();
        String operator = hire == null ? null : grid.job.hire(hire).skill();
        if (operator != null) {
            skills.add(operator);
        }
        for (String skill : skills) {
            LinearExprBuilder holders = LinearExpr.newBuilder();
            for (int person = 0; person < has[self].length; person++) {
                if ((ever >> person & 1) == 1
                        && grid.job.people().get(person).skills().contains(skill)) {
                    holders.add((LinearArgument) person(self, person));
                }
            }
            holders.addTerm((LinearArgument) done[self], -1);
            model.addGreaterOrEqual(holders, 0);
        }
    }

    private static Domain domain(BitSet values) {
        List<long[]> intervals = new ArrayList<>();
        for (int from = values.nextSetBit(0); from >= 0; ) {
            int to = values.nextClearBit(from);
            intervals.add(new long[] {from, to - 1});
            from = values.nextSetBit(to);
        }
        return Domain.fromIntervals(intervals.toArray(long[][]::new));
    }

    private LinearArgument end(Unit unit) {
        int last = unit.pieces().length - 1;
        return LinearExpr.newBuilder()
                .add(start[unit.index()][last])
                .add(unit.pieces()[last])
                .build();
    }

    private void order(Unit unit) {
        int self = unit.index();
        for (int piece = 1; piece < unit.pieces().length; piece++) {
            model.addGreaterOrEqual(
                            start[self][piece],
                            LinearExpr.newBuilder().add(start[self][piece - 1]).add(unit.pieces()[piece - 1]))
                    .onlyEnforceIf(done[self]);
        }
        for (int before : unit.before()) {
            model.addGreaterOrEqual(start[self][0], end(grid.units.get(before))).onlyEnforceIf(done[self]);
            if (!wanted.all()) {
                model.addImplication(done[self], done[before]);
            }
        }
    }

    private void people() {
        int crews = 0;
        CumulativeConstraint everybody =
                model.addCumulative(Math.max(1, grid.job.people().size()));
        for (Unit unit : grid.units) {
            if (unit.task().crew().count() > 0) {
                for (IntervalVar piece : interval[unit.index()]) {
                    everybody.addDemand(piece, (long) unit.task().crew().count());
                    crews++;
                }
            }
        }
        for (int person = 0; person < grid.job.people().size() && crews > 0; person++) {
            List<IntervalVar> mine = new ArrayList<>();
            for (Unit unit : grid.units) {
                Literal of = has[unit.index()][person];
                for (int piece = 0; of != null && piece < unit.pieces().length; piece++) {
                    mine.add(
                            of.getIndex() == done[unit.index()].getIndex()
                                    ? interval[unit.index()][piece]
                                    : model.newOptionalFixedSizeIntervalVar(
                                            start[unit.index()][piece], unit.pieces()[piece], of, ""));
                }
            }
            model.addNoOverlap(mine);
        }
    }

    private void conditions() {
        for (Shared shared : grid.shared) {
            long all = Math.max(1, shared.spoiling().length);
            CumulativeConstraint room = model.addCumulative(all);
            for (int unit : shared.needing()) {
                for (IntervalVar piece : interval[unit]) {
                    room.addDemand(piece, all);
                }
            }
            for (int unit : shared.spoiling()) {
                for (IntervalVar piece : interval[unit]) {
                    room.addDemand(piece, 1L);
                }
            }
        }
    }

    private void machines() {
        for (List<Unit> users : grid.byHire().values()) {
            List<IntervalVar> all = new ArrayList<>();
            users.forEach(unit -> all.addAll(List.of(interval[unit.index()])));
            model.addNoOverlap(all);
        }
    }

    private void tools() {
        for (Tool tool : grid.job.tools()) {
            CumulativeConstraint shelf = model.addCumulative(tool.units());
            for (Unit unit : grid.units) {
                Integer units = unit.task().means().tools().get(tool.id());
                for (int piece = 0; units != null && piece < unit.pieces().length; piece++) {
                    shelf.addDemand(interval[unit.index()][piece], (long) units);
                }
            }
            int[] taken = grid.toolTaken(tool.id());
            for (int at = 0; taken != null && at < taken.length; at++) {
                if (taken[at] > 0) {
                    shelf.addDemand(model.newFixedInterval(at, 1, ""), (long) Math.min(taken[at], tool.units()));
                }
            }
        }
    }

    /** Literals that say on which day a piece starts. */
    private Map<Integer, Literal> days(Unit unit, int piece) {
        return days.computeIfAbsent(unit.index() + "/" + piece, key -> {
            Map<Integer, BitSet> byDay = new TreeMap<>();
            BitSet may = grid.starts(unit, unit.pieces()[piece]);
            for (int at = may.nextSetBit(0); at >= 0; at = may.nextSetBit(at + 1)) {
                byDay.computeIfAbsent(grid.day(at), any -> new BitSet()).set(at);
            }
            int[] at = hint.starts()[unit.index()];
            Map<Integer, Literal> all = new TreeMap<>();
            LinearExprBuilder sum = LinearExpr.newBuilder();
            byDay.forEach((day, positions) -> {
                Literal on = literal(at != null && grid.day(at[piece]) == day);
                model.addLinearConstraint(start[unit.index()][piece], positions.nextSetBit(0), positions.length() - 1)
                        .onlyEnforceIf(on);
                sum.add((LinearArgument) on);
                all.put(day, on);
            });
            sum.addTerm((LinearArgument) done[unit.index()], -1);
            model.addEquality(sum, 0);
            return all;
        });
    }

    private void dayLimits() {
        for (int person = 0; person < grid.job.people().size(); person++) {
            for (int day = 0; day < grid.job.days(); day++) {
                if (grid.dayLeft[person][day] != Integer.MAX_VALUE) {
                    dayLimit(person, day);
                }
            }
        }
    }

    private void dayLimit(int person, int day) {
        LinearExprBuilder work = LinearExpr.newBuilder();
        for (Unit unit : grid.units) {
            Literal of = has[unit.index()][person];
            if (of == null) {
                continue;
            }
            for (int piece = 0; piece < unit.pieces().length; piece++) {
                Literal on = days(unit, piece).get(day);
                if (on == null) {
                    continue;
                }
                int[] at = hint.starts()[unit.index()];
                boolean both =
                        at != null && grid.day(at[piece]) == day && (hint.crews()[unit.index()] >> person & 1) == 1;
                boolean always = of.getIndex() == done[unit.index()].getIndex();
                Literal works = always ? on : literal(both);
                if (!always) {
                    model.addBoolOr(new Literal[] {works, of.not(), on.not()});
                }
                work.addTerm((LinearArgument) works, unit.pieces()[piece]);
            }
        }
        model.addLessOrEqual(work, grid.dayLeft[person][day]);
    }

    private void missed() {
        LinearExprBuilder missed = LinearExpr.newBuilder();
        for (Unit unit : grid.units) {
            if (wanted.all()) {
                continue;
            }
            int[] at = hint.starts()[unit.index()];
            boolean isLate = at != null && at[at.length - 1] + unit.pieces()[at.length - 1] > unit.due();
            Literal late = literal(isLate);
            model.addLessOrEqual(end(unit), unit.due()).onlyEnforceIf(new Literal[] {done[unit.index()], late.not()});
            model.addImplication(late, done[unit.index()]);
            int out = Weights.USUAL.out(unit.task());
            missed.add(out);
            missed.addTerm((LinearArgument) done[unit.index()], -out);
            missed.addTerm((LinearArgument) late, Weights.USUAL.late(unit.task()));
        }
        for (Kept promise : grid.promises) {
            promise(promise, missed);
        }
        if (wanted.goal() == Goal.MISSED) {
            objective.add(missed.build());
        } else if (!wanted.all()) {
            model.addLessOrEqual(missed, wanted.missed());
        }
    }

    private void promise(Kept promise, LinearExprBuilder missed) {
        boolean waitsNow = Arrays.stream(promise.apart()).allMatch(unit -> {
            int[] at = hint.starts()[unit];
            return at == null || at[0] >= promise.over();
        });
        boolean provesNow = Arrays.stream(promise.proof()).allMatch(unit -> {
            int[] at = hint.starts()[unit];
            int last = grid.units.get(unit).pieces().length - 1;
            return at != null && at[last] + grid.units.get(unit).pieces()[last] <= promise.begins();
        });
        boolean waitHint = promise.canWait() && waitsNow;
        boolean proveHint = promise.canProve() && provesNow;
        Literal waits = promise.canWait() ? literal(waitHint) : model.falseLiteral();
        Literal proves = promise.canProve() ? literal(proveHint) : model.falseLiteral();
        for (int unit : promise.apart()) {
            model.addGreaterOrEqual(start[unit][0], promise.over()).onlyEnforceIf(new Literal[] {waits, done[unit]});
        }
        for (int unit : promise.proof()) {
            model.addLessOrEqual(end(grid.units.get(unit)), promise.begins()).onlyEnforceIf(proves);
            if (!wanted.all()) {
                model.addImplication(proves, done[unit]);
            }
        }
        if (wanted.all()) {
            model.addBoolOr(new Literal[] {waits, proves});
        } else {
            Literal broken = literal(!waitHint && !proveHint);
            model.addBoolOr(new Literal[] {waits, proves, broken});
            missed.addTerm((LinearArgument) broken, Weights.USUAL.promise());
        }
    }

    private void finish() {
        boolean goal = wanted.goal() == Goal.FINISH;
        if (!goal && wanted.finish() >= grid.length) {
            return;
        }
        int least = wanted.all() ? bound.finish : 0;
        int hinted = hintedFinish;
        int most = Math.max(hinted, Math.min(grid.length, wanted.finish()));
        IntVar finish = model.newIntVar(Math.min(least, hinted), most, "");
        model.addHint(finish, goal ? hinted : Math.max(hinted, Math.min(least, hinted)));
        for (Unit unit : grid.units) {
            if (unit.counts()) {
                model.addLessOrEqual(end(unit), finish).onlyEnforceIf(done[unit.index()]);
            }
        }
        if (wanted.all()) {
            loads(finish, least);
        }
        if (goal) {
            objective.add(finish);
        }
    }

    /** What each person does before the finish is not more than the hours up to it; and so for what begins late or has work after it. */
    private void loads(IntVar finish, int least) {
        int[] heads = cuts(bound.head);
        int[] tails = cuts(bound.tail);
        for (int person = 0; person < grid.job.people().size(); person++) {
            for (int from : heads) {
                for (int until : tails) {
                    load(finish, least, person, from, until);
                }
            }
        }
    }

    private void load(IntVar finish, int least, int person, int from, int until) {
        LinearExprBuilder work = LinearExpr.newBuilder();
        boolean onSite = true;
        int some = 0;
        for (Unit unit : grid.units) {
            Literal of = has[unit.index()][person];
            if (of != null && unit.counts() && bound.head[unit.index()] >= from && bound.tail[unit.index()] >= until) {
                work.addTerm((LinearArgument) of, unit.ticks());
                onSite &= !unit.task().site().remote();
                some++;
            }
        }
        if (some > 1 && least > until) {
            work.addTerm(finish, -1);
            model.addLessOrEqual(work, bound.hours(person, onSite, from, least - until) - least);
        }
    }

    private static int[] cuts(int[] values) {
        int[] sorted = Arrays.stream(values).sorted().toArray();
        return java.util.stream.IntStream.range(0, sorted.length == 0 ? 0 : LONGEST_CUTS)
                .map(cut -> cut == 0 ? 0 : sorted[cut * sorted.length / LONGEST_CUTS])
                .distinct()
                .toArray();
    }

    private void hireDays() {
        boolean goal = wanted.goal() == Goal.HIRE_DAYS;
        if (!goal && wanted.hireDays() == Integer.MAX_VALUE) {
            return;
        }
        LinearExprBuilder sum = LinearExpr.newBuilder();
        int least = 0;
        int hintedDays = 0;
        for (Map.Entry<Integer, List<Unit>> hire : grid.byHire().entrySet()) {
            Map<Integer, List<Literal>> uses = new TreeMap<>();
            int work = 0;
            for (Unit unit : hire.getValue()) {
                work += wanted.all() ? unit.ticks() : 0;
                for (int piece = 0; piece < unit.pieces().length; piece++) {
                    days(unit, piece)
                            .forEach((day, on) -> uses.computeIfAbsent(day, any -> new ArrayList<>())
                                    .add(on));
                }
            }
            List<Integer> lengths = new ArrayList<>();
            for (Map.Entry<Integer, List<Literal>> day : uses.entrySet()) {
                int ticks = (int) java.util.stream.IntStream.range(0, grid.length)
                        .filter(at -> grid.day(at) == day.getKey())
                        .count();
                if (grid.hiredAlready.get(hire.getKey()).contains(day.getKey())) {
                    work -= ticks;
                    continue;
                }
                lengths.add(ticks);
                boolean usedNow = hire.getValue().stream().anyMatch(unit -> {
                    int[] at = hint.starts()[unit.index()];
                    return at != null && Arrays.stream(at).anyMatch(each -> grid.day(each) == day.getKey());
                });
                hintedDays += usedNow ? 1 : 0;
                Literal had = literal(usedNow);
                day.getValue().forEach(on -> model.addImplication(on, had));
                sum.add((LinearArgument) had);
            }
            lengths.sort(java.util.Comparator.reverseOrder());
            for (int length : lengths) {
                if (work > 0) {
                    least++;
                    work -= length;
                }
            }
        }
        IntVar total = model.newIntVar(Math.min(least, hintedDays), 1000, "");
        model.addHint(total, hintedDays);
        model.addEquality(sum, total);
        if (goal) {
            objective.add(total);
        } else {
            model.addLessOrEqual(total, wanted.hireDays());
        }
    }

    private void moved() {
        if (before == null || wanted.goal() != Goal.MOVED) {
            return;
        }
        for (Unit unit : grid.units) {
            int[] was = before.starts()[unit.index()];
            if (was == null) {
                continue;
            }
            long crew = before.crews()[unit.index()];
            boolean possible = Arrays.stream(unit.crews()).anyMatch(each -> each == crew);
            int[] at = hint.starts()[unit.index()];
            boolean same = at != null && at[0] == was[0] && hint.crews()[unit.index()] == crew;
            objective.add(1);
            if (!possible) {
                continue;
            }
            Literal stays = literal(same);
            model.addEquality(start[unit.index()][0], was[0]).onlyEnforceIf(stays);
            model.addImplication(stays, done[unit.index()]);
            for (int person = 0; person < has[unit.index()].length; person++) {
                if ((crew >> person & 1) == 1) {
                    model.addImplication(stays, person(unit.index(), person));
                }
            }
            objective.addTerm((LinearArgument) stays, -1);
        }
    }

    /** On fixed days and with fixed crews: how far apart the first and the last of each person's day on site lie. */
    private void idle() {
        if (wanted.goal() != Goal.IDLE) {
            return;
        }
        Map<Integer, List<int[]>> byPersonAndDay = new TreeMap<>();
        for (Unit unit : grid.units) {
            int[] at = hint.starts()[unit.index()];
            for (int piece = 0; at != null && piece < at.length; piece++) {
                int day = grid.day(at[piece]);
                BitSet today = grid.starts(unit, unit.pieces()[piece]);
                for (int each = today.nextSetBit(0); each >= 0; each = today.nextSetBit(each + 1)) {
                    today.set(each, grid.day(each) == day);
                }
                model.addLinearExpressionInDomain(start[unit.index()][piece], domain(today));
                if (unit.task().site().remote()) {
                    continue;
                }
                for (long left = hint.crews()[unit.index()]; left != 0; left &= left - 1) {
                    int person = Long.numberOfTrailingZeros(left);
                    byPersonAndDay
                            .computeIfAbsent(person * grid.job.days() + day, key -> new ArrayList<>())
                            .add(new int[] {unit.index(), piece, at[piece], unit.pieces()[piece]});
                }
            }
        }
        byPersonAndDay.values().forEach(pieces -> {
            int first = pieces.stream().mapToInt(piece -> piece[2]).min().orElseThrow();
            int last =
                    pieces.stream().mapToInt(piece -> piece[2] + piece[3]).max().orElseThrow();
            int work = pieces.stream().mapToInt(piece -> piece[3]).sum();
            IntVar from = model.newIntVar(0, grid.length, "");
            IntVar to = model.newIntVar(0, grid.length, "");
            IntVar idle = model.newIntVar(0, grid.length, "");
            model.addHint(from, first);
            model.addHint(to, last);
            model.addHint(idle, last - first - work);
            for (int[] piece : pieces) {
                model.addLessOrEqual(from, start[piece[0]][piece[1]]);
                model.addGreaterOrEqual(
                        to,
                        LinearExpr.newBuilder().add(start[piece[0]][piece[1]]).add(piece[3]));
            }
            model.addEquality(LinearExpr.newBuilder().add(to).addTerm(from, -1).add(-work), idle);
            objective.add(idle);
        });
    }
}
