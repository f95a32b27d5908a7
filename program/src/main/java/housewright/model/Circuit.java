package housewright.model;

import housewright.unit.Current;
import housewright.unit.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A mains circuit. */
public record Circuit(
        String id,
        @Nullable Current rating,
        @Nullable Voltage voltage,
        List<String> places,
        @Doc("The circuit is fed by a dimmer") boolean dimmed,
        Remarks remarks) {
    public Circuit {
        places = List.copyOf(places);
    }
}
