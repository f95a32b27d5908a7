package housewright.network;

import housewright.signal.Present;
import java.util.List;

/**
 * Things that hear one another: on joined switches within one VLAN, or at the two ends of a cable.
 *
 * @param vlan 0 where no switch is between
 */
public record Segment(int vlan, List<Present> things) {
    public Segment {
        things = List.copyOf(things);
    }

    /** "VLAN 20", or "their cable". */
    public String said() {
        return vlan == 0 ? "one cable" : "VLAN " + vlan;
    }
}
