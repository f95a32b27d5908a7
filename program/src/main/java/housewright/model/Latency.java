package housewright.model;

import housewright.unit.Delay;
import org.jspecify.annotations.Nullable;

/** The time a signal takes through a device: one for all, or by what it is. */
public record Latency(
        @Doc("For every signal") @Nullable Delay all,
        @Nullable Delay audio,
        @Nullable Delay video,
        @Nullable Delay control)
        implements Shorthand {
    public static Latency ofText(String text) {
        return new Latency(Delay.parse(text), null, null, null);
    }

    @Override
    public @Nullable String shortText() {
        return all != null && audio == null && video == null && control == null ? all.text() : null;
    }
}
