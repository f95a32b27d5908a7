package housewright.order;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * When a thing or cable is wanted, and what for.
 *
 * @param day the first day of a task that uses it; null where nobody knows
 * @param tasks those that use it
 * @param delays those that wait for these, directly or not
 */
public record Need(@Nullable LocalDate day, List<String> tasks, List<String> delays) {
    /** Nobody waits for it. */
    public static final Need NONE = new Need(null, List.of(), List.of());

    public Need {
        tasks = List.copyOf(tasks);
        delays = List.copyOf(delays);
    }
}
