package housewright.power;

import housewright.model.Circuit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is on a circuit.
 *
 * @param on in the order of the file
 * @param watts together, as far as the figures are known
 * @param volts its own voltage, else that of the building; null where neither is known
 */
public record CircuitLoad(
        Circuit circuit,
        List<Supply> on,
        double watts,
        @Nullable Double volts) {
    /** The things of which no figure is known. */
    public List<String> unknown() {
        return on.stream().filter(each -> !each.known()).map(Supply::id).toList();
    }

    /** Current in A at {@link Supplies#POWER_FACTOR}; null where the voltage is not known. */
    public @Nullable Double amperes() {
        return volts == null ? null : Double.valueOf(Supplies.amperes(watts, volts, Supplies.POWER_FACTOR));
    }
}
