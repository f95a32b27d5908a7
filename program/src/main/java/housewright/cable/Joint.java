package housewright.cable;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one way of a cable joins.
 *
 * @param from null where that end is loose or nobody knows where it goes
 * @param to the same of the other end
 */
public record Joint(@Nullable Plug from, @Nullable Plug to) {
    /** Both ends, or the one that is plugged in. */
    public List<Plug> plugs() {
        List<Plug> plugs = new ArrayList<>(2);
        if (from != null) {
            plugs.add(from);
        }
        if (to != null) {
            plugs.add(to);
        }
        return plugs;
    }
}
