package housewright.signal;

import housewright.model.Connector;
import housewright.model.Kind;
import housewright.model.LevelClass;
import housewright.model.LocalRef.Spot;
import housewright.model.Pathway;
import housewright.model.Place;
import housewright.model.Ref.Address;
import housewright.model.Shape.Socket;
import housewright.signal.Layout.Side;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** How well a port that leads nowhere and one that waits would go together; -1 stands for no port that waits. */
final class Fit {
    private final SignalGraph graph;

    Fit(SignalGraph graph) {
        this.graph = graph;
    }

    /** Like outputs of one thing, for the same channel. */
    boolean isBeside(int other, int node) {
        return other != node
                && graph.pieceNumber(other) == graph.pieceNumber(node)
                && graph.side(other) == Side.LEAVING
                && graph.signal(other) == graph.signal(node)
                && Objects.equals(graph.spot(other).channel(), graph.spot(node).channel())
                && Words.stem(graph.spot(other).name())
                        .equals(Words.stem(graph.spot(node).name()));
    }

    /** Like outputs of the same thing have cables in them: it is there to hand the signal out. */
    boolean othersBesideInUse(int node) {
        Layout layout = graph.piece(node).layout();
        int base = graph.piece(node).base();
        for (int other = base; layout != null && other < base + layout.nodes.size(); other++) {
            if (isBeside(other, node) && !graph.plugged(other).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** Headphones go with an output made for them, and nothing else does. */
    boolean isOfOneUse(int node, int other) {
        if (other < 0) {
            return false;
        }
        Layout layout = graph.piece(other).layout();
        boolean headphones = isForPhones(other) || (layout != null && layout.model.kind() == Kind.HEADPHONES);
        return isForPhones(node) == headphones;
    }

    private boolean isForPhones(int node) {
        Socket socket = graph.socket(node);
        return socket != null && socket.port().level() == LevelClass.PHONES;
    }

    /** It leads, or would lead, from one to another of one type, as in a chain; or already serves such a one. */
    boolean isOfItsLike(int node, int other) {
        if (other < 0) {
            return false;
        }
        String type = graph.piece(other).equipment().model();
        if (Objects.equals(type, graph.piece(node).equipment().model())) {
            return true;
        }
        for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
            if (Objects.equals(type, graph.piece(graph.to[e]).equipment().model())) {
                return true;
            }
        }
        return false;
    }

    /** A link of many channels left open says more than a spare pair of phones. */
    int width(int node) {
        return node < 0
                ? 0
                : (int) graph.nodesOf(port(graph.address(node))).stream()
                        .filter(each -> graph.side(each) == Side.ARRIVING)
                        .count();
    }

    /** 3 at one place, 2 along one pathway, 1 in one room, 0 further apart or not known. */
    int nearness(int node, int other) {
        String one = graph.piece(node).equipment().at();
        String two = other < 0 ? null : graph.piece(other).equipment().at();
        if (one == null || two == null) {
            return 0;
        }
        if (one.equals(two)) {
            return 3;
        }
        for (Pathway pathway : graph.project.venue().pathways().values()) {
            if ((one.equals(pathway.from()) && two.equals(pathway.to()))
                    || (two.equals(pathway.from()) && one.equals(pathway.to()))) {
                return 2;
            }
        }
        Place here = graph.project.venue().places().get(one);
        Place there = graph.project.venue().places().get(two);
        return here != null
                        && there != null
                        && here.room() != null
                        && here.room().equals(there.room())
                ? 1
                : 0;
    }

    /** A plain lead joins the two: the connectors are of one family, pins to sockets or alike. */
    boolean mates(int node, int other) {
        Connector one = connector(node);
        Connector two = connector(other);
        return one != null && two != null && family(one).equals(family(two));
    }

    private @Nullable Connector connector(int node) {
        Socket socket = node < 0 ? null : graph.socket(node);
        return socket == null ? null : socket.port().connector();
    }

    private static String family(Connector connector) {
        return switch (connector) {
            case XLR_3M, XLR_3F -> "XLR-3";
            case XLR_5M, XLR_5F -> "XLR-5";
            default -> connector.name();
        };
    }

    static Address port(Address address) {
        return new Address(address.thing(), new Spot(address.spot().name(), null));
    }
}
