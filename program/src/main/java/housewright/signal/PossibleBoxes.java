package housewright.signal;

import housewright.model.Cable;
import housewright.model.Equipment;
import housewright.model.Fitted;
import housewright.model.Kind;
import housewright.model.LevelClass;
import housewright.model.Life;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Remarks;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.model.Types;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.Layout.Side;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A converter from the library between two free ports, or a splitter put into a cable to feed one port more. */
final class PossibleBoxes {
    private static final Set<Kind> CONVERTING =
            EnumSet.of(Kind.CONVERTER, Kind.EMBEDDER, Kind.DE_EMBEDDER, Kind.DMX_INTERFACE, Kind.DI);
    private static final int MOUNTING_MINUTES = 20;

    private final Signals signals;
    private final SignalGraph graph;
    private final FreePorts free;
    private final Runs runs;
    private final Map<Entry, List<Box>> converters = new LinkedHashMap<>();
    private final Map<Entry, List<Box>> splitters = new LinkedHashMap<>();
    private final Map<String, Step> steps = new HashMap<>();
    private final boolean wanted;
    private boolean known;

    private record Entry(Signal signal, String channel) {}

    /** A way through a type: in at one port, out at another; and another out by which what comes in goes on. */
    private record Box(
            Layout layout,
            Socket in,
            Socket out,
            String outChannel,
            @Nullable Socket through,
            long delay) {
        Model model() {
            return layout.model;
        }
    }

    PossibleBoxes(Signals signals, FreePorts free, Runs runs, boolean wanted) {
        this.wanted = wanted;
        this.signals = signals;
        this.graph = signals.graph();
        this.free = free;
        this.runs = runs;
    }

    void from(int node, Possible.Offers offers) {
        Port out = free.portOf(node);
        String channel = graph.spot(node).channel();
        Signal signal = out == null ? null : out.signal();
        if (out == null
                || channel == null
                || signal == null
                || graph.side(node) != Side.LEAVING
                || signal == Signal.ETHERNET
                || signal == Signal.RADIO
                || signal == Signal.MAINS) {
            return;
        }
        if (!wanted) {
            return;
        }
        learn();
        if (free.isFree(node)) {
            for (Box box : converters.getOrDefault(new Entry(signal, channel), List.of())) {
                if (FreePorts.agree(out, box.in().port())) {
                    offer(node, out, box, offers);
                }
            }
            return;
        }
        String cable = Possible.onlyCable(graph, free.port(node));
        if (cable == null) {
            return;
        }
        for (Box box : splitters.getOrDefault(new Entry(signal, channel), List.of())) {
            boolean loses = box.model().kind() == Kind.DI && out.level() == LevelClass.MIC; // and phantom power with it
            if (!loses && FreePorts.agree(out, box.in().port())) {
                offerSplit(node, out, box, cable, offers);
            }
        }
    }

    private void offer(int node, Port out, Box box, Possible.Offers offers) {
        Signal leaves = box.out().port().signal();
        if (leaves == null) {
            return;
        }
        for (int to : free.taking(leaves, box.outChannel())) {
            Port in = free.portOf(to);
            if (in != null
                    && free.isFree(to)
                    && graph.pieceNumber(to) != graph.pieceNumber(node)
                    && FreePorts.agree(box.out().port(), in)) {
                Step step = convert(node, to, out, in, box);
                if (step != null) {
                    offers.offer(to, List.of(step), box.delay(), 0);
                }
            }
        }
    }

    private @Nullable Step convert(int from, int to, Port out, Port in, Box box) {
        Address one = port(from);
        Address other = port(to);
        String key = "convert " + one + " - " + box.model().id() + "."
                + box.in().name() + "." + box.out().name() + " - " + other;
        steps.computeIfAbsent(key, k -> {
            Equipment target = graph.piece(to).equipment();
            Runs.Choice before = runs.choose(
                    out, box.in().port(), runs.between(graph.piece(from).equipment(), target));
            Runs.Choice after = runs.choose(box.out().port(), in, new Runs.Run(Runs.SLACK_M, List.of(), false));
            if (before == null || after == null) {
                return NONE;
            }
            BigDecimal price = price(box.model()).add(before.price()).add(after.price());
            long cost = Cost.of(Cost.hundredths(price), MOUNTING_MINUTES + before.minutes() + after.minutes(), 3);
            return new Step(k, cost, Set.of(free.port(from), free.port(to)), (now, ids) -> {
                Equipment piece = piece(ids, box.model(), target);
                Cable first = PossibleCables.cable(ids.cable(), before, one, at(piece, box.in()));
                Cable second = PossibleCables.cable(ids.cable(), after, at(piece, box.out()), other);
                return new Step.Done(
                        List.of(put(piece), put(first), put(second)),
                        List.of(
                                "Add a " + box.model().id() + " (" + piece.id() + ")" + where(piece) + ".",
                                "Cable it: " + PossibleCables.said(before) + " from " + Said.place(one)
                                        + " to its "
                                        + box.in().name() + ", " + PossibleCables.said(after)
                                        + " from its "
                                        + box.out().name() + " to " + Said.place(other) + "."),
                        assumed(box.model(), before, after));
            });
        });
        return none(steps.get(key));
    }

    private static @Nullable Step none(@Nullable Step step) {
        return step == null || step.key().equals("") ? null : step;
    }

    private static final Step NONE =
            new Step("", 0, Set.of(), (now, ids) -> new Step.Done(List.of(), List.of(), List.of()));

    private void offerSplit(int node, Port out, Box box, String cable, Possible.Offers offers) {
        Signal signal = box.out().port().signal();
        if (signal == null) {
            return;
        }
        for (int to : free.taking(signal, box.outChannel())) {
            Port in = free.portOf(to);
            if (in != null
                    && free.isFree(to)
                    && graph.pieceNumber(to) != graph.pieceNumber(node)
                    && FreePorts.agree(box.out().port(), in)) {
                Step step = split(node, to, out, in, box, cable);
                if (step != null) {
                    offers.offer(to, List.of(step), box.delay(), 0);
                }
            }
        }
    }

    private @Nullable Step split(int from, int to, Port out, Port in, Box box, String id) {
        Cable cable = graph.project.cables().get(id);
        Address one = port(from);
        Address other = port(to);
        Socket second = box.through();
        if (cable == null || second == null) {
            return null;
        }
        boolean starts = cable.from() != null && cable.from().text().equals(one.toString());
        Ref far = starts ? ref(cable.to()) : ref(cable.from());
        if (far == null) {
            return null;
        }
        String key = "split " + one + " by " + box.model().id() + "." + box.in().name() + "."
                + box.out().name() + "." + second.name() + " - " + other;
        steps.computeIfAbsent(key, k -> {
            Equipment source = graph.piece(from).equipment();
            Runs.Choice before = runs.choose(out, box.in().port(), new Runs.Run(Runs.SLACK_M, List.of(), false));
            Runs.Choice after = runs.choose(
                    box.out().port(), in, runs.between(source, graph.piece(to).equipment()));
            if (before == null || after == null) {
                return NONE;
            }
            BigDecimal price = price(box.model()).add(before.price()).add(after.price());
            long cost = Cost.of(Cost.hundredths(price), MOUNTING_MINUTES + before.minutes() + after.minutes(), 4);
            return new Step(k, cost, Set.of(free.port(to)), (now, ids) -> {
                Equipment piece = piece(ids, box.model(), source);
                Ref firstOut = new Ref(at(piece, second).toString());
                Cable moved = starts ? Lives.moved(cable, firstOut, far) : Lives.moved(cable, far, firstOut);
                Cable feeds = PossibleCables.cable(ids.cable(), before, one, at(piece, box.in()));
                Cable added = PossibleCables.cable(ids.cable(), after, at(piece, box.out()), other);
                return new Step.Done(
                        List.of(put(piece), put(moved), put(feeds), put(added)),
                        List.of(
                                "Add a " + box.model().id() + " (" + piece.id() + ")" + where(piece) + " after "
                                        + Said.place(one) + ".",
                                "Move cable " + id + " to its " + second.name() + "; run "
                                        + PossibleCables.said(after) + " from its "
                                        + box.out().name() + " to " + Said.place(other) + "."),
                        assumed(box.model(), before, after));
            });
        });
        return none(steps.get(key));
    }

    /** Another out that gives what comes in unchanged; null for none. */
    private static @Nullable Socket through(Layout layout, Layout.Inside way, Socket in, Socket out) {
        for (Layout.Inside route : layout.routes) {
            Layout.Local to = layout.nodes.get(route.to());
            Socket socket = to.socket();
            String channel = layout.nodes.get(route.from()).spot().channel();
            if (route.from() == way.from()
                    && socket != null
                    && !socket.name().equals(out.name())
                    && FreePorts.agree(in.port(), socket.port())
                    && channel != null
                    && channel.equals(to.spot().channel())) {
                return socket;
            }
        }
        return null;
    }

    private static @Nullable Ref ref(housewright.model.@Nullable End end) {
        return end == null ? null : end.ref();
    }

    private static Change put(Equipment piece) {
        return new Change.Put(Section.EQUIPMENT, piece.id(), piece);
    }

    private static Change put(Cable cable) {
        return new Change.Put(Section.CABLES, cable.id(), cable);
    }

    private Equipment piece(NewIds ids, Model model, Equipment beside) {
        return new Equipment(
                ids.named(model.id()),
                model.id(),
                runs.place(beside),
                Life.NEW,
                beside.circuit(),
                null,
                Map.of(),
                null,
                (Fitted) null,
                null,
                null,
                null,
                null,
                Map.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                Remarks.NONE);
    }

    private static String where(Equipment piece) {
        return piece.at() == null ? "" : " at " + Said.name(piece.at());
    }

    private static List<String> assumed(Model model, Runs.Choice before, Runs.Choice after) {
        List<String> assumed = new ArrayList<>(PossibleCables.assumed(before));
        assumed.addAll(PossibleCables.assumed(after));
        if (model.price() == null) {
            assumed.add(model.id() + " has no price and is counted as 0");
        } else {
            assumed.add("the price of " + model.id() + " is a typical one");
        }
        if (model.power() != null) {
            assumed.add("there is a mains outlet for it");
        }
        return assumed;
    }

    private static BigDecimal price(Model model) {
        BigDecimal price = model.price();
        return price == null ? BigDecimal.ZERO : price;
    }

    private static Address at(Equipment piece, Socket socket) {
        return new Address(piece.id(), new Spot(socket.name(), null));
    }

    private Address port(int node) {
        return new Address(graph.piece(node).id(), new Spot(graph.spot(node).name(), null));
    }

    private static Stream<Model> models(Types types) {
        return types.modelIds().stream()
                .flatMap(id -> types.findModel(id).stream())
                .filter(model -> CONVERTING.contains(model.kind()) || model.kind() == Kind.SPLITTER);
    }

    /** The price of the cheapest there is; null where there is none. */
    static @Nullable BigDecimal cheapest(Types types) {
        return models(types)
                .map(PossibleBoxes::price)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    /** Reads the types that convert or split, once, and only when a mend wants them. */
    private void learn() {
        if (known) {
            return;
        }
        known = true;
        models(signals.types()).forEach(model -> learn(graph.builder.layouts.of(model)));
    }

    private void learn(Layout layout) {
        for (Layout.Inside route : layout.routes) {
            Layout.Local from = layout.nodes.get(route.from());
            Layout.Local to = layout.nodes.get(route.to());
            Socket in = from.socket();
            Socket out = to.socket();
            String arrives = from.spot().channel();
            String leaves = to.spot().channel();
            if (in == null || out == null || arrives == null || leaves == null) {
                continue;
            }
            Signal signal = in.port().signal();
            if (signal == null) {
                continue;
            }
            Box box = new Box(
                    layout, in, out, leaves, through(layout, route, in, out), graph.builder.insideDelay(layout, route));
            boolean converts = !FreePorts.agree(in.port(), out.port());
            Entry entry = new Entry(signal, arrives);
            if (converts) {
                converters.computeIfAbsent(entry, key -> new ArrayList<>()).add(box);
            }
            if (box.through() != null && (converts || arrives.equals(leaves))) {
                splitters.computeIfAbsent(entry, key -> new ArrayList<>()).add(box);
            }
        }
    }
}
