package housewright.unit;

/** What something weighs, as a mass in kg, 0 or more. What pulls on a fixing is a {@link Force}. */
public record Mass(double value, Unit unit) implements Quantity, Comparable<Mass> {

    public Mass {
        value = Dimension.MASS.checked(value, unit);
    }

    public static Mass ofKilograms(double kilograms) {
        return new Mass(kilograms, Unit.KILOGRAM);
    }

    /** Reads text such as {@code 12 kg}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Mass parse(String text) {
        return Quantities.parse(Mass.class, text);
    }

    public double kilograms() {
        return base();
    }

    /** In the unit of this one. */
    public Mass plus(Mass other) {
        return new Mass(value + other.in(unit), unit);
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
