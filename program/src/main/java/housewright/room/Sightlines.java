package housewright.room;

/** Straight lines in section; all lengths in one unit, heights above one level. */
final class Sightlines {
    private Sightlines() {}

    /** Height of the line of sight after {@code along}, on its way to a target {@code distance} away. */
    static double height(double eye, double target, double along, double distance) {
        return eye + (target - eye) * along / distance;
    }

    /** The least height of an eye that sees the target over an obstacle {@code along} the way, which is not at its end. */
    static double eyeOver(double obstacle, double target, double along, double distance) {
        double part = along / distance;
        return (obstacle - target * part) / (1 - part);
    }

    /**
     * How far the line of sight of one row passes above the eyes of the row in front: C = D (N + R) / (D + T) - R.
     *
     * @param distance D, from the eye in front to the point of focus
     * @param riser N, how much the row stands above the one in front
     * @param eye R, the eye in front above the point of focus; negative below it
     * @param depth T, from row to row
     */
    static double over(double distance, double riser, double eye, double depth) {
        return distance * (riser + eye) / (distance + depth) - eye;
    }

    /** The riser that gives a C value: N = (R + C) (D + T) / D - R. */
    static double riser(double distance, double over, double eye, double depth) {
        return (eye + over) * (distance + depth) / distance - eye;
    }
}
