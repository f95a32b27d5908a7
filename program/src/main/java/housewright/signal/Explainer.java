package housewright.signal;

import housewright.model.Carries;
import housewright.model.Equipment;
import housewright.model.Latency;
import housewright.model.LocalRef.Spot;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Shape.Socket;
import housewright.signal.Layout.Side;
import housewright.unit.Delay;
import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Puts into words what a proof rests on, and where a signal stops and why. */
final class Explainer {
    private final SignalGraph graph;

    Explainer(SignalGraph graph) {
        this.graph = graph;
    }

    /**
     * The latency of a device in which a feed begins: once, at a point; a feed that begins at a port has left it. It is
     * that of the output by which the path leaves the device.
     */
    long startDelay(int source, int[] path, List<String> lacking, List<String> assumed) {
        Layout layout = graph.piece(source).layout();
        if (graph.side(source) != Side.POINT || layout == null) {
            return 0;
        }
        Latency latency = layout.model.latency();
        if (latency == null) {
            lacking.add("the latency of " + graph.piece(source).id() + " (" + layout.model.id() + ")");
            return 0;
        }
        for (int edge : path) {
            int to = graph.to[edge];
            if (graph.side(to) != Side.POINT) {
                return graph.side(to) == Side.LEAVING ? outputDelay(to, latency, lacking) : 0;
            }
        }
        return longestDelay(source, latency, lacking, assumed);
    }

    private long outputDelay(int output, Latency latency, List<String> lacking) {
        Piece piece = graph.piece(output);
        Layout layout = piece.layout();
        Socket socket = graph.socket(output);
        String channel = graph.spot(output).channel();
        if (layout == null || socket == null || channel == null || socket.port().signal() == null) {
            return 0;
        }
        Delay delay = Media.of(socket.port().signal(), channel).of(latency);
        if (delay == null) {
            lacking.add("the latency of " + piece.id() + " (" + layout.model.id() + ")");
        }
        return graph.builder.nanos(delay, socket);
    }

    /** For a path that ends in the device where it begins: the longest latency of the outputs it could leave by. */
    private long longestDelay(int source, Latency latency, List<String> lacking, List<String> assumed) {
        Set<Long> values = new TreeSet<>();
        BitSet seen = new BitSet();
        ArrayDeque<Integer> queue = new ArrayDeque<>(List.of(source));
        seen.set(source);
        while (!queue.isEmpty()) {
            int u = queue.remove();
            for (int e = graph.start[u]; e < graph.start[u + 1]; e++) {
                int v = graph.to[e];
                if (graph.side(v) == Side.LEAVING) {
                    values.add(outputDelay(v, latency, lacking));
                } else if (!seen.get(v)) {
                    seen.set(v);
                    queue.add(v);
                }
            }
        }
        if (values.size() > 1) {
            assumed.add("the longest latency of " + graph.piece(source).id() + ", where the signal begins and ends");
        }
        return values.isEmpty() ? 0 : Collections.max(values);
    }

    /** Adds what the proof takes for granted on this edge, and which figure it lacks. */
    void note(int edge, List<String> lacking, List<String> assumed) {
        Layout.Local from = graph.place(graph.from[edge]);
        if (from.side() == Side.ARRIVING) {
            noteLatency(edge, from, lacking);
        } else if (graph.notable[edge] || (graph.builder.anyShared && from.side() == Side.LEAVING)) {
            if (graph.cause[edge] instanceof Cause.ByCable cable) {
                noteCable(cable, edge, assumed);
            } else if (graph.cause[edge] instanceof Cause.BySend send && graph.delay[edge] == 0) {
                assumed.add("no delay in the network for " + send.id());
            }
        }
    }

    private void noteLatency(int edge, Layout.Local place, List<String> lacking) {
        if (place.media() == null) {
            return; // a panel passes at once
        }
        Piece piece = graph.piece(graph.from[edge]);
        Delay delay = place.latency();
        if (delay == null) {
            Layout layout = piece.layout();
            lacking.add("the latency of " + piece.id() + " (" + (layout == null ? "" : layout.model.id()) + ")");
        } else if (delay.inFrames()
                && graph.project.about().picture() == null
                && graph.delay[edge] == 0
                && delay.value() != 0) {
            lacking.add("the length of a frame in " + piece.id() + ": the project names no picture format");
        }
    }

    private void noteCable(Cause.ByCable cable, int edge, List<String> assumed) {
        Socket one = graph.socket(graph.from[edge]);
        Socket other = graph.socket(graph.to[edge]);
        if (one == null || other == null) {
            return;
        }
        Port from = one.port();
        Port to = other.port();
        if (from.signal() != null && to.signal() != null && (from.protocol() == null) != (to.protocol() == null)) {
            assumed.add("both ends of " + cable.id() + " speak the same protocol; one of them does not say");
        }
        if (graph.builder.anyShared
                && (graph.plugged(graph.from[edge]).size() > 1
                        || graph.plugged(graph.to[edge]).size() > 1)) {
            assumed.add("the port that " + cable.id() + " shares with another cable takes both");
        }
    }

    /** Where a path carries something else than the feed says it does; null where all is well. */
    @Nullable
    Stop wrongMedia(int[] path, @Nullable Carries carries) {
        if (carries == null || carries == Carries.DATA) {
            return null;
        }
        Media said = carries == Carries.AUDIO ? Media.AUDIO : carries == Carries.PICTURE ? Media.VIDEO : Media.CONTROL;
        for (int edge : path) {
            Media carried = graph.place(graph.to[edge]).known();
            if (carried != null && carried != said) {
                return new Stop(
                        graph.address(graph.from[edge]),
                        Said.cause(graph.cause[edge]) + " leads to " + graph.address(graph.to[edge])
                                + ", which carries " + carried.inWords() + "; the feed is " + said.inWords());
            }
        }
        return null;
    }

    boolean isInsideUnknown(Address place) {
        Integer index = graph.pieceIndex.get(place.thing());
        return index != null && graph.pieces.get(index).layout() == null;
    }

    /** Why a place of a feed is no place in this graph. */
    Stop notThere(Address place, boolean begins) {
        Equipment equipment = graph.project.equipment().get(place.thing());
        if (equipment != null && !graph.pieceIndex.containsKey(place.thing())) {
            return new Stop(null, place.thing() + " is not there " + graph.moment.inWords());
        }
        if (isInsideUnknown(place)) {
            return new Stop(null, "the inside of " + place.thing() + " is not known yet");
        }
        return new Stop(
                null,
                place.thing() + " has no " + place.spot()
                        + (begins ? " where a signal can begin" : " where a signal can arrive")
                        + "; on a network port a network-send must name the channel");
    }

    /** Why it cannot be shown that nothing arrives; null where it can. */
    @Nullable
    Stop doubt(Search search) {
        if (graph.intoUnknown.isEmpty()) {
            return null;
        }
        for (int node : search.reached()) {
            String words = graph.intoUnknown.get(node);
            if (words != null) {
                return new Stop(graph.address(node), "it cannot be shown that nothing arrives: " + words);
            }
        }
        return null;
    }

    /** Where the source changes over to the other side, when it arrives where another belongs. */
    Stop crossed(Search search, int source, int destination, Address other) {
        int[] path = search.path(graph.end(other, false));
        int[] partner = partnerPath(destination, search);
        for (int i = 0; i < Math.min(path.length, partner.length); i++) {
            int beforeOwn = graph.from[path[i]];
            int beforeOther = graph.from[partner[i]];
            int own = graph.to[path[i]];
            int its = graph.to[partner[i]];
            boolean comparable = graph.pieceNumber(beforeOwn) == graph.pieceNumber(beforeOther)
                    && graph.pieceNumber(own) == graph.pieceNumber(its);
            if (comparable
                    && Integer.signum(beforeOwn - beforeOther) == -Integer.signum(own - its)
                    && beforeOwn != beforeOther) {
                return new Stop(
                        graph.address(beforeOwn),
                        "it crosses over here: " + Said.cause(graph.cause[path[i]]) + " leads to " + graph.address(own)
                                + ", where another source of the feed belongs");
            }
        }
        return new Stop(graph.address(graph.end(other, false)), "it arrives where another source of the feed belongs");
    }

    /** A path backwards from the destination that crosses, as far as it runs alone. */
    private int[] partnerPath(int destination, Search search) {
        java.util.ArrayDeque<Integer> edges = new ArrayDeque<>();
        int at = destination;
        BitSet seen = new BitSet();
        int[] starts = graph.inStarts();
        int[] in = graph.inEdges();
        while (!seen.get(at)) {
            seen.set(at);
            int best = -1;
            for (int i = starts[at]; i < starts[at + 1]; i++) {
                int before = graph.from[in[i]];
                if (!search.reaches(before) && (best < 0 || before < graph.from[best])) {
                    best = in[i];
                }
            }
            if (best < 0) {
                break;
            }
            edges.addFirst(best);
            at = graph.from[best];
        }
        return edges.stream().mapToInt(Integer::intValue).toArray();
    }

    /**
     * The furthest place reached, and why nothing leads on. Of all the places where the signal might be led on to
     * what leads to the destination, those with a plain reason come first: a switch that is off, a join that does not
     * hold, a patch that is not set, two free ports.
     */
    Stop stop(Search search, int source, int destination) {
        BitSet wanted = new Backward(graph).reaching(destination);
        Stop stopped = stoppedEdge(search, wanted);
        if (stopped == null) {
            stopped = unjoined(search, wanted);
        }
        if (stopped == null) {
            stopped = contested(search, wanted);
        }
        if (stopped == null) {
            stopped = Gap.find(graph, search, wanted);
        }
        return stopped != null ? stopped : deepest(search, source);
    }

    private @Nullable Stop stoppedEdge(Search search, BitSet wanted) {
        Edges stopped = graph.stopped;
        for (int e = 0; e < stopped.count; e++) {
            boolean reached = search.reaches(stopped.from[e]);
            boolean wantedOn = leadsOn(stopped, stopped.to[e], wanted, 0);
            if (reached && wantedOn) {
                String gate = graph.gatedBy.get(stopped.to[e]);
                if (gate == null) {
                    gate = graph.gatedBy.getOrDefault(stopped.from[e], "");
                }
                String thing = graph.piece(graph.gatedBy.containsKey(stopped.to[e]) ? stopped.to[e] : stopped.from[e])
                        .id();
                String why = gate.isEmpty()
                        ? graph.address(stopped.to[e]) + " is muted"
                        : "the switch " + gate + " of " + thing + " is off";
                return new Stop(graph.address(stopped.from[e]), why);
            }
        }
        return null;
    }

    /** From a gated node on, through gated nodes only, to a place that leads to the destination. */
    private static boolean leadsOn(Edges stopped, int node, BitSet wanted, int depth) {
        if (wanted.get(node)) {
            return true;
        }
        if (depth > 3) {
            return false;
        }
        for (int e = 0; e < stopped.count; e++) {
            if (stopped.from[e] == node && leadsOn(stopped, stopped.to[e], wanted, depth + 1)) {
                return true;
            }
        }
        return false;
    }

    private @Nullable Stop unjoined(Search search, BitSet wanted) {
        for (Unjoined dead : graph.unjoined) {
            Stop stop = unjoined(dead, dead.one(), dead.other(), search, wanted);
            if (stop == null) {
                stop = unjoined(dead, dead.other(), dead.one(), search, wanted);
            }
            if (stop != null) {
                return stop;
            }
        }
        return null;
    }

    private @Nullable Stop unjoined(Unjoined dead, Address one, Address other, Search search, BitSet wanted) {
        int from = leavingNode(one, search);
        return from >= 0 && touches(other, wanted)
                ? new Stop(graph.address(from), Said.cause(dead.cause()) + " does not join: " + dead.why())
                : null;
    }

    /** A reached node of the port or point, or -1. */
    private int leavingNode(Address place, Search search) {
        for (int node : nodesOf(place)) {
            if (search.reaches(node)) {
                return node;
            }
        }
        return -1;
    }

    private boolean touches(Address place, BitSet wanted) {
        for (int node : nodesOf(place)) {
            if (wanted.get(node)) {
                return true;
            }
        }
        return false;
    }

    private List<Integer> nodesOf(Address place) {
        List<Integer> nodes = new java.util.ArrayList<>();
        Integer index = graph.pieceIndex.get(place.thing());
        Layout layout = index == null ? null : graph.pieces.get(index).layout();
        if (index == null || layout == null) {
            return nodes;
        }
        int base = graph.pieces.get(index).base();
        for (int node = base; node < base + layout.nodes.size(); node++) {
            addIfMeant(place, node, nodes);
        }
        for (int node = graph.builder.laidOut; node < graph.nodes; node++) {
            if (graph.pieceNumber(node) == index) {
                addIfMeant(place, node, nodes);
            }
        }
        return nodes;
    }

    private void addIfMeant(Address place, int node, List<Integer> nodes) {
        Spot spot = graph.spot(node);
        String channel = place.spot().channel();
        if (spot.name().equals(place.spot().name()) && (channel == null || channel.equals(spot.channel()))) {
            nodes.add(node);
        }
    }

    private @Nullable Stop contested(Search search, BitSet wanted) {
        if (!graph.anyContested) {
            return null;
        }
        for (int node : search.reached()) {
            for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
                if (graph.contested[e] && wanted.get(graph.to[e])) {
                    List<String> sources = graph.patchesInto(graph.to[e]).stream()
                            .map(each -> each.from().toString())
                            .toList();
                    return new Stop(
                            graph.address(node),
                            "several sources are patched to " + graph.address(graph.to[e]) + " ("
                                    + String.join(", ", sources) + "); only one of them can hold");
                }
            }
        }
        return null;
    }

    private Stop deepest(Search search, int source) {
        int deepest = source;
        for (int node : search.reached()) {
            String unknown = graph.intoUnknown.get(node);
            if (unknown != null) {
                return new Stop(graph.address(node), unknown);
            }
            if (search.hops(node) > search.hops(deepest)) {
                deepest = node;
            }
        }
        return new Stop(graph.address(deepest), Gap.nothingLeadsOn(graph, deepest));
    }
}
