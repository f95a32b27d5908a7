package housewright.cable;

import housewright.model.CableType;
import housewright.model.LevelClass;
import housewright.model.Port;
import housewright.model.Signal;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a cable is used for, by what it does to its neighbours: the worst first. */
public enum Use {
    MAINS,
    LOUDSPEAKER,
    MICROPHONE,
    LINE,
    DATA,
    OTHER;

    /** By the cable's id; what carries several things is the worst of them. */
    static Map<String, Use> of(List<Line> lines, List<Lead> leads) {
        Map<String, Use> uses = new HashMap<>();
        for (Line line : lines) {
            Use use = of(line);
            for (Lead lead : line.leads()) {
                uses.merge(lead.id(), use == OTHER ? of(lead.type()) : use, Use::worse);
            }
        }
        for (Lead lead : leads) { // of a cable that nobody knows the ends of, the sheath tells
            uses.putIfAbsent(lead.id(), of(lead.type()));
        }
        return Collections.unmodifiableMap(uses);
    }

    private static Use worse(Use one, Use other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    private static Use of(Line line) {
        Signal signal = line.signal();
        if (signal == null) {
            return OTHER;
        }
        return switch (signal) {
            case MAINS -> MAINS;
            case SPEAKER -> LOUDSPEAKER;
            case ANALOG_AUDIO -> level(line.source()) == LevelClass.MIC ? MICROPHONE : LINE;
            case AES3, STAGE_LINK, USB_AUDIO, SDI, HDMI, HDBASET, ETHERNET, DMX, USB -> DATA;
            case RADIO, CONTACT, MIDI, SERIAL -> OTHER;
        };
    }

    private static @Nullable LevelClass level(@Nullable Plug plug) {
        Port port = plug == null ? null : plug.port();
        return port == null ? null : port.level();
    }

    /** Where no socket says: what the cable is made for, if that is one thing. */
    private static Use of(@Nullable CableType type) {
        List<Signal> carries = type == null ? List.of() : type.carries();
        if (carries.equals(List.of(Signal.MAINS))) {
            return MAINS;
        }
        if (carries.equals(List.of(Signal.SPEAKER))) {
            return LOUDSPEAKER;
        }
        return carries.contains(Signal.ETHERNET) ? DATA : OTHER;
    }
}
