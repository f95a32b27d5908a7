package housewright.cable;

import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.End;
import housewright.model.Model;
import housewright.model.Pathway;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.model.Tie;
import housewright.model.Types;
import housewright.model.Way;
import housewright.signal.Moment;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Every cable that is there at a moment, and the runs they make. */
public final class Cabling {
    private final Types types;
    private final Map<String, Present> things;
    private final Map<String, Lead> leads = new HashMap<>();
    private final List<Lead> inOrder = new ArrayList<>();
    private final Map<String, List<Held>> held = new LinkedHashMap<>();
    private final Map<String, Map<String, String>> tied = new HashMap<>();
    private final List<Line> lines = new ArrayList<>();
    private final Map<String, List<Lead>> along = new LinkedHashMap<>();
    private final Lengths lengths;
    private @Nullable List<SpeakerCircuit> speakerCircuits;
    private @Nullable Map<String, Set<Signal>> signals;
    private @Nullable List<SoundRun> soundRuns;
    private @Nullable Map<String, Use> uses;

    /** One end in a socket: the cable, and the way of it. */
    private record Held(Lead lead, Joint joint, boolean first) {
        @Nullable
        Plug far() {
            return first ? joint.to() : joint.from();
        }

        Plug near() {
            return Objects.requireNonNull(first ? joint.from() : joint.to());
        }
    }

    private Cabling(Types types, Map<String, Present> things, Moment moment) {
        this.types = types;
        this.things = things;
        Project project = types.project();
        this.lengths = new Lengths(project);
        for (Cable each : project.cables().values()) {
            if (moment.isThere("cables", each.id(), each.life())) {
                Cable cable = moment.isDone("cables", each.id()) ? each : each.today();
                add(cable);
            }
        }
        follow();
    }

    public static Cabling of(Types types, Map<String, Present> things, Moment moment) {
        return new Cabling(types, things, moment);
    }

    /** In the order of the file. */
    public List<Lead> leads() {
        return Collections.unmodifiableList(inOrder);
    }

    public Optional<Lead> findLead(String cable) {
        return Optional.ofNullable(leads.get(cable));
    }

    /** Runs from equipment to equipment; each cable is in one for every way it has. */
    public List<Line> lines() {
        return Collections.unmodifiableList(lines);
    }

    /** The cables in a socket, such as {@code desk.out-1}. */
    public List<Lead> in(String socket) {
        return held.getOrDefault(socket, List.of()).stream().map(Held::lead).toList();
    }

    /** The cables that run along a pathway, in the order of the file. */
    public List<Lead> along(Pathway pathway) {
        return Collections.unmodifiableList(along.getOrDefault(pathway.id(), List.of()));
    }

    /** As the project states it, else along walls and up and down between its two places; null where neither is known. */
    public @Nullable Double metres(Pathway pathway) {
        return lengths.metres(pathway);
    }

    /** The cables that a panel passes on to from this socket; none where it is no panel's. */
    public List<Lead> beyond(Plug plug) {
        return plug.isPassive() ? onward(plug).stream().map(Held::lead).toList() : List.of();
    }

    /**
     * What is one line electrically, over things that pass it straight on: DMX from lamp to lamp, and loudspeakers that
     * hand on to the next. A line with a way back to itself has no first cable and is left out.
     */
    public List<Chain> chains(Signal signal) {
        return Chains.of(lines, signal);
    }

    /** What hangs on each amplifier output that something is plugged into, in the order of the cables. */
    public synchronized List<SpeakerCircuit> speakerCircuits() {
        List<SpeakerCircuit> known = speakerCircuits;
        if (known == null) {
            known = SpeakerCircuits.of(this);
            speakerCircuits = known;
        }
        return known;
    }

    /** By the cable's id, the signals of all its ways: what the sockets at the two ends of each run say. */
    public synchronized Map<String, Set<Signal>> signals() {
        Map<String, Set<Signal>> known = signals;
        if (known == null) {
            known = new HashMap<>();
            for (Line line : lines) {
                for (Lead lead : line.leads()) {
                    Set<Signal> all = known.computeIfAbsent(lead.id(), id -> new LinkedHashSet<>(2));
                    add(all, line.from());
                    add(all, line.to());
                }
            }
            known = Collections.unmodifiableMap(known);
            signals = known;
        }
        return known;
    }

    /** The runs of analogue sound whose two ends are known, in their order. */
    public synchronized List<SoundRun> soundRuns() {
        List<SoundRun> known = soundRuns;
        if (known == null) {
            known = SoundRun.among(lines);
            soundRuns = known;
        }
        return known;
    }

    /** By the cable's id, what it is used for; what carries several things is the worst of them. */
    public synchronized Map<String, Use> uses() {
        Map<String, Use> known = uses;
        if (known == null) {
            known = Use.of(lines, inOrder);
            uses = known;
        }
        return known;
    }

    private static void add(Set<Signal> all, @Nullable Plug plug) {
        if (plug != null && plug.port() != null && plug.port().signal() != null) {
            all.add(plug.port().signal());
        }
    }

    /** A socket that several cables are in: the end of the first, and the ids of all, in the order of the file. */
    public record Shared(Plug plug, List<String> cables) {}

    /** Every socket that several cables are in, in the order of the file. */
    public List<Shared> shared() {
        List<Shared> shared = new ArrayList<>();
        for (List<Held> here : held.values()) {
            if (here.size() > 1) {
                List<String> cables =
                        here.stream().map(each -> each.lead().id()).distinct().toList();
                if (cables.size() > 1) {
                    shared.add(new Shared(here.getFirst().near(), cables));
                }
            }
        }
        return List.copyOf(shared);
    }

    private void add(Cable cable) {
        CableType type = types.findCableType(cable.type()).orElse(null);
        List<Connector> ends = cable.ends().size() == 2
                ? cable.ends()
                : type != null && type.ends().size() == 2 ? type.ends() : List.of();
        List<Joint> joints = new ArrayList<>();
        Ref from = ref(cable.from());
        Ref to = ref(cable.to());
        if (from != null && to != null) {
            for (Way.Pair pair : new Way(from, to).pairs()) {
                joints.add(joint(pair.from(), pair.to(), ends));
            }
        } else if (from != null) {
            from.addresses().forEach(at -> joints.add(joint(at, null, ends)));
        } else if (to != null) {
            to.addresses().forEach(at -> joints.add(joint(null, at, ends)));
        }
        for (Way way : cable.ways()) {
            for (Way.Pair pair : way.pairs()) {
                joints.add(joint(pair.from(), pair.to(), ends));
            }
        }
        Lead lead = new Lead(cable, type, joints, lengths.of(cable), lengths.pathways(cable));
        leads.put(cable.id(), lead);
        inOrder.add(lead);
        for (String pathway : Set.copyOf(cable.via())) { // once, however often it runs up and down it
            along.computeIfAbsent(pathway, key -> new ArrayList<>()).add(lead);
        }
        for (Joint joint : joints) {
            hold(joint.from(), new Held(lead, joint, true));
            hold(joint.to(), new Held(lead, joint, false));
        }
    }

    private void hold(@Nullable Plug plug, Held here) {
        if (plug != null) {
            held.computeIfAbsent(plug.socket(), key -> new ArrayList<>(1)).add(here);
        }
    }

    private static @Nullable Ref ref(@Nullable End end) {
        return end == null ? null : end.ref();
    }

    /**
     * Which end of the cable is where: where its ends differ and only the other way round goes into both sockets, a
     * person turns it round.
     */
    private Joint joint(@Nullable Address from, @Nullable Address to, List<Connector> ends) {
        Connector one = ends.isEmpty() ? null : ends.getFirst();
        Connector other = ends.isEmpty() ? null : ends.getLast();
        Plug first = from == null ? null : plug(from, one);
        Plug second = to == null ? null : plug(to, other);
        boolean turned = one != other
                && !(goesInto(first, one) && goesInto(second, other))
                && goesInto(first, other)
                && goesInto(second, one);
        return turned
                ? new Joint(from == null ? null : plug(from, other), to == null ? null : plug(to, one))
                : new Joint(first, second);
    }

    private static boolean goesInto(@Nullable Plug plug, @Nullable Connector connector) {
        return plug == null
                || plug.port() == null
                || plug.port().connector() == null
                || connector == null
                || plug.port().connector().mate() == connector;
    }

    private Plug plug(Address at, @Nullable Connector connector) {
        Present present = things.get(at.thing());
        Shape shape = present == null ? null : present.shape();
        Socket socket = shape == null ? null : shape.sockets().get(at.spot().name());
        return new Plug(
                at,
                present == null ? null : present.equipment(),
                shape == null ? null : shape.model(),
                socket == null ? null : socket.port(),
                connector);
    }

    /** Follows every run once, from what is no panel; what lies between panels' free sides, from its first cable. */
    private void follow() {
        Set<Joint> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (boolean fromPanels : new boolean[] {false, true}) {
            for (Lead lead : inOrder) {
                for (Joint joint : lead.joints()) {
                    boolean starts = isEnd(joint.from());
                    boolean ends = isEnd(joint.to());
                    if (!seen.contains(joint) && (fromPanels || starts || ends)) {
                        line(lead, joint, starts || !ends, seen);
                    }
                }
            }
        }
    }

    private boolean isEnd(@Nullable Plug plug) {
        return plug == null || !plug.isPassive() || onward(plug).isEmpty();
    }

    private void line(Lead lead, Joint joint, boolean forward, Set<Joint> seen) {
        List<Lead> run = new ArrayList<>(List.of(lead));
        seen.add(joint);
        Plug start = forward ? joint.from() : joint.to();
        Plug end = forward ? joint.to() : joint.from();
        while (end != null && end.isPassive()) {
            Held next = onward(end).stream()
                    .filter(each -> !seen.contains(each.joint()))
                    .findFirst()
                    .orElse(null);
            if (next == null) {
                break;
            }
            seen.add(next.joint());
            run.add(next.lead());
            end = next.far();
        }
        lines.add(forward ? new Line(start, end, run) : new Line(end, start, run.reversed()));
    }

    /** What is plugged into the socket that this one is tied to. */
    private List<Held> onward(Plug plug) {
        Model model = plug.model();
        if (model == null) {
            return List.of();
        }
        String other = tied.computeIfAbsent(model.id(), key -> ties(model))
                .get(plug.at().spot().name());
        return other == null ? List.of() : held.getOrDefault(plug.at().thing() + "." + other, List.of());
    }

    private static Map<String, String> ties(Model model) {
        Map<String, String> ties = new HashMap<>();
        for (Tie tie : model.ties()) {
            for (Tie.Pair pair : tie.pairs()) {
                ties.putIfAbsent(pair.one(), pair.other());
                ties.putIfAbsent(pair.other(), pair.one());
            }
        }
        return ties;
    }
}
