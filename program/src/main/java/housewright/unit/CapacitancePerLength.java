package housewright.unit;

/** Capacitance of a cable in pF/m, 0 or more. */
public record CapacitancePerLength(double value, Unit unit) implements Quantity, Comparable<CapacitancePerLength> {

    public CapacitancePerLength {
        value = Dimension.CAPACITANCE_PER_LENGTH.checked(value, unit);
    }

    public static CapacitancePerLength ofPicofaradsPerMetre(double picofaradsPerMetre) {
        return new CapacitancePerLength(picofaradsPerMetre, Unit.PICOFARAD_PER_METRE);
    }

    /** Reads text such as {@code 100 pF/m}; throws a {@link UnitException} that says what is wrong with any other. */
    public static CapacitancePerLength parse(String text) {
        return Quantities.parse(CapacitancePerLength.class, text);
    }

    public double picofaradsPerMetre() {
        return base();
    }

    @Override
    public int compareTo(CapacitancePerLength other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
