package housewright.plan.axis;

import housewright.plan.Job;
import housewright.plan.Person;
import housewright.plan.Window;
import java.util.List;

/**
 * When somebody can work: free times with the road and breaks taken out and cut at midnights.
 *
 * @param onSite in the building
 * @param anywhere there or from afar
 * @param breaks where breaks were put
 */
public record Free(List<Window> onSite, List<Window> anywhere, List<Window> breaks) {
    public static Free of(Job job, Person person) {
        List<Window> there = Windows.onSite(person);
        List<Window> all = Windows.union(there, person.remote());
        List<Window> breaks = Windows.breaks(Windows.byDay(all, job.days()), person.limits(), job.tick());
        return new Free(
                Windows.byDay(Windows.without(there, breaks), job.days()),
                Windows.byDay(Windows.without(all, breaks), job.days()),
                breaks);
    }
}
