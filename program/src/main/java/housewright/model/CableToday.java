package housewright.model;

import housewright.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What of a cable differs today. */
public record CableToday(
        @Nullable String type,
        @Nullable End from,
        @Nullable End to,
        List<Way> ways,
        List<String> via,
        @Nullable Length length,
        List<Connector> ends,
        List<String> adapters) {
    public CableToday {
        ways = List.copyOf(ways);
        via = List.copyOf(via);
        ends = List.copyOf(ends);
        adapters = List.copyOf(adapters);
    }
}
