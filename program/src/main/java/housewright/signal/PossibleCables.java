package housewright.signal;

import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.End;
import housewright.model.Life;
import housewright.model.LocalRef.Spot;
import housewright.model.Port;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Remarks;
import housewright.model.Signal;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.GraphBuilder.PortKey;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A new cable between two free ports; a cable moved to a free port; two cables that change places at one end. */
final class PossibleCables {
    private static final int REPLUG_MINUTES = 5;

    private final SignalGraph graph;
    private final FreePorts free;
    private final Runs runs;
    /** Cables that join nothing where they are plugged in. */
    private final Set<String> joinsNothing = new HashSet<>();

    private final Map<List<PortKey>, Optional<Step>> known = new HashMap<>();

    PossibleCables(SignalGraph graph, FreePorts free, Runs runs) {
        this.graph = graph;
        this.free = free;
        this.runs = runs;
        for (Unjoined each : graph.unjoined) {
            if (each.cause() instanceof Cause.ByCable cable) {
                joinsNothing.add(cable.id());
            }
        }
    }

    void from(int node, Possible.Offers offers) {
        Port out = free.portOf(node);
        String channel = graph.spot(node).channel();
        Signal signal = graph.signal(node);
        if (out == null || signal == null || channel == null || graph.side(node) != Side.LEAVING || !plugs(signal)) {
            return;
        }
        for (int to : free.taking(signal, channel)) {
            Port in = free.portOf(to);
            if (in == null || graph.pieceNumber(to) == graph.pieceNumber(node) || !free.agree(node, to)) {
                continue;
            }
            Step step = step(node, to, out, in);
            if (step != null) {
                offers.offer(to, List.of(step), 0, 0);
            }
        }
    }

    private static boolean plugs(@Nullable Signal signal) {
        return signal != null
                && signal != Signal.ETHERNET
                && signal != Signal.RADIO
                && !SafeToOffer.LEFT_TO_PEOPLE.contains(signal);
    }

    private @Nullable Step step(int from, int to, Port out, Port in) {
        if (goesBoth(out) && goesBoth(in) && from > to) {
            return step(to, from, in, out); // one cable, whichever way it is come upon
        }
        List<PortKey> ports = List.of(free.port(from), free.port(to));
        return known.computeIfAbsent(ports, key -> Optional.ofNullable(make(ports, from, to, out, in)))
                .orElse(null);
    }

    private static boolean goesBoth(Port port) {
        return port.both() != null || port.passive();
    }

    private @Nullable Step make(List<PortKey> ports, int from, int to, Port out, Port in) {
        boolean fromFree = free.isFree(from);
        boolean toFree = free.isFree(to);
        Address one = port(from);
        Address other = port(to);
        if (fromFree && toFree) {
            return cable(ports, from, to, out, in, one, other);
        }
        String here = Possible.onlyCable(graph, ports.getFirst());
        String there = Possible.onlyCable(graph, ports.getLast());
        if (toFree && here != null && carries(here, graph.signal(from))) {
            return fits(here, in) ? move(here, one, other, ports.getLast()) : null;
        }
        if (fromFree && there != null && carries(there, graph.signal(from))) {
            return fits(there, out) ? move(there, other, one, ports.getFirst()) : null;
        }
        return here != null && there != null && !here.equals(there) ? exchange(here, there, one, other) : null;
    }

    /** One of its plugs goes into the socket it is moved to, as far as both are known; with adapters a person looks. */
    private boolean fits(String id, Port goes) {
        Cable cable = graph.project.cables().get(id);
        if (cable == null
                || cable.type() == null
                || goes.connector() == null
                || !cable.adapters().isEmpty()) {
            return true;
        }
        List<Connector> ends = cable.ends().isEmpty()
                ? runs.findType(cable.type()).map(CableType::ends).orElse(List.of())
                : cable.ends();
        return ends.isEmpty() || ends.contains(goes.connector().mate());
    }

    /** Loudspeaker cable makes no microphone lead, though it reaches. */
    private boolean carries(String id, @Nullable Signal signal) {
        Cable cable = graph.project.cables().get(id);
        CableType type = cable == null || cable.type() == null
                ? null
                : runs.findType(cable.type()).orElse(null);
        return signal == null
                || type == null
                || type.carries().isEmpty()
                || type.carries().contains(signal);
    }

    private @Nullable Step cable(List<PortKey> ports, int from, int to, Port out, Port in, Address one, Address other) {
        Runs.Run run =
                runs.between(graph.piece(from).equipment(), graph.piece(to).equipment());
        Runs.Choice choice = runs.choose(graph.signal(from), out, in, run);
        if (choice == null) {
            return null;
        }
        String key = "cable " + one + " - " + other;
        return new Step(key, choice.cost(), Set.copyOf(ports), (now, ids) -> {
            Cable cable = cable(ids.cable(), choice, one, other);
            return new Step.Done(
                    List.of(new Change.Put(Section.CABLES, cable.id(), cable)),
                    List.of("Run a new " + said(choice) + " (" + cable.id() + ") from " + Said.place(one) + " to "
                            + Said.place(other) + along(run) + "."),
                    assumed(choice));
        });
    }

    static Cable cable(String id, Runs.Choice choice, Address from, Address to) {
        return new Cable(
                id,
                choice.type().id(),
                new End(new Ref(from.toString())),
                new End(new Ref(to.toString())),
                List.of(),
                choice.run().via(),
                Life.NEW,
                choice.run().via().isEmpty() ? choice.length() : null,
                choice.ends(),
                List.of(),
                null,
                null,
                null,
                null,
                Remarks.NONE);
    }

    static String said(Runs.Choice choice) {
        return choice.type().id() + ", " + choice.length().text();
    }

    private static String along(Runs.Run run) {
        return run.via().isEmpty() ? "" : " along " + String.join(", ", run.via());
    }

    static List<String> assumed(Runs.Choice choice) {
        List<String> assumed = new ArrayList<>();
        if (choice.run().guessed()) {
            assumed.add("along no pathway, so " + choice.length().text() + " is a guess");
        }
        if (!choice.priced()) {
            assumed.add(choice.type().id() + " has no price and is counted as 0");
        }
        if (!choice.ends().isEmpty()) {
            assumed.add("ends made up to fit: " + choice.ends().getFirst().word() + " and "
                    + choice.ends().getLast().word());
        }
        return assumed;
    }

    /** The far end of the cable in one place is moved to another jack of the device it is in, or plugged where it is loose. */
    private @Nullable Step move(String id, Address stays, Address goes, PortKey taken) {
        Cable cable = graph.project.cables().get(id);
        if (cable == null) {
            return null;
        }
        boolean staysFirst = isAt(cable.from(), stays);
        if (!staysFirst && !isAt(cable.to(), stays)) {
            return null;
        }
        Ref keeps = new Ref(stays.toString());
        Ref moves = new Ref(goes.toString());
        End was = staysFirst ? cable.to() : cable.from();
        if (was != null
                && was.ref() != null
                && !was.ref().addresses().getFirst().thing().equals(goes.thing())
                && !joinsNothing.contains(id)) {
            return null; // a wrong jack of the right device is set right; a cable that serves is not taken from
            // elsewhere
        }
        String words = was == null || was.ref() == null
                ? "Plug the loose end of cable " + id + " into " + Said.place(goes) + "."
                : "Move cable " + id + " from "
                        + Said.place(was.ref().addresses().getFirst()) + " to " + Said.place(goes) + ".";
        Cable moved = staysFirst ? Lives.moved(cable, keeps, moves) : Lives.moved(cable, moves, keeps);
        return new Step(
                "move " + id + " to " + goes,
                Cost.of(0, REPLUG_MINUTES, 1),
                Set.of(taken),
                (now, ids) -> new Step.Done(
                        List.of(new Change.Put(Section.CABLES, id, moved)),
                        List.of(words),
                        List.of("cable " + id + " is long enough")));
    }

    /** Two cables change places at the end of the second place. */
    private @Nullable Step exchange(String here, String there, Address one, Address other) {
        Cable first = graph.project.cables().get(here);
        Cable second = graph.project.cables().get(there);
        Ref firstFar = first == null ? null : far(first, one);
        Ref secondFar = second == null ? null : far(second, other);
        if (first == null || second == null || firstFar == null || secondFar == null) {
            return null;
        }
        if (!java.util.Objects.equals(first.type(), second.type()) || !sideBySide(one, secondFar, firstFar, other)) {
            return null;
        }
        Ref from = new Ref(one.toString());
        Ref to = new Ref(other.toString());
        Cable toOther = isAt(first.from(), one) ? Lives.moved(first, from, to) : Lives.moved(first, to, from);
        Cable toFar = isAt(second.to(), other)
                ? Lives.moved(second, secondFar, firstFar)
                : Lives.moved(second, firstFar, secondFar);
        return new Step(
                Step.EXCHANGE + here + " and " + there + " at " + other,
                Cost.of(0, REPLUG_MINUTES, 2),
                Set.of(),
                (now, ids) -> new Step.Done(
                        List.of(
                                new Change.Put(Section.CABLES, here, toOther),
                                new Change.Put(Section.CABLES, there, toFar)),
                        List.of("Exchange cables " + here + " and " + there + ": " + here + " into " + Said.place(other)
                                + ", " + there + " into "
                                + Said.place(firstFar.addresses().getFirst()) + "."),
                        List.of("both cables are long enough")));
    }

    /** Two cables are mixed up where they run side by side; others do not change places with sense. */
    private static boolean sideBySide(Address one, Ref secondFar, Ref firstFar, Address other) {
        return one.thing().equals(secondFar.addresses().getFirst().thing())
                || other.thing().equals(firstFar.addresses().getFirst().thing());
    }

    private static @Nullable Ref far(Cable cable, Address near) {
        End end = isAt(cable.from(), near) ? cable.to() : isAt(cable.to(), near) ? cable.from() : null;
        return end == null ? null : end.ref();
    }

    private static boolean isAt(@Nullable End end, Address address) {
        Ref ref = end == null ? null : end.ref();
        return ref != null && ref.text().equals(address.toString());
    }

    private Address port(int node) {
        return new Address(graph.piece(node).id(), new Spot(graph.spot(node).name(), null));
    }

    /** Cables that carry both ways, new or moved, so that one path may use them there and back. */
    List<Step> bothWays() {
        Map<PortKey, Integer> ports = new LinkedHashMap<>();
        for (int node = 0; node < graph.nodes; node++) {
            Port port = free.portOf(node);
            if (port != null && goesBoth(port) && graph.side(node) == Side.LEAVING && plugs(graph.signal(node))) {
                ports.putIfAbsent(free.port(node), node);
            }
        }
        List<Integer> all = List.copyOf(ports.values());
        Set<Step> steps = new LinkedHashSet<>();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                int one = all.get(i);
                int other = all.get(j);
                Port out = free.portOf(one);
                Port in = free.portOf(other);
                boolean may = graph.pieceNumber(one) != graph.pieceNumber(other)
                        && (free.isFree(one) || free.isFree(other))
                        && free.agree(one, other);
                Step step = may && out != null && in != null ? step(one, other, out, in) : null;
                if (step != null) {
                    steps.add(step);
                }
            }
        }
        return List.copyOf(steps);
    }
}
