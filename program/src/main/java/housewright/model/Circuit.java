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

        @Doc("The phase it is on, where the house has several, as the board names it: L1, A") @Nullable
        String phase,

        Remarks remarks) {
    public Circuit {
        places = List.copyOf(places);
    }
}
