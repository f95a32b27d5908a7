package housewright.sound;

import housewright.model.Clock;
import housewright.unit.Frequency;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Equipment that is joined digitally, so that all of it must keep to one clock.
 *
 * @param equipment its members, in the order of the file
 * @param ports those of which the project says where they have their clock from
 * @param mismatches links whose two ends are set to different sample rates
 */
public record ClockDomain(List<String> equipment, List<ClockedPort> ports, List<Mismatch> mismatches) {
    public ClockDomain {
        equipment = List.copyOf(equipment);
        ports = List.copyOf(ports);
        mismatches = List.copyOf(mismatches);
    }

    /** A port as the project writes it. */
    public record ClockedPort(String equipment, String port, Clock clock) {}

    /** @param cable the cable, or null where a network carries it */
    public record Mismatch(
            String one,
            Frequency oneRate,
            String other,
            Frequency otherRate,
            @Nullable String cable) {}
}
