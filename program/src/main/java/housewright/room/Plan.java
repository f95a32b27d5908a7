package housewright.room;

import housewright.model.FloorPoint;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The floor plan: points in m, polygons without holes. */
final class Plan {
    /** Of a wall at either end of a line, where a thing stands against it. */
    private static final double END = 0.02;

    private Plan() {}

    record Point(double x, double y) {
        double to(Point other) {
            return Math.hypot(other.x - x, other.y - y);
        }
    }

    static boolean contains(List<FloorPoint> polygon, Point point) {
        boolean in = false;
        for (int i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
            double xi = x(polygon, i);
            double yi = y(polygon, i);
            double xj = x(polygon, j);
            double yj = y(polygon, j);
            if (yi > point.y != yj > point.y && point.x < (xj - xi) * (point.y - yi) / (yj - yi) + xi) {
                in = !in;
            }
        }
        return in;
    }

    static Point middle(List<FloorPoint> polygon) {
        double x = 0;
        double y = 0;
        for (int i = 0; i < polygon.size(); i++) {
            x += x(polygon, i) / polygon.size();
            y += y(polygon, i) / polygon.size();
        }
        return new Point(x, y);
    }

    /** Where a line is first and last within a polygon, in m from its start; null where it never is. */
    static double @Nullable [] within(List<FloorPoint> polygon, Point from, Point to) {
        double first = contains(polygon, from) ? 0 : Double.NaN;
        double last = contains(polygon, to) ? 1 : Double.NaN;
        for (int i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
            double part = crossing(polygon, j, i, from, to);
            if (!Double.isNaN(part)) {
                first = Double.isNaN(first) || part < first ? part : first;
                last = Double.isNaN(last) || part > last ? part : last;
            }
        }
        double length = from.to(to);
        return Double.isNaN(first) || Double.isNaN(last) ? null : new double[] {first * length, last * length};
    }

    /** Whether a wall of the room stands between two points of it. */
    static boolean isWallBetween(List<FloorPoint> outline, Point from, Point to) {
        for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
            double part = crossing(outline, j, i, from, to);
            if (part > END && part < 1 - END) {
                return true;
            }
        }
        return false;
    }

    /** Which part of the way the side from one corner to the other is crossed at; NaN where it is not. */
    private static double crossing(List<FloorPoint> polygon, int one, int other, Point from, Point to) {
        double sideX = x(polygon, other) - x(polygon, one);
        double sideY = y(polygon, other) - y(polygon, one);
        double wayX = to.x - from.x;
        double wayY = to.y - from.y;
        double cross = wayX * sideY - wayY * sideX;
        if (cross == 0) {
            return Double.NaN;
        }
        double offX = x(polygon, one) - from.x;
        double offY = y(polygon, one) - from.y;
        double part = (offX * sideY - offY * sideX) / cross;
        double along = (offX * wayY - offY * wayX) / cross;
        return part >= 0 && part <= 1 && along >= 0 && along <= 1 ? part : Double.NaN;
    }

    static double x(List<FloorPoint> polygon, int corner) {
        return polygon.get(corner).x().metres();
    }

    static double y(List<FloorPoint> polygon, int corner) {
        return polygon.get(corner).y().metres();
    }
}
