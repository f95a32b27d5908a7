package housewright.drawing;

import housewright.finding.Subject;
import housewright.model.FloorPoint;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Pathway;
import housewright.model.Place;
import housewright.model.Room;
import housewright.model.SpacePoint;
import housewright.model.Venue;
import housewright.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** One room from the side, to scale: heights of places, bars, screens and pathways. Seen along its shorter way. */
final class SideView {
    private static final double AROUND = 44;
    private static final double UNDER = 20;
    private static final int LISTED = 4;

    private final Venue venue;
    private final Room room;
    private final Things things;
    private final Measure measure;
    private final boolean us;
    private final boolean alongX;
    private final Set<Subject> drawn = new TreeSet<>();
    private final List<Subject> missing = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final double floor;
    private double left = Double.MAX_VALUE;
    private double right = -Double.MAX_VALUE;
    private double bottom = Double.MAX_VALUE;
    private double top = -Double.MAX_VALUE;

    SideView(Venue venue, Room room, Things things, boolean us) {
        this.venue = venue;
        this.room = room;
        this.things = things;
        this.us = us;
        this.measure = new Measure(us);
        this.alongX =
                span(point -> point.x().metres()) >= span(point -> point.y().metres());
        this.floor = metres(room.floor(), 0);
        for (FloorPoint point : room.outline()) {
            extend(alongX ? point.x().metres() : point.y().metres(), floor);
        }
        if (room.ceiling() != null && !room.outline().isEmpty()) {
            extend(left, room.ceiling().metres());
        }
        for (Place place : venue.places().values()) {
            if (room.id().equals(place.room())) {
                SpacePoint at = place.at();
                if (at == null) {
                    missing.add(new Subject("place", place.id()));
                } else {
                    places.add(place);
                    extend(across(at), at.z().metres());
                    extend(across(at), floor);
                }
            }
        }
        for (Pathway pathway : venue.pathways().values()) {
            if (isHere(pathway) && pathway.height() != null) {
                extend(left, floor + pathway.height().metres());
            }
        }
    }

    boolean isEmpty() {
        return left > right;
    }

    /** Which way one looks, for its title. */
    String seen() {
        return alongX ? "seen along y" : "seen along x";
    }

    Plan draw(String id, Drawings.Naming naming) {
        double wide = Math.max(right - left, 1);
        double high = Math.max(top - bottom, 1);
        Scale scale = Scale.fit(us, wide, high, 2 * AROUND + UNDER);
        double perMetre = scale.unitsPerMetre();
        List<String> notes = new ArrayList<>();
        if (room.ceiling() == null) {
            notes.add("The height of the ceiling is not known.");
        }
        notes.add("Heights are above the building's zero"
                + (floor == 0 ? ", which is this floor." : "; this floor is at " + measure.said(floor) + ".")
                + " A thing of known height is drawn with its middle at the height of its place; check on site.");
        if (places.stream().anyMatch(place -> place.hang() != null)) {
            notes.add(
                    "Overhead: no load on a point whose limit nobody entitled to has stated; rigging is for competent people.");
        }
        notes.addAll(Missing.said(missing));
        Page page = Page.fit(us, 1, wide * perMetre + 2 * AROUND, high * perMetre + 2 * AROUND + UNDER, notes);
        Mapping map =
                new Mapping(perMetre, page.left() + AROUND - left * perMetre, page.top() + AROUND + top * perMetre);
        Page.Heading heading = naming.heading(scale.name());
        Svg svg = page.begin(heading);
        grid(svg, map);
        shell(svg, map);
        Labels labels = new Labels(
                new Laid.Area(map.x(left) - 10, map.y(top) - 30, wide * perMetre + 20, high * perMetre + 30));
        avoid(map, labels);
        for (Place place : places) {
            SpacePoint at = place.at();
            if (at != null) {
                labels.take(new Laid.Area(map.x(across(at)) - 6, map.y(at.z().metres()) - 6, 12, 12));
            }
        }
        seats(svg, map, labels);
        List<Pathway> pathways =
                venue.pathways().values().stream().filter(this::isHere).toList();
        pathways.forEach(pathway -> pathway(svg, map, labels, pathway));
        places.forEach(place -> place(svg, map, labels, place));
        pathways.forEach(pathway -> pathwayName(svg, map, labels, pathway));
        return new Plan(page.end(svg, id, heading, drawn), map, new ArrayList<>(new TreeSet<>(missing)));
    }

    private double span(ToDoubleFunction<FloorPoint> of) {
        double most = room.outline().stream().mapToDouble(of).max().orElse(0);
        return most - room.outline().stream().mapToDouble(of).min().orElse(0);
    }

    private double across(SpacePoint at) {
        return alongX ? at.x().metres() : at.y().metres();
    }

    private static double metres(@Nullable Length length, double otherwise) {
        return length == null ? otherwise : length.metres();
    }

    private void extend(double across, double up) {
        left = Math.min(left, across);
        right = Math.max(right, across);
        bottom = Math.min(bottom, up);
        top = Math.max(top, up);
    }

    private void grid(Svg svg, Mapping map) {
        double step = measure.grid(Math.max(right - left, top - bottom));
        svg.open("g", "class", "grid", "stroke-opacity", 0.25, "aria-hidden", "true");
        for (int n = (int) Math.floor(left / step); n <= Math.ceil(right / step); n++) {
            svg.line(map.x(n * step), map.y(top) - 8, map.x(n * step), map.y(bottom) + 8, Svg.HAIR);
            if (n % measure.figures() == 0) {
                svg.words(map.x(n * step), map.y(bottom) + 24, "middle", measure.said(n * step));
            }
        }
        for (int n = (int) Math.floor(bottom / step); n <= Math.ceil(top / step); n++) {
            svg.line(map.x(left) - 8, map.y(n * step), map.x(right) + 8, map.y(n * step), Svg.HAIR);
            svg.words(map.x(left) - 12, map.y(n * step) + 4, "end", measure.said(n * step));
        }
        svg.close();
    }

    /** Floor and, where its height is known, ceiling with the walls to it. */
    private void shell(Svg svg, Mapping map) {
        double from = map.x(room.outline().isEmpty() ? left : low());
        double to = map.x(room.outline().isEmpty() ? right : low() + span(this::along));
        drawn.add(new Subject("room", room.id()));
        svg.thing("room", room.id(), "room", "Room " + room.id());
        svg.line(from, map.y(floor), to, map.y(floor), Svg.NORMAL);
        if (room.ceiling() != null) {
            double y = map.y(room.ceiling().metres());
            svg.line(from, y, to, y, Svg.NORMAL);
            svg.line(from, y, from, map.y(floor), Svg.NORMAL);
            svg.line(to, y, to, map.y(floor), Svg.NORMAL);
            svg.words(
                    to - 6,
                    y - 6,
                    "end",
                    "ceiling " + measure.said(room.ceiling().metres()));
        }
        svg.close();
    }

    private double along(FloorPoint point) {
        return alongX ? point.x().metres() : point.y().metres();
    }

    private double low() {
        return room.outline().stream().mapToDouble(this::along).min().orElse(0);
    }

    private void seats(Svg svg, Mapping map, Labels labels) {
        if (room.seats() == null || room.seats().area().isEmpty()) {
            return;
        }
        double from =
                room.seats().area().stream().mapToDouble(this::along).min().orElse(0);
        double to = room.seats().area().stream().mapToDouble(this::along).max().orElse(0);
        svg.open("g", "class", "seats");
        if (room.seats().ear() != null) {
            double y = map.y(floor + room.seats().ear().metres());
            svg.line(map.x(from), y, map.x(to), y, Svg.HAIR);
            String said = "seated ear " + measure.said(room.seats().ear().metres());
            double width = TextWidth.of(said, Svg.SMALL);
            labels.take(new Laid.Area(map.x(to) - width, y, width, 16));
            svg.words(map.x(to), y + 13, "end", said);
        }
        svg.close();
    }

    private boolean isHere(Pathway pathway) {
        return places.stream().anyMatch(place -> place.id().equals(pathway.from()))
                && places.stream().anyMatch(place -> place.id().equals(pathway.to()));
    }

    /** Up or down from a place to the pathway's height, along it, and to the other place. */
    private void pathway(Svg svg, Mapping map, Labels labels, Pathway pathway) {
        SpacePoint from = at(pathway.from());
        SpacePoint to = at(pathway.to());
        if (from == null || to == null) {
            return;
        }
        drawn.add(new Subject("pathway", pathway.id()));
        svg.thing("pathway", pathway.id(), "pathway", PathwayWords.of(pathway, measure));
        double x1 = map.x(across(from));
        double x2 = map.x(across(to));
        double y1 = map.y(from.z().metres());
        double y2 = map.y(to.z().metres());
        if (pathway.height() == null) {
            svg.line(x1, y1, x2, y2, Svg.HAIR);
        } else {
            double y = map.y(floor + pathway.height().metres());
            svg.line(x1, y1, x1, y, Svg.HAIR);
            svg.line(x1, y, x2, y, Svg.HAIR);
            svg.line(x2, y, x2, y2, Svg.HAIR);
            labels.avoid(x1, y1, x1, y);
            labels.avoid(x1, y, x2, y);
            labels.avoid(x2, y, x2, y2);
        }
        svg.close();
    }

    private void pathwayName(Svg svg, Mapping map, Labels labels, Pathway pathway) {
        SpacePoint from = at(pathway.from());
        SpacePoint to = at(pathway.to());
        if (from == null || to == null || pathway.height() == null) {
            return;
        }
        double x = (map.x(across(from)) + map.x(across(to))) / 2;
        double y = map.y(floor + pathway.height().metres());
        Laid.Area area = labels.beside(x, y, TextWidth.of(pathway.id(), Svg.SMALL), 14);
        svg.open("g", "class", "pathway-name", "aria-hidden", "true");
        FloorPlan.leader(svg, x, y, area);
        svg.words(area.x(), area.y() + 11, "start", pathway.id());
        svg.close();
    }

    /** Floor, ceiling, and what stands upright: texts had better not cross them. */
    private void avoid(Mapping map, Labels labels) {
        labels.avoid(map.x(left), map.y(floor), map.x(right), map.y(floor));
        if (room.ceiling() != null) {
            double y = map.y(room.ceiling().metres());
            labels.avoid(map.x(left), y, map.x(right), y);
            labels.avoid(map.x(left), y, map.x(left), map.y(floor));
            labels.avoid(map.x(right), y, map.x(right), map.y(floor));
        }
        for (Place place : places) {
            SpacePoint at = place.at();
            for (Things.Thing thing : things.at(place.id())) {
                if (at != null && isTall(thing)) {
                    double x = map.x(across(at));
                    labels.avoid(
                            x,
                            map.y(at.z().metres() - half(thing)),
                            x,
                            map.y(at.z().metres() + half(thing)));
                }
            }
        }
    }

    private void place(Svg svg, Mapping map, Labels labels, Place place) {
        SpacePoint at = place.at();
        if (at == null) {
            return;
        }
        double x = map.x(across(at));
        double y = map.y(at.z().metres());
        drawn.add(new Subject("place", place.id()));
        String height = measure.said(at.z().metres());
        svg.thing("place", place.id(), "place", "Place " + place.id() + ", height " + height);
        Marks.place(svg, place, x, y);
        List<String> lines = new ArrayList<>(List.of(place.id() + " " + height));
        if (place.hang() != null) {
            lines.add(
                    place.hang().limit() == null
                            ? "limit not stated"
                            : "limit " + place.hang().limit().text());
        }
        List<Things.Thing> tall =
                things.at(place.id()).stream().filter(SideView::isTall).toList();
        tall.stream().limit(LISTED).forEach(thing -> lines.addAll(edges(thing, at)));
        if (tall.size() > LISTED) {
            lines.add("and " + (tall.size() - LISTED) + " more");
        }
        double width = lines.stream()
                .mapToDouble(line -> TextWidth.of(line, Svg.SMALL))
                .max()
                .orElse(0);
        Laid.Area area = labels.beside(x, y, width, lines.size() * Svg.LINE);
        FloorPlan.leader(svg, x, y, area);
        double textY = area.y() + 11.5;
        for (String line : lines) {
            svg.words(area.x(), textY, "start", line);
            textY += Svg.LINE;
        }
        svg.close();
        for (Things.Thing thing : tall) {
            extent(svg, map, thing, x, at);
        }
    }

    /** Screens and loudspeakers: those whose edges matter for who sees and hears. */
    private static boolean isTall(Things.Thing thing) {
        Model model = thing.model();
        return model != null
                && model.height() != null
                && (model.kind() == Kind.DISPLAY || model.kind() == Kind.LOUDSPEAKER || model.kind() == Kind.OTHER);
    }

    private List<String> edges(Things.Thing thing, SpacePoint at) {
        double half = half(thing);
        return List.of(
                thing.id() + thing.mark(),
                "from " + measure.said(at.z().metres() - half) + " to "
                        + measure.said(at.z().metres() + half));
    }

    private static double half(Things.Thing thing) {
        Model model = thing.model();
        return model == null ? 0 : metres(model.height(), 0) / 2;
    }

    private void extent(Svg svg, Mapping map, Things.Thing thing, double x, SpacePoint at) {
        double low = map.y(at.z().metres() - half(thing));
        double high = map.y(at.z().metres() + half(thing));
        drawn.add(Subject.equipment(thing.id()));
        svg.thing("equipment", thing.id(), "equipment " + thing.change().word, thing.said());
        svg.line(x, low, x, high, Svg.NORMAL);
        svg.line(x - 5, low, x + 5, low, Svg.NORMAL);
        svg.line(x - 5, high, x + 5, high, Svg.NORMAL);
        svg.close();
    }

    private @Nullable SpacePoint at(@Nullable String place) {
        Place known = place == null ? null : venue.places().get(place);
        return known == null ? null : known.at();
    }
}
