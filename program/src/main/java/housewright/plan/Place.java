package housewright.plan;

import java.util.List;
import java.util.Map;

/**
 * A room or other place of work.
 *
 * @param open when it may be worked in; empty for always
 * @param only when a condition can be had, such as dark after sunset; a condition that is not named can be had at any time
 */
public record Place(String id, String name, List<Window> open, Map<Condition, List<Window>> only) {
    public Place {
        open = open.stream().sorted().toList();
        only = Map.copyOf(only);
    }

    /** A place that is always open. */
    public static Place of(String id) {
        return new Place(id, id, List.of(), Map.of());
    }
}
