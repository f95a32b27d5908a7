package housewright.signal;

import housewright.model.Cable;
import housewright.model.End;
import housewright.model.Life;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.model.Way;
import housewright.model.change.Change;
import housewright.signal.GraphBuilder.PortKey;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a mend may propose about cables. Loudspeaker lines and mains are left to people: whether an amplifier's output
 * may be joined to a load (impedance, 100 V lines, outputs tied together) is not worked out here, and a guess can burn
 * an amplifier. What lies there today between two pieces that stay as they are may be kept. A cable is never put into a
 * port that has one; and no mend lets a signal come round to where it began at unity gain or more, for that howls.
 */
final class SafeToOffer {
    static final Set<Signal> LEFT_TO_PEOPLE = EnumSet.of(Signal.SPEAKER, Signal.MAINS);

    private SafeToOffer() {}

    /** The changes are safe to propose, on the project as they leave it. */
    static boolean is(List<Change> changes, Signals before, Signals after) {
        return joinsSafely(changes, before.project(), after.graph()) && !closesALoop(before, after);
    }

    private static boolean joinsSafely(List<Change> changes, Project before, SignalGraph graph) {
        for (Change change : changes) {
            if (change instanceof Change.Put put && put.entity() instanceof Cable cable) {
                Cable was = before.cables().get(cable.id());
                boolean stays = was != null && ends(was).equals(ends(cable)) && areAsToday(ends(cable), graph);
                for (Address end : ends(cable)) {
                    if (!isFit(graph, end, stays)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /**
     * Something comes round as loud as before or louder that did not. Where something does so already, no added join may
     * lie on any way round at all, however quiet: which of the ways howls is not told apart.
     */
    private static boolean closesALoop(Signals before, Signals after) {
        if (before.loops().isEmpty()) {
            return !after.loops().isEmpty();
        }
        SignalGraph graph = after.graph();
        Set<List<Address>> known = joins(before.graph());
        Search search = new Search(graph);
        for (int e = 0; e < graph.to.length; e++) {
            if (!known.contains(List.of(graph.address(graph.from[e]), graph.address(graph.to[e])))) {
                search.from(graph.to[e], true);
                if (search.reaches(graph.from[e])) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Set<List<Address>> joins(SignalGraph graph) {
        Set<List<Address>> joins = new HashSet<>();
        for (int e = 0; e < graph.to.length; e++) {
            joins.add(List.of(graph.address(graph.from[e]), graph.address(graph.to[e])));
        }
        return joins;
    }

    private static boolean areAsToday(List<Address> ends, SignalGraph graph) {
        return ends.stream()
                .map(end -> graph.project.equipment().get(end.thing()))
                .allMatch(each -> each != null
                        && each.life() == Life.KEEP
                        && (each.was() == null || each.was().model() == null));
    }

    private static boolean isFit(SignalGraph graph, Address end, boolean stays) {
        Integer piece = graph.pieceIndex.get(end.thing());
        Layout layout = piece == null ? null : graph.pieces.get(piece).layout();
        if (piece == null || layout == null) {
            return false; // into what nobody knows
        }
        PortKey port = new PortKey(piece, end.spot().name());
        if (graph.builder.plugged.getOrDefault(port, List.of()).size() > 1) {
            return false;
        }
        if (stays) {
            return true;
        }
        Signal signal = layout.shape
                .findSocket(end.spot().name())
                .map(Socket::port)
                .map(each -> each.signal())
                .orElse(null);
        return signal != null
                ? !LEFT_TO_PEOPLE.contains(signal)
                : !layout.shape.isMains(end.spot().name()) && !carriesThem(graph, piece, end);
    }

    /** A passive port carries a loudspeaker line or mains. */
    private static boolean carriesThem(SignalGraph graph, int piece, Address end) {
        for (int node = 0; node < graph.nodes; node++) {
            Signal signal = graph.pieceNumber(node) == piece
                            && graph.spot(node).name().equals(end.spot().name())
                    ? graph.signal(node)
                    : null;
            if (signal != null && LEFT_TO_PEOPLE.contains(signal)) {
                return true;
            }
        }
        return false;
    }

    static List<Address> ends(Cable cable) {
        List<Address> ends = new ArrayList<>();
        add(ends, cable.from());
        add(ends, cable.to());
        for (Way way : cable.ways()) {
            ends.addAll(way.from().addresses());
            ends.addAll(way.to().addresses());
        }
        return ends;
    }

    private static void add(List<Address> ends, @Nullable End end) {
        Ref ref = end == null ? null : end.ref();
        if (ref != null) {
            ends.addAll(ref.addresses());
        }
    }
}
