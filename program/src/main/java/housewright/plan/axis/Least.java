package housewright.plan.axis;

import housewright.plan.Goal;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Log;
import housewright.plan.Person;
import housewright.plan.Task;
import housewright.plan.Window;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What no plan that misses nothing can be better than, found without a search; weak, but never wrong. */
public final class Least {
    private Least() {}

    /** Bounds of {@link Goal#FINISH} and {@link Goal#HIRE_DAYS}, in their units. */
    public static Map<Goal, Long> of(Job job, Log log) {
        Grid grid = Grid.of(job, log);
        Map<Goal, Long> least = new EnumMap<>(Goal.class);
        least.put(Goal.FINISH, (long) Math.max(grid.endMinute(Bound.of(grid).finish), grid.frozenFinish));
        least.put(
                Goal.HIRE_DAYS,
                job.hires().stream().mapToLong(hire -> days(job, log, hire)).sum());
        return least;
    }

    /** It does one thing after another, and no longer in a day than somebody who may operate it is there. */
    private static long days(Job job, Log log, Hire hire) {
        int work = 0;
        for (Task task : job.tasks()) {
            if (hire.id().equals(task.means().hire()) && !log.frozen(task.id())) {
                work += task.length().planned(job.tick());
            }
        }
        int most = longestDay(job, hire);
        return work == 0 ? 0 : most == 0 ? 1 : Math.ceilDiv(work, most);
    }

    private static int longestDay(Job job, Hire hire) {
        List<Window> there = new ArrayList<>();
        for (Person person : job.people()) {
            if (hire.skill() == null || person.skills().contains(hire.skill())) {
                there.addAll(person.onSite());
            }
        }
        int[] days = new int[job.days() + 1];
        for (Window each : Windows.byDay(Windows.union(there), job.days() + 1)) {
            days[each.from() / Job.DAY] += each.length();
        }
        return hire.days().stream()
                .filter(day -> day >= 0 && day < days.length)
                .mapToInt(day -> days[day])
                .max()
                .orElse(0);
    }
}
