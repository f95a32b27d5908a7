package housewright.file;

import housewright.model.Equipment;
import housewright.model.Join;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Shape;
import housewright.model.Types;
import housewright.model.WordingException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Ports, points and channels of the equipment. A thing whose type is not known yet, or whose sockets nobody has
 * counted, has whatever is named; one whose type changes has what either type has.
 */
final class PlaceNames {
    /** The most ports, channels and points of one type that are looked at. */
    private static final int LARGEST_TYPE = 100_000;

    /** What a place is named for. */
    enum Use {
        LEAVES,
        ARRIVES,
        /** A port, without a channel. */
        CABLE,
        /** A port that sends, or a channel of it. */
        RADIO_LEAVES,
        RADIO_ARRIVES,
        ANY
    }

    /** @param word what of the text to compare with the candidates */
    record Trouble(String found, String expected, String word, Collection<String> candidates) {}

    private final Project project;
    private final Types types;
    private final Binder binder;
    private final Budget budget;
    private final Map<String, Optional<Shape>> shapes = new HashMap<>();

    PlaceNames(Project project, Types types, Binder binder, Budget budget) {
        this.project = project;
        this.types = types;
        this.binder = binder;
        this.budget = budget;
    }

    /** What is wrong with the first place of the reference that is wrong; null where all are there. */
    @Nullable
    Trouble trouble(Ref ref, Use use) {
        if (!budget.spend(1)) {
            return TOO_MUCH;
        }
        for (Ref.Address address : ref.addresses()) {
            Equipment thing = project.equipment().get(address.thing());
            if (thing == null) {
                if (binder.isBroken("equipment", address.thing())) {
                    continue;
                }
                return new Trouble(
                        ref.text(),
                        "a piece of equipment before the dot",
                        address.thing(),
                        project.equipment().keySet());
            }
            Trouble trouble = eachState(thing, shape -> trouble(shape, address.spot(), use));
            if (trouble != null) {
                return trouble;
            }
        }
        return null;
    }

    /** As above, for what a device's settings name. */
    @Nullable
    Trouble trouble(String thingId, LocalRef ref, boolean anything) {
        Equipment thing = project.equipment().get(thingId);
        if (thing == null) {
            return null;
        }
        for (Spot spot : ref.spots()) {
            Trouble trouble = eachState(thing, shape -> {
                if (anything) {
                    boolean isSwitch =
                            spot.channel() == null && shape.model().switches().containsKey(spot.name());
                    return isSwitch ? null : trouble(shape, spot, Use.ANY);
                }
                return shape.findSocket(spot.name()).isPresent() ? null : unknownPort(shape, spot);
            });
            if (trouble != null) {
                return trouble;
            }
        }
        return null;
    }

    /**
     * What is wrong with a join.
     *
     * @throws WordingException where its sides do not fit each other
     */
    @Nullable
    Trouble trouble(String thingId, PatchEntry entry) {
        Equipment thing = project.equipment().get(thingId);
        long places =
                (long) entry.from().spots().size() * Math.max(1, entry.to().size());
        if (thing == null || !budget.spend(places)) {
            return thing == null ? null : TOO_MUCH;
        }
        for (Join.Pair pair : entry.join().pairs()) {
            Trouble trouble = eachState(thing, shape -> trouble(shape, pair));
            if (trouble != null) {
                return trouble;
            }
        }
        return null;
    }

    private static final Trouble TOO_MUCH =
            new Trouble("…", "ranges that all together stand for fewer places", "", List.of());

    private interface Check {
        @Nullable
        Trouble in(Shape shape);
    }

    /** Null where any of the thing's types, today's or the new one, has what is named. */
    private @Nullable Trouble eachState(Equipment thing, Check check) {
        Optional<Shape> shape = shape(thing.model());
        if (shape.isEmpty()) {
            return null;
        }
        Trouble trouble = check.in(shape.get());
        if (trouble == null || thing.was() == null || thing.was().model() == null) {
            return trouble;
        }
        Optional<Shape> today = shape(thing.was().model());
        return today.isEmpty() || check.in(today.get()) == null ? null : trouble;
    }

    /** Empty where anything may be named. */
    private Optional<Shape> shape(@Nullable String modelId) {
        if (modelId == null) {
            return Optional.empty();
        }
        Optional<Shape> known = shapes.get(modelId);
        if (known == null) {
            known = types.findModel(modelId)
                    .filter(Model::portsKnown)
                    .filter(model -> TypeChecks.size(model) <= LARGEST_TYPE)
                    .map(Shape::of);
            shapes.put(modelId, known);
        }
        return known;
    }

    private @Nullable Trouble trouble(Shape shape, Join.Pair pair) {
        Shape.Socket from = shape.findSocket(pair.from().name()).orElse(null);
        Shape.Socket to = shape.findSocket(pair.to().name()).orElse(null);
        if (from == null && !shape.points().contains(pair.from().name())) {
            return unknown(shape, pair.from());
        }
        if (to == null && !shape.points().contains(pair.to().name())) {
            return unknown(shape, pair.to());
        }
        if (from != null
                && to != null
                && !budget.spend(
                        1 + (long) from.arriving().size() * to.leaving().size() / 16)) {
            return TOO_MUCH;
        }
        try {
            shape.channels(pair);
            return null;
        } catch (WordingException e) {
            return new Trouble(e.found(), e.expected(), "", List.of());
        }
    }

    private @Nullable Trouble trouble(Shape shape, Spot spot, Use use) {
        Shape.Socket socket = shape.findSocket(spot.name()).orElse(null);
        boolean point = shape.points().contains(spot.name());
        if (use == Use.CABLE) {
            if (socket == null) {
                return unknownPort(shape, spot);
            }
            return spot.channel() == null
                    ? null
                    : new Trouble(spot.toString(), "a port without a channel: a cable takes them all", "", List.of());
        }
        if (socket == null && !point) {
            return unknown(shape, spot);
        }
        try {
            switch (use) {
                case LEAVES -> shape.leaving(spot);
                case ARRIVES -> shape.arriving(spot);
                case RADIO_LEAVES, RADIO_ARRIVES -> radio(shape, spot, use);
                case ANY, CABLE -> named(shape, spot);
            }
            return null;
        } catch (WordingException e) {
            return new Trouble(e.found(), e.expected(), "", List.of());
        }
    }

    private static void radio(Shape shape, Spot spot, Use use) {
        Shape.Socket socket = shape.findSocket(spot.name()).orElse(null);
        if (socket == null) {
            throw new WordingException(
                    spot.toString(), "an antenna port of " + shape.model().id());
        }
        boolean fits =
                use == Use.RADIO_LEAVES ? socket.port().leaves() : socket.port().arrives();
        if (!fits) {
            throw new WordingException(
                    spot.toString(),
                    use == Use.RADIO_LEAVES ? "a port where signal leaves" : "a port where signal arrives");
        }
        named(shape, spot);
    }

    /** The channel, where one is named, must be one of the port's either way. */
    private static void named(Shape shape, Spot spot) {
        Shape.Socket socket = shape.findSocket(spot.name()).orElse(null);
        if (spot.channel() == null || (socket != null && socket.open())) {
            return;
        }
        if (socket != null && socket.arriving().contains(spot.channel())) {
            return;
        }
        if (socket == null || !socket.port().arrives() || socket.port().leaves()) {
            shape.leaving(spot);
        } else {
            shape.arriving(spot);
        }
    }

    private static Trouble unknownPort(Shape shape, Spot spot) {
        return new Trouble(
                spot.toString(),
                "a port of " + shape.model().id(),
                spot.name(),
                shape.sockets().keySet());
    }

    private Trouble unknown(Shape shape, Spot spot) {
        if (!budget.spend(shape.sockets().size() + shape.points().size())) {
            return TOO_MUCH;
        }
        List<String> names = new ArrayList<>(shape.sockets().keySet());
        names.addAll(shape.points());
        return new Trouble(
                spot.toString(), "a port or point of " + shape.model().id(), spot.name(), names);
    }
}
