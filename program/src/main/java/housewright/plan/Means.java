package housewright.plan;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a task uses while it is done.
 *
 * @param hire id, or null
 * @param tools units of each tool by its id, 1 or more
 */
public record Means(@Nullable String hire, Map<String, Integer> tools) {
    /** Nothing. */
    public static final Means NONE = new Means(null, Map.of());

    public Means {
        tools = Map.copyOf(tools);
        tools.forEach((tool, units) -> {
            if (units < 1) {
                throw new IllegalArgumentException("Of tool %s 1 or more are used, but not %s".formatted(tool, units));
            }
        });
    }
}
