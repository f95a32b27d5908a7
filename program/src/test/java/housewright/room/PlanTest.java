package housewright.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.model.FloorPoint;
import housewright.room.Plan.Point;
import housewright.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanTest {
    private static List<FloorPoint> polygon(double... xy) {
        List<FloorPoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new FloorPoint(Length.ofMetres(xy[i]), Length.ofMetres(xy[i + 1])));
        }
        return points;
    }

    private static final List<FloorPoint> ROOM = polygon(0, 0, 10, 0, 10, 8, 6, 8, 6, 2, 5, 2, 5, 8, 0, 8);

    @Test
    void aWallThatReachesIntoTheRoomStandsBetween() {
        assertThat(Plan.isWallBetween(ROOM, new Point(2, 6), new Point(8, 6))).isTrue();
        assertThat(Plan.isWallBetween(ROOM, new Point(2, 1), new Point(8, 1))).isFalse();
        assertThat(Plan.isWallBetween(ROOM, new Point(0, 1), new Point(10, 1)))
                .as("from wall to wall")
                .isFalse();
    }

    @Test
    void aLineIsWithinTheSeatsFromWhereItComesInToWhereItGoesOut() {
        List<FloorPoint> seats = polygon(4, 1, 10, 1, 10, 7, 4, 7);
        assertThat(Plan.within(seats, new Point(12, 4), new Point(2, 4)))
                .containsExactly(new double[] {2, 8}, within(1e-9));
        assertThat(Plan.within(seats, new Point(9, 4), new Point(2, 4)))
                .containsExactly(new double[] {0, 5}, within(1e-9));
        assertThat(Plan.within(seats, new Point(12, 7.5), new Point(2, 7.5))).isNull();
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    /** Against a walk along the line in small steps, on convex areas. */
    @ParameterizedTest
    @MethodSource("seeds")
    void agreesWithAWalkAlongTheLine(long seed) {
        Random random = new Random(seed);
        double x = random.nextDouble() * 6;
        double y = random.nextDouble() * 6;
        double w = 1 + random.nextDouble() * 4;
        double d = 1 + random.nextDouble() * 4;
        List<FloorPoint> area = polygon(x, y, x + w, y, x + w, y + d, x, y + d);
        Point from = new Point(random.nextDouble() * 12 - 1, random.nextDouble() * 12 - 1);
        Point to = new Point(random.nextDouble() * 12 - 1, random.nextDouble() * 12 - 1);
        int steps = 20_000;
        double first = Double.NaN;
        double last = Double.NaN;
        for (int i = 0; i <= steps; i++) {
            double at = (double) i / steps;
            double px = from.x() + (to.x() - from.x()) * at;
            double py = from.y() + (to.y() - from.y()) * at;
            if (px > x && px < x + w && py > y && py < y + d) {
                first = Double.isNaN(first) ? at : first;
                last = at;
            }
        }
        double[] within = Plan.within(area, from, to);
        double length = from.to(to);
        if (Double.isNaN(first)) {
            assertThat(within == null || within[1] - within[0] < 2 * length / steps)
                    .isTrue();
        } else {
            assertThat(within).isNotNull();
            assertThat(within)
                    .containsExactly(new double[] {first * length, last * length}, within(2 * length / steps));
        }
    }
}
