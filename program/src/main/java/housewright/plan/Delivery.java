package housewright.plan;

/**
 * Something that arrives.
 *
 * @param expected minute from which it is there
 * @param latest minute by which it is there even when late; {@code expected} or later
 * @param lateChance how likely it is late, 0 to 1
 * @param promised whether somebody has said that it is there by then; else it is assumed, for want of better
 */
public record Delivery(String id, String name, int expected, int latest, double lateChance, boolean promised) {
    /** Promised. */
    public Delivery(String id, String name, int expected, int latest, double lateChance) {
        this(id, name, expected, latest, lateChance, true);
    }

    public Delivery {
        if (latest < expected || !(lateChance >= 0 && lateChance <= 1)) {
            throw new IllegalArgumentException("Delivery %s: expected at %s, at the latest at %s, late with chance %s"
                    .formatted(id, expected, latest, lateChance));
        }
    }
}
