package housewright.unit;

import java.time.Duration;

/** How long something takes, 0 s or more. A delay of a signal is a {@link Delay}. */
public record TimeSpan(double value, Unit unit) implements Quantity, Comparable<TimeSpan> {

    public TimeSpan {
        value = Dimension.TIME.checked(value, unit);
    }

    public static TimeSpan ofSeconds(double seconds) {
        return new TimeSpan(seconds, Unit.SECOND);
    }

    /** Reads text such as {@code 2 h 30 min}; throws a {@link UnitException} that says what is wrong with any other. */
    public static TimeSpan parse(String text) {
        return Quantities.parse(TimeSpan.class, text);
    }

    public double seconds() {
        return base();
    }

    /** In the unit of this one. */
    public TimeSpan plus(TimeSpan other) {
        return new TimeSpan(value + other.in(unit), unit);
    }

    /** To the nearest nanosecond. */
    public Duration toDuration() {
        long whole = (long) Math.floor(seconds());
        return Duration.ofSeconds(whole, Math.round((seconds() - whole) * 1e9));
    }

    @Override
    public int compareTo(TimeSpan other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
