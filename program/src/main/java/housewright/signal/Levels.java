package housewright.signal;

import housewright.model.LocalRef.Spot;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.unit.Delay;
import housewright.unit.FullScale;
import housewright.unit.Gain;
import housewright.unit.Level;
import housewright.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Level along a path. It begins with the nominal level of the first analogue output that states one. At the analogue
 * ports of a device that is digital inside, the port's {@code max} is 0 dBFS. A device that states no latency above 0
 * is taken as analogue inside: what comes in goes out with the gain of the path.
 */
final class Levels {
    private final SignalGraph graph;
    private @Nullable Level level;
    private @Nullable String lost;

    Levels(SignalGraph graph) {
        this(graph, null);
    }

    /** @param atSource the level that the source itself gives; null where only its output says */
    Levels(SignalGraph graph, @Nullable Level atSource) {
        this.graph = graph;
        this.level = atSource;
    }

    List<LevelAt> along(List<Hop> hops) {
        List<LevelAt> levels = new ArrayList<>(hops.size());
        if (!hops.isEmpty()) {
            pass(port(hops.getFirst().from()), hops.getFirst().from(), false);
        }
        for (Hop hop : hops) {
            lost = null;
            Level before = level;
            if (before != null && hop.gainDb() != 0) {
                level = before.plus(Gain.ofDecibels(hop.gainDb()));
            }
            Port port = port(hop.to());
            boolean inside = hop.from().thing().equals(hop.to().thing());
            Gain headroom = pass(port, hop.to(), !inside);
            levels.add(new LevelAt(hop.to(), level, headroom, lost));
        }
        return levels;
    }

    /** Takes the level past a port; gives the headroom there, where it is known. */
    private @Nullable Gain pass(@Nullable Port port, Address at, boolean arriving) {
        if (port == null) {
            return null;
        }
        Signal signal = port.signal();
        if (signal == null) {
            return null;
        }
        return switch (signal) {
            case ANALOG_AUDIO -> analogue(port, at, arriving);
            case AES3, STAGE_LINK, USB_AUDIO, SDI, HDMI, HDBASET, ETHERNET -> digital(at);
            case SPEAKER, RADIO, DMX, CONTACT, MIDI, SERIAL, USB, MAINS -> {
                level = null;
                yield null;
            }
        };
    }

    private @Nullable Gain analogue(Port port, Address at, boolean arriving) {
        Level max = port.max();
        Level now = level;
        if (!arriving && now != null && isDigital(now)) {
            if (max == null) {
                lost = "the level at which " + at + " clips";
                level = null;
            } else {
                level = new FullScale(max).toAnalogue(now);
            }
        } else if (now == null && !arriving && port.nominal() != null) {
            level = port.nominal();
        }
        now = level;
        Gain headroom = max == null || now == null || !max.comparesWith(now) ? null : max.minus(now);
        if (arriving && now != null && digitalInside(at)) {
            if (max == null) {
                lost = "the level at which " + at + " clips";
                level = null;
            } else {
                level = new FullScale(max).toDigital(now);
            }
        }
        return headroom;
    }

    private @Nullable Gain digital(Address at) {
        Level now = level;
        if (now == null) {
            return null;
        }
        if (!isDigital(now)) {
            lost = "the level at which the input before " + at + " clips";
            level = null;
            return null;
        }
        return Level.parse("0 dBFS").minus(now);
    }

    private static boolean isDigital(Level level) {
        return level.unit() == Unit.DBFS;
    }

    private boolean digitalInside(Address at) {
        Layout layout = layout(at);
        Delay latency = layout == null ? null : Media.AUDIO.of(layout.model.latency());
        return latency != null && latency.value() > 0;
    }

    private @Nullable Port port(Address at) {
        Layout layout = layout(at);
        Spot spot = at.spot();
        Socket socket =
                layout == null ? null : layout.shape.findSocket(spot.name()).orElse(null);
        return socket == null ? null : socket.port();
    }

    private @Nullable Layout layout(Address at) {
        Integer index = graph.pieceIndex.get(at.thing());
        return index == null ? null : graph.pieces.get(index).layout();
    }
}
