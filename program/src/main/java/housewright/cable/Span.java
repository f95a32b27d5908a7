package housewright.cable;

/**
 * How long a cable is.
 *
 * @param metres its length, slack included
 * @param basis where that comes from
 */
public record Span(double metres, Basis basis) {
    /** Where a length comes from. */
    public enum Basis {
        /** The project says so. */
        STATED,
        /** The pathways it runs along, each with a length or between two places with coordinates, and slack. */
        ALONG_PATHWAYS
    }
}
