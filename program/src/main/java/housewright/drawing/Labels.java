package housewright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Finds room for texts beside points, so that they do not lie on each other; the least overlap where there is none. */
final class Labels {
    private static final double NEAR = 8;
    private static final double STEP = 22;
    private static final int RINGS = 4;
    private static final double RING_COST = 10;
    private static final double DOT = 8;
    private static final double DOT_COST = 14;
    private static final double[][] SIDES = {{1, 0}, {-1, 0}, {1, -1}, {1, 1}, {-1, -1}, {-1, 1}, {0, -1}, {0, 1}};

    private final List<Laid.Area> taken = new ArrayList<>();
    private final List<Laid.At> lines = new ArrayList<>();
    private final Laid.Area within;

    Labels(Laid.Area within) {
        this.within = within;
    }

    /** A line that texts had better not cross. */
    void avoid(double x1, double y1, double x2, double y2) {
        int points = (int) (Math.hypot(x2 - x1, y2 - y1) / DOT) + 1;
        for (int i = 0; i <= points; i++) {
            lines.add(new Laid.At(x1 + (x2 - x1) * i / points, y1 + (y2 - y1) * i / points));
        }
    }

    void take(Laid.Area area) {
        taken.add(area);
    }

    /** Room of this size beside a point; it is taken from now on. */
    Laid.Area beside(double x, double y, double width, double height) {
        Laid.Area best = new Laid.Area(x + NEAR, y, width, height);
        double least = Double.MAX_VALUE;
        for (int ring = 0; ring < RINGS && least > ring * RING_COST; ring++) {
            double off = NEAR + ring * STEP;
            double far = ring * RING_COST;
            for (double[] side : SIDES) {
                double left = side[0] > 0 ? x + off : side[0] < 0 ? x - off - width : x - width / 2;
                double top = side[1] > 0 ? y + off : side[1] < 0 ? y - off - height : y - height / 2;
                Laid.Area area = new Laid.Area(left, top, width, height);
                double cost = cost(area) + far;
                if (cost < least) {
                    least = cost;
                    best = area;
                }
            }
        }
        taken.add(best);
        return best;
    }

    private double cost(Laid.Area area) {
        double cost = area.width() * area.height() - overlap(area, within);
        for (Laid.Area other : taken) {
            cost += overlap(area, other);
        }
        for (Laid.At dot : lines) {
            if (dot.x() > area.x()
                    && dot.x() < area.x() + area.width()
                    && dot.y() > area.y()
                    && dot.y() < area.y() + area.height()) {
                cost += DOT_COST;
            }
        }
        return cost;
    }

    private static double overlap(Laid.Area one, Laid.Area other) {
        double wide = Math.min(one.x() + one.width(), other.x() + other.width()) - Math.max(one.x(), other.x());
        double high = Math.min(one.y() + one.height(), other.y() + other.height()) - Math.max(one.y(), other.y());
        return wide > 0 && high > 0 ? wide * high : 0;
    }
}
