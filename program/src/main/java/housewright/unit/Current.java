package housewright.unit;

/** A current in A, rms where it alternates, 0 or more. */
public record Current(double value, Unit unit) implements Quantity, Comparable<Current> {

    public Current {
        value = Dimension.CURRENT.checked(value, unit);
    }

    public static Current ofAmperes(double amperes) {
        return new Current(amperes, Unit.AMPERE);
    }

    /** Reads text such as {@code 16 A}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Current parse(String text) {
        return Quantities.parse(Current.class, text);
    }

    public double amperes() {
        return base();
    }

    /** In the unit of this one. */
    public Current plus(Current other) {
        return new Current(value + other.in(unit), unit);
    }

    @Override
    public int compareTo(Current other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
