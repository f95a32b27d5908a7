package housewright.room;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * From a work place to something on the stage.
 *
 * @param what the place or the lighting target that must be seen
 * @param target it is a lighting target
 * @param distance in m
 * @param height of what must be seen, in m above the building's zero
 * @param wall a wall of the room stands between
 * @param screens that stand in the way or are said to
 * @param seated heads of the nearest and the furthest row in the way, people seated; empty where no row is
 * @param standing the same with people on their feet
 */
public record View(
        String what,
        boolean target,
        double distance,
        double height,
        boolean wall,
        List<Obstacle> screens,
        List<Obstacle> seated,
        List<Obstacle> standing) {
    public View {
        screens = List.copyOf(screens);
        seated = List.copyOf(seated);
        standing = List.copyOf(standing);
    }

    /** How far an obstacle stays below the line from an eye at this height, in m; below 0 where it is in the way. */
    public double clear(double eye, Obstacle obstacle) {
        return Sightlines.height(eye, height, obstacle.away(), distance) - obstacle.top();
    }

    /** The one that is most in the way of an eye at this height; null where none is. */
    public @Nullable Obstacle worst(double eye, List<Obstacle> obstacles) {
        Obstacle worst = null;
        for (Obstacle each : obstacles) {
            if (clear(eye, each) < 0 && (worst == null || clear(eye, each) < clear(eye, worst))) {
                worst = each;
            }
        }
        return worst;
    }

    /** The least height of an eye that sees over all of them, in m above the building's zero. */
    public double eyeOver(List<Obstacle> obstacles) {
        double eye = 0;
        for (Obstacle each : obstacles) {
            eye = Math.max(eye, Sightlines.eyeOver(each.top(), height, each.away(), distance));
        }
        return eye;
    }
}
