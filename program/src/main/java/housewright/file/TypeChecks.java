package housewright.file;

import housewright.model.Channels;
import housewright.model.Join;
import housewright.model.LocalRef;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Patchable;
import housewright.model.Port;
import housewright.model.Route;
import housewright.model.Shape;
import housewright.model.Switch;
import housewright.model.WordingException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Holds what a type of equipment says of its inside against its own ports and points. */
final class TypeChecks {
    /** The most ports, channels and points a type may have; anything near it is a slip. */
    private static final long LARGEST = 100_000;

    private static final int MOST_CHANNELS = NamePattern.MOST;

    /** One thing wrong, with the way to it from the model. */
    record Trouble(List<Object> path, String found, String expected) {}

    private final Model model;
    private final Budget budget;
    private final List<Trouble> troubles = new ArrayList<>();

    private TypeChecks(Model model, Budget budget) {
        this.model = model;
        this.budget = budget;
    }

    static List<Trouble> of(Model model, Budget budget) {
        TypeChecks checks = new TypeChecks(model, budget);
        checks.check();
        return checks.troubles;
    }

    /** How many ports, channels and points its ranges stand for, at least. */
    static long size(Model model) {
        long size = 0;
        for (Map.Entry<NamePattern, Port> entry : model.ports().entrySet()) {
            Channels channels = entry.getValue().channels();
            long each = channels == null ? 34 : 2L + Math.max(0, channels.in()) + Math.max(0, channels.out());
            size += entry.getKey().names().size() * each;
        }
        for (NamePattern points : model.points()) {
            size += points.names().size();
        }
        return size + 4096L * 2 * Math.max(0, model.ties().size() - 10);
    }

    private void check() {
        model.ports().forEach(this::port);
        if (!troubles.isEmpty()) {
            return; // the rest would only say it again
        }
        long size = size(model);
        if (size > LARGEST || !budget.spend(size)) {
            add("a type of " + size + " ports, channels and points", "at most " + LARGEST);
            return;
        }
        Shape shape = Shape.of(model);
        points(shape);
        for (int i = 0; i < model.routes().size(); i++) {
            Route route = model.routes().get(i);
            int index = i;
            attempt(() -> join(shape, route.join()), "routes", index);
        }
        Patchable patch = model.patch();
        if (patch != null) {
            for (int i = 0; i < patch.joins().size(); i++) {
                Join join = patch.joins().get(i);
                int index = i;
                attempt(() -> join(shape, join), "patch", index);
            }
        }
        model.switches().forEach((id, gate) -> gates(shape, id, gate));
    }

    private void port(NamePattern names, Port port) {
        int ways = (port.in() != null ? 1 : 0)
                + (port.out() != null ? 1 : 0)
                + (port.both() != null ? 1 : 0)
                + (port.passive() ? 1 : 0);
        if (ways != 1) {
            add(
                    ways == 0 ? "neither in, out, both nor passive" : "more than one of in, out, both and passive",
                    "one of them: a signal that arrives (in), leaves (out) or goes both ways, or passive: yes",
                    "ports",
                    names.text());
        }
        Channels channels = port.channels();
        if (channels != null
                && (channels.in() < 0
                        || channels.out() < 0
                        || channels.in() > MOST_CHANNELS
                        || channels.out() > MOST_CHANNELS)) {
            add(
                    channels.in() + " in and " + channels.out() + " out",
                    "0 to " + MOST_CHANNELS + " channels each way",
                    "ports",
                    names.text(),
                    "channels");
        }
    }

    private void points(Shape shape) {
        Set<String> before = new HashSet<>();
        for (int i = 0; i < model.points().size(); i++) {
            for (String name : model.points().get(i).names()) {
                boolean port = shape.findSocket(name).isPresent();
                if (port || !before.add(name)) {
                    add(
                            Shown.quoted(name) + (port ? ", which is a port" : " a second time"),
                            "a name of its own: ports and points share theirs",
                            "points",
                            i);
                    break;
                }
            }
        }
    }

    private void join(Shape shape, Join join) {
        for (Join.Pair pair : join.pairs()) {
            long from = shape.findSocket(pair.from().name())
                    .map(socket -> (long) socket.arriving().size())
                    .orElse(1L);
            long to = shape.findSocket(pair.to().name())
                    .map(socket -> (long) socket.leaving().size())
                    .orElse(1L);
            if (!budget.spend(1 + from * to / 16)) {
                throw new WordingException(join.text(), "ranges that all together stand for fewer places");
            }
            shape.channels(pair);
        }
    }

    private void gates(Shape shape, String id, Switch gate) {
        for (int i = 0; i < gate.gates().size(); i++) {
            LocalRef gated = gate.gates().get(i);
            if (!budget.spend(gated.isRange() ? 1 + size(model) : 1)) {
                add("gates that stand for too many channels", "fewer", "switches", id, "gates", i);
                return;
            }
            attempt(() -> shape.gated(gated), "switches", id, "gates", i);
        }
    }

    private void attempt(Runnable reading, Object... path) {
        if (budget.isSpent() && !troubles.isEmpty()) {
            return; // it has been said, and the rest would take long
        }
        try {
            reading.run();
        } catch (WordingException e) {
            add(Shown.quoted(e.found()), e.expected(), path);
        }
    }

    private void add(String found, String expected, Object... path) {
        troubles.add(new Trouble(List.of(path), found, expected));
    }
}
