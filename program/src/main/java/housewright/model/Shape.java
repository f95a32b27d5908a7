package housewright.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A type with its ranges written out: every port by its own name, with its channels, and every point. */
public final class Shape {
    /**
     * One port.
     *
     * @param arriving names of the channels that arrive, in order; none where nothing arrives
     * @param leaving names of the channels that leave
     * @param open it has whatever channels are named: a network port, or a passive one
     */
    public record Socket(String name, Port port, List<String> arriving, List<String> leaving, boolean open) {}

    private final Model model;
    private final Map<String, Socket> sockets = new LinkedHashMap<>();
    private final Set<String> points = new LinkedHashSet<>();
    private final Set<String> mains = new LinkedHashSet<>();

    private Shape(Model model) {
        this.model = model;
        model.ports().forEach((pattern, port) -> {
            for (String name : pattern.names()) {
                sockets.putIfAbsent(name, socket(name, port));
            }
        });
        for (Tie tie : model.ties()) {
            for (Tie.Pair pair : tie.pairs()) {
                sockets.putIfAbsent(pair.one(), socket(pair.one(), PASSIVE));
                sockets.putIfAbsent(pair.other(), socket(pair.other(), PASSIVE));
            }
        }
        for (NamePattern pattern : model.points()) {
            points.addAll(pattern.names());
        }
        for (Socket socket : sockets.values()) {
            Connector connector = socket.port().connector();
            if (socket.port().signal() == Signal.MAINS || (connector != null && connector.isMains())) {
                mains.add(socket.name());
            }
        }
        while (!mains.isEmpty() && spreadMains()) {}
    }

    /** Along the ties, one step; false where it has come as far as they lead. */
    private boolean spreadMains() {
        boolean any = false;
        for (Tie tie : model.ties()) {
            for (Tie.Pair pair : tie.pairs()) {
                if (mains.contains(pair.one()) || mains.contains(pair.other())) {
                    any |= mains.add(pair.one());
                    any |= mains.add(pair.other());
                }
            }
        }
        return any;
    }

    private static final Port PASSIVE = new Port(
            null, null, null, true, null, null, null, null, null, null, null, null, null, null, null, null, null,
            List.of(), null, null, null);

    public static Shape of(Model model) {
        return new Shape(model);
    }

    public Model model() {
        return model;
    }

    /** Every port by name, in the order of the type. */
    public Map<String, Socket> sockets() {
        return java.util.Collections.unmodifiableMap(sockets);
    }

    public Optional<Socket> findSocket(String name) {
        return Optional.ofNullable(sockets.get(name));
    }

    /** Mains is at this port: by its signal, its connector, or what it is tied to within a panel, such as an outlet. */
    public boolean isMains(String socket) {
        return mains.contains(socket);
    }

    public Set<String> points() {
        return java.util.Collections.unmodifiableSet(points);
    }

    /**
     * The single channel or point that a place means where signal arrives in the device (or begins at a point).
     *
     * @throws WordingException when there is no such place, nothing arrives there, or the channel is not named
     */
    public LocalRef.Spot arriving(LocalRef.Spot spot) {
        return one(spot, true);
    }

    /** As {@link #arriving}, for where signal leaves. */
    public LocalRef.Spot leaving(LocalRef.Spot spot) {
        return one(spot, false);
    }

    /**
     * The channels a join joins. Two ports named without a channel join every channel that both have.
     *
     * @throws WordingException when a side is not there, goes the wrong way, or leaves the channel open
     */
    public List<Join.Pair> channels(Join.Pair pair) {
        Socket from = sockets.get(pair.from().name());
        Socket to = sockets.get(pair.to().name());
        if (from == null
                || to == null
                || pair.from().channel() != null
                || pair.to().channel() != null
                || (from.arriving().size() == 1 && to.leaving().size() == 1)) {
            return List.of(new Join.Pair(arriving(pair.from()), leaving(pair.to())));
        }
        requireDirection(from, true);
        requireDirection(to, false);
        List<Join.Pair> pairs = new ArrayList<>();
        for (String channel : from.arriving()) {
            if (to.leaving().contains(channel)) {
                pairs.add(
                        new Join.Pair(new LocalRef.Spot(from.name(), channel), new LocalRef.Spot(to.name(), channel)));
            }
        }
        if (pairs.isEmpty()) {
            throw new WordingException(
                    pair.from() + " -> " + pair.to(),
                    "two ports with channels of the same names, or channels named with :");
        }
        return pairs;
    }

    /** Every channel or point a switch gates, with its channel written out. */
    public List<LocalRef.Spot> gated(LocalRef gate) {
        List<LocalRef.Spot> spots = new ArrayList<>();
        for (LocalRef.Spot spot : gate.spots()) {
            Socket socket = sockets.get(spot.name());
            if (socket != null && spot.channel() == null) {
                Set<String> channels = new LinkedHashSet<>(socket.arriving());
                channels.addAll(socket.leaving());
                channels.forEach(channel -> spots.add(new LocalRef.Spot(socket.name(), channel)));
            } else if (socket != null
                    && !socket.open()
                    && !socket.arriving().contains(spot.channel())
                    && !socket.leaving().contains(spot.channel())) {
                throw new WordingException(spot.toString(), "a channel of " + socket.name());
            } else if (socket == null && (spot.channel() != null || !points.contains(spot.name()))) {
                throw unknown(spot);
            } else {
                spots.add(spot);
            }
        }
        return spots;
    }

    private LocalRef.Spot one(LocalRef.Spot spot, boolean arriving) {
        Socket socket = sockets.get(spot.name());
        if (socket == null) {
            if (!points.contains(spot.name())) {
                throw unknown(spot);
            }
            if (spot.channel() != null) {
                throw new WordingException(spot.toString(), "a point, which has no channels: write " + spot.name());
            }
            return spot;
        }
        requireDirection(socket, arriving);
        List<String> channels = arriving ? socket.arriving() : socket.leaving();
        String channel = spot.channel();
        if (channel == null) {
            if (channels.size() == 1) {
                return new LocalRef.Spot(socket.name(), channels.getFirst());
            }
            throw new WordingException(
                    spot.toString(),
                    "a channel of it, such as " + socket.name() + ":" + (socket.open() ? "1" : channels.getFirst()));
        }
        if (!socket.open() && !channels.contains(channel)) {
            throw new WordingException(
                    spot.toString(), "a channel of " + socket.name() + ", which has " + span(channels));
        }
        return spot;
    }

    private void requireDirection(Socket socket, boolean arriving) {
        if (arriving ? !socket.port().arrives() : !socket.port().leaves()) {
            throw new WordingException(
                    socket.name(), arriving ? "a port where signal arrives" : "a port where signal leaves");
        }
    }

    private WordingException unknown(LocalRef.Spot spot) {
        return new WordingException(spot.toString(), "a port or point of " + model.id());
    }

    private static String span(List<String> channels) {
        return channels.size() < 4
                ? String.join(", ", channels)
                : channels.get(0) + ", " + channels.get(1) + " to " + channels.getLast();
    }

    private static Socket socket(String name, Port port) {
        Signal signal = port.signal();
        if (signal == null || signal == Signal.ETHERNET) {
            return new Socket(name, port, List.of(), List.of(), true);
        }
        Channels count = port.channels();
        return new Socket(
                name,
                port,
                port.arrives() ? channels(signal, count == null ? null : count.in()) : List.of(),
                port.leaves() ? channels(signal, count == null ? null : count.out()) : List.of(),
                false);
    }

    /**
     * The channels of a signal: SDI has the picture and 16 of sound (SMPTE ST 299-1: four groups of four), HDMI
     * and HDBaseT the picture and 8, DMX one for the line.
     */
    private static List<String> channels(Signal signal, @Nullable Integer count) {
        return switch (signal) {
            case SDI -> numbered("v", count == null ? 16 : count);
            case HDMI, HDBASET -> numbered("v", count == null ? 8 : count);
            case DMX -> List.of("c");
            case ANALOG_AUDIO,
                    AES3,
                    STAGE_LINK,
                    USB_AUDIO,
                    ETHERNET,
                    SPEAKER,
                    RADIO,
                    CONTACT,
                    MIDI,
                    SERIAL,
                    USB,
                    MAINS -> numbered(null, count == null ? 1 : count);
        };
    }

    private static List<String> numbered(@Nullable String first, int count) {
        List<String> names = new ArrayList<>(count + 1);
        if (first != null) {
            names.add(first);
        }
        for (int n = 1; n <= count; n++) {
            names.add(Integer.toString(n));
        }
        return List.copyOf(names);
    }
}
