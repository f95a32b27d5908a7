package housewright.cable;

/**
 * How long a cable is.
 *
 * @param metres its length, slack included
 * @param basis where that comes from
 */
public record Span(double metres, Basis basis) {
    /** Slack and service loop at each end of what runs along pathways: common practice, within CAB-12's 1 to 3 m. */
    public static final double SLACK_M = 2.0;

    /** Where a length comes from. */
    public enum Basis {
        /** The project says so. */
        STATED,
        /** The pathways it runs along, each with a length or between two places with coordinates, and slack. */
        ALONG_PATHWAYS
    }
}
