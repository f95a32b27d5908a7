package housewright.light;

import housewright.cable.Cabling;
import housewright.cable.Chain;
import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Equipment;
import housewright.model.FixtureSetting;
import housewright.model.Kind;
import housewright.model.LightData;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Signal;
import housewright.model.Types;
import housewright.signal.Hop;
import housewright.signal.Present;
import housewright.signal.Signals;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The DMX of a project at a moment. */
public final class Lights {
    private final Map<String, Present> things;
    private final Map<String, Receiver> receivers = new LinkedHashMap<>();
    private final List<DmxLine> lines = new ArrayList<>();
    private final Map<String, DmxLine> lineOf = new HashMap<>();
    private final List<Clash> clashes;

    private Lights(Types types, Map<String, Present> things, Signals signals, Cabling cabling) {
        this.things = things;
        for (Present thing : things.values()) {
            if (isReceiver(thing)) {
                receivers.put(thing.id(), new Receiver(thing, footprint(thing)));
            }
        }
        Senders senders = new Senders(types, signals, cabling, things);
        for (Chain chain : cabling.chains(Signal.DMX)) {
            DmxLine line = line(chain, senders);
            lines.add(line);
            line.loads().forEach(load -> lineOf.putIfAbsent(load, line));
        }
        this.clashes = clashes(signals);
    }

    public static Lights of(Types types, Map<String, Present> things, Signals signals, Cabling cabling) {
        return new Lights(types, things, signals, cabling);
    }

    /** What is there, by id, in the order of the file. */
    public Map<String, Present> things() {
        return things;
    }

    /** Everything that answers to DMX, in the order of the file. */
    public List<Receiver> receivers() {
        return List.copyOf(receivers.values());
    }

    public Optional<Receiver> findReceiver(String thing) {
        return Optional.ofNullable(receivers.get(thing));
    }

    public List<DmxLine> lines() {
        return List.copyOf(lines);
    }

    /** The line that a thing hangs on. */
    public Optional<DmxLine> findLine(String thing) {
        return Optional.ofNullable(lineOf.get(thing));
    }

    /** Where two send to one channel of a node over the network. */
    public List<Clash> clashes() {
        return clashes;
    }

    /**
     * Two receivers that are meant to answer alike: one names the other as its gang, or both are in one gang through
     * others.
     */
    public boolean areGanged(String one, String other) {
        return head(one).equals(head(other));
    }

    /** The thing that a gang follows; of a gang whose things name each other in a ring, the first by name. */
    private String head(String thing) {
        Set<String> seen = new LinkedHashSet<>();
        String at = thing;
        while (seen.add(at)) {
            Present present = things.get(at);
            String next = present == null ? null : present.equipment().gang();
            if (next == null || !things.containsKey(next)) {
                return at;
            }
            at = next;
        }
        List<String> ring = new ArrayList<>(seen);
        return Collections.min(ring.subList(ring.indexOf(at), ring.size()));
    }

    /** The lowest address at which a footprint is free in a universe; null where none is. */
    public @Nullable Integer firstFree(@Nullable Integer universe, int footprint, String except) {
        boolean[] taken = new boolean[Receiver.SLOTS + 2];
        for (Receiver each : receivers.values()) {
            Integer first = each.address();
            Integer last = each.last();
            if (first != null
                    && last != null
                    && !each.id().equals(except)
                    && Objects.equals(universe, each.universe())) {
                for (int at = Math.max(1, first); at <= Math.min(Receiver.SLOTS, last); at++) {
                    taken[at] = true;
                }
            }
        }
        int run = 0;
        for (int at = 1; at <= Receiver.SLOTS; at++) {
            run = taken[at] ? 0 : run + 1;
            if (run == footprint) {
                return at - footprint + 1;
            }
        }
        return null;
    }

    /** An end-of-line terminator as a thing of its own. */
    static boolean isTerminator(@Nullable Model model) {
        return model != null
                && model.routes().isEmpty()
                && model.points().isEmpty()
                && model.light() == null
                && model.ports().size() == 1
                && hasDmxInput(model);
    }

    private static boolean isReceiver(Present thing) {
        FixtureSetting light = thing.equipment().light();
        Model model = thing.model();
        if (light != null && (light.address() != null || light.universe() != null)) {
            return true;
        }
        if (model == null || isTerminator(model) || !hasDmxInput(model)) {
            return false;
        }
        return model.kind() == Kind.FIXTURE || hasOutletsOfItsOwn(model) || model.light() != null;
    }

    private static boolean hasDmxInput(Model model) {
        return model.ports().values().stream().anyMatch(port -> port.in() == Signal.DMX);
    }

    private static @Nullable Integer footprint(Present thing) {
        Model model = thing.model();
        FixtureSetting setting = thing.equipment().light();
        if (model == null) {
            return null;
        }
        LightData data = model.light();
        if (data == null || data.modes().isEmpty()) {
            return hasOutletsOfItsOwn(model) ? outlets(model) : null;
        }
        String mode = setting == null ? null : setting.mode();
        if (mode != null) {
            return data.modes().get(mode);
        }
        Set<Integer> sizes = new HashSet<>(data.modes().values());
        return sizes.size() == 1 ? sizes.iterator().next() : null;
    }

    /** A dimmer or a switch pack: a channel for each outlet. */
    private static boolean hasOutletsOfItsOwn(Model model) {
        return model.kind() == Kind.DIMMER || model.kind() == Kind.POWER_DISTRIBUTOR;
    }

    private static @Nullable Integer outlets(Model model) {
        int outlets = 0;
        for (Map.Entry<NamePattern, Port> port : model.ports().entrySet()) {
            if (port.getValue().out() == Signal.MAINS) {
                outlets += port.getKey().names().size();
            }
        }
        return outlets == 0 ? null : Integer.valueOf(outlets);
    }

    private DmxLine line(Chain chain, Senders senders) {
        Set<String> loads = new LinkedHashSet<>();
        List<Plug> ends = new ArrayList<>();
        Set<Integer> goesOn = new HashSet<>(chain.after());
        for (int i = 0; i < chain.lines().size(); i++) {
            Plug sink = chain.lines().get(i).sink();
            if (sink == null || sink.equipment() == null) {
                continue;
            }
            if (!isTerminator(sink.model())) {
                loads.add(sink.at().thing());
            }
            if (!goesOn.contains(i)) {
                ends.add(sink);
            }
        }
        Plug source = chain.lines().getFirst().source();
        Senders.Sent sent = source == null
                ? new Senders.Sent()
                : senders.into(source.at().thing(), source.at().spot().name());
        return new DmxLine(
                chain,
                source,
                List.copyOf(loads),
                List.copyOf(ends),
                sent.any,
                new LinkedHashSet<>(sent.by),
                new TreeSet<>(sent.universes));
    }

    private List<Clash> clashes(Signals signals) {
        Map<String, Hop> first = new HashMap<>();
        Map<String, Clash> clashes = new LinkedHashMap<>();
        for (Hop hop : signals.sends()) {
            String channel = hop.to().spot().channel();
            Present to = things.get(hop.to().thing());
            boolean light = to != null && to.model() != null && to.model().kind() == Kind.DMX_NODE;
            if (!light || channel == null) {
                continue;
            }
            Hop before = first.putIfAbsent(hop.to().toString(), hop);
            if (before != null && !before.from().thing().equals(hop.from().thing())) {
                clashes.putIfAbsent(
                        hop.to().thing(),
                        new Clash(
                                hop.to().thing(),
                                before.from().thing(),
                                hop.from().thing()));
            }
        }
        return List.copyOf(clashes.values());
    }

    /** The cables of a line, each once. */
    public static List<String> cables(DmxLine line) {
        Set<String> cables = new LinkedHashSet<>();
        for (Line each : line.chain().lines()) {
            for (Lead lead : each.leads()) {
                cables.add(lead.id());
            }
        }
        return List.copyOf(cables);
    }

    /** Whether it has a DMX input at all: a lamp that hangs on a dimmer has none. */
    public static boolean takesDmx(Receiver receiver) {
        Model model = receiver.thing().model();
        return model != null && hasDmxInput(model);
    }

    /** A channel of DMX, or of a universe on the network. */
    public static boolean isLight(Address at) {
        String channel = at.spot().channel();
        return "c".equals(channel) || Senders.universe(channel) != null;
    }

    /** The setting of a thing, or an empty one. */
    public static FixtureSetting setting(Equipment equipment) {
        FixtureSetting light = equipment.light();
        return light == null ? new FixtureSetting(null, null, null, null, null, null) : light;
    }
}
