package housewright.signal;

import housewright.model.Carries;
import housewright.model.Equipment;
import housewright.model.Latency;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Shape.Socket;
import housewright.signal.Layout.Side;
import housewright.unit.Delay;
import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Map;
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
    Stop doubt(Search search, int destination) {
        for (int node : graph.intoUnknown.isEmpty() ? new int[0] : search.reached()) {
            String words = graph.intoUnknown.get(node);
            if (words != null) {
                return new Stop(graph.address(node), "it cannot be shown that nothing arrives: " + words);
            }
        }
        if (!graph.fromUnknown.isEmpty()) {
            BitSet leading = new Backward(graph).reaching(destination);
            for (Map.Entry<Integer, String> each : graph.fromUnknown.entrySet()) {
                if (leading.get(each.getKey())) {
                    return new Stop(
                            graph.address(each.getKey()),
                            "it cannot be shown that nothing arrives: " + each.getValue());
                }
            }
        }
        return null;
    }

    /**
     * What keeps a source from a destination that it would reach if everything were on and nothing were muted, one way
     * of it; empty where nothing but missing joins does.
     */
    List<String> keptOutBy(Search search, int source, int destination) {
        Edges stopped = graph.stopped;
        boolean any = false;
        for (int e = 0; e < stopped.count && !any; e++) {
            any = search.reaches(stopped.from[e]);
        }
        return any ? new Opened(graph).gates(source, destination) : List.of();
    }
}
