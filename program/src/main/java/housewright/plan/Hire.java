package housewright.plan;

import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A machine hired by the day: one task at a time, with somebody in the crew who may operate it.
 *
 * @param days days on which it can be had; the job's first day is 0
 * @param skill what one of the crew must hold to operate it, or null when anybody may
 */
public record Hire(
        String id, String name, Set<Integer> days, @Nullable String skill) {
    public Hire {
        days = java.util.Collections.unmodifiableSet(new TreeSet<>(days));
    }
}
