package housewright.plan.axis;

import housewright.plan.Job;
import housewright.plan.Limits;
import housewright.plan.Person;
import housewright.plan.Visit;
import housewright.plan.Window;
import java.util.ArrayList;
import java.util.List;

/** Reckoning with lists of windows; each result is in order and without overlaps. */
final class Windows {
    private Windows() {}

    static List<Window> union(List<Window> some) {
        List<Window> joined = new ArrayList<>();
        for (Window next : some.stream().sorted().toList()) {
            Window last = joined.isEmpty() ? null : joined.getLast();
            if (last != null && next.from() <= last.to()) {
                joined.set(joined.size() - 1, new Window(last.from(), Math.max(last.to(), next.to())));
            } else {
                joined.add(next);
            }
        }
        return joined;
    }

    static List<Window> union(List<Window> some, List<Window> others) {
        List<Window> all = new ArrayList<>(some);
        all.addAll(others);
        return union(all);
    }

    static List<Window> intersect(List<Window> some, List<Window> others) {
        List<Window> shared = new ArrayList<>();
        for (Window one : some) {
            for (Window other : others) {
                int from = Math.max(one.from(), other.from());
                int to = Math.min(one.to(), other.to());
                if (from < to) {
                    shared.add(new Window(from, to));
                }
            }
        }
        return union(shared);
    }

    static List<Window> without(List<Window> some, List<Window> taken) {
        List<Window> left = new ArrayList<>(some);
        for (Window gone : taken) {
            List<Window> next = new ArrayList<>();
            for (Window each : left) {
                if (!each.overlaps(gone)) {
                    next.add(each);
                    continue;
                }
                if (each.from() < gone.from()) {
                    next.add(new Window(each.from(), gone.from()));
                }
                if (gone.to() < each.to()) {
                    next.add(new Window(gone.to(), each.to()));
                }
            }
            left = next;
        }
        return left;
    }

    /** Free times on site, with only visits counted where the person travels, and the road taken off. */
    static List<Window> onSite(Person person) {
        if (person.visits().isEmpty()) {
            return union(person.onSite());
        }
        List<Window> free = new ArrayList<>();
        for (Visit visit : person.visits()) {
            List<Window> stay = List.of(new Window(visit.firstDay() * Job.DAY, (visit.lastDay() + 1) * Job.DAY));
            List<Window> there =
                    shortened(intersect(union(person.onSite()), stay), visit.firstDay(), visit.wayThere(), true);
            free.addAll(shortened(there, visit.lastDay(), visit.wayBack(), false));
        }
        return union(free);
    }

    /** Takes minutes off the beginning, or the end, of one day's windows. */
    private static List<Window> shortened(List<Window> all, int day, int minutes, boolean atBeginning) {
        List<Window> left = new ArrayList<>();
        int toTake = minutes;
        for (Window each : atBeginning ? all : all.reversed()) {
            if (each.from() / Job.DAY != day || toTake == 0) {
                left.add(each);
                continue;
            }
            int taken = Math.min(toTake, each.length());
            toTake -= taken;
            if (taken < each.length()) {
                left.add(
                        atBeginning
                                ? new Window(each.from() + taken, each.to())
                                : new Window(each.from(), each.to() - taken));
            }
        }
        return union(left);
    }

    /**
     * Where breaks are put: in a stretch that is longer than a person may work without one, each time after as long as
     * may be. Windows
     * that lie closer together than a break is long count as one stretch.
     */
    static List<Window> breaks(List<Window> free, Limits limits, int tick) {
        List<Window> breaks = new ArrayList<>();
        if (limits.breakLength() == 0) {
            return breaks;
        }
        int pause = Math.ceilDiv(limits.breakLength(), tick) * tick;
        int index = 0;
        while (index < free.size()) {
            int from = free.get(index).from();
            int to = free.get(index).to();
            while (index + 1 < free.size() && free.get(index + 1).from() - to < limits.breakLength()) {
                to = free.get(++index).to();
            }
            index++;
            int longest = limits.breakAfter() / tick * tick;
            if (longest == 0) {
                breaks.add(new Window(from, to));
                continue;
            }
            int start = Math.ceilDiv(from, tick) * tick;
            for (int at = start + longest; at < to; at += longest + pause) {
                breaks.add(new Window(at, at + pause));
            }
        }
        return breaks;
    }

    /** Cut at midnights, so that no piece of work runs from one day into the next. */
    static List<Window> byDay(List<Window> some, int days) {
        List<Window> cut = new ArrayList<>();
        for (Window each : some) {
            for (int day = Math.max(0, each.from() / Job.DAY); day < days && day * Job.DAY < each.to(); day++) {
                int from = Math.max(each.from(), day * Job.DAY);
                int to = Math.min(each.to(), (day + 1) * Job.DAY);
                if (from < to) {
                    cut.add(new Window(from, to));
                }
            }
        }
        return cut;
    }
}
