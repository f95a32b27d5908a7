package housewright.paper;

import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Cable;
import housewright.model.Kind;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.Phantom;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Setting;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.model.Words;
import housewright.signal.Cause;
import housewright.signal.Hop;
import housewright.signal.Moment;
import housewright.signal.Present;
import housewright.sound.Patched;
import housewright.study.Study;
import housewright.unit.Gain;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What comes in on each channel of each desk. */
final class InputList extends Titled {
    private static final String CHANNEL = "ch-";

    InputList() {
        super(
                "input-list",
                "Input list",
                "Who sets the stage, and who is at the desk",
                "Which source is where, on what, and on which channel does it come in?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Study target = study.at(Moment.target());
        List<Sheet> sheets = new ArrayList<>();
        for (Present desk : target.supplies().things().values()) {
            Model model = desk.model();
            if (model == null || model.kind() != Kind.MIXER || desk.shape() == null) {
                continue;
            }
            List<Row> rows = new Desk(target, desk).rows();
            if (!rows.isEmpty()) {
                sheets.add(Sheet.lying(
                        "input-list-" + desk.id(),
                        "Inputs of " + Words.said(desk.id()),
                        recipient(),
                        List.of(
                                Cautions.HEARING,
                                new Block.Text(
                                        "Phantom power goes on after the microphone is plugged and with the channel muted."),
                                table(rows))));
            }
        }
        return sheets;
    }

    private static Block.Table table(List<Row> rows) {
        return new Block.Table(
                "inputs",
                List.of(
                        Column.id("Channel", 7),
                        Column.text("Source", 14),
                        Column.text("Position", 11),
                        Column.text("Microphone or source", 21),
                        Column.text("Stand", 9),
                        Column.text("Phantom", 8),
                        Column.text("Comes in at", 15),
                        Column.text("In-ear sends", 17)),
                rows);
    }

    /** One desk. */
    private static final class Desk {
        private final Study study;
        private final Present desk;
        private final Map<Spot, Boolean> toEars = new HashMap<>();

        Desk(Study study, Present desk) {
            this.study = study;
            this.desk = desk;
        }

        List<Row> rows() {
            List<Row> rows = new ArrayList<>();
            for (String point :
                    desk.shape() == null ? Set.<String>of() : desk.shape().points()) {
                if (!point.startsWith(CHANNEL)) {
                    continue;
                }
                Set<Address> sources = new LinkedHashSet<>();
                for (List<Hop> whole : study.signals().waysInto(new Address(desk.id(), new Spot(point, null)))) {
                    List<Hop> way = fromSource(whole);
                    if (!way.isEmpty() && sources.add(way.getFirst().from())) {
                        rows.add(row(point, sources.size() == 1 ? point : point + " " + sources.size(), way));
                    }
                }
            }
            return rows;
        }

        /** The way from what makes the sound, the first point on it; none from a socket with nothing in it. */
        private List<Hop> fromSource(List<Hop> way) {
            for (int i = 0; i < way.size(); i++) {
                Address from = way.get(i).from();
                Present thing = study.supplies().things().get(from.thing());
                if (from.thing().equals(desk.id())) {
                    break;
                }
                if (thing == null
                        || thing.shape() == null
                        || thing.shape().points().contains(from.spot().name())) {
                    return way.subList(i, way.size());
                }
            }
            return List.of();
        }

        private Row row(String channel, String key, List<Hop> way) {
            Address source = way.getFirst().from();
            Present thing = study.supplies().things().get(source.thing());
            Address socket = comesIn(way);
            return new Row(
                    key,
                    List.of(
                            Cell.of(channel.substring(CHANNEL.length())),
                            Cell.of(name(source, way)),
                            Cell.orBlank(
                                    thing == null
                                            ? null
                                            : Say.name(thing.equipment().at())),
                            type(way),
                            Cell.BLANK,
                            phantom(socket),
                            Cell.of(socket.said()),
                            Cell.of(ears(channel))));
        }

        /** The name on its cable nearest the desk, else its own. */
        private String name(Address source, List<Hop> way) {
            String label = null;
            Address socket = comesIn(way);
            for (Hop hop : way) {
                if (hop.from().equals(socket)) {
                    break;
                }
                if (hop.cause() instanceof Cause.ByCable cable && isAnalog(hop.to())) {
                    Cable run = study.project().cables().get(cable.id());
                    String said = run == null ? null : run.label();
                    label = said == null ? label : said;
                }
            }
            String own = Words.said(source.thing());
            String channel = source.spot().name();
            Present thing = study.supplies().things().get(source.thing());
            boolean several = thing != null
                    && thing.shape() != null
                    && thing.shape().points().size() > 1;
            String said = several ? own + ", " + Words.said(channel) : own;
            return label == null || label.equalsIgnoreCase(said) ? said : label + " (" + said + ")";
        }

        private boolean isAnalog(Address at) {
            Port port = port(at);
            return port != null && (port.passive() || port.signal() == Signal.ANALOG_AUDIO);
        }

        /** Its type, and the box that it goes through. */
        private Cell type(List<Hop> way) {
            Set<String> passed = new LinkedHashSet<>();
            way.forEach(hop -> passed.add(hop.from().thing()));
            Set<String> types = new LinkedHashSet<>();
            for (String id : passed) {
                Present thing = study.supplies().things().get(id);
                Model model = thing == null ? null : thing.model();
                if (model == null) {
                    return Cell.BLANK;
                }
                if (types.isEmpty() || isOnTheWay(model.kind())) {
                    types.add(Say.type(model));
                } else if (model.kind() != Kind.PANEL) {
                    break;
                }
            }
            return Cell.of(String.join("; ", types));
        }

        private static boolean isOnTheWay(Kind kind) {
            return kind == Kind.DI || kind == Kind.RADIO_TRANSMITTER;
        }

        /** Where it comes into a stage box or a desk. */
        private Address comesIn(List<Hop> way) {
            for (Hop hop : way) {
                Present thing = study.supplies().things().get(hop.to().thing());
                Kind kind = thing == null || thing.model() == null
                        ? null
                        : thing.model().kind();
                if (kind == Kind.STAGE_BOX || kind == Kind.MIXER) {
                    return hop.to();
                }
            }
            return way.getLast().to();
        }

        /** On where what is plugged in needs it, never where that is harmed, else as set. */
        private Cell phantom(Address socket) {
            Port port = port(socket);
            if (port == null || port.phantom() != Phantom.GIVES) {
                return Cell.of("–");
            }
            Plug plugged = plugged(socket);
            Port out = plugged == null ? null : plugged.port();
            if (plugged != null && out == null) {
                return Cell.BLANK;
            }
            if (out != null && out.phantom() == Phantom.HARMED) {
                return Cell.of("never");
            }
            Boolean set = set(socket);
            boolean on = set != null ? set : out != null && out.phantom() == Phantom.NEEDS;
            return Cell.of(on ? "on" : "off");
        }

        private @Nullable Plug plugged(Address socket) {
            for (Line line : study.cabling().lines()) {
                Plug sink = line.sink();
                if (sink != null
                        && sink.socket()
                                .equals(socket.thing() + "." + socket.spot().name())) {
                    return line.source();
                }
            }
            return null;
        }

        private @Nullable Boolean set(Address socket) {
            Present thing = study.supplies().things().get(socket.thing());
            if (thing != null) {
                for (Map.Entry<LocalRef, Setting> each : thing.equipment().set().entrySet()) {
                    if (each.getValue().phantom() != null
                            && each.getKey().spots().stream()
                                    .anyMatch(spot ->
                                            spot.name().equals(socket.spot().name()))) {
                        return each.getValue().phantom();
                    }
                }
            }
            return null;
        }

        private @Nullable Port port(Address at) {
            Present thing = study.supplies().things().get(at.thing());
            return thing == null || thing.shape() == null
                    ? null
                    : thing.shape()
                            .findSocket(at.spot().name())
                            .map(Shape.Socket::port)
                            .orElse(null);
        }

        /** The mixes that somebody hears in the ear, with the gain of the send. */
        private String ears(String channel) {
            Set<String> sends = new LinkedHashSet<>();
            for (Patched each : study.sound().patched()) {
                if (each.device().equals(desk.id())
                        && each.from().name().equals(channel)
                        && isHeardInTheEar(each.to())) {
                    Gain gain = each.entry().gain();
                    String to = Words.said(each.to().name())
                            + (each.to().channel() == null
                                    ? ""
                                    : " " + each.to().channel());
                    sends.add((each.to().channel() == null ? to : "own mixers (" + to + ")")
                            + (gain == null ? "" : " (" + gain + ")"));
                }
            }
            return String.join(", ", sends);
        }

        private boolean isHeardInTheEar(Spot send) {
            return toEars.computeIfAbsent(
                    send,
                    each -> !each.name().startsWith("main")
                            && study.signals().reaches(new Address(desk.id(), each), to -> {
                                Present thing = study.supplies().things().get(to.thing());
                                return thing != null
                                        && thing.model() != null
                                        && thing.model().kind() == Kind.HEADPHONES;
                            }));
        }
    }
}
