package housewright.signal;

import housewright.model.Cable;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.Join;
import housewright.model.Life;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.NetworkSend;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.RadioLink;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.model.Types;
import housewright.model.Way;
import housewright.model.WordingException;
import housewright.signal.Layout.Side;
import housewright.unit.Delay;
import housewright.unit.Gain;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Builds the signal graph of one project at one moment. */
final class GraphBuilder {
    final Project project;
    final Moment moment;
    final Signals.Layouts layouts;
    final Types types;
    final List<Piece> pieces = new ArrayList<>();
    final Map<String, Integer> pieceIndex = new HashMap<>();
    final List<OpenNodes.Extra> extras = new ArrayList<>();
    final Edges edges = new Edges();
    final List<Unjoined> unjoined = new ArrayList<>();
    final Map<PortKey, List<String>> plugged = new HashMap<>();
    /** Nodes from which a cable leads to where nobody knows yet, and the words for it. */
    final Map<Integer, String> intoUnknown = new LinkedHashMap<>();
    /** Places into which something may lead that nobody knows. */
    final Map<Integer, String> fromUnknown = new LinkedHashMap<>();

    final Map<String, String> notHolding = new LinkedHashMap<>();
    int laidOut;
    /** A port has several cables in it. */
    boolean anyShared;

    private final OpenNodes open;
    private final Network network;

    /** One port of one piece. */
    record PortKey(int piece, String port) {}

    GraphBuilder(Project project, Types types, Moment moment, Signals.Layouts layouts) {
        this.project = project;
        this.types = types;
        this.moment = moment;
        this.layouts = layouts;
        placePieces();
        this.open = new OpenNodes(this);
        this.network = new Network(this);
        addInsides();
        addCables();
        open.spread();
        addPatch();
        addSends();
        addRadio();
    }

    Network network() {
        return network;
    }

    /** All nodes: those of the layouts, then the open ones. */
    int nodeCount() {
        return laidOut + extras.size();
    }

    private void placePieces() {
        int base = 0;
        for (Equipment each : project.equipment().values()) {
            if (!moment.isThere("equipment", each.id(), each.life())) {
                continue;
            }
            Equipment equipment = moment.isDone("equipment", each.id()) ? each : each.today();
            Optional<Model> model = types.findModel(equipment.model());
            Layout layout = model.isPresent() && model.get().portsKnown() ? layouts.of(model.get()) : null;
            pieceIndex.put(each.id(), pieces.size());
            pieces.add(new Piece(equipment, layout, base));
            base += layout == null ? 0 : layout.nodes.size();
        }
        laidOut = base;
    }

    private void addInsides() {
        for (Piece piece : pieces) {
            Layout layout = piece.layout();
            if (layout == null) {
                continue;
            }
            if (layout.routes.isEmpty()) {
                continue;
            }
            Cause cause = new Cause.ByRoute(piece.id());
            for (Layout.Inside route : layout.routes) {
                int from = piece.base() + route.from();
                edges.add(from, piece.base() + route.to(), insideDelay(layout, route), route.gain(), cause);
            }
        }
    }

    private void addCables() {
        for (Cable each : project.cables().values()) {
            if (!moment.isThere("cables", each.id(), each.life())) {
                notHolding.put("cables." + each.id(), "it is not there " + moment.inWords());
                continue;
            }
            Cable cable = moment.isDone("cables", each.id()) ? each : each.today();
            Cause cause = new Cause.ByCable(cable.id());
            End from = cable.from();
            End to = cable.to();
            Ref fromRef = from == null ? null : from.ref();
            Ref toRef = to == null ? null : to.ref();
            if (fromRef != null && toRef != null) {
                for (Way.Pair pair : new Way(fromRef, toRef).pairs()) {
                    joinPorts(pair.from(), pair.to(), cause);
                }
            } else if (fromRef != null) {
                oneEnd(fromRef, cable);
            } else if (toRef != null) {
                oneEnd(toRef, cable);
            }
            for (Way way : cable.ways()) {
                for (Way.Pair pair : way.pairs()) {
                    joinPorts(pair.from(), pair.to(), cause);
                }
            }
        }
    }

    private void oneEnd(Ref ref, Cable cable) {
        for (Address known : ref.addresses()) {
            plug(known, cable.id());
            leadsNowhereKnown(known, "the other end of cable " + cable.id() + " is not known yet");
        }
    }

    private void plug(Address address, String cable) {
        Integer piece = pieceIndex.get(address.thing());
        if (piece != null) {
            List<String> cables =
                    plugged.computeIfAbsent(new PortKey(piece, address.spot().name()), key -> new ArrayList<>(1));
            cables.add(cable);
            anyShared |= cables.size() > 1;
        }
    }

    private void leadsNowhereKnown(Address address, String words) {
        Integer index = pieceIndex.get(address.thing());
        Socket socket = index == null ? null : socket(index, address.spot().name());
        if (index == null || socket == null) {
            return;
        }
        for (String channel : socket.leaving()) {
            intoUnknown.put(node(index, new Spot(socket.name(), channel), false), words);
        }
        comesFromUnknown(new PortKey(index, socket.name()), socket, words);
        if (socket.port().signal() == null) {
            open.leadsIntoUnknown(new PortKey(index, socket.name()), words);
        }
    }

    void comesFromUnknown(PortKey key, Socket socket, String words) {
        if (socket.port().signal() != Signal.ETHERNET) { // on a network nothing arrives that no network-send names
            for (String channel : socket.arriving()) {
                fromUnknown.putIfAbsent(node(key.piece(), new Spot(socket.name(), channel), true), words);
            }
        }
    }

    private @Nullable Socket socket(int piece, String port) {
        Layout layout = pieces.get(piece).layout();
        return layout == null ? null : layout.shape.findSocket(port).orElse(null);
    }

    private void joinPorts(Address one, Address other, Cause cause) {
        Integer a = pieceIndex.get(one.thing());
        Integer b = pieceIndex.get(other.thing());
        if (a == null || b == null) {
            notHolding.put(cause.entity(), (a == null ? one : other).thing() + " is not there " + moment.inWords());
            return;
        }
        String id = cause instanceof Cause.ByCable cable ? cable.id() : "";
        plug(one, id);
        plug(other, id);
        Socket first = socket(a, one.spot().name());
        Socket second = socket(b, other.spot().name());
        if (first == null || second == null) {
            String unknown = first == null ? one.thing() : other.thing();
            String words = "it goes on into " + unknown + ", whose sockets are not known yet";
            leadsNowhereKnown(one, words);
            leadsNowhereKnown(other, words);
            return;
        }
        String clash = clash(first, second);
        if (clash == null && takesNetwork(first) && takesNetwork(second)) {
            network.link(new PortKey(a, first.name()), new PortKey(b, second.name()), id);
        }
        if (first.port().signal() == null || second.port().signal() == null) {
            open.link(new PortKey(a, first.name()), new PortKey(b, second.name()), cause);
            return;
        }
        if (clash != null) {
            unjoined.add(new Unjoined(cause, one, other, clash));
        } else if (first.port().signal() != Signal.ETHERNET && !joinChannels(a, first, b, second, cause)) {
            unjoined.add(new Unjoined(cause, one, other, "no channel leaves one end and arrives at the other"));
        }
    }

    private static boolean takesNetwork(Socket socket) {
        return socket.port().signal() == null || socket.port().signal() == Signal.ETHERNET;
    }

    private static @Nullable String clash(Socket first, Socket second) {
        Signal one = first.port().signal();
        Signal other = second.port().signal();
        if (one != null && other != null && one != other) {
            return "one end is " + one.word() + ", the other " + other.word();
        }
        String speaks = first.port().protocol();
        String hears = second.port().protocol();
        if (speaks != null && hears != null && !speaks.equals(hears)) {
            return "one end speaks " + speaks + ", the other " + hears;
        }
        return null;
    }

    private boolean joinChannels(int a, Socket first, int b, Socket second, Cause cause) {
        boolean there = oneWay(a, first, b, second, cause);
        boolean back = oneWay(b, second, a, first, cause);
        return there || back;
    }

    private boolean oneWay(int a, Socket first, int b, Socket second, Cause cause) {
        List<String> out = first.leaving();
        List<String> in = second.arriving();
        if (out.isEmpty() || in.isEmpty()) {
            return false;
        }
        Piece from = pieces.get(a);
        Piece to = pieces.get(b);
        int firstOut = from.base() + firsts(from, first)[1];
        int firstIn = to.base() + firsts(to, second)[0];
        boolean joined = false;
        boolean toNote = (first.port().protocol() == null) != (second.port().protocol() == null);
        for (int i = 0; i < out.size(); i++) {
            int j = i < in.size() && in.get(i).equals(out.get(i)) ? i : in.indexOf(out.get(i));
            if (j >= 0) {
                edges.add(firstOut + i, firstIn + j, 0, 0, cause, toNote);
                joined = true;
            }
        }
        return joined;
    }

    private static int[] firsts(Piece piece, Socket socket) {
        Layout layout = piece.layout();
        int[] firsts = layout == null ? null : layout.firsts.get(socket.name());
        if (firsts == null) {
            throw new IllegalStateException(piece.id() + " has no " + socket.name());
        }
        return firsts;
    }

    private void addPatch() {
        project.patch().forEach((device, entries) -> {
            Integer index = pieceIndex.get(device);
            Layout layout = index == null ? null : pieces.get(index).layout();
            if (index == null || layout == null) {
                return;
            }
            for (PatchEntry entry : entries) {
                Life life = entry.life();
                if (life == null || moment.isThere("patch", device, life)) {
                    addPatch(index, layout, entry);
                }
            }
        });
    }

    private void addPatch(int index, Layout layout, PatchEntry entry) {
        Piece piece = pieces.get(index);
        Gain gain = entry.gain();
        for (Join.Pair written : entry.join().pairs()) {
            Cause cause = new Cause.ByPatch(piece.id(), written.from(), written.to());
            List<Join.Pair> channels;
            try {
                channels = layout.shape.channels(written);
            } catch (WordingException wrong) { // another type stands here at another moment
                unjoined.add(new Unjoined(
                        cause,
                        new Address(piece.id(), written.from()),
                        new Address(piece.id(), written.to()),
                        wrong.found() + " is not " + wrong.expected()));
                continue;
            }
            for (Join.Pair pair : channels) {
                int from = node(index, pair.from(), true);
                int to = node(index, pair.to(), false);
                if (from < 0 || to < 0) {
                    continue;
                }
                boolean open = from >= laidOut || to >= laidOut;
                boolean allowed = open
                        ? layout.model.patch() != null && layout.model.patch().free()
                        : layout.mayPatch(from - piece.base(), to - piece.base());
                if (!allowed) {
                    unjoined.add(new Unjoined(
                            cause,
                            new Address(piece.id(), pair.from()),
                            new Address(piece.id(), pair.to()),
                            "its type does not let " + pair.from() + " be patched to " + pair.to()));
                    continue;
                }
                long delay = insideDelay(index, from, to)
                        + nanos(entry.delay(), place(piece, layout, to).socket());
                edges.add(from, to, delay, gain == null ? 0 : gain.decibels(), cause);
            }
        }
    }

    /** A node of a piece, laid out or open. */
    Layout.Local place(Piece piece, Layout layout, int node) {
        return node < laidOut
                ? layout.nodes.get(node - piece.base())
                : extras.get(node - laidOut).place();
    }

    /** The delay of a patch entry between two nodes of a piece. */
    long insideDelay(int piece, int from, int to) {
        Piece device = pieces.get(piece);
        Layout layout = device.layout();
        return layout == null
                ? 0
                : nanos(
                        place(device, layout, from).latency(),
                        place(device, layout, to).socket());
    }

    /** The delay of a fixed route, of a type that is there or might be. */
    long insideDelay(Layout layout, Layout.Inside route) {
        Socket output = layout.nodes.get(route.to()).socket();
        return nanos(layout.nodes.get(route.from()).latency(), output) + nanos(route.delay(), output);
    }

    private void addSends() {
        for (NetworkSend send : project.networkSends().values()) {
            if (!moment.isThere("network-sends", send.id(), send.life())) {
                notHolding.put("network-sends." + send.id(), "it is not there " + moment.inWords());
                continue;
            }
            for (Way.Pair pair : new Way(send.from(), send.to()).pairs()) {
                addSend(send, pair.from(), pair.to());
            }
        }
    }

    private void addSend(NetworkSend send, Address one, Address other) {
        Integer a = pieceIndex.get(one.thing());
        Integer b = pieceIndex.get(other.thing());
        String entity = "network-sends." + send.id();
        if (a == null || b == null) {
            notHolding.put(entity, (a == null ? one : other).thing() + " is not there " + moment.inWords());
            return;
        }
        int from = node(a, one.spot(), false);
        int to = node(b, other.spot(), true);
        if (from >= 0 && pieces.get(b).layout() == null) {
            intoUnknown.put(from, "it goes on by network to " + other.thing() + ", whose inside is not known yet");
        }
        if (from < 0 || to < 0) {
            return;
        }
        Network.Answer answer = network.path(
                new PortKey(a, one.spot().name()), new PortKey(b, other.spot().name()), send.vlan());
        if (answer.over() == null) {
            notHolding.put(entity, answer.why());
            unjoined.add(new Unjoined(new Cause.BySend(send.id(), List.of()), one, other, answer.why()));
            return;
        }
        long delay = nanos(send.delay(), null);
        edges.add(from, to, delay, 0, new Cause.BySend(send.id(), answer.over()), delay == 0);
    }

    private void addRadio() {
        for (RadioLink link : project.radio().values()) {
            if (!moment.isThere("radio", link.id(), link.life())) {
                notHolding.put("radio." + link.id(), "it is not there " + moment.inWords());
                continue;
            }
            for (Way.Pair pair : new Way(link.from(), link.to()).pairs()) {
                addRadio(link, pair.from(), pair.to());
            }
        }
    }

    private void addRadio(RadioLink link, Address one, Address other) {
        Integer a = pieceIndex.get(one.thing());
        Integer b = pieceIndex.get(other.thing());
        if (a == null || b == null) {
            notHolding.put(
                    "radio." + link.id(), (a == null ? one : other).thing() + " is not there " + moment.inWords());
            return;
        }
        Socket first = socket(a, one.spot().name());
        Socket second = socket(b, other.spot().name());
        if (first == null || second == null) {
            leadsNowhereKnown(one, "it goes on by radio to " + other.thing() + ", whose inside is not known yet");
            return;
        }
        Cause cause = new Cause.ByRadio(link.id());
        String clash = clash(first, second);
        if (clash != null) {
            unjoined.add(new Unjoined(cause, one, other, clash));
            return;
        }
        long delay = nanos(link.delay(), null);
        List<String> channels =
                one.spot().channel() != null ? List.of(one.spot().channel()) : first.leaving();
        for (String channel : channels) {
            int from = node(a, new Spot(first.name(), channel), false);
            int to = node(b, other.spot().channel() != null ? other.spot() : new Spot(second.name(), channel), true);
            if (from >= 0 && to >= 0) {
                edges.add(from, to, delay, 0, cause);
            }
        }
    }

    /**
     * The node of a place in a piece, made where the port is open; -1 where there is none.
     *
     * @param arriving where signal arrives in the piece, rather than leaves
     */
    int node(int index, Spot spot, boolean arriving) {
        return node(index, spot, arriving, true);
    }

    /** As {@link #node(int, Spot, boolean)}, but makes none. */
    int nodeIfKnown(int index, Spot spot, boolean arriving) {
        return node(index, spot, arriving, false);
    }

    private int node(int index, Spot spot, boolean arriving, boolean make) {
        Piece piece = pieces.get(index);
        Layout layout = piece.layout();
        if (layout == null) {
            return -1;
        }
        int plain = arriving ? layout.arriving(spot) : layout.leaving(spot);
        if (plain >= 0) {
            return piece.base() + plain;
        }
        Spot full;
        try {
            full = arriving ? layout.shape.arriving(spot) : layout.shape.leaving(spot);
        } catch (WordingException wrong) {
            return -1; // the reader has refused such a file; a hand-made project simply has no such place
        }
        int local = arriving ? layout.arriving(full) : layout.leaving(full);
        if (local >= 0) {
            return piece.base() + local;
        }
        Socket socket = layout.shape.findSocket(full.name()).orElse(null);
        if (socket == null || !socket.open() || socket.port().signal() == null) {
            return -1;
        }
        Side side = arriving ? Side.ARRIVING : Side.LEAVING;
        return open.node(index, socket, full, side, socket.port().signal(), make);
    }

    /** A delay in nanoseconds; a frame is one of the output's format where that has just one, else of the house. */
    long nanos(@Nullable Delay delay, @Nullable Socket output) {
        if (delay == null) {
            return 0;
        }
        if (!delay.inFrames()) {
            return Math.round(delay.base() * 1e9);
        }
        VideoFormat format = project.about().picture();
        if (output != null && output.port().formats().size() == 1) {
            format = output.port().formats().getFirst();
        }
        return format == null ? 0 : delay.nanos(format);
    }

    /** Gives the finished graph. */
    SignalGraph finish() {
        Settings settings = new Settings(this);
        settings.actOn(edges);
        return new SignalGraph(this, settings.gatedBy);
    }
}
