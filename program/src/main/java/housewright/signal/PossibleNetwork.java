package housewright.signal;

import housewright.model.LocalRef.Spot;
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
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A radio link, a network-send, or what a network-send that does not hold is in want of: a cable or a VLAN. */
final class PossibleNetwork {
    private static final int RADIO_MINUTES = 10;
    private static final int SETTING_MINUTES = 5;

    private final SignalGraph graph;
    private final FreePorts free;
    private final Network network;
    private final Set<String> linked = new HashSet<>();
    private final DeadSends dead;
    private final Map<List<PortKey>, Boolean> joined = new HashMap<>();
    private final List<Integer> arriving;

    PossibleNetwork(SignalGraph graph, FreePorts free, Runs runs) {
        this.graph = graph;
        this.free = free;
        this.dead = new DeadSends(graph, free, runs);
        this.network = graph.builder.network();
        this.arriving = graph.arrivingOnNetwork();
        for (RadioLink link : graph.project.radio().values()) {
            for (Way.Pair pair : new Way(link.from(), link.to()).pairs()) {
                linked.add(pair.to().thing() + "." + pair.to().spot().name());
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
            for (DeadSends.Dead each : dead.from(node)) {
                dead.wanted(each).forEach(steps -> offers.offer(each.to(), steps, 0, 0));
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

    private Address port(int node) {
        return new Address(graph.piece(node).id(), new Spot(graph.spot(node).name(), null));
    }
}
