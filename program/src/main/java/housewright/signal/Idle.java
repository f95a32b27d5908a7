package housewright.signal;

import housewright.model.Fitted;
import housewright.model.Kind;
import housewright.model.Signal;
import housewright.signal.Layout.Side;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;

/** Which ways serve nothing: a signal led to a port for nothing else was led there for what is missing. */
final class Idle {
    private final SignalGraph graph;
    /** All that leads to a destination of any feed. */
    private final BitSet serving;

    private final Map<Integer, Boolean> known = new HashMap<>();

    Idle(SignalGraph graph) {
        this.graph = graph;
        BitSet ends = new BitSet();
        for (Asked asked : graph.asked) {
            for (Asked.Pair pair : asked.pairs) {
                if (pair.destination() >= 0 && !asked.feed.never()) {
                    ends.set(pair.destination());
                }
            }
        }
        this.serving = new Backward(graph).reaching(ends);
    }

    /** It leads to no destination of any feed. */
    boolean servesNoFeed(int node) {
        return !serving.get(node);
    }

    /**
     * A port that is patched to, or to which nothing leads that serves anything else, on any of its channels; one that
     * a cable goes on from; or the place where a line of lamps ends without its terminator (ANSI E1.11 wants one at
     * the end of every line).
     */
    boolean isIdle(int port) {
        return known.computeIfAbsent(port, this::findIdle);
    }

    private boolean findIdle(int port) {
        if (!graph.plugged(port).isEmpty()) {
            return true;
        }
        Layout layout = graph.piece(port).layout();
        if (graph.signal(port) == Signal.DMX && layout != null && layout.model.kind() == Kind.FIXTURE) {
            return !isTerminated(port);
        }
        if (graph.signal(port) == Signal.RADIO) {
            return servesNoFeed(port);
        }
        int[] starts = graph.inStarts();
        for (int channel : graph.nodesOf(Fit.port(graph.address(port)))) {
            for (int i = starts[channel]; graph.side(channel) == Side.LEAVING && i < starts[channel + 1]; i++) {
                int edge = graph.inEdges()[i];
                boolean set = graph.cause[edge] instanceof Cause.ByPatch;
                int before = graph.from[edge];
                if (!set && (serving.get(before) || leavesThing(before, new BitSet()))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The end of a line, closed off as it should be. */
    boolean isTerminated(int port) {
        return graph.signal(port) == Signal.DMX && graph.piece(port).equipment().terminator() == Fitted.FITTED;
    }

    /** From here on within its thing, it comes to a port with a cable in it. */
    private boolean leavesThing(int node, BitSet seen) {
        for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
            int next = graph.to[e];
            if (graph.pieceNumber(next) != graph.pieceNumber(node) || seen.get(next)) {
                continue;
            }
            seen.set(next);
            boolean out = graph.side(next) == Side.LEAVING;
            if (out ? !graph.plugged(next).isEmpty() : leavesThing(next, seen)) {
                return true;
            }
        }
        return false;
    }
}
