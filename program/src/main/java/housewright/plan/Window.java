package housewright.plan;

/**
 * A stretch of time.
 *
 * @param from first minute, since the job's first midnight
 * @param to the minute after the last; more than {@code from}
 */
public record Window(int from, int to) implements Comparable<Window> {
    public Window {
        if (to <= from) {
            throw new IllegalArgumentException(
                    "A window ends after it begins, but this one is %s to %s".formatted(from, to));
        }
    }

    /** Minutes. */
    public int length() {
        return to - from;
    }

    public boolean overlaps(Window other) {
        return from < other.to && other.from < to;
    }

    public boolean holds(Window other) {
        return from <= other.from && other.to <= to;
    }

    @Override
    public int compareTo(Window other) {
        return from != other.from ? Integer.compare(from, other.from) : Integer.compare(to, other.to);
    }
}
