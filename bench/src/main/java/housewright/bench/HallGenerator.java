package housewright.bench;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Cable;
import housewright.model.CableToday;
import housewright.model.Circuit;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.EquipmentToday;
import housewright.model.Feed;
import housewright.model.Kind;
import housewright.model.LocalRef.Spot;
import housewright.model.NetworkSend;
import housewright.model.PatchEntry;
import housewright.model.Pathway;
import housewright.model.Place;
import housewright.model.Port;
import housewright.model.Project;
import housewright.model.RadioLink;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Remarks;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.model.Types;
import housewright.model.Venue;
import housewright.model.Way;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Halls of the demo's make-up: so many copies of the demo, each with its own places, equipment, cables, patch, networks
 * and feeds, every copy joined to the next by an analogue line and a network cable. What does not grow with a hall's
 * size (people, events, tasks, lights' looks) is there once.
 */
public final class HallGenerator {
    private static final String DEMO = "/housewright/demo/carrowfenn-hall.yaml";

    private final BuiltInLibrary library;
    private final Project demo;

    public HallGenerator(BuiltInLibrary library) {
        this.library = library;
        this.demo = read(demo(), library);
    }

    /** The text of the demo. */
    static byte[] demo() {
        try (InputStream in = HallGenerator.class.getResourceAsStream(DEMO)) {
            if (in == null) {
                throw new IllegalStateException("no " + DEMO);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Project read(byte[] text, BuiltInLibrary library) {
        return switch (ProjectReader.read("hall.yaml", text, library)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused ->
                throw new IllegalStateException(refused.errors().getFirst().toString());
        };
    }

    /** The demo so many times over; once is the demo itself. */
    public Project times(int copies) {
        Project p = demo;
        Map<String, Place> places = new LinkedHashMap<>();
        Map<String, Pathway> pathways = new LinkedHashMap<>();
        Map<String, Circuit> circuits = new LinkedHashMap<>();
        Map<String, Equipment> equipment = new LinkedHashMap<>();
        Map<String, Cable> cables = new LinkedHashMap<>();
        Map<String, List<PatchEntry>> patch = new LinkedHashMap<>();
        Map<String, NetworkSend> sends = new LinkedHashMap<>();
        Map<String, RadioLink> radio = new LinkedHashMap<>();
        Map<String, List<Ref>> pairs = new LinkedHashMap<>();
        Map<String, Feed> feeds = new LinkedHashMap<>();
        for (int n = 1; n <= copies; n++) {
            String prefix = prefix(n);
            UnaryOperator<String> id = each -> each == null ? null : prefix + each;
            p.venue().places().values().forEach(each -> put(places, id, each.id(), renamed(each, id)));
            p.venue().pathways().values().forEach(each -> put(pathways, id, each.id(), renamed(each, id)));
            p.venue().circuits().values().forEach(each -> put(circuits, id, each.id(), renamed(each, id)));
            p.equipment().values().forEach(each -> put(equipment, id, each.id(), renamed(each, id)));
            p.cables().values().forEach(each -> put(cables, id, each.id(), renamed(each, id)));
            p.patch().forEach((device, entries) -> put(patch, id, device, entries));
            p.networkSends().values().forEach(each -> put(sends, id, each.id(), renamed(each, id)));
            p.radio().values().forEach(each -> put(radio, id, each.id(), renamed(each, id)));
            p.pairs().forEach((name, refs) -> put(pairs, id, name, renamed(refs, id)));
            p.feeds().values().forEach(each -> put(feeds, id, each.id(), renamed(each, id)));
            if (n > 1) {
                link(prefix(n - 1), prefix, "line", Signal.ANALOG_AUDIO, any -> true, cables);
                link(prefix(n - 1), prefix, "net", Signal.ETHERNET, this::isSwitch, cables);
            }
        }
        Venue venue = new Venue(p.venue().rooms(), places, pathways, circuits);
        return new Project(
                p.format(),
                p.about(),
                venue,
                p.models(),
                p.cableTypes(),
                p.adapters(),
                equipment,
                cables,
                patch,
                sends,
                radio,
                pairs,
                feeds,
                p.lighting(),
                p.controls(),
                p.people(),
                p.hires(),
                p.events(),
                p.files(),
                p.tasks(),
                p.questions(),
                p.orders(),
                p.budget(),
                p.practice(),
                p.plan(),
                p.log(),
                p.exempt());
    }

    private static String prefix(int copy) {
        return copy == 1 ? "" : "h" + copy + "-";
    }

    private static <T> void put(Map<String, T> all, UnaryOperator<String> id, String name, T each) {
        all.put(id.apply(name), each);
    }

    private static Ref renamed(Ref ref, UnaryOperator<String> id) {
        return ref == null ? null : new Ref(id.apply(ref.text()));
    }

    private static List<Ref> renamed(List<Ref> refs, UnaryOperator<String> id) {
        return refs.stream().map(ref -> renamed(ref, id)).toList();
    }

    private static List<String> names(List<String> names, UnaryOperator<String> id) {
        return names.stream().map(id).toList();
    }

    private static End renamed(End end, UnaryOperator<String> id) {
        return end == null || end.ref() == null ? end : new End(renamed(end.ref(), id));
    }

    private static List<Way> ways(List<Way> ways, UnaryOperator<String> id) {
        return ways.stream()
                .map(way -> new Way(renamed(way.from(), id), renamed(way.to(), id)))
                .toList();
    }

    private static Place renamed(Place p, UnaryOperator<String> id) {
        return new Place(id.apply(p.id()), p.room(), p.at(), p.rack(), p.hang(), p.operator(), p.remarks());
    }

    private static Pathway renamed(Pathway p, UnaryOperator<String> id) {
        return new Pathway(
                id.apply(p.id()),
                id.apply(p.from()),
                id.apply(p.to()),
                p.kind(),
                p.bore(),
                p.length(),
                p.bend(),
                p.height(),
                p.airHandling(),
                p.beside(),
                p.apart(),
                p.remarks());
    }

    private static Circuit renamed(Circuit c, UnaryOperator<String> id) {
        return new Circuit(
                id.apply(c.id()), c.rating(), c.voltage(), names(c.places(), id), c.dimmed(), c.phase(), c.remarks());
    }

    private static Equipment renamed(Equipment e, UnaryOperator<String> id) {
        EquipmentToday was = e.was();
        return new Equipment(
                id.apply(e.id()),
                e.model(),
                id.apply(e.at()),
                e.life(),
                id.apply(e.circuit()),
                renamed(e.poweredBy(), id),
                e.set(),
                e.unit(),
                e.secondary(),
                e.light(),
                id.apply(e.gang()),
                e.terminator(),
                e.ip(),
                e.vlans(),
                id.apply(e.partOf()),
                id.apply(e.runsOn()),
                e.serial(),
                e.label(),
                e.handover(),
                was == null
                        ? null
                        : new EquipmentToday(
                                was.model(),
                                id.apply(was.at()),
                                id.apply(was.circuit()),
                                renamed(was.poweredBy(), id),
                                was.set(),
                                was.unit(),
                                was.secondary(),
                                was.light(),
                                was.terminator(),
                                was.ip(),
                                was.vlans()),
                e.remarks());
    }

    private static Cable renamed(Cable c, UnaryOperator<String> id) {
        CableToday was = c.was();
        return new Cable(
                id.apply(c.id()),
                c.type(),
                renamed(c.from(), id),
                renamed(c.to(), id),
                ways(c.ways(), id),
                names(c.via(), id),
                c.life(),
                c.length(),
                c.ends(),
                c.adapters(),
                c.terminated(),
                c.label(),
                c.tested(),
                was == null
                        ? null
                        : new CableToday(
                                was.type(),
                                renamed(was.from(), id),
                                renamed(was.to(), id),
                                ways(was.ways(), id),
                                names(was.via(), id),
                                was.length(),
                                was.ends(),
                                was.adapters()),
                c.remarks());
    }

    private static NetworkSend renamed(NetworkSend s, UnaryOperator<String> id) {
        return new NetworkSend(
                id.apply(s.id()),
                renamed(s.from(), id),
                renamed(s.to(), id),
                s.as(),
                s.rate(),
                s.vlan(),
                s.multicast(),
                s.delay(),
                s.life(),
                s.remarks());
    }

    private static RadioLink renamed(RadioLink r, UnaryOperator<String> id) {
        return new RadioLink(
                id.apply(r.id()),
                renamed(r.from(), id),
                renamed(r.to(), id),
                r.frequency(),
                r.bandwidth(),
                r.delay(),
                r.life(),
                r.remarks());
    }

    private static Feed renamed(Feed f, UnaryOperator<String> id) {
        return new Feed(
                id.apply(f.id()),
                f.never(),
                renamed(f.from(), id),
                renamed(f.to(), id),
                f.carries(),
                f.within(),
                renamed(f.through(), id),
                f.test(),
                f.remarks());
    }

    private boolean isSwitch(Equipment equipment) {
        return new Types(demo, library)
                .findModel(equipment.model())
                .filter(model -> model.kind() == Kind.SWITCH)
                .isPresent();
    }

    /** A cable from a free port of one copy to a free port of the next. */
    private void link(
            String one, String other, String name, Signal signal, Predicate<Equipment> in, Map<String, Cable> cables) {
        List<Address> leaving = free(signal, in, Port::leaves);
        List<Address> arriving = free(signal, in, Port::arrives);
        if (leaving.isEmpty() || arriving.isEmpty()) {
            throw new IllegalStateException("the demo has no free port for " + signal);
        }
        Address to = arriving.getLast();
        Address from = leaving.getFirst();
        if (from.equals(to)) {
            throw new IllegalStateException("the demo has only one free port for " + signal);
        }
        String id = other + "link-" + name;
        cables.put(
                id,
                new Cable(
                        id,
                        null,
                        new End(new Ref(one + from)),
                        new End(new Ref(other + to)),
                        List.of(),
                        List.of(),
                        housewright.model.Life.KEEP,
                        null,
                        List.of(),
                        List.of(),
                        null,
                        null,
                        null,
                        null,
                        Remarks.NONE));
    }

    private List<Address> free(Signal signal, Predicate<Equipment> in, Predicate<Port> goes) {
        Set<String> taken = new TreeSet<>();
        for (Cable cable : demo.cables().values()) {
            for (End end : new End[] {cable.from(), cable.to()}) {
                if (end != null && end.ref() != null) {
                    end.ref().addresses().forEach(each -> taken.add(each.toString()));
                }
            }
            cable.ways()
                    .forEach(way -> way.pairs().forEach(pair -> {
                        taken.add(pair.from().toString());
                        taken.add(pair.to().toString());
                    }));
        }
        List<Address> free = new ArrayList<>();
        Types types = new Types(demo, library);
        for (Equipment equipment : demo.equipment().values()) {
            if (!equipment.life().target() || !in.test(equipment)) {
                continue;
            }
            types.findModel(equipment.model()).map(Shape::of).ifPresent(shape -> {
                for (Shape.Socket socket : shape.sockets().values()) {
                    Address address = new Address(equipment.id(), new Spot(socket.name(), null));
                    if (socket.port().signal() == signal
                            && goes.test(socket.port())
                            && !taken.contains(address.toString())) {
                        free.add(address);
                    }
                }
            });
        }
        return free;
    }
}
