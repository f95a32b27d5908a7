package housewright.sound;

import housewright.model.Clock;
import housewright.unit.Frequency;
import java.util.List;

/**
 * Equipment that is joined digitally, so that all of it must keep to one clock at one rate.
 *
 * @param equipment its members, in the order of the file
 * @param ports those of which the project says where they have their clock from
 * @param rates those of which the project says at which sample rate they are
 */
public record ClockDomain(List<String> equipment, List<ClockedPort> ports, List<RatedPort> rates) {
    public ClockDomain {
        equipment = List.copyOf(equipment);
        ports = List.copyOf(ports);
        rates = List.copyOf(rates);
    }

    /** A port as the project writes it. */
    public record ClockedPort(String equipment, String port, Clock clock) {}

    /** A port as the project writes it. */
    public record RatedPort(String equipment, String port, Frequency rate) {}
}
