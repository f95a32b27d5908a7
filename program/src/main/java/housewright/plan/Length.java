package housewright.plan;

/**
 * How long a task takes, in minutes of work of its whole crew together, by three points.
 *
 * @param optimistic when all goes well; 1 or more
 * @param likely most often
 * @param pessimistic when much goes wrong; {@code optimistic <= likely <= pessimistic}
 * @param mayPause whether it may be laid down at the end of a shift and taken up again by the same crew
 * @see <a href="https://doi.org/10.1287/opre.7.5.646">D. G. Malcolm, J. H. Roseboom, C. E. Clark, W. Fazar, "Application of
 *     a technique for research and development program evaluation", Operations Research 7 (1959) 646-669</a> for the mean
 *     and the deviation (cited from memory)
 */
public record Length(int optimistic, int likely, int pessimistic, boolean mayPause) {
    public Length {
        if (optimistic < 1 || likely < optimistic || pessimistic < likely) {
            throw new IllegalArgumentException(
                    "Three points of a length are 1 min or more and in order, but these are %s, %s and %s min"
                            .formatted(optimistic, likely, pessimistic));
        }
    }

    /** A length without doubt. */
    public static Length of(int minutes) {
        return new Length(minutes, minutes, minutes, false);
    }

    /** Expected minutes, (a + 4m + b) / 6. */
    public double mean() {
        return (optimistic + 4.0 * likely + pessimistic) / 6;
    }

    /** Standard deviation in minutes, (b - a) / 6. */
    public double deviation() {
        return (pessimistic - optimistic) / 6.0;
    }

    /** Minutes that a plan sets aside: the mean, rounded up to whole ticks. */
    public int planned(int tick) {
        return Math.ceilDiv((int) Math.ceil(mean() - 1e-9), tick) * tick;
    }
}
