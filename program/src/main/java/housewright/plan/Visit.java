package housewright.plan;

/**
 * A stay of somebody who travels to the job. The free time of the first day is shortened at its beginning by the way
 * there, that of the last at its end by the way back.
 *
 * @param firstDay the job's first day is 0
 * @param lastDay {@code firstDay} or later
 * @param wayThere minutes of the first day's free time spent on the road
 * @param wayBack minutes of the last day's free time spent on the road
 */
public record Visit(int firstDay, int lastDay, int wayThere, int wayBack) {
    public Visit {
        if (lastDay < firstDay || wayThere < 0 || wayBack < 0) {
            throw new IllegalArgumentException("A visit ends after it begins and no way is negative, but this is "
                    + firstDay + " to " + lastDay + ", " + wayThere + " and " + wayBack + " min");
        }
    }

    /** Both ways together, in minutes. */
    public int road() {
        return wayThere + wayBack;
    }
}
