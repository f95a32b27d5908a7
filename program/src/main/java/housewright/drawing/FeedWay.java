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

    private final Study study;
    private final Nets nets;
    private final Map<Leg, Ways> legs = new LinkedHashMap<>();
    private final Map<String, Set<Step>> insides = new LinkedHashMap<>();
    private final Map<String, String> stops = new LinkedHashMap<>();
    private final List<Link> gaps = new ArrayList<>();
    private final Map<String, Integer> hops = new LinkedHashMap<>();
    private final Map<String, String> numbers = new LinkedHashMap<>();
    private final Set<Subject> lit = new TreeSet<>();

    /** A cable, send or radio link between two boxes. */
    private record Leg(Link.Sort sort, String id, String text, String from, String to) {}

    /** The sockets that a leg uses, each way once. */
    private static final class Ways {
        final Set<String> from = new LinkedHashSet<>();
        final Set<String> to = new LinkedHashSet<>();
    }

    /** A way through a box; the legs say how its sockets are gathered. */
    private record Step(@Nullable Leg in, String inPort, List<String> over, @Nullable Leg out, String outPort) {}

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
        Leg in = step.in();
        Leg out = step.out();
        return new Box.Inside(
                in == null ? step.inPort() : Gathered.names(List.copyOf(ways(in).to)),
                String.join(" → ", step.over()),
                out == null ? step.outPort() : Gathered.names(List.copyOf(ways(out).from)));
    }

    private Ways ways(Leg leg) {
        return legs.computeIfAbsent(leg, each -> new Ways());
    }

    private void pair(FeedProof proof, PairProof pair) {
        boolean arrives = !pair.hops().isEmpty();
        List<Hop> way = arrives || proof.feed().never() ? pair.hops() : study.signals().reached(pair);
        Address from = pair.from();
        Leg in = null;
        List<String> over = new ArrayList<>(isPoint(from) ? List.of(from.spot().name()) : List.of());
        for (Hop hop : way) {
            hops.putIfAbsent(hop.text(), hops.size() + 1);
            String number = String.valueOf(hops.get(hop.text()));
            switch (hop.cause()) {
                case Cause.ByCable cable -> {
                    Leg leg = leg(Link.Sort.CABLE, cable.id(), nets.cable(cable.id()), hop);
                    close(hop.from(), in, over, leg);
                    in = use(leg, hop.from().spot().name(), hop.to().spot().name(), number);
                    over = new ArrayList<>();
                }
                case Cause.ByRadio radio -> {
                    Link link = nets.radio(radio.id());
                    Leg leg = leg(Link.Sort.RADIO, radio.id(), link == null ? List.of() : List.of(link), hop);
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

    private void close(Address leaves, @Nullable Leg in, List<String> over, Leg out) {
        step(leaves.thing(), new Step(in, "", List.copyOf(over), out, ""));
        lit.add(Subject.equipment(leaves.thing()));
    }

    private void step(String equipment, Step step) {
        insides.computeIfAbsent(equipment, each -> new LinkedHashSet<>()).add(step);
        if (step.in() != null) {
            lit.add(Subject.equipment(equipment));
        }
    }

    private Leg use(Leg leg, String from, String to, String number) {
        Ways ways = ways(leg);
        ways.from.add(from);
        ways.to.add(to);
        lit.add(new Subject(leg.sort().kind, leg.id()));
        numbers.putIfAbsent(leg.sort().kind + ":" + leg.id(), number);
        return leg;
    }

    private static Leg leg(Link.Sort sort, String id, List<Link> links, Hop hop) {
        String text = links.isEmpty() ? id : links.getFirst().text();
        return new Leg(sort, id, text, hop.from().thing(), hop.to().thing());
    }

    /** The cables that a network-send runs over, through switches and panels; a line of its own where they are not known. */
    private Leg send(Cause.BySend send, Hop hop, @Nullable Leg first, List<String> over, String number) {
        Leg in = first;
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
                Leg leg = new Leg(Link.Sort.CABLE, id, link.text(), near.box(), far.box());
                step(at, new Step(in, "", passing, leg, ""));
                lit.add(Subject.equipment(at));
                in = use(leg, near.port(), far.port(), number);
                at = far.box();
                passing = List.of(send.id());
                break;
            }
        }
        if (in != null && at.equals(hop.to().thing()) && in != first) {
            return in;
        }
        Link link = nets.send(send.id());
        Leg leg = leg(Link.Sort.SEND, send.id(), link == null ? List.of() : List.of(link), hop);
        close(hop.from(), first, over, leg);
        return use(leg, hop.from().spot().name(), hop.to().spot().name(), number);
    }

    private void stop(FeedProof proof, PairProof pair, List<Hop> way, @Nullable Leg in, List<String> over) {
        Stop why = pair.stop();
        String key = "stop " + (stops.size() + 1);
        stops.put(key, why == null ? "Nothing leads on." : why.why());
        Address last = way.isEmpty() ? pair.from() : way.getLast().to();
        boolean leaves = !isPoint(last) && (way.isEmpty() || !isOutside(way.getLast()));
        String port = leaves ? last.spot().name() : "no further";
        step(last.thing(), new Step(in, "", over, null, port));
        lit.add(Subject.equipment(last.thing()));
        Link.End stop = new Link.End(key, List.of(""));
        gaps.add(new Link(
                Link.Sort.GAP, proof.feed().id(), "", new Link.End(last.thing(), List.of(port)), stop, Change.THERE));
        Address to = pair.to();
        boolean point = isPoint(to);
        String into = point ? "" : to.spot().name();
        step(to.thing(), new Step(null, into, point ? List.of(to.spot().name()) : List.of(), null, ""));
        gaps.add(new Link(
                Link.Sort.GAP, proof.feed().id(), "", stop, new Link.End(to.thing(), List.of(into)), Change.THERE));
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
