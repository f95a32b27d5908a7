package housewright.unit;

/** Resistance of one conductor in ohm/km, 0 or more. */
public record ResistancePerLength(double value, Unit unit) implements Quantity, Comparable<ResistancePerLength> {

    public ResistancePerLength {
        value = Dimension.RESISTANCE_PER_LENGTH.checked(value, unit);
    }

    public static ResistancePerLength ofOhmsPerKilometre(double ohmsPerKilometre) {
        return new ResistancePerLength(ohmsPerKilometre, Unit.OHM_PER_KILOMETRE);
    }

    /** Reads text such as {@code 84 ohm/km}; throws a {@link UnitException} that says what is wrong with any other. */
    public static ResistancePerLength parse(String text) {
        return Quantities.parse(ResistancePerLength.class, text);
    }

    public double ohmsPerKilometre() {
        return base();
    }

    @Override
    public int compareTo(ResistancePerLength other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
