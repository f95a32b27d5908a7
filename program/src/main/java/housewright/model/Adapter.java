package housewright.model;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A passive adapter: what it changes is the plug, never the signal. */
public record Adapter(
        String id,
        @Nullable String name,
        @Nullable Figures figures,
        Connector from,
        Connector to,
        @Key("carries") List<Signal> carries,
        @Nullable BigDecimal price,
        Remarks remarks) {
    public Adapter {
        carries = List.copyOf(carries);
    }
}
