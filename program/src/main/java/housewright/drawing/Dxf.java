package housewright.drawing;

import housewright.model.FloorPoint;
import housewright.model.Kind;
import housewright.model.Pathway;
import housewright.model.Place;
import housewright.model.Room;
import housewright.model.SpacePoint;
import housewright.model.Venue;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * The floor plan for whoever draws in CAD: ASCII DXF of release 12, an open published format that every CAD program
 * reads. In metres; rooms, seats, pathways, places and equipment each on a layer of their own, equipment as a block of
 * its kind with its id beside it. Group codes: Autodesk's DXF Reference, release 12 (from memory).
 */
final class Dxf {
    private static final double TEXT = 0.15;
    private static final double BOX = 0.2;
    private static final List<String> LAYERS =
            List.of("0", "ROOMS", "SEATS", "PATHWAYS", "PLACES", "EQUIPMENT", "TEXT");

    private final StringBuilder out = new StringBuilder();
    private final Venue venue;
    private final Things things;

    Dxf(Venue venue, Things things) {
        this.venue = venue;
        this.things = things;
    }

    String write(String title) {
        group(999, plain(title) + ", in metres; what has no position is not on it");
        section("HEADER");
        group(9, "$ACADVER").group(1, "AC1009");
        end();
        tables();
        blocks();
        section("ENTITIES");
        venue.rooms().values().forEach(this::room);
        venue.pathways().values().forEach(this::pathway);
        venue.places().values().forEach(this::place);
        end();
        return group(0, "EOF").out.toString();
    }

    private void tables() {
        section("TABLES");
        group(0, "TABLE").group(2, "LTYPE").group(70, 1);
        group(0, "LTYPE")
                .group(2, "CONTINUOUS")
                .group(70, 0)
                .group(3, "Solid line")
                .group(72, 65)
                .group(73, 0)
                .group(40, 0);
        group(0, "ENDTAB");
        group(0, "TABLE").group(2, "LAYER").group(70, LAYERS.size());
        for (String layer : LAYERS) {
            group(0, "LAYER").group(2, layer).group(70, 0).group(62, 7).group(6, "CONTINUOUS");
        }
        group(0, "ENDTAB");
        end();
    }

    private void blocks() {
        Set<String> kinds = new TreeSet<>();
        venue.places().keySet().forEach(place -> things.at(place).forEach(thing -> kinds.add(block(thing))));
        section("BLOCKS");
        for (String kind : kinds) {
            group(0, "BLOCK").group(8, "0").group(2, kind).group(70, 0);
            point(10, 0, 0, 0).group(3, kind);
            double half = BOX / 2;
            outline("0", true, 0, new double[][] {{-half, -half}, {half, -half}, {half, half}, {-half, half}});
            group(0, "ENDBLK").group(8, "0");
        }
        end();
    }

    private static String block(Things.Thing thing) {
        Kind kind = thing.model() == null ? Kind.OTHER : thing.model().kind();
        return kind.name();
    }

    private void room(Room room) {
        double floor = room.floor() == null ? 0 : room.floor().metres();
        outline("ROOMS", floor, room.outline());
        if (room.seats() != null) {
            outline("SEATS", floor, room.seats().area());
        }
        double[] middle = {0, 0};
        for (FloorPoint point : room.outline()) {
            middle[0] += point.x().metres() / room.outline().size();
            middle[1] += point.y().metres() / room.outline().size();
        }
        if (!room.outline().isEmpty()) {
            text(middle[0], middle[1], floor, 2 * TEXT, room.id());
        }
    }

    private void outline(String layer, double height, List<FloorPoint> points) {
        if (points.size() > 1) {
            double[][] corners = points.stream()
                    .map(point -> new double[] {point.x().metres(), point.y().metres()})
                    .toArray(double[][]::new);
            outline(layer, true, height, corners);
        }
    }

    private void outline(String layer, boolean closed, double height, double[][] points) {
        group(0, "POLYLINE").group(8, layer).group(66, 1);
        point(10, 0, 0, height).group(70, closed ? 1 : 0);
        for (double[] point : points) {
            group(0, "VERTEX").group(8, layer);
            point(10, point[0], point[1], height);
        }
        group(0, "SEQEND").group(8, layer);
    }

    private void pathway(Pathway pathway) {
        Place from = venue.places().get(pathway.from());
        Place to = venue.places().get(pathway.to());
        if (from == null || to == null || from.at() == null || to.at() == null) {
            return;
        }
        group(0, "LINE").group(8, "PATHWAYS");
        at(10, from.at());
        at(11, to.at());
        text(
                (from.at().x().metres() + to.at().x().metres()) / 2,
                (from.at().y().metres() + to.at().y().metres()) / 2,
                from.at().z().metres(),
                TEXT,
                pathway.id());
    }

    private void place(Place place) {
        SpacePoint at = place.at();
        if (at == null) {
            return;
        }
        double x = at.x().metres();
        double y = at.y().metres();
        double z = at.z().metres();
        group(0, "CIRCLE").group(8, "PLACES");
        at(10, at).group(40, number(BOX / 4));
        text(x + BOX, y + TEXT / 2, z, TEXT, place.id());
        double down = y - TEXT;
        for (Things.Thing thing : things.at(place.id())) {
            group(0, "INSERT").group(8, "EQUIPMENT").group(2, block(thing));
            point(10, x, y, z);
            text(x + BOX, down, z, TEXT * 0.8, thing.id());
            down -= TEXT;
        }
    }

    private void text(double x, double y, double z, double height, String words) {
        group(0, "TEXT").group(8, "TEXT");
        point(10, x, y, z).group(40, number(height)).group(1, plain(words));
    }

    private Dxf at(int code, SpacePoint at) {
        return point(code, at.x().metres(), at.y().metres(), at.z().metres());
    }

    private Dxf point(int code, double x, double y, double z) {
        return group(code, number(x)).group(code + 10, number(y)).group(code + 20, number(z));
    }

    private void section(String name) {
        group(0, "SECTION").group(2, name);
    }

    private void end() {
        group(0, "ENDSEC");
    }

    private Dxf group(int code, int value) {
        return group(code, Integer.toString(value));
    }

    /** A code in three columns, and its value in a line of its own. */
    private Dxf group(int code, String value) {
        out.append(String.format(Locale.ROOT, "%3d", code))
                .append('\n')
                .append(value)
                .append('\n');
        return this;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value == 0 ? 0.0 : value);
    }

    /** Release 12 knows no Unicode: what is no ASCII is written as programs since have agreed to. */
    private static String plain(String words) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            plain.append(c < 32 ? " " : c < 127 ? String.valueOf(c) : String.format(Locale.ROOT, "\\U+%04X", (int) c));
        }
        return plain.toString();
    }
}
