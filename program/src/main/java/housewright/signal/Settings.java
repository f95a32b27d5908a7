package housewright.signal;

import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.Setting;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.model.Switch;
import housewright.signal.Layout.Side;
import housewright.unit.Delay;
import housewright.unit.Gain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is set on switches, ports, channels and points: what is shut, and what gains or delays. A setting acts where
 * signal arrives, else where it leaves; on a network port it acts on the channels that are named anywhere.
 */
final class Settings {
    /** Nodes through which nothing passes, by the switch that is off, or nothing where the node is muted. */
    final Map<Integer, String> gatedBy = new LinkedHashMap<>();

    private final GraphBuilder graph;
    private final double[] gain;
    private final long[] delay;

    /** When every node is known. */
    Settings(GraphBuilder graph) {
        this.graph = graph;
        this.gain = new double[graph.nodeCount()];
        this.delay = new long[graph.nodeCount()];
        for (int p = 0; p < graph.pieces.size(); p++) {
            Piece piece = graph.pieces.get(p);
            Layout layout = piece.layout();
            if (layout != null) {
                addSwitches(p, piece, layout);
                addSettings(p, piece, layout);
            }
        }
    }

    void actOn(Edges edges) {
        for (int e = 0; e < edges.count; e++) {
            edges.gain[e] += gain[edges.from[e]];
            edges.delay[e] += delay[edges.from[e]];
        }
    }

    private void addSwitches(int index, Piece piece, Layout layout) {
        layout.gates.forEach((name, gated) -> {
            Setting setting = piece.equipment().set().get(new LocalRef(name));
            Boolean on = setting == null ? null : setting.on();
            Switch gate = layout.model.switches().get(name);
            if (gate == null || (on != null ? on : gate.on())) {
                return;
            }
            for (int local : gated) {
                gatedBy.putIfAbsent(piece.base() + local, name);
            }
            for (LocalRef ref : gate.gates()) {
                for (Spot spot : ref.spots()) {
                    if (isNetwork(layout, spot.name()) && spot.channel() == null) {
                        onNetwork(index, piece, layout, spot, Side.ARRIVING)
                                .forEach(node -> gatedBy.putIfAbsent(node, name));
                        onNetwork(index, piece, layout, spot, Side.LEAVING)
                                .forEach(node -> gatedBy.putIfAbsent(node, name));
                    }
                }
            }
        });
    }

    private void addSettings(int index, Piece piece, Layout layout) {
        piece.equipment().set().forEach((ref, setting) -> {
            Gain more = setting.gain();
            Delay later = setting.delay();
            if (more == null && later == null && !setting.mute()) {
                return;
            }
            for (Spot spot : ref.spots()) {
                for (int node : nodes(index, piece, layout, spot)) {
                    gain[node] += more == null ? 0 : more.decibels();
                    delay[node] +=
                            graph.nanos(later, graph.place(piece, layout, node).socket());
                    if (setting.mute()) {
                        gatedBy.put(node, "");
                    }
                }
            }
        });
    }

    private List<Integer> nodes(int index, Piece piece, Layout layout, Spot spot) {
        Socket socket = layout.shape.findSocket(spot.name()).orElse(null);
        if (socket != null && isNetwork(layout, spot.name())) {
            Side side = socket.port().arrives() ? Side.ARRIVING : Side.LEAVING;
            return onNetwork(index, piece, layout, spot, side);
        }
        if (socket == null || spot.channel() != null) {
            int arriving = layout.arriving(spot);
            int local = arriving >= 0 ? arriving : layout.leaving(spot);
            return local < 0 ? List.of() : List.of(piece.base() + local);
        }
        List<Integer> nodes = new ArrayList<>();
        boolean arrives = !socket.arriving().isEmpty();
        for (String channel : arrives ? socket.arriving() : socket.leaving()) {
            Spot each = new Spot(socket.name(), channel);
            nodes.add(piece.base() + (arrives ? layout.arriving(each) : layout.leaving(each)));
        }
        return nodes;
    }

    private static boolean isNetwork(Layout layout, String port) {
        return layout.shape.findSocket(port).stream()
                .anyMatch(socket -> socket.port().signal() == Signal.ETHERNET);
    }

    /** The named channels of a network port, or the one. */
    private List<Integer> onNetwork(int index, Piece piece, Layout layout, Spot spot, Side side) {
        List<Integer> nodes = new ArrayList<>();
        for (int local = 0; local < layout.nodes.size(); local++) {
            if (isMeant(layout.nodes.get(local), spot, side)) {
                nodes.add(piece.base() + local);
            }
        }
        for (int i = 0; i < graph.extras.size(); i++) {
            OpenNodes.Extra extra = graph.extras.get(i);
            if (extra.piece() == index && isMeant(extra.place(), spot, side)) {
                nodes.add(graph.laidOut + i);
            }
        }
        return nodes;
    }

    private static boolean isMeant(Layout.Local place, Spot spot, Side side) {
        return place.side() == side
                && place.spot().name().equals(spot.name())
                && (spot.channel() == null || spot.channel().equals(place.spot().channel()));
    }
}
