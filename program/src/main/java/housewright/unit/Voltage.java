package housewright.unit;

/** A voltage in V, rms where it alternates, 0 or more. */
public record Voltage(double value, Unit unit) implements Quantity, Comparable<Voltage> {

    public Voltage {
        value = Dimension.VOLTAGE.checked(value, unit);
    }

    public static Voltage ofVolts(double volts) {
        return new Voltage(volts, Unit.VOLT);
    }

    /** Reads text such as {@code 230 V}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Voltage parse(String text) {
        return Quantities.parse(Voltage.class, text);
    }

    public double volts() {
        return base();
    }

    @Override
    public int compareTo(Voltage other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
