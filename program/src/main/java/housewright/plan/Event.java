package housewright.plan;

import org.jspecify.annotations.Nullable;

/**
 * A service, rehearsal or the like.
 *
 * @param place where no work goes on meanwhile, or null when it is elsewhere
 * @param deadline whether it is the one that the job must be ready for
 */
public record Event(
        String id, String name, Window when, @Nullable String place, boolean deadline) {}
