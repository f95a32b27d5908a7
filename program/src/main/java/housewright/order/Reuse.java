package housewright.order;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something that goes and could be used instead of buying.
 *
 * @param struck the equipment or cable that goes
 * @param instead the new ones it could stand in for
 * @param saves in the project's currency; null where a price is not known
 */
public record Reuse(
        String struck,
        String type,
        List<String> instead,
        @Nullable BigDecimal saves,
        String words) {
    public Reuse {
        instead = List.copyOf(instead);
    }
}
