package housewright.plan;

/**
 * Something that arrives.
 *
 * @param expected minute from which it is there
 * @param latest minute by which it is there even when late; {@code expected} or later
 * @param lateChance how likely it is late, 0 to 1
 */
public record Delivery(String id, String name, int expected, int latest, double lateChance) {
    public Delivery {
        if (latest < expected || !(lateChance >= 0 && lateChance <= 1)) {
            throw new IllegalArgumentException("Delivery %s: expected at %s, at the latest at %s, late with chance %s"
                    .formatted(id, expected, latest, lateChance));
        }
    }
}
