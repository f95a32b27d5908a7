package housewright.room;

import housewright.model.FixtureSetting;
import housewright.model.FloorPoint;
import housewright.model.Kind;
import housewright.model.LightData;
import housewright.model.Lighting;
import housewright.model.Model;
import housewright.model.Operator;
import housewright.model.Place;
import housewright.model.Room;
import housewright.model.SpacePoint;
import housewright.model.Target;
import housewright.model.Types;
import housewright.room.Plan.Point;
import housewright.signal.Present;
import housewright.unit.Length;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is seen from where, in the rooms of a project at a moment. */
public final class Rooms {
    /** Nearer than this to a work place, a thing is beside it and not on the stage. */
    private static final double BESIDE = 3;

    /** A mouth or a face is at least so high above the floor; lower things are not what people look at. */
    private static final double FACE = 1.4;

    /** A fixture seen higher than this is above the eyes, not in them. */
    private static final double IN_THE_EYES = 40;

    private final Types types;
    private final List<Present> things;
    private final Map<String, Place> places;
    private final List<Present> displays;
    private final List<Place> talked;
    private final List<Present> aimed;
    /** Screens of both kinds, whether they hang or stand. */
    private final List<Present> shown;

    private final Map<String, List<Sight>> sights = new LinkedHashMap<>();
    private final Map<String, Seating> seating = new LinkedHashMap<>();

    private @Nullable List<Workplace> workplaces;

    /** Something on the stage that people look at. */
    private record Sight(String what, boolean target, Point at, double height) {}

    private Rooms(Types types, Map<String, Present> things) {
        this.types = types;
        this.things = List.copyOf(things.values());
        this.places = types.project().venue().places();
        this.displays = this.things.stream()
                .filter(each -> each.model() != null && each.model().kind() == Kind.DISPLAY)
                .toList();
        this.talked = this.things.stream()
                .filter(Rooms::isTalkedInto)
                .flatMap(each -> Stream.ofNullable(place(each)))
                .toList();
        this.aimed = this.things.stream().filter(each -> aimed(each) != null).toList();
        this.shown = this.things.stream()
                .filter(each -> each.model() != null
                        && (each.model().kind() == Kind.PROJECTION_SCREEN
                                || each.model().kind() == Kind.DISPLAY))
                .toList();
        Map<String, Room> rooms = types.project().venue().rooms();
        for (Room room : rooms.values()) {
            List<Sight> all = sights(room);
            if (all.isEmpty()) {
                continue;
            }
            sights.put(room.id(), all);
            double x = 0;
            double y = 0;
            for (Sight each : all) {
                x += each.at().x() / all.size();
                y += each.at().y() / all.size();
            }
            Seating seats = Seating.of(room, new Point(x, y));
            if (seats != null) {
                seating.put(room.id(), seats);
            }
        }
    }

    public static Rooms of(Types types, Map<String, Present> things) {
        return new Rooms(types, things);
    }

    /** Where people speak, sing and play: the places of microphones outside the seats, and the lighting targets. */
    private List<Sight> sights(Room room) {
        List<FloorPoint> seats = room.seats() == null ? List.of() : room.seats().area();
        Map<String, Sight> all = new LinkedHashMap<>();
        Lighting lighting = types.project().lighting();
        if (lighting != null && !room.outline().isEmpty()) {
            for (Target target : lighting.targets().values()) {
                Length height = target.height();
                if (height != null && target.area().size() > 2) {
                    Point middle = Plan.middle(target.area());
                    if (Plan.contains(room.outline(), middle) && !Plan.contains(seats, middle)) {
                        all.put(target.id(), new Sight(target.id(), true, middle, height.metres()));
                    }
                }
            }
        }
        for (Place place : talked) {
            SpacePoint at = place.at();
            if (at != null && stands(place, room)) {
                Point point = point(at);
                if (!Plan.contains(seats, point)) {
                    all.putIfAbsent(
                            "place " + place.id(),
                            new Sight(place.id(), false, point, at.z().metres()));
                }
            }
        }
        return List.copyOf(all.values());
    }

    private static boolean isTalkedInto(Present thing) {
        Model model = thing.model();
        return model != null && (model.kind() == Kind.MICROPHONE || model.kind() == Kind.RADIO_TRANSMITTER);
    }

    private static boolean stands(Place place, Room room) {
        return room.id().equals(place.room()) && place.hang() == null && place.operator() == null;
    }

    private @Nullable Place place(Present thing) {
        String at = thing.equipment().at();
        return at == null ? null : places.get(at);
    }

    private static Point point(SpacePoint at) {
        return new Point(at.x().metres(), at.y().metres());
    }

    /**
     * Where somebody works: places with an operator, those where a desk stands free, and racks in another room that a desk
     * which is not made for one is in. In the order of the file.
     */
    public synchronized List<Workplace> workplaces() {
        List<Workplace> known = workplaces;
        if (known == null) {
            known = List.copyOf(findWorkplaces());
            workplaces = known;
        }
        return known;
    }

    private List<Workplace> findWorkplaces() {
        Map<String, List<String>> desks = new TreeMap<>();
        for (Present thing : things) {
            Place place = place(thing);
            Model model = thing.model();
            if (place != null && place.hang() == null && model != null && model.kind() == Kind.MIXER) {
                // one that is made for a rack is worked from elsewhere, one that is not wants somebody at it
                if (place.rack() == null || (model.rack() == null && elsewhere(place) != null)) {
                    desks.computeIfAbsent(place.id(), key -> new ArrayList<>()).add(thing.id());
                }
            }
        }
        List<Workplace> all = new ArrayList<>();
        for (Place place : places.values()) {
            if (place.operator() != null || desks.containsKey(place.id())) {
                all.add(workplace(place, desks.getOrDefault(place.id(), List.of())));
            }
        }
        return all;
    }

    private Workplace workplace(Place place, List<String> operated) {
        Operator operator = place.operator();
        Room room =
                place.room() == null ? null : types.project().venue().rooms().get(place.room());
        double floor = Seating.metres(
                operator == null ? null : operator.floor(), Seating.metres(room == null ? null : room.floor(), 0));
        double low = Body.LOW_SEATED_EYE;
        double high = Body.HIGH_STANDING_EYE;
        if (operator != null) {
            low = Seating.metres(operator.eye(), operator.stands() ? Body.LOW_STANDING_EYE : Body.LOW_SEATED_EYE);
            high = low;
        }
        SpacePoint at = place.at();
        List<View> views = new ArrayList<>();
        if (room != null && at != null) {
            for (Sight sight : sights.getOrDefault(room.id(), List.of())) {
                View view = view(place, at, room, floor, operator, sight);
                if (view != null) {
                    views.add(view);
                }
            }
        }
        return new Workplace(
                place, operated, operator, floor, floor + low, floor + high, views, onDesk(place), elsewhere(place));
    }

    private @Nullable View view(
            Place place, SpacePoint at, Room room, double floor, @Nullable Operator operator, Sight sight) {
        Point from = point(at);
        double distance = from.to(sight.at());
        Seating seats = seating.get(room.id());
        double[] rows = seats == null ? null : Plan.within(seats.area, from, sight.at());
        boolean low = !sight.target() && sight.height() < Seating.metres(room.floor(), 0) + FACE;
        if (low || distance < BESIDE || (seats != null && rows == null)) {
            return null;
        }
        List<Obstacle> seated = new ArrayList<>();
        List<Obstacle> standing = new ArrayList<>();
        if (seats != null && rows != null) {
            double half = Math.min(seats.depth() / 2, (rows[1] - rows[0]) / 2); // heads are in the middle of a row
            for (double each : new double[] {rows[0] + half, rows[1] - half}) {
                int row = seats.row(along(from, sight.at(), each / distance));
                if (each > 0 && each < distance) {
                    seated.add(new Obstacle("heads", each, seats.headSeated(row)));
                    standing.add(new Obstacle("heads", each, seats.headStanding(row)));
                }
            }
        }
        boolean wall = Plan.contains(room.outline(), from)
                && Plan.contains(room.outline(), sight.at())
                && Plan.isWallBetween(room.outline(), from, sight.at());
        List<Obstacle> screens = new ArrayList<>();
        if (operator != null && operator.screen() != null) {
            screens.add(new Obstacle(
                    "screen", Body.TO_SCREEN, floor + operator.screen().metres()));
        }
        inFront(place, from, sight, screens);
        return new View(sight.what(), sight.target(), distance, sight.height(), wall, screens, seated, standing);
    }

    private static Point along(Point from, Point to, double part) {
        return new Point(from.x() + (to.x() - from.x()) * part, from.y() + (to.y() - from.y()) * part);
    }

    /** Screens at places of their own, that the line of sight runs through. */
    private void inFront(Place desk, Point from, Sight sight, List<Obstacle> screens) {
        for (Present thing : displays) {
            Model model = thing.model();
            Place place = place(thing);
            if (model == null || place == null || place.id().equals(desk.id())) {
                continue;
            }
            SpacePoint at = place.at();
            Length height = model.height();
            Length width = model.width();
            if (at == null || height == null || width == null || place.hang() != null) {
                continue;
            }
            Point stands = point(at);
            double distance = from.to(sight.at());
            double away = ((stands.x() - from.x()) * (sight.at().x() - from.x())
                            + (stands.y() - from.y()) * (sight.at().y() - from.y()))
                    / distance;
            double beside = stands.to(along(from, sight.at(), away / distance));
            if (away > 0 && away < BESIDE && beside < width.metres() / 2) {
                screens.add(new Obstacle(thing.id(), away, at.z().metres() + height.metres()));
            }
        }
    }

    private List<Obstacle> onDesk(Place place) {
        List<Obstacle> screens = new ArrayList<>();
        for (Present thing : displays) {
            Model model = thing.model();
            SpacePoint at = place.at();
            if (model != null
                    && model.height() != null
                    && at != null
                    && place.id().equals(thing.equipment().at())) {
                screens.add(new Obstacle(
                        thing.id(),
                        Body.TO_SCREEN,
                        at.z().metres() + model.height().metres()));
            }
        }
        return screens;
    }

    /** The one room that all microphones are in, where it is not that of the place. */
    private @Nullable String elsewhere(Place place) {
        Set<String> rooms = new LinkedHashSet<>();
        for (Place at : talked) {
            if (at.room() != null && !at.id().equals(place.id())) {
                rooms.add(at.room());
            }
        }
        return place.room() == null || rooms.contains(place.room()) || rooms.size() != 1
                ? null
                : rooms.iterator().next();
    }

    /** For each room and each thing that its rows look at, the row that sees least. */
    public List<RowView> rows() {
        List<RowView> all = new ArrayList<>();
        for (Seating seats : seating.values()) {
            List<Sight> faces = sights.getOrDefault(seats.room, List.of());
            boolean lit = faces.stream().anyMatch(Sight::target);
            for (Sight sight : faces) {
                boolean looked = lit ? sight.target() : sight.height() >= seats.floor + FACE;
                RowView worst = looked
                        ? seats.worst(sight.at(), sight.height(), sight.what(), sight.target() ? "target" : "place")
                        : null;
                if (worst != null) {
                    all.add(worst);
                }
            }
        }
        return all;
    }

    /** A screen with a picture of known size that seats look at. */
    private record Picture(String id, Point at, double middle, double width, double height, boolean projected) {}

    private List<Picture> pictures(String room) {
        List<Picture> all = new ArrayList<>();
        for (Present thing : shown) {
            Model model = thing.model();
            Place place = place(thing);
            if (model == null || place == null || !room.equals(place.room()) || place.at() == null) {
                continue;
            }
            boolean projected = model.kind() == Kind.PROJECTION_SCREEN;
            boolean hangs = model.kind() == Kind.DISPLAY && place.hang() != null;
            Length width = model.width();
            Length height = model.height();
            if ((projected || hangs) && width != null && height != null && height.metres() > width.metres() / 3) {
                SpacePoint at = place.at();
                all.add(new Picture(
                        thing.id(), point(at), at.z().metres(), width.metres(), height.metres(), projected));
            }
        }
        return all;
    }

    /** For each room with seats and screens in front of them, the seat that is worst off. */
    public List<ScreenView> screens() {
        List<ScreenView> all = new ArrayList<>();
        for (Seating seats : seating.values()) {
            List<Picture> pictures = pictures(seats.room);
            ScreenView worst = null;
            for (Seating.Seat seat : pictures.isEmpty() ? List.<Seating.Seat>of() : seats.seats()) {
                ScreenView best = null;
                for (Picture each : pictures) {
                    if (seats.along(each.at()) > seats.along(seat.at())) {
                        ScreenView view =
                                new ScreenView(seats.room, each.id(), seat.at().to(each.at()), each.height());
                        best = best == null || view.ratio() < best.ratio() ? view : best;
                    }
                }
                worst = best != null && (worst == null || best.ratio() > worst.ratio()) ? best : worst;
            }
            if (worst != null) {
                all.add(worst);
            }
        }
        return all;
    }

    /** For each screen in front of seats, the row that sees least of its lower edge. */
    public List<RowView> screenEdges() {
        List<RowView> all = new ArrayList<>();
        for (Seating seats : seating.values()) {
            for (Picture each : pictures(seats.room)) {
                RowView worst = seats.along(each.at()) > seats.along(0)
                        ? seats.worst(each.at(), each.middle() - each.height() / 2, each.id(), "equipment")
                        : null;
                if (worst != null) {
                    all.add(worst);
                }
            }
        }
        return all;
    }

    /** Lighting targets that lie between a projector and the one screen of its room. */
    public List<Shadow> shadows() {
        List<Shadow> all = new ArrayList<>();
        Collection<Target> targets = targets();
        for (Present thing : targets.isEmpty() ? List.<Present>of() : things) {
            Model model = thing.model();
            Place place = place(thing);
            if (model == null || model.kind() != Kind.PROJECTOR || place == null || place.at() == null) {
                continue;
            }
            List<Picture> screens = pictures(String.valueOf(place.room())).stream()
                    .filter(Picture::projected)
                    .toList();
            if (screens.size() == 1) {
                for (Target target : targets) {
                    double depth = inBeam(place.at(), screens.getFirst(), target);
                    if (depth > 0) {
                        all.add(new Shadow(thing.id(), screens.getFirst().id(), target.id(), depth));
                    }
                }
            }
        }
        return all;
    }

    /** How far the top of a head in the target reaches above the lower edge of the beam; 0 where it does not. */
    private static double inBeam(SpacePoint lens, Picture screen, Target target) {
        Length height = target.height();
        Point from = point(lens);
        double distance = from.to(screen.at());
        if (height == null || target.area().size() < 3 || distance == 0) {
            return 0;
        }
        double alongX = (screen.at().x() - from.x()) / distance;
        double alongY = (screen.at().y() - from.y()) / distance;
        double bottom = screen.middle() - screen.height() / 2;
        double deepest = 0;
        List<Point> corners = new ArrayList<>();
        corners.add(Plan.middle(target.area()));
        for (int i = 0; i < target.area().size(); i++) {
            corners.add(new Point(Plan.x(target.area(), i), Plan.y(target.area(), i)));
        }
        for (Point each : corners) {
            double x = each.x() - from.x();
            double y = each.y() - from.y();
            double part = (x * alongX + y * alongY) / distance;
            double aside = Math.abs(-x * alongY + y * alongX);
            if (part > 0 && part < 1 && aside < part * screen.width() / 2) {
                double lower = Sightlines.height(lens.z().metres(), bottom, part, 1);
                deepest = Math.max(deepest, height.metres() + Body.OVER_EYE - lower);
            }
        }
        return deepest;
    }

    /** Fixtures in front of a lighting target and aimed into it, in the order of the file. */
    public List<FaceLight> faceLights() {
        List<FaceLight> all = new ArrayList<>();
        Collection<Target> targets = targets();
        for (Present thing : targets.isEmpty() ? List.<Present>of() : things) {
            SpacePoint hangs = aimed(thing);
            SpacePoint aim = hangs == null ? null : aim(thing);
            for (Target target : aim == null ? List.<Target>of() : targets) {
                if (hangs != null
                        && aim != null
                        && target.facing() != null
                        && target.area().size() > 2
                        && Plan.contains(target.area(), point(aim))) {
                    double x = hangs.x().metres() - aim.x().metres();
                    double y = hangs.y().metres() - aim.y().metres();
                    double facing = target.facing().radians();
                    if (x * Math.cos(facing) + y * Math.sin(facing) > 0.5 * Math.hypot(x, y)) {
                        double up = hangs.z().metres() - aim.z().metres();
                        all.add(new FaceLight(
                                thing.id(), target.id(), Math.toDegrees(Math.atan2(up, Math.hypot(x, y)))));
                    }
                }
            }
        }
        return all;
    }

    private @Nullable SpacePoint aimed(Present thing) {
        Place place = aim(thing) == null ? null : place(thing);
        return place == null ? null : place.at();
    }

    private Collection<Target> targets() {
        Lighting lighting = types.project().lighting();
        return lighting == null ? List.of() : lighting.targets().values();
    }

    private static @Nullable SpacePoint aim(Present thing) {
        FixtureSetting light = thing.equipment().light();
        return light == null ? null : light.aim();
    }

    /** Fixtures within whose beam the eyes of seats are that look towards them, in the order of the file. */
    public List<SeatLight> seatLights() {
        List<SeatLight> all = new ArrayList<>();
        for (Seating seats : seating.values()) {
            List<Seating.Seat> tried = seats.seats();
            for (Present thing : aimed) {
                SpacePoint hangs = aimed(thing);
                SpacePoint aim = aim(thing);
                LightData light = thing.model() == null ? null : thing.model().light();
                Place place = place(thing);
                if (hangs == null || aim == null || light == null || light.beam() == null || place == null) {
                    continue;
                }
                if (!seats.room.equals(place.room())) {
                    continue;
                }
                int lit = 0;
                double lowest = 90;
                for (Seating.Seat seat : tried) {
                    double elevation =
                            elevation(seats, seat, hangs, aim, light.beam().radians() / 2);
                    if (!Double.isNaN(elevation)) {
                        lit++;
                        lowest = Math.min(lowest, elevation);
                    }
                }
                if (lit > 0) {
                    all.add(new SeatLight(thing.id(), place.id(), seats.room, lit, tried.size(), lowest));
                }
            }
        }
        return all;
    }

    /** Elevation of the fixture in degrees, seen by a seat that it dazzles; NaN where it does not. */
    private static double elevation(
            Seating seats, Seating.Seat seat, SpacePoint hangs, SpacePoint aim, double halfBeam) {
        Point fixture = point(hangs);
        double away = fixture.to(seat.at());
        double ahead = seats.along(fixture) - seats.along(seat.at());
        double elevation = Math.toDegrees(Math.atan2(hangs.z().metres() - seat.eye(), away));
        if (ahead < 0.5 * away || elevation < 0 || elevation > IN_THE_EYES) {
            return Double.NaN;
        }
        double[] beam = {
            aim.x().metres() - fixture.x(),
            aim.y().metres() - fixture.y(),
            aim.z().metres() - hangs.z().metres()
        };
        double[] way = {
            seat.at().x() - fixture.x(),
            seat.at().y() - fixture.y(),
            seat.eye() - hangs.z().metres()
        };
        double dot = 0;
        double one = 0;
        double other = 0;
        for (int i = 0; i < 3; i++) {
            dot += beam[i] * way[i];
            one += beam[i] * beam[i];
            other += way[i] * way[i];
        }
        return dot > 0 && Math.acos(Math.min(1, dot / Math.sqrt(one * other))) <= halfBeam ? elevation : Double.NaN;
    }
}
