package housewright.unit;

/** A length or a coordinate in m; coordinates may be negative. */
public record Length(double value, Unit unit) implements Quantity, Comparable<Length> {

    public Length {
        value = Dimension.LENGTH.checked(value, unit);
    }

    public static Length ofMetres(double metres) {
        return new Length(metres, Unit.METRE);
    }

    /** Reads text such as {@code 31 m}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Length parse(String text) {
        return Quantities.parse(Length.class, text);
    }

    public double metres() {
        return base();
    }

    /** In the unit of this one. */
    public Length plus(Length other) {
        return new Length(value + other.in(unit), unit);
    }

    /** In the unit of this one. */
    public Length minus(Length other) {
        return new Length(value - other.in(unit), unit);
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
