package housewright.signal;

import housewright.model.Ref.Address;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The place where what is reached and what leads to the destination come closest to each other. */
final class Gap {
    private Gap() {}

    static @Nullable Stop find(SignalGraph graph, Search search, BitSet wanted) {
        List<Integer> reached = new ArrayList<>();
        for (int node : search.reached()) {
            reached.add(node);
        }
        Stop stop = unpatched(graph, search, reached, wanted);
        if (stop == null) {
            stop = freePorts(graph, search, reached, wanted);
        }
        return stop;
    }

    /** A reached channel or point in a device that may be patched to one that leads to the destination. */
    private static @Nullable Stop unpatched(SignalGraph graph, Search search, List<Integer> reached, BitSet wanted) {
        int bestFrom = -1;
        int bestTo = -1;
        int bestScore = Integer.MIN_VALUE;
        for (int from : reached) {
            Layout layout = graph.piece(from).layout();
            if (layout == null || layout.model.patch() == null || graph.side(from) == Side.LEAVING) {
                continue;
            }
            int base = graph.piece(from).base();
            for (int local = 0; local < layout.nodes.size(); local++) {
                int to = base + local;
                if (!wanted.get(to)
                        || from < base
                        || from - base >= layout.nodes.size()
                        || !layout.mayPatch(from - base, local)
                        || !sameMedia(layout, from - base, local)) {
                    continue;
                }
                int score = score(graph, search, from, to);
                if (score > bestScore) {
                    bestScore = score;
                    bestFrom = from;
                    bestTo = to;
                }
            }
        }
        if (bestFrom < 0) {
            return null;
        }
        Address to = graph.address(bestTo);
        return new Stop(
                graph.address(bestFrom),
                "nothing in " + to.thing() + " is patched from "
                        + graph.address(bestFrom).spot() + " to " + to.spot());
    }

    private static boolean sameMedia(Layout layout, int from, int to) {
        Media one = layout.nodes.get(from).media();
        Media other = layout.nodes.get(to).media();
        return one == null || other == null || one == other;
    }

    /** Better where others like it are patched there already, where fewer patches are missing, then deeper in. */
    private static int score(SignalGraph graph, Search search, int from, int to) {
        int[] starts = graph.inStarts();
        int[] in = graph.inEdges();
        int score = 0;
        String stem = Words.stem(graph.spot(from).name());
        boolean taken = false;
        for (int i = starts[to]; i < starts[to + 1]; i++) {
            int other = graph.from[in[i]];
            taken |= graph.side(to) == Side.LEAVING;
            if (graph.pieceNumber(other) == graph.pieceNumber(from)
                    && Words.stem(graph.spot(other).name()).equals(stem)) {
                score = 10_000;
            }
        }
        boolean leadsNowhere = true;
        for (int e = graph.start[from]; e < graph.start[from + 1]; e++) {
            leadsNowhere = false;
        }
        return score + (leadsNowhere ? 2_000 : 0) - (taken ? 5_000 : 0) + search.hops(from);
    }

    /** A reached port with nothing in it, and one of the same signal that leads to the destination. */
    private static @Nullable Stop freePorts(SignalGraph graph, Search search, List<Integer> reached, BitSet wanted) {
        int best = -1;
        int bestScore = Integer.MIN_VALUE;
        int bestWaiting = -1;
        for (int from : reached) {
            Socket out = graph.socket(from);
            if (out == null
                    || graph.side(from) != Side.LEAVING
                    || !graph.plugged(from).isEmpty()
                    || out.port().signal() == Signal.RADIO) {
                continue;
            }
            int waiting = waiting(graph, graph.signal(from), graph.spot(from).channel(), wanted);
            int score = search.hops(from) + (waiting >= 0 ? 1_000 + 50 * width(graph.socket(waiting)) : 0);
            if (score > bestScore) {
                best = from;
                bestScore = score;
                bestWaiting = waiting;
            }
        }
        if (best < 0) {
            return null;
        }
        String waits = bestWaiting < 0 ? "" : "; " + Said.place(port(graph.address(bestWaiting))) + " waits for it";
        return new Stop(graph.address(best), nothingLeadsOn(graph, best) + waits);
    }

    /** A link of many channels left open says more than a spare pair of phones. */
    private static int width(@Nullable Socket socket) {
        return socket == null
                ? 0
                : Math.max(socket.arriving().size(), socket.leaving().size());
    }

    private static Address port(Address address) {
        return new Address(
                address.thing(),
                new housewright.model.LocalRef.Spot(address.spot().name(), null));
    }

    private static int waiting(SignalGraph graph, @Nullable Signal signal, @Nullable String channel, BitSet wanted) {
        for (int node = wanted.nextSetBit(0); node >= 0; node = wanted.nextSetBit(node + 1)) {
            Socket in = graph.socket(node);
            if (in != null
                    && graph.side(node) == Side.ARRIVING
                    && graph.plugged(node).isEmpty()
                    && graph.signal(node) == signal
                    && java.util.Objects.equals(graph.spot(node).channel(), channel)) {
                return node;
            }
        }
        return -1;
    }

    static String nothingLeadsOn(SignalGraph graph, int node) {
        Address address = port(graph.address(node));
        if (graph.side(node) == Side.LEAVING) {
            return graph.plugged(node).isEmpty()
                    ? "nothing is plugged into " + Said.place(address)
                    : "what is plugged into " + Said.place(address) + " does not take it on";
        }
        return "nothing leads on from " + Said.place(address);
    }
}
