package housewright.study;

import housewright.model.Free;
import housewright.model.Person;
import housewright.model.Project;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** On which days work is done on site, where no plan says so yet. */
final class SiteDays {
    /** A day's work, common practice; an evening is none. */
    private static final long DAY_MINUTES = 6 * 60;

    /** Nobody is free for longer than this; whoever says so made a slip. */
    private static final int MOST_DAYS = 1000;

    private SiteDays() {}

    /** The first day on which somebody is free in the room for six hours; else the first on which anybody is; null where nobody is. */
    static @Nullable LocalDate first(Project project) {
        TreeSet<LocalDate> any = new TreeSet<>();
        TreeSet<LocalDate> whole = new TreeSet<>();
        for (Person person : project.people().values()) {
            Map<LocalDate, Long> minutes = new HashMap<>();
            for (Free free : person.free()) {
                if (free.between().size() != 2 || !free.from().isBefore(free.to())) {
                    continue;
                }
                LocalDate day = free.between().getFirst();
                for (int i = 0; i < MOST_DAYS && !day.isAfter(free.between().getLast()); i++, day = day.plusDays(1)) {
                    if (free.days().days().contains(day.getDayOfWeek())) {
                        minutes.merge(
                                day, Duration.between(free.from(), free.to()).toMinutes(), Long::sum);
                    }
                }
            }
            minutes.forEach((day, free) -> {
                any.add(day);
                if (free >= DAY_MINUTES) {
                    whole.add(day);
                }
            });
        }
        return !whole.isEmpty() ? whole.first() : any.isEmpty() ? null : any.first();
    }
}
