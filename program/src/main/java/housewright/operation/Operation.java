package housewright.operation;

import housewright.cable.Cabling;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Control;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Look;
import housewright.model.Model;
import housewright.model.Place;
import housewright.model.Port;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Signal;
import housewright.operation.PowerOrder.Step;
import housewright.operation.Touch.How;
import housewright.signal.Present;
import housewright.signal.Signals;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What must be touched to start, run and stop a service at a moment of a project. */
public final class Operation {
    private static final Set<Kind> SWITCHED = EnumSet.of(
            Kind.MIXER,
            Kind.AMPLIFIER,
            Kind.LOUDSPEAKER,
            Kind.RECORDER,
            Kind.COMPUTER,
            Kind.VISION_MIXER,
            Kind.DISPLAY,
            Kind.PROJECTOR);

    /** Cutting their supply while they run harms what is on them, or the lamp. */
    private static final Set<Kind> SHUT_DOWN_FIRST = EnumSet.of(Kind.COMPUTER, Kind.RECORDER, Kind.PROJECTOR);

    private static final Set<Kind> MANNED = EnumSet.of(Kind.MIXER, Kind.VISION_MIXER);

    private final Project project;
    private final Map<String, Present> things;
    private final Map<String, String> suppliedBy = new HashMap<>();
    private final Set<String> controlled = new HashSet<>();

    private final Cabling cabling;
    private final Signals signals;
    private @Nullable List<Touch> power;
    private @Nullable PowerOrder order;

    private Operation(Project project, Map<String, Present> things, Cabling cabling, Signals signals) {
        this.project = project;
        this.things = things;
        this.cabling = cabling;
        this.signals = signals;
        for (Present each : things.values()) {
            Ref by = each.equipment().poweredBy();
            if (by != null && !by.isRange()) {
                suppliedBy.put(each.id(), by.thing());
            }
        }
        for (Line line : cabling.lines()) {
            Plug source = line.source();
            Plug sink = line.sink();
            if (source != null && sink != null) {
                String into = sink.at().thing();
                switch (line.signal()) {
                    case MAINS -> suppliedBy.putIfAbsent(into, source.at().thing());
                    case CONTACT, SERIAL -> controlled.add(into);
                    case null, default -> {}
                }
            }
        }
        project.networkSends().values().forEach(send -> {
            if ("control".equals(send.as())) {
                send.to().addresses().forEach(to -> controlled.add(to.thing()));
            }
        });
        for (Control control : project.controls().values()) {
            if (control.does() != null) {
                control.does().addresses().forEach(to -> controlled.add(to.thing()));
            }
        }
    }

    public static Operation of(Project project, Map<String, Present> things, Cabling cabling, Signals signals) {
        return new Operation(project, things, cabling, signals);
    }

    /** What is switched on, in order: sources first, amplifiers and powered loudspeakers last; the light is not in it. */
    public synchronized PowerOrder order() {
        PowerOrder known = order;
        if (known == null) {
            known = findOrder();
            order = known;
        }
        return known;
    }

    private PowerOrder findOrder() {
        List<Touch> touches = power();
        Set<String> byHand = new HashSet<>();
        touches.forEach(touch -> byHand.add(touch.thing()));
        Map<String, List<String>> mastersOf = new LinkedHashMap<>();
        Map<String, Set<String>> wakenByMaster = new HashMap<>();
        for (String thing : things.keySet()) {
            List<String> above = masters(thing);
            mastersOf.put(thing, above);
            if (!byHand.contains(thing) && !above.isEmpty()) {
                // the last switched on wakes it; of a chain that is the nearest, which the ones above it feed
                wakenByMaster
                        .computeIfAbsent(above.getFirst(), key -> new LinkedHashSet<>())
                        .add(thing);
            }
        }
        List<Step> steps = new ArrayList<>();
        for (Touch touch : touches) {
            Set<String> wakes = new LinkedHashSet<>(List.of(touch.thing()));
            wakes.addAll(wakenByMaster.getOrDefault(touch.thing(), Set.of()));
            steps.add(new Step(touch, Collections.unmodifiableSet(wakes)));
        }
        return Ordering.of(steps, new Waking(things, steps).musts(mastersOf, cabling, signals));
    }

    /** To start a service, in the order of the file, the light last. */
    public List<Touch> start() {
        List<Touch> all = new ArrayList<>(power());
        Touch light = light();
        if (light != null) {
            all.add(light);
        }
        return all;
    }

    /** To stop it: all that was switched on, and the light where no look of darkness follows by itself. */
    public List<Touch> stop() {
        List<Touch> all = new ArrayList<>(power());
        for (Control control : project.controls().values()) {
            if (control.press() != null && isDark(control)) {
                all.add(touch(control.press().thing(), How.BUTTON));
                break;
            }
        }
        return all;
    }

    /** The desks that want hands during a service. */
    public List<String> desks() {
        return things.values().stream()
                .filter(each ->
                        each.model() != null && MANNED.contains(each.model().kind()) && !isInRack(each))
                .map(Present::id)
                .toList();
    }

    /** The buttons that are pressed during a service, once each. */
    public Set<String> buttons() {
        Set<String> buttons = new LinkedHashSet<>();
        for (Control control : project.controls().values()) {
            if (control.press() != null) {
                buttons.add(control.press().text());
            }
        }
        return buttons;
    }

    /** Things that are switched off by themselves before their supply is cut. */
    public List<String> shutDownFirst() {
        return things.values().stream()
                .filter(each -> each.model() != null
                        && SHUT_DOWN_FIRST.contains(each.model().kind()))
                .map(Present::id)
                .toList();
    }

    /** Things that are cut off hard where a group of outlets is switched off. */
    public List<Cut> cuts() {
        List<Cut> cuts = new ArrayList<>();
        for (Present each : things.values()) {
            if (each.model() != null
                    && SHUT_DOWN_FIRST.contains(each.model().kind())
                    && each.model().battery() == null) {
                masters(each.id(), true).forEach(master -> cuts.add(new Cut(each.id(), master)));
            }
        }
        return cuts;
    }

    private synchronized List<Touch> power() {
        List<Touch> known = power;
        if (known == null) {
            known = List.copyOf(findPower());
            power = known;
        }
        return known;
    }

    private List<Touch> findPower() {
        List<Touch> all = new ArrayList<>();
        Set<String> masters = new LinkedHashSet<>();
        for (Present each : things.values()) {
            Model model = each.model();
            if (model == null) {
                continue;
            }
            boolean ends = takesMains(each) && model.kind() != Kind.POWER_DISTRIBUTOR;
            List<String> above = ends ? masters(each.id()) : List.of();
            masters.addAll(above);
            boolean shutDown = SHUT_DOWN_FIRST.contains(model.kind());
            if (model.kind() == Kind.PROGRAM) {
                all.add(touch(each.id(), How.PROGRAM));
            } else if (isOnBattery(model)) {
                all.add(touch(each.id(), How.BATTERY));
            } else if (SWITCHED.contains(model.kind())
                    && takesMains(each)
                    && (above.isEmpty() || shutDown)
                    && !controlled.contains(each.id())) {
                all.add(touch(each.id(), How.SWITCH));
            }
        }
        for (String master : masters) {
            all.add(touch(master, How.MASTER));
        }
        return all;
    }

    private @Nullable Touch light() {
        Control called = null;
        for (Control control : project.controls().values()) {
            if (control.calls() != null && control.at() != null) {
                return null; // it comes on by itself
            }
            if (called == null && control.calls() != null && control.press() != null && !isDark(control)) {
                called = control;
            }
        }
        return called == null || called.press() == null
                ? null
                : touch(called.press().thing(), How.BUTTON);
    }

    /** The look that a control calls puts no lamp on. */
    private boolean isDark(Control control) {
        Look look = project.lighting() == null || control.calls() == null
                ? null
                : project.lighting().looks().get(control.calls());
        return look != null && look.levels().values().stream().allMatch(level -> level.base() == 0);
    }

    private static boolean isOnBattery(Model model) {
        boolean radio = model.kind() == Kind.RADIO_TRANSMITTER || model.kind() == Kind.RADIO_RECEIVER;
        return radio && model.battery() != null;
    }

    private static boolean takesMains(Present thing) {
        Model model = thing.model();
        return model != null && model.ports().values().stream().map(Port::in).anyMatch(in -> in == Signal.MAINS);
    }

    /** What switches its supply for a group, itself left out, the nearest first: all must be on. */
    private List<String> masters(String thing) {
        return masters(thing, false);
    }

    /** @param cut only those that cut it: behind a UPS it runs on */
    private List<String> masters(String thing, boolean cut) {
        List<String> masters = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String at = suppliedBy.get(thing); at != null && seen.add(at); at = suppliedBy.get(at)) {
            Present by = things.get(at);
            if (cut && by != null && by.model() != null && by.model().kind() == Kind.UPS) {
                break;
            }
            if (by != null && isMaster(by.model())) {
                masters.add(at);
            }
        }
        return masters;
    }

    private static boolean isMaster(@Nullable Model model) {
        return model != null
                && model.kind() == Kind.POWER_DISTRIBUTOR
                && model.ports().values().stream()
                        .anyMatch(port -> port.in() == Signal.CONTACT || port.both() == Signal.ETHERNET);
    }

    private boolean isInRack(Present thing) {
        String at = thing.equipment().at();
        Place place = at == null ? null : project.venue().places().get(at);
        return place != null && place.rack() != null;
    }

    private Touch touch(String id, How how) {
        String at = where(id, new HashSet<>());
        Place place = at == null ? null : project.venue().places().get(at);
        return new Touch(id, at, place == null ? null : place.room(), how, suppliedBy.get(id));
    }

    /** Its own place, else that of what it is a part of or runs on. */
    private @Nullable String where(String id, Set<String> seen) {
        Present thing = things.get(id);
        if (thing == null || !seen.add(id)) {
            return null;
        }
        Equipment equipment = thing.equipment();
        String host = equipment.partOf() != null ? equipment.partOf() : equipment.runsOn();
        return equipment.at() != null || host == null ? equipment.at() : where(host, seen);
    }
}
