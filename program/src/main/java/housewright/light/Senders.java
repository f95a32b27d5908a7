package housewright.light;

import housewright.cable.Cabling;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Join;
import housewright.model.Kind;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.PatchEntry;
import housewright.model.RadioLink;
import housewright.model.Ref.Address;
import housewright.model.Route;
import housewright.model.Signal;
import housewright.model.Types;
import housewright.signal.Hop;
import housewright.signal.Moment;
import housewright.signal.Present;
import housewright.signal.Signals;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What sends out of a socket: followed back to something that holds looks or faders. */
final class Senders {
    /** What was found. */
    static final class Sent {
        boolean any;
        final Set<String> by = new LinkedHashSet<>();
        final Set<Integer> universes = new LinkedHashSet<>();

        private void take(Sent other) {
            any |= other.any;
            by.addAll(other.by);
            universes.addAll(other.universes);
        }
    }

    /** These bring light into being, whatever their type draws of their inside. */
    private static final Set<Kind> BEGINS =
            Set.of(Kind.CONTROL_PANEL, Kind.BUTTON_PAD, Kind.COMPUTER, Kind.PROGRAM, Kind.MIXER, Kind.VISION_MIXER);

    private final Types types;
    private final Moment moment;
    private final Map<String, Present> things;
    private final Map<String, List<Plug>> bySink = new HashMap<>();
    private final Map<String, List<Address>> sentTo = new HashMap<>();
    private final Map<String, List<Address>> radioTo = new HashMap<>();
    private final Map<String, Sent> known = new HashMap<>();

    Senders(Types types, Signals signals, Cabling cabling, Map<String, Present> things) {
        this.types = types;
        this.moment = signals.moment();
        this.things = things;
        for (Line line : cabling.lines()) {
            Plug source = line.source();
            Plug sink = line.sink();
            if (source != null && sink != null && line.signal() != Signal.ETHERNET) { // there, sends say what arrives
                bySink.computeIfAbsent(sink.socket(), key -> new ArrayList<>(1)).add(source);
            }
        }
        for (Hop hop : signals.sends()) {
            sentTo.computeIfAbsent(hop.to().toString(), key -> new ArrayList<>(1))
                    .add(hop.from());
        }
        for (RadioLink link : types.project().radio().values()) {
            List<Address> from = link.from().addresses();
            for (Address to : link.to().addresses()) {
                if (moment.isThere("radio", link.id(), link.life())) {
                    radioTo.computeIfAbsent(to.thing(), key -> new ArrayList<>(1))
                            .addAll(from);
                }
            }
        }
    }

    Sent into(String thing, String port) {
        return into(thing, port, new HashSet<>());
    }

    private Sent into(String thing, String port, Set<String> onTheWay) {
        String socket = thing + "." + port;
        Sent before = known.get(socket);
        if (before != null) {
            return before;
        }
        Sent sent = new Sent();
        if (!onTheWay.add(socket)) {
            return sent;
        }
        Present present = things.get(thing);
        Model model = present == null ? null : present.model();
        if (present == null) {
            return sent;
        }
        if (model == null || !model.portsKnown() || BEGINS.contains(model.kind())) {
            sent.any = true;
            sent.by.add(thing);
        } else {
            for (Spot from : inside(present, model, port)) {
                arriving(thing, model, from, onTheWay, sent);
            }
        }
        known.put(socket, sent);
        return sent;
    }

    private void arriving(String thing, Model model, Spot from, Set<String> onTheWay, Sent sent) {
        if (isPoint(model, from.name())) {
            sent.any = true;
            sent.by.add(thing);
            return;
        }
        for (Plug source : bySink.getOrDefault(thing + "." + from.name(), List.of())) {
            sent.take(into(source.at().thing(), source.at().spot().name(), onTheWay));
        }
        for (Address sender : sentTo.getOrDefault(thing + "." + from, List.of())) {
            sent.any = true;
            sent.by.add(sender.thing());
            Integer universe = universe(sender.spot().channel());
            if (universe != null) {
                sent.universes.add(universe);
            }
        }
        for (Address sender : radioTo.getOrDefault(thing, List.of())) {
            sent.take(into(sender.thing(), sender.spot().name(), onTheWay));
        }
    }

    static @Nullable Integer universe(@Nullable String channel) {
        if (channel == null || channel.length() < 2 || channel.length() > 6 || channel.charAt(0) != 'u') {
            return null;
        }
        return channel.chars().skip(1).allMatch(c -> c >= '0' && c <= '9')
                ? Integer.valueOf(channel.substring(1))
                : null;
    }

    private static boolean isPoint(Model model, String name) {
        for (NamePattern points : model.points()) {
            if (points.names().contains(name)) {
                return true;
            }
        }
        return false;
    }

    /** What is joined to a port inside the thing, by its type or by the project's patch. */
    private List<Spot> inside(Present present, Model model, String port) {
        List<Spot> from = new ArrayList<>();
        for (Route route : model.routes()) {
            take(route.join(), port, from);
        }
        for (PatchEntry entry : types.project().patch().getOrDefault(present.id(), List.of())) {
            if (entry.life() == null || moment.isThere("patch", present.id(), entry.life())) {
                take(entry.join(), port, from);
            }
        }
        return from;
    }

    private static void take(Join join, String port, List<Spot> from) {
        for (Join.Pair pair : join.pairs()) {
            if (pair.to().name().equals(port)) {
                from.add(pair.from());
            }
        }
    }
}
