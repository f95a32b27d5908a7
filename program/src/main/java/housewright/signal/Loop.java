package housewright.signal;

import java.util.List;

/**
 * A way round that comes back to where it began with at least as much level: feedback, echo, a missing mix-minus.
 *
 * @param gainDb of one turn, in dB; 0 or more
 */
public record Loop(List<Hop> hops, double gainDb) {
    public Loop {
        hops = List.copyOf(hops);
    }
}
