package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.plan.Standing;
import housewright.plan.chance.Chance;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** How the accepted plans stand, each worked out once for a revision and a moment; the last ones are kept. */
final class Standings {
    private static final int MOST = 8;

    /** A plan does not stand otherwise within these minutes. */
    private static final int STEP = 5;

    private final Kept<Standing> kept = new Kept<>(MOST);
    private final Kept<List<Chance>> chances = new Kept<>(MOST);
    private final Set<String> known = ConcurrentHashMap.newKeySet();

    Standing of(Visit visit, OpenProject job, Now now) {
        LocalDateTime at = visit.moment(now);
        LocalDateTime step = at.minusMinutes(at.getMinute() % STEP);
        return kept.get(job.id() + ' ' + now.revision() + ' ' + step, () -> Standing.of(now.study(), step));
    }

    /** How likely the accepted plan is kept; worked out once a day for a revision, which takes a while. */
    List<Chance> likelihood(Visit visit, OpenProject job, Now now) {
        String key = key(visit, job, now);
        List<Chance> found = chances.get(key, () -> of(visit, job, now).likelihood());
        known.add(key);
        return found;
    }

    /** The same, where somebody has waited for it already; empty otherwise. */
    List<Chance> knownLikelihood(Visit visit, OpenProject job, Now now) {
        return known.contains(key(visit, job, now)) ? likelihood(visit, job, now) : List.of();
    }

    private static String key(Visit visit, OpenProject job, Now now) {
        return job.id() + ' ' + now.revision() + ' ' + visit.moment(now).toLocalDate();
    }
}
