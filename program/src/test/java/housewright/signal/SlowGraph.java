package housewright.signal;

import housewright.model.Cable;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.Join;
import housewright.model.Kind;
import housewright.model.Latency;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.NetworkSend;
import housewright.model.PatchEntry;
import housewright.model.Port;
import housewright.model.Project;
import housewright.model.RadioLink;
import housewright.model.Ref.Address;
import housewright.model.Route;
import housewright.model.Setting;
import housewright.model.Signal;
import housewright.model.Tie;
import housewright.model.Way;
import housewright.unit.Delay;
import housewright.unit.Gain;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What leads where, worked out from the project afresh for every step, in the order of FORMAT's "Meaning". It shares no
 * code with the engine and has no numbers, arrays or indexes: what it does should be plain to see.
 */
final class SlowGraph {
    /** Where a signal is: {@code >} leaves a port, {@code <} arrives at one, {@code .} is a point. */
    record State(String thing, String name, @Nullable String channel, char side, String carried) {
        String place() {
            return thing + "." + name + (channel == null ? "" : ":" + channel);
        }
    }

    /** One way on. */
    record Step(State from, State to, String cause, long nanos, double gain, boolean contested) {}

    private record Joined(String cause, String thing, String port) {}

    private final Project project;
    private final Moment moment;
    private final Map<String, Equipment> there = new LinkedHashMap<>();
    private final Map<State, List<Step>> known = new HashMap<>();

    SlowGraph(Project project, Moment moment) {
        this.project = project;
        this.moment = moment;
        for (Equipment each : project.equipment().values()) {
            if (holds("equipment", each.id(), each.life())) {
                there.put(each.id(), done("equipment", each.id()) ? each : each.today());
            }
        }
    }

    private boolean done(String section, String id) {
        if (moment instanceof Moment.Partly partly) {
            return partly.done().contains(section + "." + id);
        }
        return moment instanceof Moment.Target;
    }

    private boolean holds(String section, String id, housewright.model.Life life) {
        return switch (life) {
            case KEEP, MOVE -> true;
            case STRIKE -> !done(section, id);
            case NEW -> done(section, id);
            case HIRE -> false;
        };
    }

    Set<String> things() {
        return there.keySet();
    }

    boolean isThere(String thing) {
        return there.containsKey(thing);
    }

    /** Its inside; null when it is not there, has no type, or nobody has counted its sockets. */
    @Nullable
    Model inside(String thing) {
        Equipment equipment = there.get(thing);
        Model model = equipment == null ? null : project.models().get(equipment.model());
        return model == null || !model.portsKnown() ? null : model;
    }

    // ---- ports, points, channels

    static Map<String, Port> ports(Model model) {
        Map<String, Port> ports = new LinkedHashMap<>();
        model.ports().forEach((names, port) -> names.names().forEach(name -> ports.put(name, port)));
        for (Tie tie : model.ties()) {
            for (Tie.Pair pair : tie.pairs()) {
                ports.putIfAbsent(pair.one(), Kit.Plug.passive().port());
                ports.putIfAbsent(pair.other(), Kit.Plug.passive().port());
            }
        }
        return ports;
    }

    static Set<String> points(Model model) {
        Set<String> points = new LinkedHashSet<>();
        model.points().forEach(names -> points.addAll(names.names()));
        return points;
    }

    /** Channels of a port in one direction; none where it has whatever it is given. */
    static List<String> channels(Port port, boolean arriving) {
        boolean goes = arriving ? port.in() != null || port.both() != null : port.out() != null || port.both() != null;
        Signal signal = port.signal();
        if (!goes || signal == null || signal == Signal.ETHERNET) {
            return List.of();
        }
        Integer said = port.channels() == null
                ? null
                : arriving ? port.channels().in() : port.channels().out();
        List<String> names = new ArrayList<>();
        int count = switch (signal) {
            case SDI -> {
                names.add("v");
                yield said == null ? 16 : said;
            }
            case HDMI, HDBASET -> {
                names.add("v");
                yield said == null ? 8 : said;
            }
            case DMX -> {
                names.add("c");
                yield 0;
            }
            default -> said == null ? 1 : said;
        };
        for (int n = 1; n <= count; n++) {
            names.add("" + n);
        }
        return names;
    }

    private static boolean isPassive(Port port) {
        return port.signal() == null;
    }

    /** The state that a place of the file means; null where there is none. */
    @Nullable
    State state(String thing, Spot spot, boolean arriving) {
        Model model = inside(thing);
        if (model == null) {
            return null;
        }
        Port port = ports(model).get(spot.name());
        if (port == null) {
            boolean point = points(model).contains(spot.name()) && spot.channel() == null;
            return point ? new State(thing, spot.name(), null, '.', "") : null;
        }
        if (isPassive(port)) {
            return null;
        }
        char side = arriving ? '<' : '>';
        if (port.signal() == Signal.ETHERNET) {
            boolean goes = arriving ? port.out() == null : port.in() == null;
            return spot.channel() == null || !goes ? null : new State(thing, spot.name(), spot.channel(), side, "");
        }
        List<String> channels = channels(port, arriving);
        String channel = spot.channel() == null && channels.size() == 1 ? channels.getFirst() : spot.channel();
        return channel != null && channels.contains(channel) ? new State(thing, spot.name(), channel, side, "") : null;
    }

    /** Where a feed may begin. */
    @Nullable
    State begin(Address address) {
        return state(address.thing(), address.spot(), false);
    }

    /** Where a feed may end. */
    @Nullable
    State end(Address address) {
        return state(address.thing(), address.spot(), true);
    }

    // ---- steps

    List<Step> steps(State state) {
        return known.computeIfAbsent(state, this::work);
    }

    private List<Step> work(State state) {
        List<Step> all = new ArrayList<>();
        if (state.side() == '>') {
            along(state, all);
        } else {
            across(state, all);
        }
        List<Step> open = new ArrayList<>();
        for (Step step : all) {
            if (!isShut(step.from()) && !isShut(step.to())) {
                double gain = step.gain() + setGain(state);
                long nanos = step.nanos() + setNanos(state);
                open.add(new Step(state, step.to(), step.cause(), nanos, gain, step.contested()));
            }
        }
        return open;
    }

    /** What kind of signal a port is for; nothing at a passive one. */
    String signal(State state) {
        Signal signal = port(state).signal();
        return signal == null ? "" : signal.name();
    }

    private Port port(State state) {
        return ports(inside(state.thing())).get(state.name());
    }

    /** Cables, radio links and network-sends. */
    private void along(State state, List<Step> steps) {
        Port mine = port(state);
        for (Joined end : cabled(state.thing(), state.name())) {
            Model model = inside(end.thing());
            if (model == null) {
                continue;
            }
            Port other = ports(model).get(end.port());
            if (other == null) {
                continue;
            }
            Signal signal = isPassive(mine) ? signalOf(state.carried()) : mine.signal();
            String protocol = isPassive(mine) ? protocolOf(state.carried()) : mine.protocol();
            State to = null;
            if (isPassive(other) && signal != Signal.ETHERNET) {
                to = new State(end.thing(), end.port(), state.channel(), '<', signal + "/" + protocol);
            } else if (other.signal() == signal
                    && signal != Signal.ETHERNET
                    && agree(protocol, other.protocol())
                    && channels(other, true).contains(state.channel())) {
                to = new State(end.thing(), end.port(), state.channel(), '<', "");
            }
            if (to != null) {
                steps.add(new Step(state, to, end.cause(), 0, 0, false));
            }
        }
        radio(state, steps);
        sends(state, steps);
    }

    private static Signal signalOf(String carried) {
        return Signal.valueOf(carried.substring(0, carried.indexOf('/')));
    }

    private static @Nullable String protocolOf(String carried) {
        String protocol = carried.substring(carried.indexOf('/') + 1);
        return protocol.equals("null") ? null : protocol;
    }

    private static boolean agree(@Nullable String one, @Nullable String other) {
        return one == null || other == null || one.equals(other);
    }

    /** The far ends of what is plugged in here; a thing that is not there is no far end. */
    private List<Joined> cabled(String thing, String port) {
        List<Joined> ends = new ArrayList<>();
        for (Cable each : project.cables().values()) {
            if (!holds("cables", each.id(), each.life())) {
                continue;
            }
            Cable cable = done("cables", each.id()) ? each : each.today();
            for (Way.Pair pair : ways(cable)) {
                Address a = pair.from();
                Address b = pair.to();
                if (!isThere(a.thing()) || !isThere(b.thing())) {
                    continue;
                }
                if (a.thing().equals(thing) && a.spot().name().equals(port)) {
                    ends.add(new Joined(
                            "cable " + cable.id(), b.thing(), b.spot().name()));
                }
                if (b.thing().equals(thing) && b.spot().name().equals(port)) {
                    ends.add(new Joined(
                            "cable " + cable.id(), a.thing(), a.spot().name()));
                }
            }
        }
        return ends;
    }

    private static List<Way.Pair> ways(Cable cable) {
        List<Way.Pair> pairs = new ArrayList<>();
        End from = cable.from();
        End to = cable.to();
        if (from != null && to != null && from.ref() != null && to.ref() != null) {
            pairs.addAll(new Way(from.ref(), to.ref()).pairs());
        }
        cable.ways().forEach(way -> pairs.addAll(way.pairs()));
        return pairs;
    }

    private void radio(State state, List<Step> steps) {
        for (RadioLink link : project.radio().values()) {
            if (!holds("radio", link.id(), link.life())) {
                continue;
            }
            for (Way.Pair pair : new Way(link.from(), link.to()).pairs()) {
                Address a = pair.from();
                Address b = pair.to();
                boolean here = a.thing().equals(state.thing())
                        && a.spot().name().equals(state.name())
                        && (a.spot().channel() == null || a.spot().channel().equals(state.channel()));
                Model model = here ? inside(b.thing()) : null;
                Port other = model == null ? null : ports(model).get(b.spot().name());
                if (other == null
                        || other.signal() != port(state).signal()
                        || !agree(other.protocol(), port(state).protocol())) {
                    continue;
                }
                String channel = b.spot().channel() != null ? b.spot().channel() : state.channel();
                State to = state(b.thing(), new Spot(b.spot().name(), channel), true);
                if (to != null) {
                    steps.add(new Step(state, to, "radio " + link.id(), nanos(link.delay(), null), 0, false));
                }
            }
        }
    }

    private void sends(State state, List<Step> steps) {
        for (NetworkSend send : project.networkSends().values()) {
            if (!holds("network-sends", send.id(), send.life())) {
                continue;
            }
            for (Way.Pair pair : new Way(send.from(), send.to()).pairs()) {
                State from = state(pair.from().thing(), pair.from().spot(), false);
                State to = state(pair.to().thing(), pair.to().spot(), true);
                if (!state.equals(from) || to == null) {
                    continue;
                }
                List<String> over = network(from, to, send.vlan());
                if (over != null) {
                    String cause = "send " + send.id() + " over " + over;
                    steps.add(new Step(state, to, cause, nanos(send.delay(), null), 0, false));
                }
            }
        }
    }

    /** Ties, fixed routes and the patch. */
    private void across(State state, List<Step> steps) {
        Model model = inside(state.thing());
        if (state.side() == '<' && isPassive(port(state))) {
            for (Tie tie : model.ties()) {
                for (Tie.Pair pair : tie.pairs()) {
                    String other = pair.one().equals(state.name())
                            ? pair.other()
                            : pair.other().equals(state.name()) ? pair.one() : null;
                    if (other != null) {
                        State to = new State(state.thing(), other, state.channel(), '>', state.carried());
                        steps.add(new Step(state, to, "tie " + state.thing(), 0, 0, false));
                    }
                }
            }
            return;
        }
        for (Route route : model.routes()) {
            for (Join.Pair pair : joins(model, new Join(route.from(), route.to()))) {
                State to = state(state.thing(), pair.to(), false);
                if (to != null && state.equals(state(state.thing(), pair.from(), true))) {
                    long nanos = latency(model, state, to) + nanos(route.delay(), to);
                    steps.add(new Step(state, to, "route " + state.thing(), nanos, decibels(route.gain()), false));
                }
            }
        }
        for (Patched each : patched(state.thing())) {
            if (each.from().equals(state)) {
                long nanos =
                        latency(model, state, each.to()) + nanos(each.entry().delay(), each.to());
                boolean contested =
                        each.to().side() == '>' && sources(each.to()).size() > 1;
                String cause = "patch " + state.thing() + " " + each.written().from() + " -> "
                        + each.written().to();
                steps.add(new Step(
                        state, each.to(), cause, nanos, decibels(each.entry().gain()), contested));
            }
        }
    }

    private static double decibels(@Nullable Gain gain) {
        return gain == null ? 0 : gain.decibels();
    }

    private record Patched(State from, State to, Join.Pair written, PatchEntry entry) {}

    /** The entries that hold, channel by channel. */
    private List<Patched> patched(String thing) {
        List<Patched> all = new ArrayList<>();
        Model model = inside(thing);
        if (model == null || model.patch() == null) {
            return all;
        }
        for (PatchEntry entry : project.patch().getOrDefault(thing, List.of())) {
            if (entry.life() != null && !holds("patch", thing, entry.life())) {
                continue;
            }
            for (Join.Pair written : new Join(entry.from(), entry.to()).pairs()) {
                for (Join.Pair pair : joins(model, written)) {
                    State from = state(thing, pair.from(), true);
                    State to = state(thing, pair.to(), false);
                    if (from != null && to != null && mayPatch(thing, model, from, to)) {
                        all.add(new Patched(from, to, written, entry));
                    }
                }
            }
        }
        return all;
    }

    private boolean mayPatch(String thing, Model model, State from, State to) {
        if (from.equals(to)) {
            return false;
        }
        if (model.patch().free()) {
            return true;
        }
        for (Join join : model.patch().joins()) {
            for (Join.Pair pair : joins(model, join)) {
                if (from.equals(state(thing, pair.from(), true)) && to.equals(state(thing, pair.to(), false))) {
                    return true;
                }
            }
        }
        return false;
    }

    private Set<State> sources(State to) {
        Set<State> sources = new LinkedHashSet<>();
        for (Patched each : patched(to.thing())) {
            if (each.to().equals(to)) {
                sources.add(each.from());
            }
        }
        return sources;
    }

    private static List<Join.Pair> joins(Model model, Join join) {
        List<Join.Pair> all = new ArrayList<>();
        join.pairs().forEach(pair -> all.addAll(joins(model, pair)));
        return all;
    }

    /** Two ports without channels join every channel that arrives at one and leaves by the other. */
    private static List<Join.Pair> joins(Model model, Join.Pair pair) {
        Port from = ports(model).get(pair.from().name());
        Port to = ports(model).get(pair.to().name());
        if (from == null
                || to == null
                || pair.from().channel() != null
                || pair.to().channel() != null) {
            return List.of(pair);
        }
        List<String> in = channels(from, true);
        List<String> out = channels(to, false);
        if (in.size() == 1 && out.size() == 1) {
            return List.of(pair);
        }
        List<Join.Pair> all = new ArrayList<>();
        for (String channel : in) {
            if (out.contains(channel)) {
                all.add(new Join.Pair(
                        new Spot(pair.from().name(), channel),
                        new Spot(pair.to().name(), channel)));
            }
        }
        return all;
    }

    // ---- switches and settings

    private boolean isShut(State state) {
        Model model = inside(state.thing());
        if (model == null || !state.carried().isEmpty()) {
            return false;
        }
        Map<LocalRef, Setting> set = there.get(state.thing()).set();
        for (var each : model.switches().entrySet()) {
            Setting setting = set.get(new LocalRef(each.getKey()));
            boolean on =
                    setting == null || setting.on() == null ? each.getValue().on() : setting.on();
            if (!on) {
                for (LocalRef gate : each.getValue().gates()) {
                    for (Spot spot : gate.spots()) {
                        if (spot.name().equals(state.name())
                                && (spot.channel() == null || spot.channel().equals(state.channel()))) {
                            return true;
                        }
                    }
                }
            }
        }
        return settings(state).stream().anyMatch(Setting::mute);
    }

    /** What is set for this place: a port's setting acts where signal arrives, else where it leaves. */
    private List<Setting> settings(State state) {
        List<Setting> all = new ArrayList<>();
        if (!state.carried().isEmpty()) {
            return all;
        }
        there.get(state.thing()).set().forEach((ref, setting) -> {
            for (Spot spot : ref.spots()) {
                if (!spot.name().equals(state.name())
                        || (spot.channel() != null && !spot.channel().equals(state.channel()))) {
                    continue;
                }
                boolean arrivesToo = state(state.thing(), new Spot(state.name(), state.channel()), true) != null;
                if (spot.channel() == null && state.side() != '.') {
                    arrivesToo = !channels(port(state), true).isEmpty()
                            || port(state).both() == Signal.ETHERNET;
                }
                if (state.side() != '>' || !arrivesToo) {
                    all.add(setting);
                }
            }
        });
        return all;
    }

    private double setGain(State state) {
        double sum = 0;
        for (Setting each : settings(state)) {
            sum += decibels(each.gain());
        }
        return sum;
    }

    private long setNanos(State state) {
        long sum = 0;
        for (Setting each : settings(state)) {
            sum += nanos(each.delay(), state);
        }
        return sum;
    }

    // ---- latency

    private long latency(Model model, State from, State to) {
        return from.side() == '<' ? nanos(latency(model, from), to) : 0;
    }

    /** What the type says of what this channel carries. */
    private @Nullable Delay latency(Model model, State channel) {
        Latency latency = model.latency();
        if (latency == null) {
            return null;
        }
        String name = channel.channel();
        Delay own = switch (port(channel).signal()) {
            case SDI, HDMI, HDBASET -> name.equals("v") ? latency.video() : latency.audio();
            case ETHERNET -> name.equals("v") ? latency.video() : latency.audio();
            case DMX, CONTACT, MIDI, SERIAL, USB, MAINS -> latency.control();
            case ANALOG_AUDIO, AES3, STAGE_LINK, USB_AUDIO, SPEAKER, RADIO -> latency.audio();
        };
        return own != null ? own : latency.all();
    }

    /** A frame is one of the output's format, where that has just one; else one of the house. */
    private long nanos(@Nullable Delay delay, @Nullable State output) {
        if (delay == null) {
            return 0;
        }
        VideoFormat format = project.about().picture();
        if (output != null && output.side() != '.' && port(output).formats().size() == 1) {
            format = port(output).formats().getFirst();
        }
        return delay.inFrames() && format == null
                ? 0
                : delay.nanos(format == null ? VideoFormat.parse("1080p50") : format);
    }

    /** Where a feed begins at a point: the latency of the output by which this path leaves the device. */
    long startNanos(State begin, List<Step> path) {
        Model model = inside(begin.thing());
        if (begin.side() != '.' || model == null) {
            return 0;
        }
        for (Step step : path) {
            if (step.to().side() == '>') {
                return nanos(latency(model, step.to()), step.to());
            }
            if (step.to().side() == '<') {
                break;
            }
        }
        long longest = 0; // it ends inside the device
        Set<State> seen = new LinkedHashSet<>(List.of(begin));
        List<State> work = new ArrayList<>(seen);
        while (!work.isEmpty()) {
            for (Step step : steps(work.removeFirst())) {
                if (step.to().side() == '>') {
                    longest = Math.max(longest, nanos(latency(model, step.to()), step.to()));
                } else if (seen.add(step.to())) {
                    work.add(step.to());
                }
            }
        }
        return longest;
    }

    // ---- the network

    /** Every way over the network without passing a port twice in one direction; the one of fewest hops, then of least ids. */
    private @Nullable List<String> network(State from, State to, @Nullable Integer vlan) {
        Set<Integer> vlans = new LinkedHashSet<>(List.of(1));
        there.values().forEach(each -> each.vlans().values().forEach(vlans::addAll));
        List<List<String>> ways = new ArrayList<>();
        for (int each : vlan != null ? List.of(vlan) : vlans) {
            if (carries(from.thing(), from.name(), each)) {
                List<String> seen = new ArrayList<>(List.of(from.thing() + "." + from.name() + " leaving"));
                out(from.thing(), from.name(), to, each, seen, List.of(), ways);
            }
        }
        ways.sort(Comparator.<List<String>>comparingInt(List::size).thenComparing(way -> String.join("\n", way)));
        return ways.isEmpty() ? null : ways.getFirst();
    }

    private void out(
            String thing,
            String port,
            State goal,
            int vlan,
            List<String> seen,
            List<String> over,
            List<List<String>> ways) {
        Port mine = ports(inside(thing)).get(port);
        for (Joined end : cabled(thing, port)) {
            String key = end.thing() + "." + end.port() + " arriving";
            Model model = inside(end.thing());
            Port other = model == null ? null : ports(model).get(end.port());
            if (other == null
                    || seen.contains(key)
                    || !isNetwork(mine, other)
                    || !carries(end.thing(), end.port(), vlan)) {
                continue;
            }
            List<String> further = plus(over, end.cause().substring("cable ".length()));
            if (end.thing().equals(goal.thing()) && end.port().equals(goal.name())) {
                ways.add(further);
                continue;
            }
            for (String next : through(model, end.port())) {
                String nextKey = end.thing() + "." + next + " leaving";
                if (!seen.contains(nextKey) && carries(end.thing(), next, vlan)) {
                    List<String> passed = plus(plus(seen, key), nextKey);
                    out(end.thing(), next, goal, vlan, passed, plus(further, end.thing()), ways);
                }
            }
        }
    }

    private static <T> List<T> plus(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return longer;
    }

    private static boolean isNetwork(Port one, Port other) {
        boolean both = (isPassive(one) || one.signal() == Signal.ETHERNET)
                && (isPassive(other) || other.signal() == Signal.ETHERNET);
        return both && agree(one.protocol(), other.protocol());
    }

    /** The ports across a network switch, or straight through a panel. */
    private static List<String> through(Model model, String port) {
        List<String> others = new ArrayList<>();
        if (model.kind() == Kind.SWITCH) {
            ports(model).forEach((name, each) -> {
                if (each.signal() == Signal.ETHERNET && !name.equals(port)) {
                    others.add(name);
                }
            });
        }
        for (Tie tie : model.ties()) {
            for (Tie.Pair pair : tie.pairs()) {
                if (pair.one().equals(port)) {
                    others.add(pair.other());
                } else if (pair.other().equals(port)) {
                    others.add(pair.one());
                }
            }
        }
        return others;
    }

    /** A port that is given no network carries the default one on a switch, and whatever comes elsewhere. */
    private boolean carries(String thing, String port, int vlan) {
        for (Map.Entry<NamePattern, List<Integer>> each :
                there.get(thing).vlans().entrySet()) {
            if (each.getKey().names().contains(port)) {
                return each.getValue().contains(vlan);
            }
        }
        Model model = inside(thing);
        return model == null || model.kind() != Kind.SWITCH || vlan == 1;
    }

    // ---- what nobody knows

    /** Something leads on from here to where nobody knows. */
    boolean leadsIntoUnknown(State state) {
        if (state.side() != '>') {
            return false;
        }
        // a network port sends nothing into its cable that no network-send names
        boolean alone = port(state).signal() == Signal.ETHERNET;
        for (Joined end : alone ? List.<Joined>of() : cabled(state.thing(), state.name())) {
            Model model = inside(end.thing());
            if (model == null || !ports(model).containsKey(end.port())) {
                return true;
            }
        }
        for (Cable each : project.cables().values()) {
            if (alone || !holds("cables", each.id(), each.life())) {
                continue;
            }
            Cable cable = done("cables", each.id()) ? each : each.today();
            boolean from = isEnd(cable.from(), state);
            boolean to = isEnd(cable.to(), state);
            if ((from && isOpen(cable.to())) || (to && isOpen(cable.from()))) {
                return true;
            }
        }
        for (RadioLink link : project.radio().values()) {
            if (holds("radio", link.id(), link.life()) && leadsOut(link.from(), link.to(), state)) {
                return true;
            }
        }
        for (NetworkSend send : project.networkSends().values()) {
            if (holds("network-sends", send.id(), send.life()) && leadsOut(send.from(), send.to(), state)) {
                return true;
            }
        }
        return false;
    }

    private boolean leadsOut(housewright.model.Ref one, housewright.model.Ref other, State state) {
        for (Way.Pair pair : new Way(one, other).pairs()) {
            boolean here = pair.from().thing().equals(state.thing())
                    && pair.from().spot().name().equals(state.name())
                    && (pair.from().spot().channel() == null
                            || pair.from().spot().channel().equals(state.channel()));
            String far = pair.to().thing();
            if (here && isThere(far) && inside(far) == null) {
                return true;
            }
        }
        return false;
    }

    /** Channels at which something may arrive from where nobody knows. */
    Set<State> unknownArrivals() {
        Set<State> arriving = new LinkedHashSet<>();
        for (String thing : things()) {
            Model model = inside(thing);
            for (String port : model == null ? Set.<String>of() : ports(model).keySet()) {
                if (touchesUnknown(thing, port)) {
                    arrivals(thing, port, new LinkedHashSet<>(), arriving);
                }
            }
        }
        return arriving;
    }

    private void arrivals(String thing, String port, Set<String> seen, Set<State> arriving) {
        Model model = inside(thing);
        Port own = model == null ? null : ports(model).get(port);
        if (own == null || !seen.add(thing + "." + port)) {
            return;
        }
        if (!isPassive(own)) {
            channels(own, true).forEach(channel -> arriving.add(new State(thing, port, channel, '<', "")));
            return;
        }
        for (Tie tie : model.ties()) {
            for (Tie.Pair pair : tie.pairs()) {
                if (pair.one().equals(port)) {
                    arrivals(thing, pair.other(), seen, arriving);
                } else if (pair.other().equals(port)) {
                    arrivals(thing, pair.one(), seen, arriving);
                }
            }
        }
        cabled(thing, port).forEach(end -> arrivals(end.thing(), end.port(), seen, arriving));
    }

    private boolean touchesUnknown(String thing, String port) {
        for (Joined end : cabled(thing, port)) {
            Model model = inside(end.thing());
            if (model == null || !ports(model).containsKey(end.port())) {
                return true;
            }
        }
        State here = new State(thing, port, null, '<', "");
        for (Cable each : project.cables().values()) {
            if (holds("cables", each.id(), each.life())) {
                Cable cable = done("cables", each.id()) ? each : each.today();
                if ((isEnd(cable.from(), here) && isOpen(cable.to()))
                        || (isEnd(cable.to(), here) && isOpen(cable.from()))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isOpen(@Nullable End end) {
        return end == null || end.ref() == null;
    }

    private static boolean isEnd(@Nullable End end, State state) {
        return end != null
                && end.ref() != null
                && end.ref().addresses().stream()
                        .anyMatch(each -> each.thing().equals(state.thing())
                                && each.spot().name().equals(state.name()));
    }
}
