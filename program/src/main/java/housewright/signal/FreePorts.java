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
        for (int node = 0; node < graph.nodes; node++) {
            Signal signal = graph.signal(node);
            String channel = graph.spot(node).channel();
            if (signal != null && channel != null && graph.side(node) == Side.ARRIVING) {
                arriving.computeIfAbsent(new Taken(signal, channel), key -> new ArrayList<>())
                        .add(node);
            }
        }
    }

    /** As {@link #agree(Port, Port)}, where a passive port is what it is given. */
    boolean agree(int from, int to) {
        Port out = portOf(from);
        Port in = portOf(to);
        if (out == null
                || in == null
                || out.connector() == Connector.NONE
                || in.connector() == Connector.NONE
                || areBothUsbHosts(out, in)) {
            return false;
        }
        String speaks = graph.protocol(from);
        String hears = graph.protocol(to);
        return graph.signal(from) == graph.signal(to) && (speaks == null || hears == null || speaks.equals(hears));
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
                && !areBothUsbHosts(from, to)
                && (from.protocol() == null
                        || to.protocol() == null
                        || from.protocol().equals(to.protocol()));
    }

    /** A USB A port is a host's, and two hosts are not joined (USB 2.0 specification, section 6.2, from memory). */
    private static boolean areBothUsbHosts(Port one, Port other) {
        return one.both() != null
                && other.both() != null
                && one.connector() == Connector.USB_A
                && other.connector() == Connector.USB_A;
    }
}
