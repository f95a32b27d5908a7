package housewright.plan;

/**
 * How much a person may work.
 *
 * @param minutesADay work on site and from afar together, from one midnight to the next
 * @param breakAfter minutes of unbroken work after which a break is due
 * @param breakLength minutes without work that count as a break; 0 for none wanted
 */
public record Limits(int minutesADay, int breakAfter, int breakLength) {
    /** As long as the person is free. */
    public static final Limits NONE = new Limits(24 * 60, 24 * 60, 0);

    /** Ten hours a day and half an hour after at most five (common practice; the law of the country goes first). */
    public static final Limits USUAL = new Limits(600, 300, 30);

    public Limits {
        if (minutesADay < 0 || breakAfter < 1 || breakLength < 0) {
            throw new IllegalArgumentException(
                    "Limits are not negative, but these are %s min a day, a break of %s min after %s min"
                            .formatted(minutesADay, breakLength, breakAfter));
        }
    }
}
