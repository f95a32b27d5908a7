package housewright.signal;

import housewright.model.Ref.Address;

/**
 * One step of a path: what joins two places.
 *
 * @param delayNanos delay of this step, in nanoseconds
 * @param gainDb gain of this step, in dB
 */
public record Hop(Cause cause, Address from, Address to, long delayNanos, double gainDb) {
    /** What a person can touch: "C014 stage box left, out 3 → amplifier A, in 1". */
    public String text() {
        return Said.hop(this);
    }
}
