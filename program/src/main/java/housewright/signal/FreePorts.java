package housewright.signal;

import housewright.model.Connector;
import housewright.model.Port;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.signal.GraphBuilder.PortKey;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Arriving channels by what they take, and which ports have nothing in them. */
final class FreePorts {
    private record Taken(Signal signal, String channel) {}

    private final SignalGraph graph;
    private final Map<Taken, List<Integer>> arriving = new HashMap<>();

    FreePorts(SignalGraph graph) {
        this.graph = graph;
        for (Piece piece : graph.pieces) {
            Layout layout = piece.layout();
            for (int local = 0; layout != null && local < layout.nodes.size(); local++) {
                Layout.Local node = layout.nodes.get(local);
                Socket socket = node.socket();
                Signal signal = socket == null ? null : socket.port().signal();
                String channel = node.spot().channel();
                if (signal != null && channel != null && node.side() == Side.ARRIVING) {
                    arriving.computeIfAbsent(new Taken(signal, channel), key -> new ArrayList<>())
                            .add(piece.base() + local);
                }
            }
        }
    }

    /** Channels of other pieces that take this signal on this channel. */
    List<Integer> taking(Signal signal, String channel) {
        return arriving.getOrDefault(new Taken(signal, channel), List.of());
    }

    boolean isFree(int node) {
        return graph.plugged(node).isEmpty();
    }

    PortKey port(int node) {
        return new PortKey(graph.pieceNumber(node), graph.spot(node).name());
    }

    @Nullable
    Port portOf(int node) {
        Socket socket = graph.socket(node);
        return socket == null ? null : socket.port();
    }

    /** Both have a socket, are of one signal, and of one protocol as far as both say. */
    static boolean agree(Port from, Port to) {
        return from.connector() != Connector.NONE
                && to.connector() != Connector.NONE
                && from.signal() == to.signal()
                && (from.protocol() == null
                        || to.protocol() == null
                        || from.protocol().equals(to.protocol()));
    }
}
