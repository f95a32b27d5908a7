package housewright.signal;

import housewright.model.Cable;
import housewright.model.Equipment;
import housewright.model.LocalRef.Spot;
import housewright.model.NamePattern;
import housewright.model.NetworkSend;
import housewright.model.Port;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.GraphBuilder.PortKey;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What network-sends that do not hold are in want of: a VLAN on a port, a plug in another jack, a cable. */
final class DeadSends {
    private static final int SETTING_MINUTES = 5;

    /** Plugs moved that would do, offered for one send. */
    private static final int MOST_MOVES = 6;

    private final SignalGraph graph;
    private final FreePorts free;
    private final Runs runs;
    private final Network network;
    private final Map<Integer, List<Dead>> dead = new LinkedHashMap<>();
    private final Map<String, List<List<Step>>> known = new HashMap<>();

    /** A network-send that does not hold, by the nodes it should join. */
    record Dead(NetworkSend send, int from, int to) {}

    DeadSends(SignalGraph graph, FreePorts free, Runs runs) {
        this.graph = graph;
        this.free = free;
        this.runs = runs;
        this.network = graph.builder.network();
        for (Unjoined each : graph.unjoined) {
            NetworkSend send = each.cause() instanceof Cause.BySend by
                    ? graph.project.networkSends().get(by.id())
                    : null;
            int from = graph.end(each.one(), true);
            int to = graph.end(each.other(), false);
            if (send != null && from >= 0 && to >= 0) {
                dead.computeIfAbsent(from, key -> new ArrayList<>()).add(new Dead(send, from, to));
            }
        }
    }

    /** Those that begin at a node. */
    List<Dead> from(int node) {
        return dead.getOrDefault(node, List.of());
    }

    /** Each of these sets of steps makes the send hold. */
    List<List<Step>> wanted(Dead each) {
        return known.computeIfAbsent(
                graph.address(each.from()) + " " + graph.address(each.to()) + " "
                        + each.send().vlan(),
                key -> {
                    List<List<Step>> wanted = new ArrayList<>();
                    vlans(each, wanted);
                    moves(each, wanted);
                    Step cable = cable(each);
                    if (cable != null) {
                        wanted.add(List.of(cable));
                    }
                    return wanted;
                });
    }

    /** Ports put into a VLAN: one at an end, both ends, or one between two switches. */
    private void vlans(Dead each, List<List<Step>> wanted) {
        PortKey from = network.switchPortAt(free.port(each.from()));
        PortKey to = network.switchPortAt(free.port(each.to()));
        if (from == null || to == null) {
            return;
        }
        Integer asked = each.send().vlan();
        Set<Integer> vlans =
                new LinkedHashSet<>(asked != null ? List.of(asked) : both(network.carried(from), network.carried(to)));
        for (int vlan : vlans) {
            List<Step> ends = new ArrayList<>();
            Map<PortKey, List<Integer>> supposed = new LinkedHashMap<>();
            for (PortKey end : new LinkedHashSet<>(List.of(from, to))) {
                if (!network.carried(end).contains(vlan)) {
                    List<Integer> carried =
                            network.carried(end).size() > 1 ? wider(network.carried(end), vlan) : List.of(vlan);
                    supposed.put(end, carried);
                    ends.add(carry(end, carried));
                }
            }
            if (!ends.isEmpty() && joins(each, supposed)) {
                wanted.add(ends);
            }
            for (PortKey port : network.portsBetweenSwitches()) {
                if (!network.carried(port).contains(vlan)) {
                    List<Integer> carried = wider(network.carried(port), vlan);
                    Map<PortKey, List<Integer>> all = new LinkedHashMap<>(supposed);
                    all.put(port, carried);
                    if (joins(each, all)) {
                        List<Step> steps = new ArrayList<>(ends);
                        steps.add(carry(port, carried));
                        wanted.add(steps);
                    }
                }
            }
        }
    }

    private static List<Integer> both(List<Integer> one, List<Integer> other) {
        List<Integer> both = new ArrayList<>(one);
        both.addAll(other);
        return both;
    }

    private static List<Integer> wider(List<Integer> carried, int vlan) {
        List<Integer> wider = new ArrayList<>(carried);
        wider.add(vlan);
        return List.copyOf(wider);
    }

    private boolean joins(Dead each, Map<PortKey, List<Integer>> supposed) {
        return network.wouldJoin(
                free.port(each.from()), free.port(each.to()), each.send().vlan(), supposed);
    }

    private Step carry(PortKey port, List<Integer> wantedVlans) {
        Equipment piece = graph.pieces.get(port.piece()).equipment();
        return new Step(
                "vlan " + piece.id() + "." + port.port() + " " + wantedVlans,
                Cost.of(0, SETTING_MINUTES, 1),
                Set.of(),
                (now, ids) -> {
                    Equipment own = now.equipment().getOrDefault(piece.id(), piece);
                    Map<NamePattern, List<Integer>> all = new LinkedHashMap<>();
                    own.vlans().forEach((pattern, carried) -> {
                        for (String name : pattern.names()) {
                            all.put(pattern.names().contains(port.port()) ? new NamePattern(name) : pattern, carried);
                        }
                    });
                    all.put(new NamePattern(port.port()), wantedVlans);
                    Map<NamePattern, List<Integer>> was = Map.of(new NamePattern(port.port()), network.carried(port));
                    return new Step.Done(
                            List.of(new Change.Put(Section.EQUIPMENT, piece.id(), Lives.withVlans(own, all, was))),
                            List.of("On " + Said.name(piece.id()) + ", put " + port.port() + " into VLAN "
                                    + String.join(
                                            ", ",
                                            wantedVlans.stream()
                                                    .map(Object::toString)
                                                    .toList()) + "."),
                            List.of());
                });
    }

    /** The end of a network cable moved to another jack of the panel or switch it is in. */
    private void moves(Dead each, List<List<Step>> wanted) {
        PortKey from = free.port(each.from());
        PortKey to = free.port(each.to());
        int moves = 0;
        for (Network.Plug plug : network.plugsNear(from, to)) {
            Cable cable = graph.project.cables().get(plug.cable());
            if (cable == null || !plug.cable().equals(Possible.onlyCable(graph, plug.port()))) {
                continue;
            }
            for (PortKey jack : network.likeJacks(plug.port())) {
                if (moves < MOST_MOVES
                        && network.wouldJoinMoved(from, to, each.send().vlan(), plug, jack)) {
                    wanted.add(List.of(move(cable, plug, jack)));
                    moves++;
                }
            }
        }
    }

    private Step move(Cable cable, Network.Plug plug, PortKey jack) {
        Address was = address(plug.port());
        Address goes = address(jack);
        Ref far = new Ref(address(plug.far()).toString());
        boolean first = cable.from() != null && cable.from().text().equals(was.toString());
        Ref moved = new Ref(goes.toString());
        Cable after = first ? Lives.moved(cable, moved, far) : Lives.moved(cable, far, moved);
        return new Step(
                "move " + cable.id() + " to " + goes,
                Cost.of(0, SETTING_MINUTES, 1),
                Set.of(jack),
                (now, ids) -> new Step.Done(
                        List.of(new Change.Put(Section.CABLES, cable.id(), after)),
                        List.of("Move cable " + cable.id() + " from " + Said.place(was) + " to " + Said.place(goes)
                                + "."),
                        List.of("cable " + cable.id() + " is long enough")));
    }

    /** The cheapest network cable between a free port on one side and one on the other that makes the send hold. */
    private @Nullable Step cable(Dead each) {
        PortKey from = free.port(each.from());
        PortKey to = free.port(each.to());
        PortKey bestOne = null;
        PortKey bestOther = null;
        Runs.Choice best = null;
        for (PortKey one : network.freeOnSideOf(from)) {
            for (PortKey other : network.freeOnSideOf(to)) {
                Port out = network.port(one);
                Port in = network.port(other);
                if (one.piece() == other.piece() || out == null || in == null) {
                    continue;
                }
                Runs.Choice choice = runs.choose(out, in, runs.between(piece(one), piece(other)));
                if (choice != null
                        && (best == null || choice.cost() < best.cost())
                        && network.wouldJoin(from, to, each.send().vlan(), one, other)) {
                    best = choice;
                    bestOne = one;
                    bestOther = other;
                }
            }
        }
        if (best == null || bestOne == null || bestOther == null) {
            return null;
        }
        Address one = address(bestOne);
        Address other = address(bestOther);
        Runs.Choice choice = best;
        return new Step("cable " + one + " - " + other, choice.cost(), Set.of(bestOne, bestOther), (now, ids) -> {
            Cable cable = PossibleCables.cable(ids.cable(), choice, one, other);
            return new Step.Done(
                    List.of(new Change.Put(Section.CABLES, cable.id(), cable)),
                    List.of("Run a new " + PossibleCables.said(choice) + " (" + cable.id() + ") from " + Said.place(one)
                            + " to " + Said.place(other) + "."),
                    PossibleCables.assumed(choice));
        });
    }

    private Equipment piece(PortKey key) {
        return graph.pieces.get(key.piece()).equipment();
    }

    private Address address(PortKey key) {
        return new Address(piece(key).id(), new Spot(key.port(), null));
    }
}
