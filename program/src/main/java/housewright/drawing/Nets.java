package housewright.drawing;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.CableType;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Model;
import housewright.model.NetworkSend;
import housewright.model.RadioLink;
import housewright.model.Ref;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** Everything that runs between pieces of equipment at one moment, by trade. */
final class Nets {
    private final Study study;
    private final Map<String, Box> boxes = new LinkedHashMap<>();
    private final Map<Trade, List<Link>> byTrade = new LinkedHashMap<>();
    private final Map<String, List<Link>> byCable = new LinkedHashMap<>();
    private final Map<String, Link> sends = new LinkedHashMap<>();
    private final Map<String, Shape> shapes = new ConcurrentHashMap<>();
    private final Map<String, Link> radio = new LinkedHashMap<>();

    Nets(Study study) {
        this.study = study;
        for (Equipment each : study.project().equipment().values()) {
            Equipment now = at(each);
            if (now != null) {
                boxes.put(now.id(), box(now));
            }
        }
        for (Trade trade : Trade.values()) {
            byTrade.put(trade, new ArrayList<>());
        }
        cables();
        sends();
        radio();
    }

    /** What one system is made of. */
    Net of(Trade trade) {
        return new Net(boxes, byTrade.getOrDefault(trade, List.of())).onlyLinked();
    }

    /** Whether this is the name of a point inside a device, not of a socket on its panel. */
    boolean isPoint(String equipment, String name) {
        Equipment each = study.project().equipment().get(equipment);
        Equipment now = each == null ? null : at(each);
        Model model = now == null ? null : study.types().findModel(now.model()).orElse(null);
        return model != null
                && shapes.computeIfAbsent(model.id(), id -> Shape.of(model))
                        .points()
                        .contains(name);
    }

    Map<String, Box> boxes() {
        return boxes;
    }

    List<Link> cable(String id) {
        return byCable.getOrDefault(id, List.of());
    }

    @Nullable
    Link send(String id) {
        return sends.get(id);
    }

    @Nullable
    Link radio(String id) {
        return radio.get(id);
    }

    /** A piece of equipment as it is at the moment; null where it is not there. */
    private @Nullable Equipment at(Equipment each) {
        if (!study.moment().isThere("equipment", each.id(), each.life())) {
            return null;
        }
        return study.moment().isDone("equipment", each.id()) ? each : each.today();
    }

    private Box box(Equipment each) {
        Model model = study.types().findModel(each.model()).orElse(null);
        String name = model != null && model.name() != null
                ? model.name()
                : each.model() != null ? each.model() : "type not known yet";
        String host = each.partOf() != null ? each.partOf() : each.runsOn();
        String note =
                each.partOf() != null ? "in " + each.partOf() : each.runsOn() != null ? "on " + each.runsOn() : "";
        return new Box(each.id(), name, place(each, host), note, Change.THERE, List.of());
    }

    private String place(Equipment each, @Nullable String host) {
        if (each.at() != null) {
            return each.at();
        }
        Equipment carrier = host == null ? null : study.project().equipment().get(host);
        Equipment now = carrier == null ? null : at(carrier);
        return now == null || now.at() == null ? "" : now.at();
    }

    private void cables() {
        Map<String, Set<Trade>> trades = trades();
        for (Lead lead : study.cabling().leads()) {
            List<Link> links = links(lead);
            byCable.put(lead.id(), links);
        }
        new Directions(study, boxes.keySet()).settle(byCable);
        for (Lead lead : study.cabling().leads()) {
            for (Trade trade : trades.getOrDefault(lead.id(), Set.of())) {
                list(trade).addAll(cable(lead.id()));
            }
        }
    }

    private List<Link> list(Trade trade) {
        return byTrade.computeIfAbsent(trade, each -> new ArrayList<>());
    }

    /** One link for all ways between the same two pieces of equipment. */
    private List<Link> links(Lead lead) {
        record Ends(String from, String to) {}
        Map<Ends, List<Joint>> byEnds = new LinkedHashMap<>();
        for (Joint joint : lead.joints()) {
            if (isThere(joint.from()) && isThere(joint.to())) {
                byEnds.computeIfAbsent(new Ends(thing(joint.from()), thing(joint.to())), each -> new ArrayList<>())
                        .add(joint);
            }
        }
        String text = lead.cable().type() == null
                ? lead.id()
                : lead.id() + " " + lead.cable().type();
        if (!lead.cable().adapters().isEmpty()) {
            text += " + " + String.join(" + ", lead.cable().adapters());
        }
        List<Link> links = new ArrayList<>();
        for (Map.Entry<Ends, List<Joint>> each : byEnds.entrySet()) {
            links.add(new Link(
                    Link.Sort.CABLE,
                    lead.id(),
                    text,
                    end(each.getKey().from(), each.getValue(), true),
                    end(each.getKey().to(), each.getValue(), false),
                    each.getValue().stream().allMatch(Nets::isBoth),
                    Change.THERE));
        }
        return links;
    }

    /** Signal runs both ways in it, as far as its sockets say. */
    private static boolean isBoth(Joint joint) {
        return joint.plugs().stream()
                        .anyMatch(plug -> plug.port() != null && plug.port().both() != null)
                && joint.plugs().stream()
                        .allMatch(plug -> plug.port() == null || plug.port().both() != null || plug.isPassive());
    }

    private static boolean isThere(@Nullable Plug plug) {
        return plug == null || plug.equipment() != null;
    }

    private static String thing(@Nullable Plug plug) {
        return plug == null ? "" : plug.at().thing();
    }

    private static Link.End end(String box, List<Joint> joints, boolean from) {
        Set<String> ports = new LinkedHashSet<>();
        for (Joint joint : joints) {
            Plug plug = from ? joint.from() : joint.to();
            if (plug != null) {
                ports.add(plug.at().spot().name());
            }
        }
        return new Link.End(box, List.copyOf(ports));
    }

    /** The systems that each cable is part of: by the sockets at the ends of its runs, else by what its type is for. */
    private Map<String, Set<Trade>> trades() {
        Map<String, Set<Trade>> trades = new HashMap<>();
        for (Line line : study.cabling().lines()) {
            Signal signal = line.signal();
            if (signal != null) {
                Trade trade = trade(signal, line.from(), line.to());
                line.ids()
                        .forEach(id -> trades.computeIfAbsent(id, each -> EnumSet.noneOf(Trade.class))
                                .add(trade));
            }
        }
        for (Lead lead : study.cabling().leads()) {
            if (!trades.containsKey(lead.id())) {
                Set<Trade> likely = EnumSet.noneOf(Trade.class);
                CableType type = lead.type();
                if (type != null) {
                    type.carries().forEach(signal -> likely.add(Trade.of(signal)));
                }
                trades.put(lead.id(), likely.size() == 1 ? likely : EnumSet.of(Trade.UNKNOWN));
            }
        }
        return trades;
    }

    /** USB and radio are part of what the things at their ends are part of. */
    private static Trade trade(Signal signal, @Nullable Plug from, @Nullable Plug to) {
        if (signal == Signal.USB || signal == Signal.RADIO) {
            for (Plug plug : new Plug[] {from, to}) {
                if (plug != null && plug.model() != null) {
                    Trade trade = trade(plug.model().kind());
                    if (trade != null) {
                        return trade;
                    }
                }
            }
        }
        return Trade.of(signal);
    }

    private static @Nullable Trade trade(Kind kind) {
        return switch (kind) {
            case CAPTURE, CAMERA, VISION_MIXER, DISPLAY, PROJECTOR, ENCODER -> Trade.PICTURE;
            case AUDIO_INTERFACE, MIXER, RECORDER, RADIO_TRANSMITTER, RADIO_RECEIVER, MICROPHONE -> Trade.SOUND;
            case DMX_INTERFACE, DMX_NODE, FIXTURE, DIMMER -> Trade.LIGHT;
            default -> null;
        };
    }

    private void sends() {
        for (NetworkSend send : study.project().networkSends().values()) {
            if (holds("network-sends", send.id(), send.life(), send.from(), send.to())) {
                String text = send.as() == null ? send.id() : send.id() + " " + send.as();
                Link link = link(Link.Sort.SEND, send.id(), text, send.from(), send.to());
                sends.put(send.id(), link);
                list(trade(send)).add(link);
            }
        }
    }

    private static Trade trade(NetworkSend send) {
        String as = send.as() == null ? "" : send.as();
        String channel = send.from().addresses().getFirst().spot().channel();
        String name = channel == null ? "" : channel;
        if (as.contains("light")) {
            return Trade.LIGHT;
        }
        if (name.startsWith("v") || as.contains("video") || as.contains("picture")) {
            return Trade.PICTURE;
        }
        boolean sound = name.equals("L")
                || name.equals("R")
                || (!name.isEmpty() && name.chars().allMatch(c -> c >= '0' && c <= '9'));
        return sound || as.contains("audio") ? Trade.SOUND : Trade.CONTROL;
    }

    private void radio() {
        for (RadioLink each : study.project().radio().values()) {
            if (holds("radio", each.id(), each.life(), each.from(), each.to())) {
                String text = each.frequency() == null
                        ? each.id()
                        : each.id() + " " + each.frequency().text();
                Link link = link(Link.Sort.RADIO, each.id(), text, each.from(), each.to());
                radio.put(each.id(), link);
                Trade one = tradeOf(each.from().addresses().getFirst().thing());
                list(one != null ? one : Trade.SOUND).add(link);
            }
        }
    }

    private @Nullable Trade tradeOf(String equipment) {
        Equipment each = study.project().equipment().get(equipment);
        Equipment now = each == null ? null : at(each);
        Model model = now == null ? null : study.types().findModel(now.model()).orElse(null);
        return model == null ? null : trade(model.kind());
    }

    private boolean holds(String section, String id, Life life, Ref from, Ref to) {
        return study.moment().isThere(section, id, life)
                && boxes.containsKey(from.addresses().getFirst().thing())
                && boxes.containsKey(to.addresses().getFirst().thing());
    }

    private static Link link(Link.Sort sort, String id, String text, Ref from, Ref to) {
        return new Link(sort, id, text, end(from), end(to), false, Change.THERE);
    }

    private static Link.End end(Ref ref) {
        Set<String> ports = new LinkedHashSet<>();
        ref.addresses().forEach(at -> ports.add(at.spot().name()));
        return new Link.End(ref.addresses().getFirst().thing(), List.copyOf(ports));
    }
}
