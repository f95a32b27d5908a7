package housewright.light;

import housewright.model.FixtureSetting;
import housewright.signal.Present;
import org.jspecify.annotations.Nullable;

/**
 * A thing that answers to channels of DMX.
 *
 * @param footprint how many channels it takes; null where its mode is not said and its type has several
 */
public record Receiver(Present thing, @Nullable Integer footprint) {
    /** Slots of a universe (ANSI E1.11). */
    public static final int SLOTS = 512;

    public String id() {
        return thing.id();
    }

    public @Nullable Integer universe() {
        FixtureSetting light = thing.equipment().light();
        return light == null ? null : light.universe();
    }

    /** Its first channel. */
    public @Nullable Integer address() {
        FixtureSetting light = thing.equipment().light();
        return light == null ? null : light.address();
    }

    /** Its last channel; null where the first is not known. Counted as one channel where its mode is not known. */
    public @Nullable Integer last() {
        Integer first = address();
        Integer channels = footprint;
        return first == null ? null : Integer.valueOf(first + Math.max(1, channels == null ? 1 : channels) - 1);
    }

    /** The two answer to a channel in common, in the same universe. */
    public boolean overlaps(Receiver other) {
        Integer first = address();
        Integer last = last();
        Integer otherFirst = other.address();
        Integer otherLast = other.last();
        return first != null
                && last != null
                && otherFirst != null
                && otherLast != null
                && first <= otherLast
                && otherFirst <= last;
    }
}
