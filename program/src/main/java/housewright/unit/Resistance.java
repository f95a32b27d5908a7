package housewright.unit;

/** A resistance, or the size of an impedance, in ohm, 0 or more. */
public record Resistance(double value, Unit unit) implements Quantity, Comparable<Resistance> {

    public Resistance {
        value = Dimension.RESISTANCE.checked(value, unit);
    }

    public static Resistance ofOhms(double ohms) {
        return new Resistance(ohms, Unit.OHM);
    }

    /** Reads text such as {@code 8 ohm}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Resistance parse(String text) {
        return Quantities.parse(Resistance.class, text);
    }

    public double ohms() {
        return base();
    }

    @Override
    public int compareTo(Resistance other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
