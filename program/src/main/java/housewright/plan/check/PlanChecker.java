package housewright.plan.check;

import housewright.plan.Condition;
import housewright.plan.Delivery;
import housewright.plan.Event;
import housewright.plan.Goal;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Person;
import housewright.plan.Place;
import housewright.plan.Promise;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Tool;
import housewright.plan.Visit;
import housewright.plan.Weights;
import housewright.plan.Window;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Checks one schedule. */
public final class PlanChecker {
    private static final int MINUTES_A_DAY = 1440;

    private final Job job;
    private final Log log;
    private final List<Slot> slots;
    private final Map<String, Slot> byTask = new HashMap<>();
    private final Map<String, Task> tasks = new LinkedHashMap<>();
    private final Map<String, Person> people = new LinkedHashMap<>();
    private final Set<String> fixed = new HashSet<>();
    private final List<Breach> breaches = new ArrayList<>();

    private PlanChecker(Request request, Schedule schedule) {
        job = request.job();
        log = request.log();
        slots = schedule.slots();
        job.tasks().forEach(task -> tasks.put(task.id(), task));
        job.people().forEach(person -> people.put(person.id(), person));
        log.done().forEach(slot -> fixed.add(slot.task()));
        log.begun().forEach(begun -> fixed.add(begun.task()));
    }

    /** Every rule that the schedule breaks, and what it leaves undone. */
    public static Verdict check(Request request, Schedule schedule) {
        return new PlanChecker(request, schedule).verdict(request);
    }

    private Verdict verdict(Request request) {
        known();
        fixedAsTheyWere();
        for (Slot slot : slots) {
            Task task = tasks.get(slot.task());
            if (task == null || fixed.contains(slot.task())) {
                continue;
            }
            pieces(slot, task);
            crew(slot, task);
            order(slot, task);
            hireDay(slot, task);
            place(slot, task);
        }
        for (Person person : job.people()) {
            freeAndOnce(person);
            limits(person);
        }
        conditions();
        machines();
        tools();
        return new Verdict(breaches, out(), late(), broken(), values(request));
    }

    private void breach(String rule, Slot slot, String says) {
        breaches.add(new Breach(rule, slot.task(), "Task %s %s".formatted(slot.task(), says)));
    }

    private void known() {
        for (Slot slot : slots) {
            if (!tasks.containsKey(slot.task())) {
                breach("unknown-task", slot, "is not in the job");
            }
            if (byTask.put(slot.task(), slot) != null) {
                breach("task-twice", slot, "is planned twice");
            }
        }
    }

    private void fixedAsTheyWere() {
        for (Slot was : log.done()) {
            if (!was.equals(byTask.get(was.task()))) {
                breach("done-stays", was, "is done and yet planned otherwise");
            }
        }
        for (Log.Begun begun : log.begun()) {
            Slot is = byTask.get(begun.task());
            boolean same = is != null
                    && is.start() == begun.start()
                    && Set.copyOf(is.people()).equals(Set.copyOf(begun.people()))
                    && worked(is, log.now()) >= begun.left();
            if (!same) {
                breaches.add(new Breach(
                        "begun-stays", begun.task(), "Task " + begun.task() + " is begun and yet planned otherwise"));
            }
        }
    }

    private static int worked(Slot slot, int from) {
        return slot.pieces().stream()
                .mapToInt(piece -> Math.max(0, piece.to() - Math.max(from, piece.from())))
                .sum();
    }

    private void pieces(Slot slot, Task task) {
        int planned = 0;
        int before = Integer.MIN_VALUE;
        for (Window piece : slot.pieces()) {
            planned += piece.to() - piece.from();
            if (piece.from() < before) {
                breach("pieces-in-order", slot, "has pieces out of order");
            }
            before = piece.to();
            if (piece.from() < 0 || piece.to() > job.days() * MINUTES_A_DAY) {
                breach("horizon", slot, "is outside the time planned for");
            }
            if (piece.from() < log.now()) {
                breach("past", slot, "begins in the past");
            }
            if (piece.from() % job.tick() != 0) {
                breach("grid", slot, "is not on the grid");
            }
        }
        double mean = (task.length().optimistic()
                        + 4.0 * task.length().likely()
                        + task.length().pessimistic())
                / 6;
        if (planned < mean - 1e-6 || planned >= Math.ceil(mean - 1e-6) + job.tick()) {
            breach("length", slot, "takes %s min, but %s min are expected".formatted(planned, Math.round(mean)));
        }
        if (slot.pieces().size() > 1 && !task.length().mayPause()) {
            breach("pause", slot, "is laid down though it may not pause");
        }
    }

    private void crew(Slot slot, Task task) {
        if (slot.people().size() != task.crew().count()
                || Set.copyOf(slot.people()).size() != task.crew().count()) {
            breach(
                    "crew",
                    slot,
                    "takes %s people, but has %s".formatted(task.crew().count(), slot.people()));
        }
        for (String id : slot.people()) {
            if (!people.containsKey(id)) {
                breach("unknown-person", slot, "has " + id + ", whom nobody knows");
            }
        }
        for (String skill : task.crew().skills()) {
            if (nobodyHas(slot, skill)) {
                breach("skill", slot, "has nobody with the skill " + skill);
            }
        }
        if (!slot.people().containsAll(task.crew().pinned())) {
            breach("pinned-person", slot, "is not done by " + task.crew().pinned());
        }
        for (Hire hire : job.hires()) {
            if (hire.id().equals(task.means().hire()) && hire.skill() != null && nobodyHas(slot, hire.skill())) {
                breach("operator", slot, "has nobody who may operate " + hire.id());
            }
        }
    }

    private boolean nobodyHas(Slot slot, String skill) {
        for (String id : slot.people()) {
            Person person = people.get(id);
            if (person != null && person.skills().contains(skill)) {
                return false;
            }
        }
        return true;
    }

    private void order(Slot slot, Task task) {
        for (String id : task.timing().after()) {
            Slot before = byTask.get(id);
            if (before == null) {
                breach("after", slot, "is planned though " + id + ", which must come first, is not");
            } else if (before.end() > slot.start()) {
                breach("after", slot, "begins before " + id + " is ended");
            }
        }
        for (Delivery delivery : job.deliveries()) {
            int comes = log.late().getOrDefault(delivery.id(), delivery.expected());
            if (task.timing().deliveries().contains(delivery.id()) && slot.start() < comes) {
                breach("delivery", slot, "begins before " + delivery.id() + " is there");
            }
        }
        if (slot.start() < task.timing().earliest()) {
            breach("earliest", slot, "begins too early");
        }
        if (log.blocked().getOrDefault(task.id(), 0) > slot.start()) {
            breach("blocked", slot, "is blocked when it begins");
        }
        Integer pinned = task.timing().start();
        if (pinned != null && pinned != slot.start()) {
            breach("pinned-start", slot, "does not begin when it is pinned to");
        }
    }

    private void hireDay(Slot slot, Task task) {
        for (Hire hire : job.hires()) {
            if (hire.id().equals(task.means().hire())) {
                for (Window piece : slot.pieces()) {
                    if (!hire.days().contains(piece.from() / MINUTES_A_DAY)
                            || !hire.days().contains((piece.to() - 1) / MINUTES_A_DAY)) {
                        breach("hire-day", slot, "is on a day without " + hire.id());
                    }
                }
            }
        }
    }

    private void place(Slot slot, Task task) {
        if (task.site().remote()) {
            return;
        }
        for (Place place : job.places()) {
            if (!place.id().equals(task.site().place())) {
                continue;
            }
            for (Window piece : slot.pieces()) {
                if (!place.open().isEmpty() && !covered(piece, place.open())) {
                    breach("closed", slot, "is in " + place.id() + " while it is closed");
                }
                for (Condition condition : task.site().needs()) {
                    List<Window> only = place.only().get(condition);
                    if (only != null && !covered(piece, only)) {
                        breach(
                                "condition-time",
                                slot,
                                "needs %s to be %s when it is not".formatted(place.id(), condition));
                    }
                }
                for (Event event : job.events()) {
                    if (place.id().equals(event.place())
                            && piece.from() < event.when().to()
                            && event.when().from() < piece.to()) {
                        breach("event", slot, "is in " + place.id() + " during " + event.id());
                    }
                }
            }
        }
    }

    private static boolean covered(Window piece, List<Window> windows) {
        BitSet open = minutes(windows);
        return open.nextClearBit(piece.from()) >= piece.to();
    }

    private static BitSet minutes(List<Window> windows) {
        BitSet minutes = new BitSet();
        for (Window window : windows) {
            minutes.set(Math.max(0, window.from()), Math.max(0, window.to()));
        }
        return minutes;
    }

    /** Minutes in which a person who travels is not on the road or away. */
    private static BitSet there(Person person) {
        BitSet free = minutes(person.onSite());
        if (person.visits().isEmpty()) {
            return free;
        }
        BitSet there = new BitSet();
        for (Visit visit : person.visits()) {
            BitSet stay = new BitSet();
            stay.set(visit.firstDay() * MINUTES_A_DAY, (visit.lastDay() + 1) * MINUTES_A_DAY);
            stay.and(free);
            int road = visit.wayThere();
            for (int minute = stay.nextSetBit(0);
                    road > 0 && minute >= 0 && minute < (visit.firstDay() + 1) * MINUTES_A_DAY;
                    minute = stay.nextSetBit(minute + 1)) {
                stay.clear(minute);
                road--;
            }
            road = visit.wayBack();
            for (int minute = stay.length() - 1;
                    road > 0 && minute >= visit.lastDay() * MINUTES_A_DAY;
                    minute = stay.previousSetBit(minute - 1)) {
                stay.clear(minute);
                road--;
            }
            there.or(stay);
        }
        return there;
    }

    private void freeAndOnce(Person person) {
        BitSet there = there(person);
        BitSet anywhere = minutes(person.remote());
        anywhere.or(there);
        BitSet busy = new BitSet();
        BitSet planned = new BitSet();
        for (Slot slot : slots) {
            Task task = tasks.get(slot.task());
            if (task == null || !slot.people().contains(person.id())) {
                continue;
            }
            for (Window piece : slot.pieces()) {
                BitSet mine = new BitSet();
                mine.set(Math.max(0, piece.from()), Math.max(0, piece.to()));
                // Where two that are done or begun overlap, that is how it was.
                if (mine.intersects(fixed.contains(slot.task()) ? planned : busy)) {
                    breach("double-booked", slot, "has " + person.id() + ", who is at another task then");
                }
                busy.or(mine);
                if (!fixed.contains(slot.task())) {
                    planned.or(mine);
                    mine.andNot(task.site().remote() ? anywhere : there);
                    if (!mine.isEmpty()) {
                        breach("free", slot, "has " + person.id() + ", who is not free then");
                    }
                }
            }
        }
    }

    /** What is done or begun counts, but only what is planned can be blamed. */
    private void limits(Person person) {
        Map<Integer, Integer> day = new TreeMap<>();
        BitSet work = new BitSet();
        BitSet planned = new BitSet();
        Map<Integer, Slot> lastOfDay = new HashMap<>();
        for (Slot slot : slots) {
            if (!slot.people().contains(person.id())) {
                continue;
            }
            for (Window piece : slot.pieces()) {
                work.set(Math.max(0, piece.from()), Math.max(0, piece.to()));
                for (int minute = piece.from(); minute < piece.to(); minute++) {
                    day.merge(Math.floorDiv(minute, MINUTES_A_DAY), 1, Integer::sum);
                }
                if (!fixed.contains(slot.task())) {
                    planned.set(piece.from(), piece.to());
                    lastOfDay.put(piece.from() / MINUTES_A_DAY, slot);
                }
            }
        }
        day.forEach((number, minutes) -> {
            Slot last = lastOfDay.get(number);
            if (last != null && minutes > person.limits().minutesADay()) {
                breach("day-limit", last, "makes %s work %s min that day".formatted(person.id(), minutes));
            }
        });
        if (person.limits().breakLength() == 0) {
            return;
        }
        int stretch = 0;
        int rest = 0;
        boolean blame = false;
        for (int minute = 0; minute <= work.length(); minute++) {
            if (work.get(minute)) {
                stretch += rest + 1;
                rest = 0;
                blame |= planned.get(minute);
                if (stretch > person.limits().breakAfter() && blame && planned.get(minute)) {
                    int now = minute;
                    slots.stream()
                            .filter(slot -> slot.people().contains(person.id())
                                    && slot.pieces().stream()
                                            .anyMatch(piece -> piece.from() <= now && now < piece.to()))
                            .findFirst()
                            .ifPresent(slot -> breach("break", slot, "leaves " + person.id() + " without a break"));
                    stretch = 0;
                }
            } else if (stretch > 0 && ++rest >= person.limits().breakLength()) {
                stretch = 0;
                rest = 0;
                blame = false;
            }
        }
    }

    private void conditions() {
        for (int one = 0; one < slots.size(); one++) {
            for (int two = one + 1; two < slots.size(); two++) {
                Slot first = slots.get(one);
                Slot second = slots.get(two);
                Task a = tasks.get(first.task());
                Task b = tasks.get(second.task());
                if (a == null
                        || b == null
                        || (fixed.contains(a.id()) && fixed.contains(b.id()))
                        || a.site().remote()
                        || b.site().remote()
                        || a.site().place() == null
                        || !a.site().place().equals(b.site().place())
                        || !together(first, second)) {
                    continue;
                }
                for (Condition condition : Condition.values()) {
                    boolean aNeeds = a.site().needs().contains(condition);
                    boolean bNeeds = b.site().needs().contains(condition);
                    boolean aSpoils =
                            condition == Condition.EMPTY || a.site().spoils().contains(condition);
                    boolean bSpoils =
                            condition == Condition.EMPTY || b.site().spoils().contains(condition);
                    if ((aNeeds && (bNeeds || bSpoils)) || (bNeeds && aSpoils)) {
                        breach(
                                "condition",
                                second,
                                "and %s cannot both be in %s, which is to be %s"
                                        .formatted(a.id(), a.site().place(), condition));
                    }
                }
            }
        }
    }

    private static boolean together(Slot first, Slot second) {
        for (Window a : first.pieces()) {
            for (Window b : second.pieces()) {
                if (a.from() < b.to() && b.from() < a.to()) {
                    return true;
                }
            }
        }
        return false;
    }

    private void machines() {
        for (Hire hire : job.hires()) {
            BitSet busy = new BitSet();
            for (Slot slot : slots) {
                Task task = tasks.get(slot.task());
                if (task == null || !hire.id().equals(task.means().hire())) {
                    continue;
                }
                BitSet mine = minutes(slot.pieces());
                if (mine.intersects(busy) && !fixed.contains(slot.task())) {
                    breach("hire-busy", slot, "uses " + hire.id() + " while another does");
                }
                busy.or(mine);
            }
        }
    }

    private void tools() {
        for (Tool tool : job.tools()) {
            int[] used = new int[(job.days() + 1) * MINUTES_A_DAY];
            for (Slot slot : slots) {
                Task task = tasks.get(slot.task());
                Integer units = task == null ? null : task.means().tools().get(tool.id());
                if (units == null) {
                    continue;
                }
                boolean tooMany = false;
                for (Window piece : slot.pieces()) {
                    for (int minute = Math.max(0, piece.from()); minute < Math.min(piece.to(), used.length); minute++) {
                        used[minute] += units;
                        tooMany |= used[minute] > tool.units();
                    }
                }
                if (tooMany && !fixed.contains(slot.task())) {
                    breach("tool", slot, "uses more of " + tool.id() + " than there are");
                }
            }
        }
    }

    private List<String> out() {
        return tasks.keySet().stream().filter(id -> !byTask.containsKey(id)).toList();
    }

    private List<String> late() {
        List<String> late = new ArrayList<>();
        for (Task task : tasks.values()) {
            Slot slot = byTask.get(task.id());
            if (slot != null && !fixed.contains(task.id()) && slot.end() > due(task)) {
                late.add(task.id());
            }
        }
        return late;
    }

    private int deadline() {
        int first = job.days() * MINUTES_A_DAY;
        for (Event event : job.events()) {
            if (event.deadline()) {
                first = Math.min(first, event.when().from());
            }
        }
        return first;
    }

    private int due(Task task) {
        return task.timing().due() == Integer.MAX_VALUE
                ? deadline()
                : task.timing().due();
    }

    private List<Promise> broken() {
        List<Promise> broken = new ArrayList<>();
        for (Promise promise : job.promises()) {
            for (Event event : job.events()) {
                if (!event.id().equals(promise.event())
                        || (log.now() > 0 && event.when().to() <= log.now())) {
                    continue;
                }
                boolean oldStands = promise.worksToday();
                for (String id : promise.takenApartBy()) {
                    oldStands &= !byTask.containsKey(id)
                            || byTask.get(id).start() >= event.when().to();
                }
                boolean newProven = !promise.provenBy().isEmpty();
                for (String id : promise.provenBy()) {
                    newProven &= byTask.containsKey(id)
                            && byTask.get(id).end() <= event.when().from();
                }
                if (!oldStands && !newProven) {
                    broken.add(promise);
                }
            }
        }
        return broken;
    }

    private Map<Goal, Long> values(Request request) {
        Map<Goal, Long> values = new EnumMap<>(Goal.class);
        long missed = (long) broken().size() * Weights.USUAL.promise();
        for (String id : out()) {
            missed += mandatory(id) ? Weights.USUAL.mandatoryOut() : Weights.USUAL.optionalOut();
        }
        for (String id : late()) {
            missed += mandatory(id) ? Weights.USUAL.mandatoryLate() : Weights.USUAL.optionalLate();
        }
        values.put(Goal.MISSED, missed);
        Schedule before = request.before();
        if (before != null) {
            long moved = 0;
            for (Slot was : before.slots()) {
                if (tasks.containsKey(was.task()) && !fixed.contains(was.task())) {
                    Slot is = byTask.get(was.task());
                    moved += is != null
                                    && is.start() == was.start()
                                    && is.people().equals(was.people())
                            ? 0
                            : 1;
                }
            }
            values.put(Goal.MOVED, moved);
        }
        long finish = 0;
        Set<String> hireDays = new HashSet<>();
        for (Slot slot : slots) {
            Task task = tasks.get(slot.task());
            if (task != null && task.mandatory() && due(task) <= deadline()) {
                finish = Math.max(finish, slot.end());
            }
            if (task != null && task.means().hire() != null) {
                for (Window piece : slot.pieces()) {
                    hireDays.add(task.means().hire() + " " + piece.from() / MINUTES_A_DAY);
                }
            }
        }
        values.put(Goal.FINISH, finish);
        values.put(Goal.HIRE_DAYS, (long) hireDays.size());
        values.put(Goal.HIRE_MOVES, hireMoves());
        values.put(Goal.IDLE, idle());
        return values;
    }

    private boolean mandatory(String id) {
        Task task = tasks.get(id);
        return task != null && task.mandatory();
    }

    private long hireMoves() {
        long moves = 0;
        for (Hire hire : job.hires()) {
            List<Slot> uses = new ArrayList<>();
            for (Slot slot : slots) {
                Task task = tasks.get(slot.task());
                if (task != null
                        && hire.id().equals(task.means().hire())
                        && !task.site().spot().isEmpty()) {
                    uses.add(slot);
                }
            }
            uses.sort(java.util.Comparator.comparingInt(Slot::start).thenComparing(Slot::task));
            for (int next = 1; next < uses.size(); next++) {
                String from = spot(uses.get(next - 1));
                moves += from.equals(spot(uses.get(next))) ? 0 : 1;
            }
        }
        return moves;
    }

    private String spot(Slot slot) {
        Task task = tasks.get(slot.task());
        return task == null ? "" : task.site().spot();
    }

    private long idle() {
        long idle = 0;
        for (Person person : job.people()) {
            BitSet work = new BitSet();
            for (Slot slot : slots) {
                Task task = tasks.get(slot.task());
                if (task != null && !task.site().remote() && slot.people().contains(person.id())) {
                    work.or(minutes(slot.pieces()));
                }
            }
            for (int day = 0; day <= job.days(); day++) {
                BitSet today = work.get(day * MINUTES_A_DAY, (day + 1) * MINUTES_A_DAY);
                if (!today.isEmpty()) {
                    idle += today.length() - today.nextSetBit(0) - today.cardinality();
                }
            }
            for (Visit visit : person.visits()) {
                if (!work.get(visit.firstDay() * MINUTES_A_DAY, (visit.lastDay() + 1) * MINUTES_A_DAY)
                        .isEmpty()) {
                    idle += visit.wayThere() + visit.wayBack();
                }
            }
        }
        return idle;
    }
}
