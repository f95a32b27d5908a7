package housewright.room;

import housewright.model.FloorPoint;
import housewright.model.Room;
import housewright.model.Seats;
import housewright.room.Plan.Point;
import housewright.unit.Length;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The seats of a room, in rows across the way to the stage; the axis along which they look is that of the building. */
final class Seating {
    private static final int ACROSS = 5;

    final String room;
    final List<FloorPoint> area;
    final int rows;
    final double floor;
    final double eye;
    final double rise;
    /** The way they look: along x or along y, up or down. */
    final boolean alongX;

    final int sign;
    private final double front;
    private final double depth;
    private final double left;
    private final double width;

    private Seating(Room room, Seats seats, Point stage) {
        this.room = room.id();
        this.area = seats.area();
        this.rows = seats.rows() == null ? 1 : Math.max(1, seats.rows());
        this.floor = metres(room.floor(), 0);
        this.eye = metres(seats.eye(), Body.AUDIENCE_EYE);
        this.rise = metres(seats.rise(), 0);
        Point middle = Plan.middle(area);
        this.alongX = Math.abs(stage.x() - middle.x()) >= Math.abs(stage.y() - middle.y());
        this.sign = (alongX ? stage.x() - middle.x() : stage.y() - middle.y()) >= 0 ? 1 : -1;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double near = Double.POSITIVE_INFINITY;
        double far = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < area.size(); i++) {
            Point corner = new Point(Plan.x(area, i), Plan.y(area, i));
            least = Math.min(least, along(corner));
            most = Math.max(most, along(corner));
            near = Math.min(near, across(corner));
            far = Math.max(far, across(corner));
        }
        this.front = most;
        this.depth = (most - least) / rows;
        this.left = near;
        this.width = far - near;
    }

    /** Null where nobody says where they are. */
    static @Nullable Seating of(Room room, Point stage) {
        Seats seats = room.seats();
        return seats == null || seats.area().size() < 3 ? null : new Seating(room, seats, stage);
    }

    static double metres(@Nullable Length length, double otherwise) {
        return length == null ? otherwise : length.metres();
    }

    /** How far towards the stage, in m. */
    double along(Point point) {
        return sign * (alongX ? point.x() : point.y());
    }

    double across(Point point) {
        return alongX ? point.y() : point.x();
    }

    /** The eye of a row, counted from 0 at the front, in m above the building's zero. */
    double eye(int row) {
        return floor + eye + rise * row;
    }

    double headSeated(int row) {
        return eye(row) + Body.OVER_EYE;
    }

    double headStanding(int row) {
        return floor + rise * row + Body.STANDING_HEAD;
    }

    double depth() {
        return depth;
    }

    /** Where the eyes of a row are, along the way to the stage. */
    double along(int row) {
        return front - (row + 0.5) * depth;
    }

    /** The row a point is in, or the nearest. */
    int row(Point point) {
        return (int) Math.clamp(Math.floor((front - along(point)) / depth), 0, rows - 1);
    }

    /** A seat here and there: some in each row. */
    List<Seat> seats() {
        List<Seat> seats = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int i = 0; i < ACROSS; i++) {
                double along = sign * along(row);
                double across = left + width * (i + 0.5) / ACROSS;
                seats.add(new Seat(row, alongX ? new Point(along, across) : new Point(across, along), eye(row)));
            }
        }
        return seats;
    }

    record Seat(int row, Point at, double eye) {}

    /** The row that sees least of something at this height, over the eyes of the row in front; null with one row. */
    @Nullable
    RowView worst(Point at, double height, String what, String kind) {
        RowView worst = null;
        for (int row = 1; row < rows; row++) {
            double distance = along(at) - along(row - 1);
            if (distance > 0) {
                double eye = eye(row - 1) - height;
                double over = Sightlines.over(distance, rise, eye, depth);
                if (worst == null || over < worst.over()) {
                    worst = new RowView(room, what, kind, row + 1, over, Sightlines.riser(distance, 0.06, eye, depth));
                }
            }
        }
        return worst;
    }
}
