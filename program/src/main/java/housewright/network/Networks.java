package housewright.network;

import housewright.cable.Cabling;
import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.NetworkSend;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.model.Types;
import housewright.signal.Cause;
import housewright.signal.Hop;
import housewright.signal.Present;
import housewright.signal.Signals;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The network of a project at a moment. */
public final class Networks {
    /** The network a switch port carries when nothing is said. */
    public static final int DEFAULT_VLAN = 1;

    private final Map<String, Present> things;
    private final List<Link> links = new ArrayList<>();
    private final Map<String, List<Link>> byThing = new LinkedHashMap<>();
    private final List<Sent> sends;
    private final Cabling cabling;
    private final Map<String, Map<String, Set<Integer>>> vlansByPort = new ConcurrentHashMap<>();
    private @Nullable List<Segment> segments;
    private @Nullable List<Load> loads;
    private @Nullable List<Powered> powered;

    private Networks(Types types, Map<String, Present> things, Signals signals, Cabling cabling) {
        this.cabling = cabling;
        this.things = things;
        for (Line line : cabling.lines()) {
            Plug one = line.from();
            Plug other = line.to();
            if (one != null && other != null && isNetwork(one) && isNetwork(other)) {
                Link link = new Link(line, one, other);
                links.add(link);
                byThing.computeIfAbsent(one.at().thing(), key -> new ArrayList<>())
                        .add(link);
                byThing.computeIfAbsent(other.at().thing(), key -> new ArrayList<>())
                        .add(link);
            }
        }
        this.sends = sends(types, signals);
    }

    public static Networks of(Types types, Map<String, Present> things, Signals signals, Cabling cabling) {
        return new Networks(types, things, signals, cabling);
    }

    /** Every link between two network ports. */
    public List<Link> links() {
        return List.copyOf(links);
    }

    /** The links that are plugged into a thing. */
    public List<Link> linksOf(String thing) {
        return byThing.getOrDefault(thing, List.of());
    }

    /** Every send that holds, one for each two things it joins, in the order of the file. */
    public List<Sent> sends() {
        return sends;
    }

    /** What is there, in the order of the file. */
    public List<Present> things() {
        return List.copyOf(things.values());
    }

    public @Nullable Present thing(String id) {
        return things.get(id);
    }

    public boolean isSwitch(String thing) {
        Present present = things.get(thing);
        return present != null && present.model() != null && present.model().kind() == Kind.SWITCH;
    }

    /** It has more than two network ports, so that it shares out and is no mere link in a cable. */
    public boolean sharesOut(String thing) {
        Present present = things.get(thing);
        Model model = present == null ? null : present.model();
        if (model == null || model.kind() != Kind.SWITCH) {
            return false;
        }
        int ports = 0;
        for (Map.Entry<NamePattern, Port> port : model.ports().entrySet()) {
            if (port.getValue().signal() == Signal.ETHERNET) {
                ports += port.getKey().names().size();
            }
        }
        return ports > 2;
    }

    /** The VLANs that a port of a switch carries. */
    public Set<Integer> vlans(Plug plug) {
        Set<Integer> said = said(plug);
        return said == null ? Set.of(DEFAULT_VLAN) : said;
    }

    private @Nullable Set<Integer> said(Plug plug) {
        Equipment equipment = plug.equipment();
        if (equipment == null || equipment.vlans().isEmpty()) {
            return null;
        }
        return vlansByPort
                .computeIfAbsent(equipment.id(), id -> {
                    Map<String, Set<Integer>> byPort = new HashMap<>();
                    equipment
                            .vlans()
                            .forEach((ports, vlans) ->
                                    ports.names().forEach(port -> byPort.putIfAbsent(port, new TreeSet<>(vlans))));
                    return byPort;
                })
                .get(plug.at().spot().name());
    }

    /** The VLANs that go through a link: what both ends carry; none where no switch is at either end. */
    public Set<Integer> vlans(Link link) {
        Set<Integer> one = Link.isSwitch(link.one()) ? vlans(link.one()) : said(link.one());
        Set<Integer> other = Link.isSwitch(link.other()) ? vlans(link.other()) : said(link.other());
        if (one == null || other == null) {
            return one != null ? one : other != null ? other : Set.of();
        }
        Set<Integer> both = new TreeSet<>(one);
        both.retainAll(other);
        return both;
    }

    /** Things that hear one another, switches themselves among them. */
    public synchronized List<Segment> segments() {
        List<Segment> known = segments;
        if (known == null) {
            known = new Segments(this).all();
            segments = known;
        }
        return known;
    }

    /** What each direction of each link carries; none where nothing is carried. */
    public synchronized List<Load> loads() {
        List<Load> known = loads;
        if (known == null) {
            known = new Loads(this).all();
            loads = known;
        }
        return known;
    }

    /** What takes power from the network, in the order of the file. */
    public synchronized List<Powered> powered() {
        List<Powered> known = powered;
        if (known == null) {
            known = things.values().stream()
                    .map(this::powered)
                    .filter(Objects::nonNull)
                    .toList();
            powered = known;
        }
        return known;
    }

    private static boolean isNetwork(Plug plug) {
        return plug.port() != null && plug.port().signal() == Signal.ETHERNET;
    }

    private static List<Sent> sends(Types types, Signals signals) {
        Map<List<Object>, Sent> sends = new LinkedHashMap<>();
        for (Hop hop : signals.sends()) {
            Cause.BySend cause = (Cause.BySend) hop.cause();
            NetworkSend send = types.project().networkSends().get(cause.id());
            if (send != null) {
                String from = hop.from().thing();
                String to = hop.to().thing();
                sends.merge(
                        List.of(send.id(), from, to, cause.over()),
                        new Sent(send, from, to, cause.over(), Double.NaN, 1),
                        (one, more) -> new Sent(send, from, to, cause.over(), Double.NaN, one.channels() + 1));
            }
        }
        Map<String, List<Sent>> byId = new HashMap<>();
        sends.values()
                .forEach(sent -> byId.computeIfAbsent(sent.send().id(), key -> new ArrayList<>())
                        .add(new Sent(sent.send(), sent.from(), sent.to(), sent.over(), rate(sent), sent.channels())));
        List<Sent> all = new ArrayList<>();
        types.project().networkSends().keySet().forEach(id -> all.addAll(byId.getOrDefault(id, List.of())));
        return List.copyOf(all);
    }

    private static double rate(Sent sent) {
        NetworkSend send = sent.send();
        if (send.rate() != null) {
            return send.rate().bitsPerSecond();
        }
        return switch (send.as() == null ? "" : send.as()) {
            case "lighting-data" -> Streams.lighting(sent.channels());
            case "network-audio" -> Streams.audio(sent.channels());
            case "control" -> 0;
            case "" -> byChannel(send.from().addresses().getFirst().spot().channel(), sent.channels());
            default -> Double.NaN;
        };
    }

    /** By the library's way of naming channels: 1, 2 and so on are sound, u1 a universe, v a picture, all else control. */
    private static double byChannel(@Nullable String channel, int count) {
        if (channel == null || channel.startsWith("v")) {
            return Double.NaN;
        }
        if (channel.length() <= 2 && !channel.startsWith("u")) {
            return Streams.audio(count);
        }
        boolean universe = channel.startsWith("u") && channel.chars().skip(1).allMatch(c -> c >= '0' && c <= '9');
        return universe ? Streams.lighting(count) : 0;
    }

    private @Nullable Powered powered(Present thing) {
        Model model = thing.model();
        if (model == null || model.poe() == null || model.poe().takes() == null) {
            return null;
        }
        Plug by = null;
        double gives = 0;
        for (Link link : linksOf(thing.id())) {
            Plug far = link.far(thing.id());
            double given = gives(far);
            if (by == null || given > gives) {
                by = far;
                gives = given;
            }
        }
        boolean inlet = false;
        boolean plugged = false;
        for (Map.Entry<NamePattern, Port> port : model.ports().entrySet()) {
            if (port.getValue().in() == Signal.MAINS) {
                inlet = true;
                for (String name : port.getKey().names()) {
                    plugged |= !cabling.in(thing.id() + "." + name).isEmpty();
                }
            }
        }
        boolean otherwise = inlet
                && (plugged
                        || thing.equipment().circuit() != null
                        || thing.equipment().poweredBy() != null);
        return new Powered(thing, model.poe().takes().watts(), by, gives, otherwise, inlet);
    }

    private static double gives(Plug plug) {
        Port port = plug.port();
        return port == null || port.poe() == null || port.poe().gives() == null
                ? 0
                : port.poe().gives().watts();
    }

    /** The link that a cable is in, seen from a thing it ends in. */
    @Nullable
    Link find(Map<String, List<Link>> byCable, String cable, String thing) {
        for (Link link : byCable.getOrDefault(cable, List.of())) {
            if (link.one().at().thing().equals(thing)
                    || link.other().at().thing().equals(thing)) {
                return link;
            }
        }
        return null;
    }

    Map<String, List<Link>> byCable() {
        Map<String, List<Link>> byCable = new HashMap<>();
        for (Link link : links) {
            for (Lead lead : link.line().leads()) {
                byCable.computeIfAbsent(lead.id(), key -> new ArrayList<>(1)).add(link);
            }
        }
        return byCable;
    }
}
