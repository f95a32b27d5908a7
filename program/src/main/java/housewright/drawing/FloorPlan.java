package housewright.drawing;

import housewright.finding.Subject;
import housewright.model.FloorPoint;
import housewright.model.Pathway;
import housewright.model.Place;
import housewright.model.Room;
import housewright.model.SpacePoint;
import housewright.model.Venue;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The venue from above, to scale. */
final class FloorPlan {
    private static final double AROUND = 30;
    private static final double UNDER = 28;
    private static final int LISTED = 4;

    private final Venue venue;
    private final Things things;
    private final Measure measure;
    private final boolean us;
    private final Set<Subject> drawn = new TreeSet<>();
    private final List<Subject> missing = new ArrayList<>();
    private double left = Double.MAX_VALUE;
    private double right = -Double.MAX_VALUE;
    private double bottom = Double.MAX_VALUE;
    private double top = -Double.MAX_VALUE;

    FloorPlan(Venue venue, Things things, boolean us) {
        this.venue = venue;
        this.things = things;
        this.us = us;
        this.measure = new Measure(us);
        for (Room room : venue.rooms().values()) {
            room.outline().forEach(point -> extend(point.x().metres(), point.y().metres()));
            if (room.outline().isEmpty()) {
                missing.add(new Subject("room", room.id()));
            }
        }
        for (Place place : venue.places().values()) {
            SpacePoint at = place.at();
            if (at == null) {
                missing.add(new Subject("place", place.id()));
            } else {
                extend(at.x().metres(), at.y().metres());
            }
        }
        for (Pathway pathway : venue.pathways().values()) {
            if (at(pathway.from()) == null || at(pathway.to()) == null) {
                missing.add(new Subject("pathway", pathway.id()));
            }
        }
        missing.addAll(things.placeless());
    }

    boolean isEmpty() {
        return left > right;
    }

    Plan draw(String id, Drawings.Naming naming) {
        double wide = Math.max(right - left, 1);
        double high = Math.max(top - bottom, 1);
        Scale scale = Scale.fit(us, wide, high, 2 * AROUND + UNDER);
        double perMetre = scale.unitsPerMetre();
        List<String> notes = new ArrayList<>(List.of(
                "Pathways are drawn straight from place to place, not as they run. North is not in the project: x runs to"
                        + " the right, y up."));
        notes.addAll(Missing.said(missing));
        Page page = Page.fit(us, 1, wide * perMetre + 2 * AROUND, high * perMetre + 2 * AROUND + UNDER, notes);
        Mapping map =
                new Mapping(perMetre, page.left() + AROUND - left * perMetre, page.top() + AROUND + top * perMetre);
        Page.Heading heading = naming.heading(scale.name());
        Svg svg = page.begin(heading);
        grid(svg, map);
        Labels labels = new Labels(new Laid.Area(
                page.left() - AROUND / 2, page.top(), wide * perMetre + 3 * AROUND, high * perMetre + 2 * AROUND));
        for (Place place : venue.places().values()) {
            SpacePoint at = place.at();
            if (at != null) {
                labels.take(
                        new Laid.Area(map.x(at.x().metres()) - 6, map.y(at.y().metres()) - 6, 12, 12));
            }
        }
        venue.rooms().values().forEach(room -> walls(svg, map, labels, room.outline()));
        venue.pathways().values().forEach(pathway -> avoid(map, labels, pathway));
        venue.rooms().values().forEach(room -> room(svg, map, labels, room));
        venue.pathways().values().forEach(pathway -> pathway(svg, map, pathway));
        venue.places().values().forEach(place -> place(svg, map, labels, place));
        venue.pathways().values().forEach(pathway -> pathwayName(svg, map, labels, pathway));
        scaleBar(svg, map, page.left() + AROUND, page.top() + high * perMetre + 2 * AROUND + 4);
        return new Plan(page.end(svg, id, heading, drawn), map, new ArrayList<>(new TreeSet<>(missing)));
    }

    private void extend(double x, double y) {
        left = Math.min(left, x);
        right = Math.max(right, x);
        bottom = Math.min(bottom, y);
        top = Math.max(top, y);
    }

    private void grid(Svg svg, Mapping map) {
        double step = measure.grid(Math.max(right - left, top - bottom));
        svg.open("g", "class", "grid", "stroke-width", Svg.HAIR, "stroke-opacity", 0.25, "aria-hidden", "true");
        for (int n = (int) Math.floor(left / step); n <= Math.ceil(right / step); n++) {
            svg.line(map.x(n * step), map.y(top) - 8, map.x(n * step), map.y(bottom) + 8, Svg.HAIR);
            if (n % measure.figures() == 0) {
                svg.words(map.x(n * step), map.y(bottom) + 24, "middle", measure.said(n * step));
            }
        }
        for (int n = (int) Math.floor(bottom / step); n <= Math.ceil(top / step); n++) {
            svg.line(map.x(left) - 8, map.y(n * step), map.x(right) + 8, map.y(n * step), Svg.HAIR);
            if (n % measure.figures() == 0) {
                svg.words(map.x(left) - 12, map.y(n * step) + 4, "end", measure.said(n * step));
            }
        }
        svg.close();
    }

    private void room(Svg svg, Mapping map, Labels labels, Room room) {
        if (room.outline().isEmpty()) {
            return;
        }
        drawn.add(new Subject("room", room.id()));
        svg.thing("room", room.id(), "room", "Room " + room.id());
        if (room.seats() != null && !room.seats().area().isEmpty()) {
            svg.leaf("path", "class", "seats", "d", outline(map, room.seats().area()), "stroke-width", Svg.HAIR);
        }
        svg.leaf("path", "d", outline(map, room.outline()), "stroke-width", Svg.NORMAL);
        double x = room.outline().stream()
                .mapToDouble(point -> point.x().metres())
                .average()
                .orElse(0);
        double y = room.outline().stream()
                .mapToDouble(point -> point.y().metres())
                .average()
                .orElse(0);
        String ceiling = room.ceiling() == null || room.floor() == null
                ? "height not known"
                : measure.said(room.ceiling().metres() - room.floor().metres()) + " high";
        double width = Math.max(TextWidth.of(room.id(), 15), TextWidth.of(ceiling, Svg.SMALL));
        Laid.Area area = labels.beside(map.x(x) - width / 2, map.y(y), width, 34);
        svg.words(area.x(), area.y() + 14, "start", 15, false, room.id());
        svg.words(area.x(), area.y() + 29, "start", ceiling);
        svg.close();
    }

    private void avoid(Mapping map, Labels labels, Pathway pathway) {
        SpacePoint from = at(pathway.from());
        SpacePoint to = at(pathway.to());
        if (from != null && to != null) {
            labels.avoid(
                    map.x(from.x().metres()),
                    map.y(from.y().metres()),
                    map.x(to.x().metres()),
                    map.y(to.y().metres()));
        }
    }

    /** The length of each wall, written along it on its inner side. */
    private void walls(Svg svg, Mapping map, Labels labels, List<FloorPoint> outline) {
        for (int i = 0; i < outline.size(); i++) {
            FloorPoint from = outline.get(i);
            FloorPoint to = outline.get((i + 1) % outline.size());
            double dx = to.x().metres() - from.x().metres();
            double dy = to.y().metres() - from.y().metres();
            double length = Math.hypot(dx, dy);
            labels.avoid(
                    map.x(from.x().metres()),
                    map.y(from.y().metres()),
                    map.x(to.x().metres()),
                    map.y(to.y().metres()));
            String said = measure.said(length);
            double width = TextWidth.of(said, Svg.SMALL);
            if (length * map.unitsPerMetre() < width + 16) {
                continue;
            }
            // the outline runs counter-clockwise: the room is to the left of each wall
            double x = map.x(from.x().metres() + dx / 2) - dy / length * 11;
            double y = map.y(from.y().metres() + dy / 2) - dx / length * 11;
            boolean level = Math.abs(dx) >= Math.abs(dy);
            labels.take(
                    level
                            ? new Laid.Area(x - width / 2, y - 8, width, 16)
                            : new Laid.Area(x - 8, y - width / 2, 16, width));
            svg.open(
                    "g",
                    "class",
                    "dimension",
                    "transform",
                    "translate(" + Svg.num(x) + " " + Svg.num(y) + ")" + (level ? "" : " rotate(-90)"));
            svg.words(0, 4, "middle", said);
            svg.close();
        }
    }

    private static String outline(Mapping map, List<FloorPoint> points) {
        StringBuilder path = new StringBuilder();
        for (FloorPoint point : points) {
            path.append(path.isEmpty() ? 'M' : 'L')
                    .append(Svg.num(map.x(point.x().metres())))
                    .append(' ')
                    .append(Svg.num(map.y(point.y().metres())));
        }
        return path.append('Z').toString();
    }

    private void pathway(Svg svg, Mapping map, Pathway pathway) {
        SpacePoint from = at(pathway.from());
        SpacePoint to = at(pathway.to());
        if (from == null || to == null) {
            return;
        }
        drawn.add(new Subject("pathway", pathway.id()));
        svg.thing("pathway", pathway.id(), "pathway", PathwayWords.of(pathway, measure));
        svg.line(
                map.x(from.x().metres()),
                map.y(from.y().metres()),
                map.x(to.x().metres()),
                map.y(to.y().metres()),
                Svg.HAIR);
        svg.close();
    }

    private void pathwayName(Svg svg, Mapping map, Labels labels, Pathway pathway) {
        SpacePoint from = at(pathway.from());
        SpacePoint to = at(pathway.to());
        if (from == null || to == null) {
            return;
        }
        double width = TextWidth.of(pathway.id(), Svg.SMALL);
        double x = (map.x(from.x().metres()) + map.x(to.x().metres())) / 2;
        double y = (map.y(from.y().metres()) + map.y(to.y().metres())) / 2;
        Laid.Area area = labels.beside(x, y, width, 14);
        svg.open("g", "class", "pathway-name", "aria-hidden", "true");
        leader(svg, x, y, area);
        svg.words(area.x(), area.y() + 11, "start", pathway.id());
        svg.close();
    }

    private void place(Svg svg, Mapping map, Labels labels, Place place) {
        SpacePoint at = place.at();
        if (at == null) {
            return;
        }
        double x = map.x(at.x().metres());
        double y = map.y(at.y().metres());
        drawn.add(new Subject("place", place.id()));
        String name = "Place " + place.id() + " at " + measure.said(at.x().metres()) + ", "
                + measure.said(at.y().metres()) + ", height "
                + measure.said(at.z().metres());
        svg.thing(
                "place",
                place.id(),
                "place",
                name,
                "data-x",
                Svg.num(at.x().metres()),
                "data-y",
                Svg.num(at.y().metres()),
                "data-z",
                Svg.num(at.z().metres()));
        Marks.place(svg, place, x, y);
        List<Things.Thing> here = things.at(place.id());
        boolean rack = place.rack() != null;
        int listed = rack ? 0 : here.size() <= LISTED + 1 ? here.size() : LISTED;
        String rest = here.size() == listed
                ? ""
                : rack ? "rack, " + here.size() + " in it" : "and " + (here.size() - listed) + " more";
        double width = Math.max(TextWidth.of(place.id(), Svg.SMALL), TextWidth.of(rest, Svg.SMALL));
        for (Things.Thing thing : here.subList(0, listed)) {
            width = Math.max(width, TextWidth.mono(thing.id() + thing.mark(), Svg.SMALL));
        }
        int lines = 1 + listed + (rest.isEmpty() ? 0 : 1);
        Laid.Area area = labels.beside(x, y, width, lines * Svg.LINE);
        leader(svg, x, y, area);
        double textY = area.y() + 11.5;
        svg.words(area.x(), textY, "start", place.id());
        svg.close();
        for (Things.Thing thing : here) {
            drawn.add(Subject.equipment(thing.id()));
        }
        for (Things.Thing thing : here.subList(0, listed)) {
            textY += Svg.LINE;
            svg.thing("equipment", thing.id(), "equipment " + thing.change().word, thing.said());
            svg.id(area.x(), textY, "start", thing.id() + thing.mark());
            svg.close();
        }
        if (!rest.isEmpty()) {
            String all = String.join(", ", here.stream().map(Things.Thing::id).toList());
            svg.open("g", "class", "more").open("title").chars(all).close();
            svg.words(area.x(), textY + Svg.LINE, "start", rest);
            svg.close();
        }
    }

    /** From a point to its text, where that is not beside it. */
    static void leader(Svg svg, double x, double y, Laid.Area area) {
        double nearX = Math.clamp(x, area.x(), area.x() + area.width());
        double nearY = Math.clamp(y, area.y(), area.y() + area.height());
        if (Math.hypot(nearX - x, nearY - y) > 14) {
            svg.line(x, y, nearX, nearY, Svg.HAIR);
        }
    }

    private void scaleBar(Svg svg, Mapping map, double x, double y) {
        double metres = measure.grid(Math.max(right - left, top - bottom));
        double step = metres * map.unitsPerMetre();
        int steps = measure.figures();
        svg.open("g", "class", "scale-bar", "aria-hidden", "true");
        for (int n = 0; n < steps; n++) {
            svg.leaf(
                    "rect",
                    "x",
                    x + n * step,
                    "y",
                    y,
                    "width",
                    step,
                    "height",
                    5,
                    "fill",
                    n % 2 == 0 ? "currentColor" : "none");
        }
        svg.words(x, y + 20, "middle", "0");
        svg.words(x + steps * step, y + 20, "middle", measure.said(steps * metres));
        svg.close();
    }

    private @Nullable SpacePoint at(@Nullable String place) {
        Place known = place == null ? null : venue.places().get(place);
        return known == null ? null : known.at();
    }
}
