package housewright.model;

import housewright.unit.Delay;
import housewright.unit.Gain;
import org.jspecify.annotations.Nullable;

/** How a switch, port, point or channel of a device is set. */
public record Setting(
        @Doc("A switch: on or off") @Nullable Boolean on,
        @Nullable Gain gain,
        @Doc("Phantom power on this port") @Nullable Boolean phantom,
        @Nullable Delay delay,
        @Doc("Muted: nothing passes") boolean mute,
        @Nullable String note)
        implements Shorthand {
    public static Setting ofText(String text) {
        Boolean on = Words.yesOrNo(text);
        if (on == null) {
            throw new WordingException(text, "on, off, or settings such as {gain: 32 dB}");
        }
        return new Setting(on, null, null, null, false, null);
    }

    @Override
    public @Nullable String shortText() {
        boolean plain = gain == null && phantom == null && delay == null && !mute && note == null;
        return on != null && plain ? (on ? "on" : "off") : null;
    }
}
