package housewright.signal;

import housewright.model.Latency;
import housewright.model.Signal;
import housewright.unit.Delay;
import org.jspecify.annotations.Nullable;

/** What a channel carries, as far as latency cares. */
public enum Media {
    AUDIO,
    VIDEO,
    CONTROL;

    String inWords() {
        return switch (this) {
            case AUDIO -> "sound";
            case VIDEO -> "picture";
            case CONTROL -> "control";
        };
    }

    static Media of(Signal signal, String channel) {
        return switch (signal) {
            case SDI, HDMI, HDBASET -> channel.equals("v") ? VIDEO : AUDIO;
            case ETHERNET -> channel.startsWith("v") ? VIDEO : isNumber(channel) || isSide(channel) ? AUDIO : CONTROL;
            case DMX, CONTACT, MIDI, SERIAL, USB, MAINS -> CONTROL;
            case ANALOG_AUDIO, AES3, STAGE_LINK, USB_AUDIO, SPEAKER, RADIO -> AUDIO;
        };
    }

    @Nullable
    Delay of(@Nullable Latency latency) {
        if (latency == null) {
            return null;
        }
        Delay own = switch (this) {
            case AUDIO -> latency.audio();
            case VIDEO -> latency.video();
            case CONTROL -> latency.control();
        };
        return own != null ? own : latency.all();
    }

    private static boolean isNumber(String text) {
        return !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    private static boolean isSide(String text) {
        return text.equals("L") || text.equals("R");
    }
}
