package housewright.cable;

import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Shape.Socket;
import housewright.model.Tie;
import housewright.model.Types;
import housewright.model.Way;
import housewright.signal.Moment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Every cable that is there at a moment, and the runs they make. */
public final class Cabling {
    private final Types types;
    private final Moment moment;
    private final Map<String, Lead> leads = new LinkedHashMap<>();
    private final Map<String, List<Held>> held = new LinkedHashMap<>();
    private final Map<String, Shape> shapes = new HashMap<>();
    private final Map<String, Map<String, String>> tied = new HashMap<>();
    private final List<Line> lines = new ArrayList<>();

    /** One end in a socket: the cable, and the way of it. */
    private record Held(Lead lead, Joint joint, boolean first) {
        @Nullable
        Plug far() {
            return first ? joint.to() : joint.from();
        }
    }

    private Cabling(Types types, Moment moment) {
        this.types = types;
        this.moment = moment;
        Project project = types.project();
        Lengths lengths = new Lengths(project);
        for (Cable each : project.cables().values()) {
            if (moment.isThere("cables", each.id(), each.life())) {
                Cable cable = moment.isDone("cables", each.id()) ? each : each.today();
                add(cable, lengths);
            }
        }
        follow();
    }

    public static Cabling of(Types types, Moment moment) {
        return new Cabling(types, moment);
    }

    /** In the order of the file. */
    public List<Lead> leads() {
        return List.copyOf(leads.values());
    }

    public Optional<Lead> findLead(String cable) {
        return Optional.ofNullable(leads.get(cable));
    }

    /** Runs from equipment to equipment; each cable is in one for every way it has. */
    public List<Line> lines() {
        return List.copyOf(lines);
    }

    /** The cables in a socket, such as {@code desk.out-1}. */
    public List<Lead> in(String socket) {
        return held.getOrDefault(socket, List.of()).stream().map(Held::lead).toList();
    }

    private void add(Cable cable, Lengths lengths) {
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
        Equipment each = types.project().equipment().get(at.thing());
        boolean there = each != null && moment.isThere("equipment", each.id(), each.life());
        Equipment equipment =
                !there || each == null ? null : moment.isDone("equipment", each.id()) ? each : each.today();
        Model model =
                equipment == null ? null : types.findModel(equipment.model()).orElse(null);
        Port port = model == null
                ? null
                : shape(model).findSocket(at.spot().name()).map(Socket::port).orElse(null);
        return new Plug(at, equipment, model, port, connector);
    }

    private Shape shape(Model model) {
        return shapes.computeIfAbsent(model.id(), key -> Shape.of(model));
    }

    /** Follows every run once, from what is no panel; what lies between panels' free sides, from its first cable. */
    private void follow() {
        Set<Joint> seen = java.util.Collections.newSetFromMap(new java.util.IdentityHashMap<>());
        for (boolean fromPanels : new boolean[] {false, true}) {
            for (Lead lead : leads.values()) {
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
