package housewright.testing;

import housewright.model.About;
import housewright.model.AcceptedPlan;
import housewright.model.Adapter;
import housewright.model.Budget;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Channels;
import housewright.model.Circuit;
import housewright.model.Control;
import housewright.model.Days;
import housewright.model.Drum;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.EquipmentToday;
import housewright.model.Event;
import housewright.model.Exemption;
import housewright.model.Feed;
import housewright.model.Hire;
import housewright.model.Join;
import housewright.model.LabourUnit;
import housewright.model.Latency;
import housewright.model.LightData;
import housewright.model.Lighting;
import housewright.model.LocalRef;
import housewright.model.LogEntry;
import housewright.model.Look;
import housewright.model.MadeFile;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Needs;
import housewright.model.NetworkSend;
import housewright.model.Order;
import housewright.model.PatchEntry;
import housewright.model.Patchable;
import housewright.model.Pathway;
import housewright.model.Person;
import housewright.model.Pin;
import housewright.model.Place;
import housewright.model.PlannedTask;
import housewright.model.Port;
import housewright.model.Practice;
import housewright.model.Project;
import housewright.model.Question;
import housewright.model.RadioLink;
import housewright.model.Ref;
import housewright.model.Room;
import housewright.model.Route;
import housewright.model.Setting;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.model.SiteState;
import housewright.model.SpareRule;
import housewright.model.Switch;
import housewright.model.Target;
import housewright.model.Task;
import housewright.model.Tie;
import housewright.model.Venue;
import housewright.model.Way;
import housewright.unit.Length;
import housewright.unit.TimeSpan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * Random projects in which every reference leads somewhere and every section is used: valid to read and write, though no
 * hall is like them. The same seed gives the same project.
 */
public final class RandomProjects extends RandomRecords {
    private final int size;

    private final List<String> rooms = new ArrayList<>();
    private final List<String> places = new ArrayList<>();
    private final List<String> pathways = new ArrayList<>();
    private final List<String> circuits = new ArrayList<>();
    private final Map<String, Shape> shapes = new LinkedHashMap<>();
    private final List<String> cableTypes = new ArrayList<>();
    private final List<String> adapters = new ArrayList<>();
    private final Map<String, @Nullable String> things = new LinkedHashMap<>();
    private final List<String> cables = new ArrayList<>();
    private final List<String> feeds = new ArrayList<>();
    private final List<String> looks = new ArrayList<>();
    private final List<String> people = new ArrayList<>();
    private final List<String> hires = new ArrayList<>();
    private final List<String> events = new ArrayList<>();
    private final List<String> files = new ArrayList<>();
    private final List<String> tasks = new ArrayList<>();

    private RandomProjects(Random random, int size) {
        super(random);
        this.size = size;
    }

    /** A small one: a few entries in each section. */
    public static Project of(long seed) {
        return of(seed, 4);
    }

    /** @param size about how many entries each section has */
    public static Project of(long seed, int size) {
        return new RandomProjects(new Random(seed), size).project();
    }

    private Project project() {
        ids(rooms);
        ids(places);
        ids(pathways);
        ids(circuits);
        ids(cableTypes);
        cableTypes.add("speaker-2x" + random.nextInt(9) + ".5");
        ids(adapters);
        ids(cables);
        ids(feeds);
        ids(looks);
        ids(people);
        ids(hires);
        ids(events);
        ids(files);
        ids(tasks);
        List<String> models = new ArrayList<>();
        ids(models);
        Map<String, Model> modelById = all(models, (id, given) -> model(id));
        modelById.values().stream().filter(Model::portsKnown).forEach(model -> shapes.put(model.id(), Shape.of(model)));
        List<String> thingIds = new ArrayList<>();
        ids(thingIds);
        thingIds.add("sketch"); // has whatever is named
        for (String id : thingIds) {
            things.put(id, id.equals("sketch") || random.nextInt(6) == 0 ? null : values.pick(models));
        }
        Venue venue = new Venue(
                entities(rooms, Room.class),
                entities(places, Place.class),
                entities(pathways, Pathway.class),
                entities(circuits, Circuit.class));
        return new Project(
                1,
                record(About.class, Map.of("library", 1)),
                venue,
                modelById,
                entities(cableTypes, CableType.class),
                entities(adapters, Adapter.class),
                all(thingIds, this::thing),
                entities(cables, Cable.class),
                patch(thingIds),
                all(
                        fresh(),
                        (id, given) -> record(NetworkSend.class, with(given, "from", leaving(), "to", arriving()))),
                all(
                        fresh(),
                        (id, given) ->
                                record(RadioLink.class, with(given, "from", antenna(false), "to", antenna(true)))),
                pairs(),
                entities(feeds, Feed.class),
                lighting(),
                entities(fresh(), Control.class),
                entities(people, Person.class),
                entities(hires, Hire.class),
                entities(events, Event.class),
                entities(files, MadeFile.class),
                entities(tasks, Task.class),
                entities(fresh(), Question.class),
                entities(fresh(), Order.class),
                random.nextBoolean() ? null : record(Budget.class, Map.of()),
                random.nextBoolean() ? null : record(Practice.class, Map.of()),
                random.nextBoolean() ? null : record(AcceptedPlan.class, Map.of()),
                entities(tasks, LogEntry.class),
                some(() -> record(Exemption.class, Map.of())));
    }

    @Override
    @Nullable
    Object fitting(String place) {
        return switch (place) {
            case "Place.room" -> values.pick(rooms);
            case "Pathway.from", "Pathway.to", "Equipment.at", "EquipmentToday.at" -> values.pick(places);
            case "Circuit.places" -> some(() -> values.pick(places));
            case "Equipment.circuit", "EquipmentToday.circuit" -> values.pick(circuits);
            case "Cable.type", "CableToday.type" -> values.pick(cableTypes);
            case "Cable.via", "CableToday.via" -> some(() -> values.pick(pathways));
            case "Cable.adapters", "CableToday.adapters" -> some(() -> values.pick(adapters));
            case "Cable.from", "Cable.to", "CableToday.from", "CableToday.to" -> end();
            case "Cable.ways", "CableToday.ways" -> some(() -> new Way(socket(), socket()));
            case "Equipment.poweredBy", "EquipmentToday.poweredBy", "Control.press", "Control.does" -> anywhere();
            case "Equipment.gang", "Equipment.partOf", "Equipment.runsOn", "MadeFile.device" -> thingId();
            case "Feed.from" -> some(this::leaving);
            case "Feed.to" -> some(this::arriving);
            case "Feed.through" -> some(this::anywhere);
            case "Look.levels" -> byThing(values::text, place);
            case "Look.colours" -> byThing(values::text, place);
            case "Control.calls" -> values.pick(looks);
            case "Control.at" -> values.pick(events);
            case "Event.at" -> random.nextBoolean() ? "elsewhere" : values.pick(rooms);
            case "Needs.all" -> false;
            case "Event.needs" ->
                random.nextBoolean() ? Needs.ofText("all") : new Needs(false, some(() -> values.pick(feeds)));
            case "MadeFile.madeBy", "Question.to" -> values.pick(people);
            case "Task.who" -> some(() -> values.pick(people));
            case "Task.needs" -> some(() -> values.pick(List.of(thingId(), values.pick(cables), values.pick(hires))));
            case "Practice.labour" -> entities(fresh(), LabourUnit.class);
            case "Practice.spares" -> entities(fresh(), SpareRule.class);
            case "Practice.drums" -> entities(fresh(), Drum.class);
            case "LabourUnit.least" -> TimeSpan.parse("1 min");
            case "LabourUnit.likely" -> TimeSpan.parse("90 s");
            case "LabourUnit.most" -> TimeSpan.parse((2 + random.nextInt(9)) + " h");
            case "LabourUnit.crew", "Task.crew" -> 1 + random.nextInt(4);
            case "Drum.lengths" -> random.nextBoolean() ? List.of() : List.of(Length.ofMetres(1 + random.nextInt(500)));
            case "Drum.types" -> some(() -> values.pick(cableTypes));
            case "LogEntry.state" -> values.pick(List.of(SiteState.BEGUN, SiteState.DONE, SiteState.BLOCKED));
            case "AcceptedPlan.times" -> entities(tasks, PlannedTask.class);
            case "AcceptedPlan.pins" -> entities(tasks, Pin.class);
            case "AcceptedPlan.seed" -> random.nextInt(1000);
            case "PlannedTask.from", "LogEntry.from", "Stretch.from" ->
                values.moment().minusYears(2);
            case "PlannedTask.to", "LogEntry.to", "Stretch.to", "LogEntry.until" -> values.moment();
            case "PlannedTask.people", "Pin.people", "LogEntry.people" -> some(() -> values.pick(people));
            case "PlannedTask.hires" -> some(() -> values.pick(hires));
            case "Task.covers" -> random.nextBoolean() ? List.of() : List.of("print-labels", values.pick(tasks));
            case "Task.after" -> some(() -> values.pick(tasks));
            case "Order.items" -> some(() -> values.pick(List.of(thingId(), values.pick(cableTypes))));
            case "Question.about", "Exemption.subject" ->
                values.pick(List.of(
                        "equipment." + thingId(), "rooms." + values.pick(rooms), "looks." + values.pick(looks)));
            case "Free.days" -> new Days(values.pick(List.of("mon-fri", "sat", "fri-mon", "mon, wed", "sun")));
            case "FixtureSetting.mode" -> null;
            case "Latency.all" -> null; // the short form; the long one with it would have nothing else to say
            default -> ANY;
        };
    }

    private Model model(String id) {
        boolean known = random.nextInt(6) > 0;
        Map<NamePattern, Port> ports = new LinkedHashMap<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            ports.put(pattern("p" + i), port());
        }
        List<NamePattern> points = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            points.add(pattern("t" + i));
        }
        List<Tie> ties = random.nextInt(4) == 0 ? List.of(Tie.parse("front-{1..3} = rear-{1..3}")) : List.of();
        Map<String, Object> given = new LinkedHashMap<>(Map.of(
                "id",
                id,
                "ports",
                ports,
                "points",
                points,
                "ties",
                ties,
                "routes",
                List.of(),
                "switches",
                Map.of(),
                "portsKnown",
                known));
        given.put("patch", null);
        given.put("latency", random.nextBoolean() ? null : latency());
        given.put("light", random.nextBoolean() ? null : record(LightData.class, Map.of()));
        Shape shape = Shape.of(record(Model.class, given));
        List<Route> routes = some(() -> {
            Join join = join(shape);
            return join == null ? null : record(Route.class, Map.of("from", join.from(), "to", join.to()));
        });
        given.put("routes", routes);
        given.put("switches", switches(shape));
        given.put(
                "patch",
                values.pick(List.of(
                        Patchable.FREE,
                        new Patchable(false, some(() -> join(shape))),
                        new Patchable(false, List.of()))));
        return record(Model.class, given);
    }

    private Latency latency() {
        return random.nextBoolean()
                ? Latency.ofText(values.pick(List.of("0.7 ms", "1 frame")))
                : record(Latency.class, Map.of());
    }

    private Map<String, Switch> switches(Shape shape) {
        Map<String, Switch> switches = new LinkedHashMap<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            List<LocalRef> gates = some(() -> {
                List<String> all = new ArrayList<>(shape.points());
                all.addAll(shape.sockets().keySet());
                return all.isEmpty() ? null : new LocalRef(values.pick(all));
            });
            switches.put(name(), new Switch(random.nextBoolean(), gates));
        }
        return switches;
    }

    private NamePattern pattern(String prefix) {
        return new NamePattern(
                switch (random.nextInt(3)) {
                    case 0 -> prefix;
                    case 1 -> prefix + "-{1..4}";
                    default -> prefix + "-{L,R}";
                });
    }

    private Port port() {
        Signal signal = values.pick(List.of(Signal.values()));
        Map<String, Object> given = new LinkedHashMap<>();
        given.put("in", null);
        given.put("out", null);
        given.put("both", null);
        given.put("passive", false);
        int way = random.nextInt(7);
        given.put(way < 2 ? "in" : way < 4 ? "out" : way < 6 ? "both" : "passive", way < 6 ? signal : true);
        Channels alike = new Channels(random.nextInt(9), random.nextInt(9));
        given.put("channels", random.nextBoolean() ? null : random.nextBoolean() ? alike : Channels.ofText("8"));
        return record(Port.class, given);
    }

    private @Nullable Join join(Shape shape) {
        List<String> from = spots(shape, true);
        List<String> to = spots(shape, false);
        if (from.isEmpty() || to.isEmpty()) {
            return null;
        }
        List<LocalRef> targets = new ArrayList<>();
        for (int i = 1 + random.nextInt(2); i > 0; i--) {
            targets.add(new LocalRef(values.pick(to)));
        }
        return new Join(new LocalRef(values.pick(from)), targets);
    }

    /** Points, and channels that arrive or leave, each by its full name or the port's where that will do. */
    private List<String> spots(Shape shape, boolean arriving) {
        List<String> spots = new ArrayList<>(shape.points());
        for (Shape.Socket socket : shape.sockets().values()) {
            List<String> channels = arriving ? socket.arriving() : socket.leaving();
            if (socket.open()
                    && (arriving ? socket.port().arrives() : socket.port().leaves())) {
                spots.add(socket.name() + ":any-1");
            }
            for (String channel : channels) {
                spots.add(socket.name() + ":" + channel);
            }
            if (channels.size() == 1) {
                spots.add(socket.name());
            }
        }
        return spots;
    }

    private Equipment thing(String id, Map<String, Object> given) {
        Shape shape = shapeOf(id);
        List<String> names = new ArrayList<>(shape == null ? List.of("anything", "on") : spots(shape, true));
        List<String> ports =
                new ArrayList<>(shape == null ? List.of("net") : shape.sockets().keySet());
        given.put("model", things.get(id));
        given.put("set", names.isEmpty() ? Map.of() : settings(names));
        given.put("vlans", ports.isEmpty() ? Map.of() : vlans(ports));
        if (random.nextInt(3) == 0) {
            Map<String, Object> today = new LinkedHashMap<>();
            today.put("model", null);
            today.put("set", names.isEmpty() ? Map.of() : settings(names));
            today.put("vlans", ports.isEmpty() ? Map.of() : vlans(ports));
            given.put("was", record(EquipmentToday.class, today));
        } else {
            given.put("was", null);
        }
        return record(Equipment.class, given);
    }

    private Map<LocalRef, Setting> settings(List<String> names) {
        Map<LocalRef, Setting> settings = new LinkedHashMap<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            settings.put(
                    new LocalRef(values.pick(names)),
                    random.nextBoolean() ? Setting.ofText("on") : record(Setting.class, Map.of()));
        }
        return settings;
    }

    private Map<NamePattern, List<Integer>> vlans(List<String> ports) {
        Map<NamePattern, List<Integer>> vlans = new LinkedHashMap<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            vlans.put(new NamePattern(values.pick(ports)), some(() -> random.nextInt(4000)));
        }
        return vlans;
    }

    private Map<String, List<PatchEntry>> patch(List<String> thingIds) {
        Map<String, List<PatchEntry>> patch = new LinkedHashMap<>();
        for (String id : thingIds) {
            if (random.nextBoolean()) {
                Shape shape = shapeOf(id);
                patch.put(id, some(() -> {
                    Join join = shape == null ? Join.parse("a-{1..2} -> b-{1..2}, c") : join(shape);
                    if (join == null) {
                        return null;
                    }
                    PatchEntry plain = new PatchEntry(join.from(), join.to(), null, null, null, null, null);
                    return random.nextBoolean()
                            ? plain
                            : record(PatchEntry.class, Map.of("from", join.from(), "to", join.to()));
                }));
            }
        }
        return patch;
    }

    private Map<String, List<Ref>> pairs() {
        Map<String, List<Ref>> pairs = new LinkedHashMap<>();
        for (String id : fresh()) {
            pairs.put(id, some(this::anywhere));
        }
        return pairs;
    }

    private @Nullable Lighting lighting() {
        return random.nextInt(5) == 0
                ? new Lighting(Map.of(), entities(looks, Look.class))
                : new Lighting(entities(fresh(), Target.class), entities(looks, Look.class));
    }

    private <T> Map<String, T> byThing(java.util.function.Supplier<String> text, String place) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            map.put(thingId(), place.endsWith("levels") ? values.quantity(housewright.unit.Ratio.class) : text.get());
        }
        @SuppressWarnings("unchecked") // either of the two maps that ask for it
        Map<String, T> cast = (Map<String, T>) map;
        return cast;
    }

    private String thingId() {
        return values.pick(List.copyOf(things.keySet()));
    }

    private @Nullable Shape shapeOf(String thing) {
        String model = things.get(thing);
        return model == null ? null : shapes.get(model);
    }

    private Ref leaving() {
        return place((shape, id) -> spots(shape, false));
    }

    private Ref arriving() {
        return place((shape, id) -> spots(shape, true));
    }

    private Ref anywhere() {
        return random.nextBoolean() ? leaving() : arriving();
    }

    private Ref antenna(boolean arriving) {
        return place((shape, id) -> spots(shape, arriving).stream()
                .filter(name -> !shape.points().contains(name))
                .toList());
    }

    private Ref socket() {
        return place((shape, id) -> List.copyOf(shape.sockets().keySet()));
    }

    private End end() {
        return random.nextInt(4) == 0 ? End.UNKNOWN : new End(socket());
    }

    /** A place of a thing that has one; things whose type is not known have any. */
    private Ref place(BiFunction<Shape, String, List<String>> named) {
        for (int tries = 0; tries < 50; tries++) {
            String id = thingId();
            Shape shape = shapeOf(id);
            List<String> names = shape == null ? List.of("anything", "x-1") : named.apply(shape, id);
            if (!names.isEmpty()) {
                return new Ref(id + "." + values.pick(names));
            }
        }
        return new Ref("sketch.anything");
    }

    private void ids(List<String> ids) {
        ids.addAll(fresh());
    }

    private List<String> fresh() {
        Set<String> ids = new LinkedHashSet<>();
        int count = 1 + random.nextInt(size);
        while (ids.size() < count) {
            ids.add(size > 8 ? name() + "-" + ids.size() : name());
        }
        return List.copyOf(ids);
    }

    private <R extends Record> Map<String, R> entities(List<String> ids, Class<R> type) {
        return all(ids, (id, given) -> record(type, given));
    }

    private static <R> Map<String, R> all(List<String> ids, BiFunction<String, Map<String, Object>, R> make) {
        Map<String, R> all = new LinkedHashMap<>();
        for (String id : ids) {
            all.put(id, make.apply(id, new LinkedHashMap<>(Map.of("id", id))));
        }
        return all;
    }

    private static Map<String, Object> with(Map<String, Object> given, Object... more) {
        for (int i = 0; i < more.length; i += 2) {
            given.put((String) more[i], more[i + 1]);
        }
        return given;
    }

    private <T> List<T> some(java.util.function.Supplier<@Nullable T> make) {
        List<T> list = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            T each = make.get();
            if (each != null) {
                list.add(each);
            }
        }
        return list;
    }
}
