package housewright.signal;

import housewright.model.Feed;
import housewright.model.LocalRef.Spot;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.signal.GraphBuilder.PortKey;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The finished graph as flat arrays. Edge numbers run in order of the node they leave: those of node {@code u} are
 * {@code start[u]} to {@code start[u + 1] - 1}. Edges that touch a gated channel are not among them.
 */
final class SignalGraph {
    final Project project;
    final Moment moment;
    final List<Piece> pieces;
    final Map<String, Integer> pieceIndex;
    final int nodes;
    final int[] start;
    final int[] to;
    final int[] from;
    final long[] delay;
    final double[] gain;
    final Cause[] cause;
    /** A proof over the edge may have to say what it takes for granted. */
    final boolean[] notable;
    /** One of several sources patched to a leaving channel; only one of them can hold. */
    final boolean[] contested;

    final BitSet contestedAt;
    final boolean anyContested;
    final Map<Integer, String> intoUnknown;
    final Map<Integer, String> fromUnknown;
    final List<Unjoined> unjoined;
    final Map<String, String> notHolding;
    /** What is stopped by a switch that is off or a channel that is muted. */
    final Edges stopped = new Edges();

    final Map<Integer, String> gatedBy;
    final GraphBuilder builder;
    private final List<OpenNodes.Extra> extras;
    private final int laidOut;
    private final int[] owner;
    private final Layout.Local[] places;
    /** What each feed asks, in the order of the file. */
    final List<Asked> asked;

    private final @Nullable Address[] addresses;
    private final int[] inStart;
    private final int[] inEdge;

    SignalGraph(GraphBuilder builder, Map<Integer, String> gatedBy) {
        this.builder = builder;
        this.project = builder.project;
        this.moment = builder.moment;
        this.pieces = builder.pieces;
        this.pieceIndex = builder.pieceIndex;
        this.extras = builder.extras;
        this.laidOut = builder.laidOut;
        this.nodes = builder.nodeCount();
        this.intoUnknown = builder.intoUnknown;
        this.fromUnknown = builder.fromUnknown;
        this.unjoined = builder.unjoined;
        this.notHolding = builder.notHolding;
        this.gatedBy = gatedBy;
        this.owner = owners();
        this.places = places();
        this.addresses = new Address[nodes];
        BitSet gated = new BitSet(nodes);
        gatedBy.keySet().forEach(gated::set);
        Edges found = builder.edges;
        contestedAt = contestedAt(found);
        start = new int[nodes + 1];
        int kept = 0;
        for (int e = 0; e < found.count; e++) {
            if (gated.get(found.from[e]) || gated.get(found.to[e])) {
                stopped.add(found.from[e], found.to[e], found.delay[e], found.gain[e], found.cause[e]);
                found.from[e] = -1 - found.from[e];
            } else {
                start[found.from[e] + 1]++;
                kept++;
            }
        }
        for (int u = 0; u < nodes; u++) {
            start[u + 1] += start[u];
        }
        int[] next = start.clone();
        from = new int[kept];
        to = new int[kept];
        delay = new long[kept];
        gain = new double[kept];
        cause = new Cause[kept];
        notable = new boolean[kept];
        for (int e = 0; e < found.count; e++) {
            if (found.from[e] < 0) {
                continue;
            }
            int at = next[found.from[e]]++;
            from[at] = found.from[e];
            to[at] = found.to[e];
            delay[at] = found.delay[e];
            gain[at] = found.gain[e];
            cause[at] = found.cause[e];
            notable[at] = found.notable[e];
        }
        contested = new boolean[kept];
        anyContested = !contestedAt.isEmpty();
        for (int e = 0; anyContested && e < kept; e++) {
            contested[e] = cause[e] instanceof Cause.ByPatch && contestedAt.get(to[e]);
        }
        inStart = new int[nodes + 1];
        for (int v : to) {
            inStart[v + 1]++;
        }
        for (int v = 0; v < nodes; v++) {
            inStart[v + 1] += inStart[v];
        }
        int[] nextIn = inStart.clone();
        inEdge = new int[kept];
        for (int e = 0; e < kept; e++) {
            inEdge[nextIn[to[e]]++] = e;
        }
        asked = new ArrayList<>(project.feeds().size());
        for (Feed feed : project.feeds().values()) {
            asked.add(new Asked(feed, this));
        }
    }

    private int[] owners() {
        int[] owners = new int[nodes];
        for (int p = 0; p < pieces.size(); p++) {
            Piece piece = pieces.get(p);
            Layout layout = piece.layout();
            int size = layout == null ? 0 : layout.nodes.size();
            java.util.Arrays.fill(owners, piece.base(), piece.base() + size, p);
        }
        for (int i = 0; i < extras.size(); i++) {
            owners[laidOut + i] = extras.get(i).piece();
        }
        return owners;
    }

    private Layout.Local[] places() {
        Layout.Local[] all = new Layout.Local[nodes];
        for (Piece piece : pieces) {
            Layout layout = piece.layout();
            int size = layout == null ? 0 : layout.nodes.size();
            for (int local = 0; layout != null && local < size; local++) {
                all[piece.base() + local] = layout.nodes.get(local);
            }
        }
        for (int i = 0; i < extras.size(); i++) {
            all[laidOut + i] = extras.get(i).place();
        }
        return all;
    }

    /** Leaving channels with several sources patched to them; a muted one is patched all the same. */
    private BitSet contestedAt(Edges found) {
        int[] only = new int[nodes];
        BitSet several = new BitSet();
        for (int e = 0; e < found.count; e++) {
            int node = found.to[e];
            if (found.cause[e] instanceof Cause.ByPatch && side(node) == Side.LEAVING) {
                if (only[node] != 0 && only[node] != found.from[e] + 1) {
                    several.set(node);
                }
                only[node] = found.from[e] + 1;
            }
        }
        return several;
    }

    /** Numbers of the edges into each node. */
    int[] inEdges() {
        return inEdge;
    }

    /** Where the edges into each node start in {@link #inEdges}. */
    int[] inStarts() {
        return inStart;
    }

    Piece piece(int node) {
        return pieces.get(owner[node]);
    }

    int pieceNumber(int node) {
        return owner[node];
    }

    /** What the node is. */
    Layout.Local place(int node) {
        return places[node];
    }

    Spot spot(int node) {
        return places[node].spot();
    }

    Side side(int node) {
        return places[node].side();
    }

    @Nullable
    Socket socket(int node) {
        return places[node].socket();
    }

    /** The signal on this node; on a passive port that of what it is given. */
    @Nullable
    Signal signal(int node) {
        Socket socket = socket(node);
        Signal own = socket == null ? null : socket.port().signal();
        return own == null && node >= laidOut ? extras.get(node - laidOut).signal() : own;
    }

    /** The protocol on this node; null where none is said. */
    @Nullable
    String protocol(int node) {
        Socket socket = socket(node);
        boolean passive = socket != null && socket.port().signal() == null && node >= laidOut;
        return passive
                ? extras.get(node - laidOut).protocol()
                : socket == null ? null : socket.port().protocol();
    }

    /** The node as a place in the file; the channel is left out where a port has only one. */
    Address address(int node) {
        Address known = addresses[node];
        if (known == null) {
            known = new Address(piece(node).id(), places[node].said());
            addresses[node] = known;
        }
        return known;
    }

    /** The cables in the port of this node. */
    List<String> plugged(int node) {
        return builder.plugged.getOrDefault(new PortKey(owner[node], spot(node).name()), List.of());
    }

    /** Where a feed begins (leaving) or ends (arriving); -1 where that place is not there. */
    int end(Address address, boolean begins) {
        Integer index = pieceIndex.get(address.thing());
        return index == null ? -1 : builder.nodeIfKnown(index, address.spot(), !begins);
    }

    /** The node of a place with its channel written out, or -1. */
    int find(String thing, Spot spot, Side side) {
        Integer index = pieceIndex.get(thing);
        Layout layout = index == null ? null : pieces.get(index).layout();
        if (index == null || layout == null) {
            return -1;
        }
        int local = side == Side.ARRIVING ? layout.arriving(spot) : layout.leaving(spot);
        return local >= 0 ? pieces.get(index).base() + local : builder.nodeIfKnown(index, spot, side == Side.ARRIVING);
    }

    /** Every node of a port or point: its channels, or the one named, on either side. */
    List<Integer> nodesOf(Address place) {
        List<Integer> nodes = new ArrayList<>();
        Integer index = pieceIndex.get(place.thing());
        Layout layout = index == null ? null : pieces.get(index).layout();
        if (index == null || layout == null) {
            return nodes;
        }
        int base = pieces.get(index).base();
        for (int node = base; node < base + layout.nodes.size(); node++) {
            addIfMeant(place, node, nodes);
        }
        for (int node = laidOut; node < this.nodes; node++) {
            if (owner[node] == index) {
                addIfMeant(place, node, nodes);
            }
        }
        return nodes;
    }

    private void addIfMeant(Address place, int node, List<Integer> nodes) {
        String channel = place.spot().channel();
        if (spot(node).name().equals(place.spot().name())
                && (channel == null || channel.equals(spot(node).channel()))) {
            nodes.add(node);
        }
    }

    /** Channels that arrive on a network port. */
    List<Integer> arrivingOnNetwork() {
        List<Integer> arriving = new ArrayList<>();
        for (int node = 0; node < nodes; node++) {
            Socket socket = socket(node);
            if (socket != null && socket.port().signal() == Signal.ETHERNET && side(node) == Side.ARRIVING) {
                arriving.add(node);
            }
        }
        return arriving;
    }

    /** What is patched to this node, muted or not. */
    Set<Cause.ByPatch> patchesInto(int node) {
        Set<Cause.ByPatch> patches = new LinkedHashSet<>();
        int[] starts = inStarts();
        int[] in = inEdges();
        for (int i = starts[node]; i < starts[node + 1]; i++) {
            if (cause[in[i]] instanceof Cause.ByPatch patch) {
                patches.add(patch);
            }
        }
        for (int e = 0; e < stopped.count; e++) {
            if (stopped.to[e] == node && stopped.cause[e] instanceof Cause.ByPatch patch) {
                patches.add(patch);
            }
        }
        return patches;
    }
}
