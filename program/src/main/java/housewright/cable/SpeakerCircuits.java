package housewright.cable;

import housewright.model.Join;
import housewright.model.LocalRef;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Route;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.model.Tie;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Follows what hangs on each amplifier output, from socket to socket. */
final class SpeakerCircuits {
    private final Cabling cabling;
    private final Map<String, Inside> insides = new HashMap<>();
    private final List<SpeakerCircuit> circuits = new ArrayList<>();

    /** Sockets of one type that are one wire inside, by name, and the type's shape. */
    private record Inside(Shape shape, Map<String, List<String>> joined, boolean fedFromMains) {}

    private SpeakerCircuits(Cabling cabling) {
        this.cabling = cabling;
        Set<String> begun = new HashSet<>();
        for (Lead lead : cabling.leads()) {
            for (Joint joint : lead.joints()) {
                begin(joint.from(), begun);
                begin(joint.to(), begun);
            }
        }
    }

    /** One for each output with something plugged in, in the order of the cables. */
    static List<SpeakerCircuit> of(Cabling cabling) {
        return List.copyOf(new SpeakerCircuits(cabling).circuits);
    }

    private void begin(@Nullable Plug plug, Set<String> begun) {
        if (plug != null && gives(plug) && begun.add(plug.socket())) {
            circuits.add(follow(plug));
        }
    }

    /** It puts out loudspeaker power of its own, rather than hand on what it gets. */
    private boolean gives(Plug plug) {
        Port port = plug.port();
        Model model = plug.model();
        return port != null
                && model != null
                && port.out() == Signal.SPEAKER
                && (port.minLoad() != null
                        || inside(model)
                                .joined()
                                .getOrDefault(plug.at().spot().name(), List.of())
                                .isEmpty());
    }

    private SpeakerCircuit follow(Plug output) {
        List<Plug> loads = new ArrayList<>();
        List<Plug> foreign = new ArrayList<>();
        List<Plug> panels = new ArrayList<>();
        List<Plug> others = new ArrayList<>();
        Set<String> cables = new LinkedHashSet<>();
        boolean whole = true;
        Set<String> seen = new HashSet<>(Set.of(output.socket()));
        Deque<String> sockets = new ArrayDeque<>(List.of(output.socket()));
        while (!sockets.isEmpty()) {
            String socket = sockets.remove();
            for (Lead lead : cabling.in(socket)) {
                for (Joint joint : lead.joints()) {
                    boolean forward =
                            joint.from() != null && joint.from().socket().equals(socket);
                    boolean back = joint.to() != null && joint.to().socket().equals(socket);
                    if (!forward && !back) {
                        continue;
                    }
                    cables.add(lead.id());
                    Plug far = forward ? joint.to() : joint.from();
                    Port port = far == null ? null : far.port();
                    Model model = far == null ? null : far.model();
                    if (far == null || port == null || model == null) {
                        whole = false;
                        continue;
                    }
                    if (!seen.add(far.socket())) {
                        continue;
                    }
                    List<String> onward =
                            inside(model).joined().getOrDefault(far.at().spot().name(), List.of());
                    if (far.isPassive()) {
                        panels.add(far);
                        onward.forEach(name -> panel(far, model, name).ifPresent(panels::add));
                    } else if (port.signal() != Signal.SPEAKER) {
                        foreign.add(far);
                        onward = List.of();
                    } else if (gives(far)) {
                        others.add(far);
                        onward = List.of();
                    } else if (port.in() == Signal.SPEAKER) {
                        if (isLoad(model, port, onward)) {
                            loads.add(far);
                        }
                    }
                    sockets.add(far.socket()); // what else is in the same socket
                    for (String name : onward) {
                        String next = far.at().thing() + "." + name;
                        if (seen.add(next)) {
                            sockets.add(next);
                        }
                    }
                }
            }
        }
        return new SpeakerCircuit(output, loads, foreign, panels, others, cables, whole);
    }

    /** What sounds is a load; what only hands on is passed. An amplifier that listens to the line draws nothing. */
    private boolean isLoad(Model model, Port port, List<String> onward) {
        return !inside(model).fedFromMains()
                && (port.impedance() != null
                        || onward.isEmpty()
                        || !model.points().isEmpty());
    }

    /** The other side of a panel, whether anything is plugged in there or not. */
    private Optional<Plug> panel(Plug near, Model model, String name) {
        Address at = new Address(near.at().thing(), new LocalRef.Spot(name, null));
        return inside(model)
                .shape()
                .findSocket(name)
                .map(socket -> new Plug(at, near.equipment(), model, socket.port(), null));
    }

    private Inside inside(Model model) {
        return insides.computeIfAbsent(model.id(), id -> {
            Shape shape = Shape.of(model);
            Map<String, List<String>> joined = new HashMap<>();
            for (Tie tie : model.ties()) {
                for (Tie.Pair pair : tie.pairs()) {
                    join(joined, pair.one(), pair.other());
                }
            }
            boolean mains = model.ports().values().stream().anyMatch(port -> port.in() == Signal.MAINS);
            if (!mains) {
                for (Route route : model.routes()) {
                    for (Join.Pair pair : route.join().pairs()) {
                        if (isSpeaker(shape, pair.from().name())
                                && isSpeaker(shape, pair.to().name())) {
                            join(joined, pair.from().name(), pair.to().name());
                        }
                    }
                }
            }
            return new Inside(shape, joined, mains);
        });
    }

    private static boolean isSpeaker(Shape shape, String name) {
        return shape.findSocket(name)
                .filter(socket -> socket.port().signal() == Signal.SPEAKER)
                .isPresent();
    }

    private static void join(Map<String, List<String>> joined, String one, String other) {
        joined.computeIfAbsent(one, key -> new ArrayList<>(1)).add(other);
        joined.computeIfAbsent(other, key -> new ArrayList<>(1)).add(one);
    }
}
