package housewright.signal;

import housewright.model.Adapter;
import housewright.model.Cable;
import housewright.model.Connector;
import housewright.model.Kind;
import housewright.model.LocalRef.Spot;
import housewright.model.Phantom;
import housewright.model.Port;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.model.Tie;
import housewright.model.Types;
import housewright.model.Way;
import housewright.signal.GraphBuilder.PortKey;
import housewright.unit.Resistance;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which free ports go together with one: by signal, protocol and direction, followed through panels to what they lead
 * to, and by the connectors, with a cable type that carries it and is allowed to be that long, or an adapter.
 *
 * <p>Mains and loudspeaker lines are offered only where both sockets are known, a made-up cable goes straight into both,
 * and a loudspeaker is no less a load than the amplifier's output may drive; else it is said what is missing.
 */
final class Joinable {
    /** What a port is, or a panel's socket leads to; no port where that is not known. */
    private record Seen(
            Address at,
            Piece piece,
            Socket socket,
            @Nullable Port port,
            boolean panel) {
        /** Terminals behind an outlet say nothing of themselves, and are not to be touched. */
        boolean isPanelsMains() {
            Layout layout = piece.layout();
            return panel && layout != null && layout.shape.isMains(socket.name());
        }
    }

    private final SignalGraph graph;
    private final Types types;
    private final Runs runs;
    private final Map<String, String> far = new HashMap<>();
    private final Set<String> missing = new LinkedHashSet<>();

    Joinable(SignalGraph graph, Types types) {
        this.graph = graph;
        this.types = types;
        this.runs = new Runs(graph.project, types);
        for (Cable cable : graph.project.cables().values()) {
            if (graph.moment.isThere("cables", cable.id(), cable.life())) {
                add(graph.moment.isDone("cables", cable.id()) ? cable : cable.today());
            }
        }
    }

    private void add(Cable cable) {
        Ref from = cable.from() == null ? null : cable.from().ref();
        Ref to = cable.to() == null ? null : cable.to().ref();
        if (from != null && to != null) {
            lead(from.addresses().getFirst(), to.addresses().getFirst());
        }
        for (Way way : cable.ways()) {
            way.pairs().forEach(pair -> lead(pair.from(), pair.to()));
        }
    }

    private void lead(Address one, Address other) {
        far.put(one.toString(), other.toString());
        far.put(other.toString(), one.toString());
    }

    JoinOffers of(Address at) {
        List<String> cables = cables(at);
        if (!cables.isEmpty()) {
            return new JoinOffers(at, cables, List.of(), List.of());
        }
        Seen asked = find(at);
        if (asked == null) {
            return new JoinOffers(at, cables, List.of(), List.copyOf(missing));
        }
        String not = whyNot(asked);
        if (not != null) {
            return new JoinOffers(at, cables, List.of(), List.of(not));
        }
        List<JoinOffer> offers = new ArrayList<>();
        for (Piece piece : graph.pieces) {
            Layout layout = piece.layout();
            if (layout == null || piece.id().equals(asked.piece().id())) {
                continue;
            }
            for (Socket socket : layout.shape.sockets().values()) {
                Address other = new Address(piece.id(), new Spot(socket.name(), null));
                JoinOffer offer = cables(other).isEmpty() ? offer(asked, seen(other, piece, socket)) : null;
                if (offer != null) {
                    offers.add(offer);
                }
            }
        }
        if (offers.isEmpty() && missing.isEmpty()) {
            missing.add("No free port of another thing takes what " + Said.place(at) + " "
                    + (asked.port() != null && asked.port().out() != null ? "gives" : "has") + ".");
        }
        offers.sort(Comparator.comparing(JoinOffer::guessed)
                .thenComparingDouble(offer -> offer.length().metres()));
        return new JoinOffers(at, cables, offers, List.copyOf(missing));
    }

    private List<String> cables(Address at) {
        Integer piece = graph.pieceIndex.get(at.thing());
        return piece == null
                ? List.of()
                : graph.builder.plugged.getOrDefault(
                        new PortKey(piece, at.spot().name()), List.of());
    }

    private @Nullable Seen find(Address at) {
        Integer index = graph.pieceIndex.get(at.thing());
        if (index == null) {
            missing.add(Said.name(at.thing()) + " is not there " + graph.moment.inWords() + ".");
            return null;
        }
        Piece piece = graph.pieces.get(index);
        Layout layout = piece.layout();
        if (layout == null) {
            missing.add(
                    piece.equipment().model() == null
                            ? "Which model " + Said.name(at.thing())
                                    + " is has not been said, so its ports are not known."
                            : "The ports of " + Said.name(at.thing()) + " have not been counted yet.");
            return null;
        }
        Socket socket = layout.shape.findSocket(at.spot().name()).orElse(null);
        if (socket == null) {
            missing.add(Said.name(at.thing()) + " has no port " + at.spot().name() + ".");
            return null;
        }
        return seen(at, piece, socket);
    }

    private Seen seen(Address at, Piece piece, Socket socket) {
        if (!socket.port().passive()) {
            return new Seen(at, piece, socket, socket.port(), false);
        }
        Port beyond = beyond(at, new HashSet<>());
        return new Seen(at, piece, socket, beyond, true);
    }

    /** The port that a panel's socket leads to through it; null where it leads nowhere yet. */
    private @Nullable Port beyond(Address at, Set<String> been) {
        String tied = tied(at);
        String next = tied == null || !been.add(tied) ? null : far.get(tied);
        if (next == null) {
            return null;
        }
        Address end = new Ref(next).addresses().getFirst();
        Integer index = graph.pieceIndex.get(end.thing());
        Layout layout = index == null ? null : graph.pieces.get(index).layout();
        Socket socket = layout == null
                ? null
                : layout.shape.findSocket(end.spot().name()).orElse(null);
        if (socket == null) {
            return null;
        }
        return socket.port().passive() ? beyond(end, been) : socket.port();
    }

    private @Nullable String tied(Address at) {
        Integer index = graph.pieceIndex.get(at.thing());
        Layout layout = index == null ? null : graph.pieces.get(index).layout();
        if (layout == null) {
            return null;
        }
        for (Tie tie : layout.model.ties()) {
            for (Tie.Pair pair : tie.pairs()) {
                if (pair.one().equals(at.spot().name())) {
                    return at.thing() + "." + pair.other();
                }
                if (pair.other().equals(at.spot().name())) {
                    return at.thing() + "." + pair.one();
                }
            }
        }
        return null;
    }

    /** Why nothing can be offered for the port whatever there is. */
    private static @Nullable String whyNot(Seen asked) {
        Port port = asked.port();
        String said = Said.place(asked.at());
        if (asked.socket().port().connector() == Connector.NONE) {
            return said + " has no socket.";
        }
        if (asked.isPanelsMains()) {
            return said + " is mains in a panel, wired by a licensed electrician: nothing is offered for it.";
        }
        if (port == null) {
            return null;
        }
        if (port.signal() == Signal.RADIO) {
            return said + " is an antenna's: radio links have a table of their own.";
        }
        Signal signal = port.signal();
        if (signal != null && SafeToOffer.LEFT_TO_PEOPLE.contains(signal)) {
            if (asked.panel()) {
                return said + " is a panel's; loudspeaker lines and mains are joined through panels by hand.";
            }
            if (port.connector() == null) {
                return "Which connector " + said + " has is not known, and a " + signal.word()
                        + " line is not offered on a guess.";
            }
            if (port.both() != null) {
                return "Whether " + said + " gives or takes is not known.";
            }
        }
        return null;
    }

    private @Nullable JoinOffer offer(Seen asked, Seen other) {
        Port one = asked.port();
        Port two = other.port();
        if ((one == null && two == null)
                || other.socket().port().connector() == Connector.NONE
                || other.isPanelsMains()) {
            return null;
        }
        Port known = one == null ? two : one;
        Signal signal = known == null ? null : known.signal();
        if (signal == null || signal == Signal.RADIO) {
            return null;
        }
        boolean leaves = one == null || one.leaves();
        boolean forward = leaves && (two == null || two.arrives());
        boolean backward = !forward && (one == null || one.arrives()) && (two == null || two.leaves());
        if (!forward && !backward) {
            return null;
        }
        if (one != null && two != null && (!FreePorts.agree(one, two) || !alike(asked, other))) {
            return null;
        }
        if (SafeToOffer.LEFT_TO_PEOPLE.contains(signal)) {
            return forward ? left(signal, asked, other, other) : left(signal, other, asked, other);
        }
        return forward ? cable(signal, asked, other, other) : cable(signal, other, asked, other);
    }

    /** Not two USB hosts, nor two devices; and what phantom power harms is not put where it is given. */
    private static boolean alike(Seen one, Seen other) {
        Connector mine = one.socket().port().connector();
        Connector theirs = other.socket().port().connector();
        Port near = one.port();
        Port far = other.port();
        if (near == null || far == null) {
            return true;
        }
        boolean usb = near.signal() == Signal.USB || near.signal() == Signal.USB_AUDIO;
        if (usb && ((mine == Connector.USB_B && theirs == Connector.USB_B) || (isHost(one) && isHost(other)))) {
            return false;
        }
        return !harms(near, far) && !harms(far, near);
    }

    private static boolean isHost(Seen seen) {
        Connector connector = seen.socket().port().connector();
        Layout layout = seen.piece().layout();
        return connector == Connector.USB_A
                || (connector == Connector.USB_C && layout != null && layout.model.kind() == Kind.COMPUTER);
    }

    private static boolean harms(Port gives, Port harmed) {
        return gives.phantom() == Phantom.GIVES && harmed.phantom() == Phantom.HARMED;
    }

    private @Nullable JoinOffer left(Signal signal, Seen out, Seen in, Seen other) {
        Port from = out.socket().port();
        Port to = in.socket().port();
        if (out.panel() || in.panel() || from.both() != null || to.both() != null) {
            return null;
        }
        if (from.connector() == null || to.connector() == null) {
            missing.add("The connector of " + Said.place((from.connector() == null ? out : in).at())
                    + " is not known; it may or may not go together.");
            return null;
        }
        if (signal == Signal.SPEAKER && !mayDrive(out, in)) {
            return null;
        }
        JoinOffer offer = cable(signal, out, in, other);
        return offer != null
                        && offer.ends().isEmpty()
                        && offer.adapter() == null
                        && offer.type().ends().size() == 2
                ? offer
                : null;
    }

    private boolean mayDrive(Seen out, Seen in) {
        Resistance least = out.socket().port().minLoad();
        Resistance load = in.socket().port().impedance();
        Layout layout = out.piece().layout();
        if (layout == null || layout.model.kind() != Kind.AMPLIFIER) {
            return false; // handed on from loudspeaker to loudspeaker: the whole line counts
        }
        if (least == null) {
            missing.add("The least load that " + Said.place(out.at()) + " may drive is not known.");
        }
        if (load == null) {
            missing.add("The impedance of " + Said.place(in.at()) + " is not known.");
        }
        return least != null && load != null && load.ohms() >= least.ohms();
    }

    private @Nullable JoinOffer cable(Signal signal, Seen out, Seen in, Seen other) {
        Runs.Run run = runs.between(out.piece().equipment(), in.piece().equipment());
        Port from = out.socket().port();
        Port to = in.socket().port();
        Runs.Choice choice = runs.choose(signal, from, to, run);
        if (choice != null) {
            List<String> assumed = new ArrayList<>(PossibleCables.assumed(choice));
            for (Seen seen : List.of(out, in)) {
                if (seen.socket().port().connector() == null) {
                    assumed.add("the connector of " + Said.place(seen.at()) + " is not known");
                }
            }
            return new JoinOffer(
                    out.at(),
                    in.at(),
                    other.at(),
                    signal,
                    choice.type(),
                    choice.length(),
                    run.via(),
                    run.guessed(),
                    choice.ends(),
                    null,
                    choice.price(),
                    assumed);
        }
        return byAdapter(signal, out, in, other, run);
    }

    /** A made-up cable, and an adapter at one end. */
    private @Nullable JoinOffer byAdapter(Signal signal, Seen out, Seen in, Seen other, Runs.Run run) {
        Connector from = out.socket().port().connector();
        Connector to = in.socket().port().connector();
        if (from == null || to == null || SafeToOffer.LEFT_TO_PEOPLE.contains(signal)) {
            return null;
        }
        JoinOffer best = null;
        for (String id : types.adapterIds()) {
            Adapter adapter = types.findAdapter(id).orElse(null);
            if (adapter == null
                    || (!adapter.carries().isEmpty() && !adapter.carries().contains(signal))) {
                continue;
            }
            for (Runs.Adapted adapted : runs.byAdapter(signal, from, to, adapter, run)) {
                List<String> assumed = new ArrayList<>(PossibleCables.assumed(adapted.choice()));
                assumed.add("with " + adapter.id() + " at " + Said.place(adapted.first() ? out.at() : in.at()));
                JoinOffer offer = new JoinOffer(
                        out.at(),
                        in.at(),
                        other.at(),
                        signal,
                        adapted.choice().type(),
                        adapted.choice().length(),
                        run.via(),
                        run.guessed(),
                        List.of(),
                        adapter,
                        adapted.choice().price().add(adapter.price() == null ? BigDecimal.ZERO : adapter.price()),
                        assumed);
                if (best == null || offer.price().compareTo(best.price()) < 0) {
                    best = offer;
                }
            }
        }
        return best;
    }
}
