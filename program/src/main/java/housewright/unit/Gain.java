package housewright.unit;

/**
 * How much more or less comes out than goes in, in dB; a loss is negative. It is what may be added to a {@link Level}.
 */
public record Gain(double value, Unit unit) implements Quantity, Comparable<Gain> {

    public Gain {
        value = Dimension.GAIN.checked(value, unit);
    }

    public static Gain ofDecibels(double decibels) {
        return new Gain(decibels, Unit.DECIBEL);
    }

    /** Reads text such as {@code -6 dB}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Gain parse(String text) {
        return Quantities.parse(Gain.class, text);
    }

    public double decibels() {
        return base();
    }

    /** In the unit of this one. */
    public Gain plus(Gain other) {
        return new Gain(value + other.in(unit), unit);
    }

    public Gain negated() {
        return new Gain(-value, unit);
    }

    @Override
    public int compareTo(Gain other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
