package housewright.model;

import housewright.unit.Delay;
import housewright.unit.Frequency;
import housewright.unit.Gain;
import housewright.unit.Level;
import org.jspecify.annotations.Nullable;

/** How a switch, port, point or channel of a device is set. */
public record Setting(
        @Doc("A switch: on or off") @Nullable Boolean on,
        @Nullable Gain gain,
        @Doc("Phantom power on this port") @Nullable Boolean phantom,
        @Nullable Delay delay,
        @Doc("Muted: nothing passes") boolean mute,

        @Doc("Usual sound pressure at a microphone's pickup, in dB SPL; peaks come above it") @Nullable
        Level level,

        @Doc("Where a digital port has its clock from") @Nullable
        Clock clock,

        @Doc("Sample rate a digital port is set to") @Nullable
        Frequency sampleRate,

        @Nullable String note)
        implements Shorthand {
    public Setting(
            @Nullable Boolean on,
            @Nullable Gain gain,
            @Nullable Boolean phantom,
            @Nullable Delay delay,
            boolean mute,
            @Nullable String note) {
        this(on, gain, phantom, delay, mute, null, null, null, note);
    }

    public static Setting ofText(String text) {
        Boolean on = Words.yesOrNo(text);
        if (on == null) {
            throw new WordingException(text, "on, off, or settings such as {gain: 32 dB}");
        }
        return new Setting(on, null, null, null, false, null);
    }

    /** The same with another gain; null for none. */
    public Setting with(@Nullable Gain other) {
        return new Setting(on, other, phantom, delay, mute, level, clock, sampleRate, note);
    }

    public Setting with(Clock other) {
        return new Setting(on, gain, phantom, delay, mute, level, other, sampleRate, note);
    }

    public Setting with(Frequency otherRate) {
        return new Setting(on, gain, phantom, delay, mute, level, clock, otherRate, note);
    }

    public Setting withPhantom(boolean other) {
        return new Setting(on, gain, other, delay, mute, level, clock, sampleRate, note);
    }

    /** The same with the mute off. */
    public Setting open() {
        return new Setting(null, gain, phantom, delay, false, level, clock, sampleRate, note);
    }

    /** Nothing but an empty line: it may as well not be there. */
    public boolean isEmpty() {
        return equals(new Setting(null, null, null, null, false, null));
    }

    @Override
    public @Nullable String shortText() {
        boolean plain = equals(new Setting(on, null, null, null, false, null));
        return on != null && plain ? (on ? "on" : "off") : null;
    }
}
