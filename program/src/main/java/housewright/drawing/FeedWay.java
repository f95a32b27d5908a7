package housewright.drawing;

import housewright.finding.Subject;
import housewright.model.Ref.Address;
import housewright.signal.Cause;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.PairProof;
import housewright.signal.Stop;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The way of a feed at one moment: what it passes, in order, and where it stops. */
final class FeedWay {
    private static final String NOT_THERE = "not there in this state";
    private static final String NO_FURTHER = "no further";
    /** The socket of what is not reached. */
    private static final String BLANK = "\u00A0";

    private final Study study;
    private final Nets nets;
    private final Map<Leg, Ways> legs = new LinkedHashMap<>();
    private final Map<String, Set<Step>> insides = new LinkedHashMap<>();
    private final Map<String, String> stops = new LinkedHashMap<>();
    private final Map<String, String> stopAt = new LinkedHashMap<>();
    private final List<Link> gaps = new ArrayList<>();
    private final Map<String, Integer> hops = new LinkedHashMap<>();
    private final Map<String, String> numbers = new LinkedHashMap<>();
    private final Set<Subject> lit = new TreeSet<>();

    /** A cable, send or radio link between two boxes, in the direction in which it was first used. */
    private record Leg(Link.Sort sort, String id, String text, String from, String to) {
        Leg turned() {
            return new Leg(sort, id, text, to, from);
        }
    }

    /** A leg as used: which of its two ends is at hand. */
    private record Used(Leg leg, boolean turned) {}

    /** The sockets that a leg uses, each way once. */
    private static final class Ways {
        final Set<String> from = new LinkedHashSet<>();
        final Set<String> to = new LinkedHashSet<>();
        boolean forth;
        boolean back;
    }

    /** A way through a box; the legs say how its sockets are gathered. */
    private record Step(
            @Nullable Used in,
            String inPort,
            List<String> over,
            @Nullable Used out,
            String outPort) {}

    FeedWay(Study study, Nets nets, FeedProof proof) {
        this.study = study;
        this.nets = nets;
        for (PairProof pair : proof.pairs()) {
            pair(proof, pair);
        }
    }

    Net net() {
        List<Link> links = new ArrayList<>();
        legs.forEach((leg, ways) -> links.add(new Link(
                leg.sort(),
                leg.id(),
                leg.text(),
                new Link.End(leg.from(), List.copyOf(ways.from)),
                new Link.End(leg.to(), List.copyOf(ways.to)),
                ways.back && ways.forth,
                Change.THERE)));
        links.addAll(gaps);
        Map<String, Box> boxes = new LinkedHashMap<>();
        insides.forEach((id, steps) -> {
            Box known = nets.boxes().get(id);
            Box box = known != null ? known : new Box(id, NOT_THERE, "", "", Change.THERE, List.of());
            Set<Box.Inside> ways = new LinkedHashSet<>();
            steps.forEach(step -> ways.add(inside(step)));
            boxes.put(id, new Box(id, box.name(), box.place(), box.note(), Change.THERE, List.copyOf(ways)));
        });
        return new Net(boxes, links);
    }

    /** Why it stops, by the name the links give it. */
    Map<String, String> stops() {
        return stops;
    }

    /** Every step in order, each once, as a person can touch it. */
    List<String> hops() {
        return List.copyOf(hops.keySet());
    }

    /** The number of the step that a link is, by the link's kind and id. */
    Map<String, String> numbers() {
        return numbers;
    }

    Set<Subject> lit() {
        return lit;
    }

    private Box.Inside inside(Step step) {
        Used in = step.in();
        Used out = step.out();
        return new Box.Inside(
                in == null ? step.inPort() : Gathered.names(ports(in, true)),
                String.join(" → ", step.over()),
                out == null ? step.outPort() : Gathered.names(ports(out, false)));
    }

    private List<String> ports(Used used, boolean arriving) {
        Ways ways = ways(used.leg());
        return List.copyOf(arriving == used.turned() ? ways.from : ways.to);
    }

    private Ways ways(Leg leg) {
        return legs.computeIfAbsent(leg, each -> new Ways());
    }

    private Used used(Leg leg) {
        return legs.containsKey(leg.turned()) ? new Used(leg.turned(), true) : new Used(leg, false);
    }

    private void pair(FeedProof proof, PairProof pair) {
        boolean arrives = !pair.hops().isEmpty();
        List<Hop> way =
                arrives || proof.feed().never() ? pair.hops() : study.signals().reached(pair);
        Address from = pair.from();
        Used in = null;
        List<String> over = new ArrayList<>(isPoint(from) ? List.of(from.spot().name()) : List.of());
        for (Hop hop : way) {
            hops.putIfAbsent(hop.text(), hops.size() + 1);
            String number = String.valueOf(hops.get(hop.text()));
            switch (hop.cause()) {
                case Cause.ByCable cable -> {
                    Used leg = leg(Link.Sort.CABLE, cable.id(), nets.cable(cable.id()), hop);
                    close(hop.from(), in, over, leg);
                    in = use(leg, hop.from().spot().name(), hop.to().spot().name(), number);
                    over = new ArrayList<>();
                }
                case Cause.ByRadio radio -> {
                    Link link = nets.radio(radio.id());
                    Used leg = leg(Link.Sort.RADIO, radio.id(), link == null ? List.of() : List.of(link), hop);
                    close(hop.from(), in, over, leg);
                    in = use(leg, hop.from().spot().name(), hop.to().spot().name(), number);
                    over = new ArrayList<>();
                }
                case Cause.BySend send -> {
                    in = send(send, hop, in, over, number);
                    over = new ArrayList<>();
                }
                case Cause.ByRoute route -> pass(hop, over);
                case Cause.ByTie tie -> pass(hop, over);
                case Cause.ByPatch patch -> pass(hop, over);
            }
        }
        if (arrives) {
            step(pair.to().thing(), new Step(in, "", over, null, ""));
        } else if (!proof.feed().never()) {
            stop(proof, pair, way, in, over);
        } else {
            step(from.thing(), new Step(null, "", over, null, ""));
            step(pair.to().thing(), new Step(null, "", List.of(pair.to().spot().name()), null, ""));
        }
    }

    private void pass(Hop hop, List<String> over) {
        if (isPoint(hop.to())) {
            over.add(hop.to().spot().name());
        }
    }

    private boolean isPoint(Address at) {
        return nets.isPoint(at.thing(), at.spot().name());
    }

    private void close(Address leaves, @Nullable Used in, List<String> over, Used out) {
        step(leaves.thing(), new Step(in, "", List.copyOf(over), out, ""));
        lit.add(Subject.equipment(leaves.thing()));
    }

    private void step(String equipment, Step step) {
        insides.computeIfAbsent(equipment, each -> new LinkedHashSet<>()).add(step);
        if (step.in() != null) {
            lit.add(Subject.equipment(equipment));
        }
    }

    private Used use(Used used, String from, String to, String number) {
        Leg leg = used.leg();
        Ways ways = ways(leg);
        ways.from.add(used.turned() ? to : from);
        ways.to.add(used.turned() ? from : to);
        ways.back |= used.turned();
        ways.forth |= !used.turned();
        lit.add(new Subject(leg.sort().kind, leg.id()));
        numbers.putIfAbsent(leg.sort().kind + ":" + leg.id(), number);
        return used;
    }

    private Used leg(Link.Sort sort, String id, List<Link> links, Hop hop) {
        String text = links.isEmpty() ? id : links.getFirst().text();
        return used(new Leg(sort, id, text, hop.from().thing(), hop.to().thing()));
    }

    /** The cables that a network-send runs over, through switches and panels; a line of its own where they are not known. */
    private Used send(Cause.BySend send, Hop hop, @Nullable Used first, List<String> over, String number) {
        boolean moved = false;
        Used in = first;
        String at = hop.from().thing();
        List<String> passing = List.copyOf(over);
        for (String id : send.over()) {
            for (Link link : nets.cable(id)) {
                boolean forward = link.from().box().equals(at);
                Link.End near = forward ? link.from() : link.to();
                Link.End far = forward ? link.to() : link.from();
                if (!near.box().equals(at) || far.isLoose()) {
                    continue;
                }
                Used leg = used(new Leg(Link.Sort.CABLE, id, link.text(), near.box(), far.box()));
                step(at, new Step(in, "", passing, leg, ""));
                lit.add(Subject.equipment(at));
                in = use(leg, near.port(), far.port(), number);
                at = far.box();
                moved = true;
                passing = List.of(send.id());
                break;
            }
        }
        if (in != null && moved && at.equals(hop.to().thing())) {
            return in;
        }
        Link link = nets.send(send.id());
        Used leg = leg(Link.Sort.SEND, send.id(), link == null ? List.of() : List.of(link), hop);
        close(hop.from(), first, over, leg);
        return use(leg, hop.from().spot().name(), hop.to().spot().name(), number);
    }

    private void stop(FeedProof proof, PairProof pair, List<Hop> way, @Nullable Used in, List<String> over) {
        Stop why = pair.stop();
        Address last = way.isEmpty() ? pair.from() : way.getLast().to();
        boolean leaves = !isPoint(last) && (way.isEmpty() || !isOutside(way.getLast()));
        String port = leaves ? last.spot().name() : NO_FURTHER;
        String reason = why == null ? "nothing leads on" : why.why();
        String key = stopAt.get(last + " " + reason);
        if (key == null) {
            key = "stop " + (stops.size() + 1);
            stops.put(key, reason);
            stopAt.put(last + " " + reason, key);
            step(last.thing(), new Step(in, "", over, null, port));
            lit.add(Subject.equipment(last.thing()));
            gap(proof, new Link.End(last.thing(), List.of(port)), new Link.End(key, List.of("")));
        }
        Address to = pair.to();
        boolean point = isPoint(to);
        String into = point ? BLANK : to.spot().name();
        step(to.thing(), new Step(null, into, point ? List.of(to.spot().name()) : List.of(), null, ""));
        gap(proof, new Link.End(key, List.of("")), new Link.End(to.thing(), List.of(into)));
    }

    private void gap(FeedProof proof, Link.End from, Link.End to) {
        gaps.add(new Link(Link.Sort.GAP, proof.feed().id(), "", from, to, false, Change.THERE));
    }

    private static boolean isOutside(Hop hop) {
        return switch (hop.cause()) {
            case Cause.ByCable cable -> true;
            case Cause.BySend send -> true;
            case Cause.ByRadio radio -> true;
            case Cause.ByRoute route -> false;
            case Cause.ByTie tie -> false;
            case Cause.ByPatch patch -> false;
        };
    }
}
