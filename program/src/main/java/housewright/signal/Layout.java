package housewright.signal;

import housewright.model.Join;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.Patchable;
import housewright.model.Route;
import housewright.model.Shape;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.unit.Delay;
import housewright.unit.Gain;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The nodes and fixed edges of one type, numbered from 0; every piece of that type uses the same. */
final class Layout {
    enum Side {
        ARRIVING,
        LEAVING,
        POINT
    }

    /**
     * A node within a type.
     *
     * @param said as it stands in the file: without its channel where the port has only one
     * @param media what a channel carries; null at a point and at a passive port
     * @param known the same where the signal says so by itself, and not whatever it is given
     * @param latency that of a pass which begins here; null where there is none, or none is stated
     */
    record Local(
            Spot spot,
            Side side,
            @Nullable Socket socket,
            Spot said,
            @Nullable Media media,
            @Nullable Media known,
            @Nullable Delay latency) {
        static Local of(Spot spot, Side side, @Nullable Socket socket, Model model) {
            Signal signal = socket == null ? null : socket.port().signal();
            String channel = spot.channel();
            Media media = signal == null || channel == null ? null : Media.of(signal, channel);
            boolean says = signal != null && signal.saysWhatItCarries();
            boolean single = socket != null
                    && !socket.open()
                    && (socket.arriving().isEmpty() ? socket.leaving() : socket.arriving()).size() == 1;
            return new Local(
                    spot,
                    side,
                    socket,
                    single ? new Spot(spot.name(), null) : spot,
                    media,
                    says ? media : null,
                    media == null || side != Side.ARRIVING ? null : media.of(model.latency()));
        }
    }

    /** A fixed edge within the type. */
    record Inside(int from, int to, double gain, @Nullable Delay delay) {}

    final Model model;
    final Shape shape;
    final List<Local> nodes = new ArrayList<>();
    final List<Inside> routes = new ArrayList<>();
    final Map<String, int[]> gates = new LinkedHashMap<>();
    /** First arriving and first leaving node of a port, by its name; -1 where there is none. */
    final Map<String, int[]> firsts = new HashMap<>();

    private final Map<Spot, Integer> arriving = new HashMap<>();
    private final Map<Spot, Integer> leaving = new HashMap<>();
    private volatile @Nullable Set<Long> allowed;

    Layout(Model model) {
        this.model = model;
        this.shape = Shape.of(model);
        Map<String, Set<String>> named = namedNetworkChannels();
        for (Socket socket : shape.sockets().values()) {
            List<String> in = socket.arriving();
            List<String> out = socket.leaving();
            if (socket.open() && socket.port().signal() == Signal.ETHERNET) {
                in = List.copyOf(named.getOrDefault(socket.name(), Set.of()));
                out = in;
            }
            firsts.put(
                    socket.name(),
                    new int[] {in.isEmpty() ? -1 : nodes.size(), out.isEmpty() ? -1 : nodes.size() + in.size()});
            for (String channel : in) {
                add(new Spot(socket.name(), channel), Side.ARRIVING, socket);
            }
            for (String channel : out) {
                add(new Spot(socket.name(), channel), Side.LEAVING, socket);
            }
            if (!socket.open()) { // a port alone means its only channel
                Spot alone = new Spot(socket.name(), null);
                if (in.size() == 1) {
                    arriving.put(alone, arriving(new Spot(socket.name(), in.getFirst())));
                }
                if (out.size() == 1) {
                    leaving.put(alone, leaving(new Spot(socket.name(), out.getFirst())));
                }
            }
        }
        for (String point : shape.points()) {
            add(new Spot(point, null), Side.POINT, null);
        }
        for (Route route : model.routes()) {
            Gain gain = route.gain();
            for (Join.Pair pair : channels(route.join())) {
                Integer from = arriving.get(pair.from());
                Integer to = leaving.get(pair.to());
                if (from != null && to != null) {
                    routes.add(new Inside(from, to, gain == null ? 0 : gain.base(), route.delay()));
                }
            }
        }
        model.switches().forEach((name, gate) -> {
            List<Integer> gated = new ArrayList<>();
            for (LocalRef ref : gate.gates()) {
                for (Spot spot : shape.gated(ref)) {
                    Integer in = arriving.get(spot);
                    Integer out = leaving.get(spot);
                    if (in != null) {
                        gated.add(in);
                    }
                    if (out != null && !out.equals(in)) {
                        gated.add(out);
                    }
                }
            }
            gates.put(name, gated.stream().mapToInt(Integer::intValue).toArray());
        });
    }

    private void add(Spot spot, Side side, @Nullable Socket socket) {
        int index = nodes.size();
        nodes.add(Local.of(spot, side, socket, model));
        if (side != Side.LEAVING) {
            arriving.put(spot, index);
        }
        if (side != Side.ARRIVING) {
            leaving.put(spot, index);
        }
    }

    /** The node where signal arrives (or begins, at a point), or -1. */
    int arriving(Spot spot) {
        return arriving.getOrDefault(spot, -1);
    }

    /** The node where signal leaves (or ends, at a point), or -1. */
    int leaving(Spot spot) {
        return leaving.getOrDefault(spot, -1);
    }

    /** Channel by channel. */
    List<Join.Pair> channels(Join join) {
        List<Join.Pair> pairs = new ArrayList<>();
        for (Join.Pair pair : join.pairs()) {
            pairs.addAll(shape.channels(pair));
        }
        return pairs;
    }

    /** The project may patch this node to that one. */
    boolean mayPatch(int from, int to) {
        Patchable patch = model.patch();
        if (patch == null || from == to) {
            return false;
        }
        if (nodes.get(from).side() == Side.LEAVING || nodes.get(to).side() == Side.ARRIVING) {
            return false;
        }
        return patch.free() || allowed(patch).contains((long) from << 32 | to);
    }

    private Set<Long> allowed(Patchable patch) {
        Set<Long> known = allowed;
        if (known == null) {
            known = new java.util.HashSet<>();
            for (Join join : patch.joins()) {
                for (Join.Pair pair : channels(join)) {
                    int from = arriving(pair.from());
                    int to = leaving(pair.to());
                    if (from >= 0 && to >= 0) {
                        known.add((long) from << 32 | to);
                    }
                }
            }
            allowed = known;
        }
        return known;
    }

    /** The channels that the type's own routes, joins and gates name on its network ports. */
    private Map<String, Set<String>> namedNetworkChannels() {
        Map<String, Set<String>> named = new HashMap<>();
        List<LocalRef> refs = new ArrayList<>();
        for (Route route : model.routes()) {
            refs.add(route.from());
            refs.addAll(route.to());
        }
        Patchable patch = model.patch();
        if (patch != null) {
            for (Join join : patch.joins()) {
                refs.add(join.from());
                refs.addAll(join.to());
            }
        }
        model.switches().values().forEach(gate -> refs.addAll(gate.gates()));
        for (LocalRef ref : refs) {
            for (Spot spot : ref.spots()) {
                String channel = spot.channel();
                if (channel != null) {
                    named.computeIfAbsent(spot.name(), name -> new LinkedHashSet<>())
                            .add(channel);
                }
            }
        }
        return named;
    }
}
