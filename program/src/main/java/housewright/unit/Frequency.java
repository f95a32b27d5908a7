package housewright.unit;

/** A frequency or a bandwidth in Hz, 0 or more. */
public record Frequency(double value, Unit unit) implements Quantity, Comparable<Frequency> {

    public Frequency {
        value = Dimension.FREQUENCY.checked(value, unit);
    }

    public static Frequency ofHertz(double hertz) {
        return new Frequency(hertz, Unit.HERTZ);
    }

    /** Reads text such as {@code 606.5 MHz}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Frequency parse(String text) {
        return Quantities.parse(Frequency.class, text);
    }

    public double hertz() {
        return base();
    }

    @Override
    public int compareTo(Frequency other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
