package housewright.model;

import housewright.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The lengths in which cable is sold: drums, boxes, rings. */
public record Drum(
        String id,

        @Doc("Types of cable that come so; none means every type that no other entry names") @Key("for")
        List<String> types,

        @Doc("Lengths of whole drums or boxes") List<Length> lengths,

        @Doc("Sold off the reel by the metre, too") boolean byMetre,

        @Doc("Where that comes from: common practice, or which supplier")
        String source,

        Remarks remarks) {
    public Drum {
        types = List.copyOf(types);
        lengths = List.copyOf(lengths);
        if (lengths.stream().anyMatch(length -> length.metres() < 0.01)) {
            throw new IllegalArgumentException("lengths of more than nothing");
        }
    }

    /** The entry for a type; null where nothing is said of it. */
    static @Nullable Drum of(Iterable<Drum> drums, String type) {
        Drum any = null;
        for (Drum each : drums) {
            if (each.types.contains(type)) {
                return each;
            }
            if (each.types.isEmpty() && any == null) {
                any = each;
            }
        }
        return any;
    }
}
