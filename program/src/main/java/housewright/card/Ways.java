package housewright.card;

import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Connector;
import housewright.model.Kind;
import housewright.model.Ref.Address;
import housewright.model.Signal;
import housewright.model.Termination;
import housewright.operation.Operation;
import housewright.signal.Cause;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.PairProof;
import housewright.signal.Present;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The ways of the feeds of one kind, cut where hands are on them. */
final class Ways {
    /** Where a feed ends without anybody in the room hearing or seeing it. */
    private static final Set<Kind> NOT_FOR_THE_ROOM = EnumSet.of(
            Kind.COMPUTER,
            Kind.PROGRAM,
            Kind.RECORDER,
            Kind.INTERNET_ROUTER,
            Kind.ENCODER,
            Kind.CAPTURE,
            Kind.AUDIO_INTERFACE,
            Kind.MIXER);

    private final Study study;
    private final Names names;
    private final Set<String> desks;
    private final List<OneWay> ways = new ArrayList<>();

    /**
     * One source and one destination.
     *
     * @param before the hops up to where it first comes to the desk; none where no desk is on it
     * @param desk the last on it that hands are on; null where none is
     * @param after the hops from there on, or all
     */
    record OneWay(
            Address from,
            Address to,
            List<Hop> before,
            @Nullable String desk,
            List<Hop> after) {
        String source() {
            return from.thing();
        }

        String end() {
            return to.thing();
        }
    }

    Ways(Study study, Names names, Trouble trouble) {
        this.study = study;
        this.names = names;
        Operation operation = study.operation();
        this.desks = new LinkedHashSet<>(operation.desks());
        desks.removeIf(each -> names.kind(each) != trouble.desk);
        for (FeedProof proof : study.proofs()) {
            if (!proof.feed().never() && proof.feed().carries() == trouble.carries) {
                for (PairProof pair : proof.pairs()) {
                    if (!pair.hops().isEmpty()) {
                        ways.add(cut(pair));
                    }
                }
            }
        }
    }

    private OneWay cut(PairProof pair) {
        List<Hop> hops = pair.hops();
        String desk = null;
        for (Hop hop : hops) {
            desk = desks.contains(hop.from().thing()) ? hop.from().thing() : desk;
        }
        int first = 0;
        while (desk != null && !hops.get(first).from().thing().equals(desk)) {
            first++;
        }
        return new OneWay(pair.from(), pair.to(), hops.subList(0, first), desk, hops.subList(first, hops.size()));
    }

    List<OneWay> all() {
        return ways;
    }

    /** By room, in the order of the venue: the ways that end in it where people hear or see them. */
    Map<String, List<OneWay>> byRoom() {
        Map<String, List<OneWay>> found = new LinkedHashMap<>();
        for (OneWay way : ways) {
            String room = names.room(way.end());
            if (room != null && !NOT_FOR_THE_ROOM.contains(names.kind(way.end()))) {
                found.computeIfAbsent(room, key -> new ArrayList<>()).add(way);
            }
        }
        Map<String, List<OneWay>> byRoom = new LinkedHashMap<>();
        study.project().venue().rooms().keySet().forEach(room -> {
            if (found.containsKey(room)) {
                byRoom.put(room, found.get(room));
            }
        });
        found.forEach(byRoom::putIfAbsent);
        return byRoom;
    }

    /**
     * The things after the desk that show whether they have power, or can be turned up, in order; without a desk the
     * source is one of them.
     */
    Set<String> lights(OneWay way) {
        Set<String> lights = new LinkedHashSet<>();
        for (Hop hop : way.after()) {
            for (String thing : List.of(hop.from().thing(), hop.to().thing())) {
                boolean before = thing.equals(way.desk()) || (way.desk() != null && thing.equals(way.source()));
                if (!before && takesPower(thing)) {
                    lights.add(thing);
                }
            }
        }
        return lights;
    }

    private boolean takesPower(String thing) {
        Present present = study.supplies().things().get(thing);
        boolean inlet = present != null
                && present.model() != null
                && present.model().ports().values().stream().anyMatch(port -> port.in() == Signal.MAINS);
        return inlet
                || study.supplies().find(thing).isPresent()
                || names.kind(thing) == Kind.PERSONAL_MIXER
                || isOnBattery(thing)
                || study.networks().powered().stream()
                        .anyMatch(each -> each.thing().id().equals(thing));
    }

    /** It runs on batteries alone. */
    boolean isOnBattery(String thing) {
        Present present = study.supplies().things().get(thing);
        return present != null
                && present.model() != null
                && present.model().battery() != null
                && study.supplies().find(thing).isEmpty();
    }

    /** The cables on some hops that people plug in and out, in order. */
    Set<Lead> plugs(List<Hop> hops) {
        Set<Lead> plugs = new LinkedHashSet<>();
        for (Hop hop : hops) {
            if (hop.cause() instanceof Cause.ByCable cable) {
                study.cabling().findLead(cable.id()).filter(this::isHandled).ifPresent(plugs::add);
            }
        }
        return plugs;
    }

    /** A loose lead, neither end of it in a rack or overhead, and no mains. */
    private boolean isHandled(Lead lead) {
        return lead.pathways().isEmpty()
                && lead.cable().terminated() != Termination.SITE
                && !lead.joints().isEmpty()
                && lead.joints().stream().allMatch(joint -> joint.plugs().size() == 2)
                && lead.joints().stream()
                        .flatMap(joint -> joint.plugs().stream())
                        .allMatch(this::isWithinReach);
    }

    private boolean isWithinReach(Plug plug) {
        String thing = plug.at().thing();
        return names.place(thing) != null
                && !names.isHigh(thing)
                && !names.isInRack(thing)
                && plug.port() != null
                && plug.port().connector() != Connector.NONE
                && plug.port().signal() != Signal.MAINS;
    }

    /** Where a way comes to inside its desk, one after the other, the output left out: a channel, then buses. */
    static List<Address> inside(OneWay way) {
        List<Address> inside = new ArrayList<>();
        for (Hop hop : way.after()) {
            if (hop.from().thing().equals(way.desk()) && hop.to().thing().equals(way.desk())) {
                inside.add(hop.to());
            }
        }
        return inside.isEmpty() ? inside : inside.subList(0, inside.size() - 1);
    }
}
