package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.StoreException;
import housewright.app.table.Edit;
import housewright.app.table.Edits;
import housewright.app.table.Table;
import housewright.drawing.Drawings;
import housewright.drawing.Plan;
import housewright.drawing.State;
import housewright.finding.Subject;
import housewright.model.FloorPoint;
import housewright.model.Place;
import housewright.model.Room;
import housewright.model.SpacePoint;
import housewright.unit.Length;
import housewright.unit.UnitException;
import housewright.web.Sheets.Drawn;
import housewright.web.page.VenuePage;
import housewright.web.page.VenuePage.Asked;
import housewright.web.view.JtevenueGenerated;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The venue to scale: places moved, pathways drawn, rooms and places added. */
final class VenuePages {
    private static final String AT = "/p/{project}/venue";
    private static final double LONGEST_PLAN_M = 10_000;

    private VenuePages() {}

    static List<Route> routes() {
        return List.of(
                Route.page(AT, Need.LOOK, VenuePages::show),
                Route.page(AT + "/sheet.svg", Need.LOOK, VenuePages::download),
                Route.change(AT + "/place", Need.LEAD, VenuePages::movePlace),
                Route.change(AT + "/places", Need.LEAD, VenuePages::addPlace),
                Route.change(AT + "/pathways", Need.LEAD, VenuePages::addPathway),
                Route.change(AT + "/rooms", Need.LEAD, VenuePages::addRoom));
    }

    private static String at(OpenProject job) {
        return Visit.home(job) + "/venue";
    }

    private static Asked asked(Visit visit) {
        return new Asked(Drawing.state(visit), Drawing.asked(visit, "side"), Drawing.asked(visit, "thing"));
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Drawn drawn = visit.common.sheets().of(visit, job, now);
        Asked asked = asked(visit);
        Plan plan = isEmpty(now) ? null : plan(drawn, asked);
        VenuePage page = VenuePage.of(
                now,
                asked,
                plan,
                sides(drawn, asked.state()),
                new PageLinks(Visit.home(job)),
                Visit.home(job),
                visit.session.role.mayDoAll(),
                Typed.of(visit));
        visit.show(
                job,
                now,
                Page.VENUE,
                "Venue",
                List.of("drawing.js", "plan.js"),
                (output, frame) -> JtevenueGenerated.render(output, null, frame, page));
    }

    private static void download(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Drawn drawn = visit.common.sheets().of(visit, job, job.now());
        Drawing.download(visit, plan(drawn, asked(visit)).sheet());
    }

    private static boolean isEmpty(Now now) {
        return now.project().venue().rooms().values().stream()
                        .allMatch(room -> room.outline().isEmpty())
                && now.project().venue().places().values().stream().allMatch(place -> place.at() == null);
    }

    private static List<Plan> sideViews(Drawn drawn, State state) {
        return drawn.plans("sides " + state, all -> all.sideViews(state));
    }

    private static List<String> sides(Drawn drawn, State state) {
        return sideViews(drawn, state).stream().map(VenuePages::room).toList();
    }

    /** The room that a side view shows: the only one on it. */
    private static String room(Plan side) {
        return side.sheet().subjects().stream()
                .filter(subject -> subject.kind().equals("room"))
                .map(Subject::id)
                .findFirst()
                .orElse("");
    }

    private static Plan plan(Drawn drawn, Asked asked) {
        State state = asked.state();
        String side = asked.side();
        if (side == null) {
            return drawn.plans("plan " + state, (Drawings all) -> List.of(all.floorPlan(state)))
                    .getFirst();
        }
        return sideViews(drawn, state).stream()
                .filter(each -> room(each).equals(side))
                .findFirst()
                .orElseThrow(() -> Refused.notFound("There is no room " + side + " to see from the side."));
    }

    private static void movePlace(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String id = visit.field("place");
        Map<String, String> cells = Map.of("at", point(visit));
        Edit edit = Edits.of(now.study(), Table.PLACES).cells(List.of(id), cells);
        Typed.settle(visit, job, edit, "Moved " + id, at(job), "move");
    }

    /** Three coordinates, in brackets so that odd words in one of them stay in it. */
    private static String point(Visit visit) {
        return "[" + coordinate(visit.field("x")) + ", " + coordinate(visit.field("y")) + ", "
                + coordinate(visit.field("z")) + "]";
    }

    private static String coordinate(String text) {
        return text.isEmpty() || text.chars().anyMatch(c -> ",[]{}\"'#&*!|>%@`".indexOf(c) >= 0)
                ? "\"" + text.replaceAll("[\\p{Cntrl}\"\\\\]", "?") + "\""
                : text;
    }

    private static void addPlace(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Map<String, String> cells = new LinkedHashMap<>();
        String room = visit.field("room");
        cells.put("at", point(visit));
        if (room.isEmpty()) {
            roomAt(now, visit.field("x"), visit.field("y")).ifPresent(found -> cells.put("room", found));
        } else {
            cells.put("room", room);
        }
        if (!visit.field("units").isEmpty()) {
            cells.put("rack.units", visit.field("units"));
        }
        String id = visit.field("id");
        Edit edit = Edits.of(now.study(), Table.PLACES).add(id, cells);
        Typed.settle(visit, job, edit, "Added the place " + id, at(job), "place");
    }

    private static Optional<String> roomAt(Now now, String x, String y) {
        Double across = metres(x);
        Double up = metres(y);
        if (across == null || up == null) {
            return Optional.empty();
        }
        return now.project().venue().rooms().values().stream()
                .filter(room -> holds(room.outline(), across, up))
                .map(Room::id)
                .findFirst();
    }

    /** A ray to the right crosses the outline of what holds the point an odd number of times. */
    private static boolean holds(List<FloorPoint> outline, double x, double y) {
        boolean inside = false;
        for (int i = 0; i < outline.size(); i++) {
            FloorPoint one = outline.get(i);
            FloorPoint other = outline.get((i + 1) % outline.size());
            double y1 = one.y().metres();
            double y2 = other.y().metres();
            if ((y1 > y) != (y2 > y)
                    && x
                            < one.x().metres()
                                    + (y - y1)
                                            / (y2 - y1)
                                            * (other.x().metres() - one.x().metres())) {
                inside = !inside;
            }
        }
        return inside;
    }

    private static @Nullable Double metres(String text) {
        try {
            return Length.parse(text).metres();
        } catch (UnitException e) {
            return null;
        }
    }

    private static void addPathway(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("from", visit.field("from"));
        cells.put("to", visit.field("to"));
        for (String name : List.of("kind", "height", "length")) {
            if (!visit.field(name).isEmpty()) {
                cells.put(name, visit.field(name));
            }
        }
        String id = visit.field("id");
        if (visit.field("length").isEmpty()) {
            Measured measured = measure(visit, now);
            if (measured == null) {
                String height = visit.field("height");
                Typed.refuse(
                        visit,
                        at(job),
                        "pathway",
                        !height.isEmpty() && metres(height) == null
                                ? "Height above the floor: found \"" + height + "\", expected a length such as 3.2 m."
                                : "Say the length: it cannot be measured on the plan while one of the two places has no"
                                        + " position.");
                return;
            }
            cells.put("length", measured.length());
            cells.put("note", measured.note());
        }
        if (visit.field("from").equals(visit.field("to"))) {
            Typed.refuse(visit, at(job), "pathway", "A pathway leads from one place to another.");
            return;
        }
        Edit edit = Edits.of(now.study(), Table.PATHWAYS).add(id, cells);
        Typed.settle(visit, job, edit, "Added the pathway " + id, at(job), "pathway");
    }

    private record Measured(String length, String note) {}

    /** Along the plan as it was clicked, or straight, and up and down to its height at both ends. */
    private static @Nullable Measured measure(Visit visit, Now now) {
        SpacePoint from = position(now, visit.field("from"));
        SpacePoint to = position(now, visit.field("to"));
        if (from == null || to == null) {
            return null;
        }
        double straight = Math.hypot(
                to.x().metres() - from.x().metres(), to.y().metres() - from.y().metres());
        double along = straight;
        int bends = 0;
        if (!visit.field("along").isEmpty()) {
            try {
                along = Double.parseDouble(visit.field("along"));
            } catch (NumberFormatException e) {
                return null;
            }
            bends = Math.clamp(visit.number("bends"), 0, 1000);
        }
        if (!(along >= straight - 0.01 && along <= LONGEST_PLAN_M)) {
            along = straight;
            bends = 0;
        }
        double z1 = from.z().metres();
        double z2 = to.z().metres();
        double rises = Math.abs(z1 - z2);
        String heights = "and the least rise between the two; its height is not known";
        if (!visit.field("height").isEmpty()) {
            Double height = metres(visit.field("height"));
            if (height == null) {
                return null;
            }
            double level = height + floor(now, visit.field("from"));
            rises = Math.abs(z1 - level) + Math.abs(z2 - level);
            heights = "and the rises to its height at both ends";
        }
        String way = bends == 0 ? "straight" : bends == 1 ? "with one bend" : "with " + bends + " bends";
        boolean us = VenuePage.isUs(now);
        return new Measured(
                said(along + rises, us),
                "Length measured on the plan: " + said(along, us) + " " + way + ", " + heights + ". Measure on site.");
    }

    private static double floor(Now now, String placeId) {
        Place place = now.project().venue().places().get(placeId);
        Room room = place == null || place.room() == null
                ? null
                : now.project().venue().rooms().get(place.room());
        return room == null || room.floor() == null ? 0 : room.floor().metres();
    }

    /** To the centimetre, or to the tenth of a foot, rounded up: a cable may be too long, not too short. */
    private static String said(double metres, boolean us) {
        return us
                ? String.format(Locale.ROOT, "%.1f ft", Math.ceil(metres / 0.3048 * 10 - 1e-6) / 10)
                : String.format(Locale.ROOT, "%.2f m", Math.ceil(metres * 100 - 1e-6) / 100);
    }

    private static @Nullable SpacePoint position(Now now, String id) {
        Place place = now.project().venue().places().get(id);
        return place == null ? null : place.at();
    }

    /** A rectangle; its first corner at the building's zero unless somebody says otherwise. */
    private static void addRoom(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        try {
            Length wide = Length.parse(visit.field("width"));
            Length deep = Length.parse(visit.field("depth"));
            Length x = corner(visit.field("x"), wide);
            Length y = corner(visit.field("y"), deep);
            if (wide.metres() <= 0 || deep.metres() <= 0) {
                Typed.refuse(visit, at(job), "room", "Width and depth are more than 0 m.");
                return;
            }
            String right = x.plus(wide).text();
            String back = y.plus(deep).text();
            Map<String, String> cells = new LinkedHashMap<>();
            cells.put(
                    "outline",
                    "[" + x.text() + ", " + y.text() + "], [" + right + ", " + y.text() + "], [" + right + ", " + back
                            + "], [" + x.text() + ", " + back + "]");
            String floor = visit.field("floor").isEmpty() ? "0 m" : visit.field("floor");
            cells.put("floor", floor);
            if (!visit.field("height").isEmpty()) {
                cells.put(
                        "ceiling",
                        Length.parse(visit.field("height"))
                                .plus(Length.parse(floor))
                                .text());
            }
            String id = visit.field("id");
            Edit edit = Edits.of(now.study(), Table.ROOMS).add(id, cells);
            Typed.settle(visit, job, edit, "Added the room " + id, at(job), "room");
        } catch (UnitException e) {
            Typed.refuse(visit, at(job), "room", e.getMessage() == null ? "A length is wrong." : e.getMessage());
        }
    }

    private static Length corner(String text, Length like) {
        return text.isEmpty() ? new Length(0, like.unit()) : Length.parse(text);
    }
}
