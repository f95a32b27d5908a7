package housewright.signal;

import housewright.model.Cable;
import housewright.model.Equipment;
import housewright.model.LocalRef.Spot;
import housewright.model.NamePattern;
import housewright.model.NetworkSend;
import housewright.model.Port;
import housewright.model.RadioLink;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Remarks;
import housewright.model.Signal;
import housewright.model.Way;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.GraphBuilder.PortKey;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A radio link, a network-send, or what a network-send that does not hold is in want of: a cable or a VLAN. */
final class PossibleNetwork {
    private static final int RADIO_MINUTES = 10;
    private static final int SETTING_MINUTES = 5;

    private final SignalGraph graph;
    private final FreePorts free;
    private final Runs runs;
    private final Network network;
    private final Set<String> linked = new HashSet<>();
    private final Map<String, Optional<Step>> wanting = new HashMap<>();
    private final Map<Integer, List<Dead>> dead = new LinkedHashMap<>();
    private final Map<List<PortKey>, Boolean> joined = new HashMap<>();
    private final List<Integer> arriving;

    /** A network-send that does not hold, by the nodes it should join. */
    private record Dead(NetworkSend send, int from, int to) {}

    PossibleNetwork(SignalGraph graph, FreePorts free, Runs runs) {
        this.graph = graph;
        this.free = free;
        this.runs = runs;
        this.network = graph.builder.network();
        this.arriving = graph.arrivingOnNetwork();
        for (RadioLink link : graph.project.radio().values()) {
            for (Way.Pair pair : new Way(link.from(), link.to()).pairs()) {
                linked.add(pair.to().thing() + "." + pair.to().spot().name());
            }
        }
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

    void from(int node, Possible.Offers offers) {
        Port out = free.portOf(node);
        String channel = graph.spot(node).channel();
        if (out == null || channel == null || graph.side(node) != Side.LEAVING) {
            return;
        }
        if (out.signal() == Signal.RADIO) {
            radio(node, out, channel, offers);
        } else if (out.signal() == Signal.ETHERNET) {
            for (Dead each : dead.getOrDefault(node, List.of())) {
                Step step = wanted(each);
                if (step != null) {
                    offers.offer(each.to(), List.of(step), 0, 0);
                }
            }
            send(node, channel, offers);
        }
    }

    private void radio(int node, Port out, String channel, Possible.Offers offers) {
        for (int to : free.taking(Signal.RADIO, channel)) {
            Port in = free.portOf(to);
            if (in == null
                    || !FreePorts.agree(out, in)
                    || linked.contains(port(to).toString())) { // one transmitter may be heard by many receivers
                continue;
            }
            Ref from = new Ref(port(node).toString());
            Ref into = new Ref(port(to).toString());
            Step step = new Step(
                    "radio " + from + " - " + into, Cost.of(0, RADIO_MINUTES, 1), Set.of(free.port(to)), (now, ids) -> {
                        String id = ids.named(graph.piece(node).id() + "-link");
                        RadioLink link = new RadioLink(
                                id, from, into, null, null, null, housewright.model.Life.NEW, Remarks.NONE);
                        return new Step.Done(
                                List.of(new Change.Put(Section.RADIO, id, link)),
                                List.of("Tune " + Said.name(graph.piece(node).id()) + " and "
                                        + Said.name(graph.piece(to).id()) + " to one frequency (" + id + ")."),
                                List.of("a free frequency is found for it"));
                    });
            offers.offer(to, List.of(step), 0, 0);
        }
    }

    private void send(int node, String channel, Possible.Offers offers) {
        Media media = Media.of(Signal.ETHERNET, channel);
        for (int to : arriving) {
            String taken = graph.spot(to).channel();
            boolean other = graph.pieceNumber(to) != graph.pieceNumber(node);
            boolean same = taken != null && Media.of(Signal.ETHERNET, taken) == media;
            if (!other
                    || !same
                    || graph.inStarts()[to] != graph.inStarts()[to + 1]
                    || !isJoined(free.port(node), free.port(to))) {
                continue;
            }
            Address one = graph.address(node);
            Address two = graph.address(to);
            Step step = new Step("send " + one + " - " + two, Cost.of(0, SETTING_MINUTES, 1), Set.of(), (now, ids) -> {
                String id = ids.named(one.thing() + "-to-" + two.thing());
                NetworkSend added = new NetworkSend(
                        id,
                        new Ref(one.toString()),
                        new Ref(two.toString()),
                        null,
                        null,
                        null,
                        false,
                        null,
                        housewright.model.Life.NEW,
                        Remarks.NONE);
                return new Step.Done(
                        List.of(new Change.Put(Section.NETWORK_SENDS, id, added)),
                        List.of("Send " + Said.place(one) + " over the network to " + Said.place(two) + " (" + id
                                + ")."),
                        List.of("both devices speak the same network protocol"));
            });
            offers.offer(to, List.of(step), 0, 0);
        }
    }

    private boolean isJoined(PortKey one, PortKey other) {
        return joined.computeIfAbsent(
                List.of(one, other), key -> network.path(one, other, null).over() != null);
    }

    private @Nullable Step wanted(Dead each) {
        return wanting.computeIfAbsent(
                        graph.address(each.from()) + " " + graph.address(each.to()) + " "
                                + each.send().vlan(),
                        key -> Optional.ofNullable(cheaper(cheaper(vlan(each), moved(each)), cable(each))))
                .orElse(null);
    }

    private static @Nullable Step cheaper(@Nullable Step one, @Nullable Step other) {
        return one == null ? other : other == null || one.cost() <= other.cost() ? one : other;
    }

    /** The end of a network cable moved to another jack of the panel or switch it is in. */
    private @Nullable Step moved(Dead each) {
        PortKey from = free.port(each.from());
        PortKey to = free.port(each.to());
        for (Network.Plug plug : network.plugsNear(from, to)) {
            Cable cable = graph.project.cables().get(plug.cable());
            if (cable == null || !plug.cable().equals(Possible.onlyCable(graph, plug.port()))) {
                continue;
            }
            for (PortKey jack : network.likeJacks(plug.port())) {
                if (network.wouldJoinMoved(from, to, each.send().vlan(), plug, jack)) {
                    return move(cable, plug, jack);
                }
            }
        }
        return null;
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

    /** The switch port on one side put into the network that the other side's carries. */
    private @Nullable Step vlan(Dead each) {
        PortKey from = network.switchPortAt(free.port(each.from()));
        PortKey to = network.switchPortAt(free.port(each.to()));
        if (from == null || to == null) {
            return null;
        }
        Step between = trunk(each, from, to);
        if (between != null) {
            return between;
        }
        Step one = vlan(each, from, network.carried(to));
        Step other = vlan(each, to, network.carried(from));
        return cheaper(one, other);
    }

    /** Where both ends carry the network, a port between two switches that does not. */
    private @Nullable Step trunk(Dead each, PortKey from, PortKey to) {
        Integer asked = each.send().vlan();
        for (int vlan : asked == null ? network.carried(from) : List.of(asked)) {
            if (network.carried(from).contains(vlan) && network.carried(to).contains(vlan)) {
                for (PortKey port : network.portsBetweenSwitches()) {
                    List<Integer> carried = network.carried(port);
                    if (!carried.contains(vlan)) {
                        List<Integer> wider = new ArrayList<>(carried);
                        wider.add(vlan);
                        Step step = carry(each, port, List.copyOf(wider));
                        if (step != null) {
                            return step;
                        }
                    }
                }
            }
        }
        return null;
    }

    private @Nullable Step vlan(Dead each, PortKey port, List<Integer> vlans) {
        Integer asked = each.send().vlan();
        return carry(each, port, asked == null || vlans.contains(asked) ? vlans : List.of(asked));
    }

    private @Nullable Step carry(Dead each, PortKey port, List<Integer> wantedVlans) {
        Integer asked = each.send().vlan();
        if (!network.wouldJoin(free.port(each.from()), free.port(each.to()), asked, port, wantedVlans)) {
            return null;
        }
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
                    return new Step.Done(
                            List.of(new Change.Put(Section.EQUIPMENT, piece.id(), Lives.withVlans(own, all))),
                            List.of("On " + Said.name(piece.id()) + ", put " + port.port() + " into VLAN "
                                    + String.join(
                                            ", ",
                                            wantedVlans.stream()
                                                    .map(Object::toString)
                                                    .toList()) + "."),
                            List.of());
                });
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

    private Address port(int node) {
        return new Address(graph.piece(node).id(), new Spot(graph.spot(node).name(), null));
    }
}
