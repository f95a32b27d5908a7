package housewright.unit;

/** What a microphone gives in a sound field: in mV/Pa, 0 or more, or in dB over 1 V/Pa. */
public record Sensitivity(double value, Unit unit) implements Quantity, Comparable<Sensitivity> {

    public Sensitivity {
        value = Dimension.SENSITIVITY.checked(value, unit);
    }

    public static Sensitivity ofMillivoltsPerPascal(double millivoltsPerPascal) {
        return new Sensitivity(millivoltsPerPascal, Unit.MILLIVOLT_PER_PASCAL);
    }

    /** Reads text such as {@code 2 mV/Pa}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Sensitivity parse(String text) {
        return Quantities.parse(Sensitivity.class, text);
    }

    public double millivoltsPerPascal() {
        return base();
    }

    @Override
    public int compareTo(Sensitivity other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
