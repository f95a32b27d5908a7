package housewright.model;

import housewright.unit.Ratio;
import housewright.unit.TimeSpan;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A lighting state. */
public record Look(
        String id,
        @Doc("Fixtures and how bright each is") Map<String, Ratio> levels,
        @Nullable TimeSpan fade,
        @Doc("Colours of fixtures, in words") Map<String, String> colours,
        Remarks remarks) {
    public Look {
        levels = Ordered.copy(levels);
        colours = Ordered.copy(colours);
    }
}
