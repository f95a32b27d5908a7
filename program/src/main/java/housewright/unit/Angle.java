package housewright.unit;

/** An angle in degrees, of either sign. */
public record Angle(double value, Unit unit) implements Quantity, Comparable<Angle> {

    public Angle {
        value = Dimension.ANGLE.checked(value, unit);
    }

    public static Angle ofDegrees(double degrees) {
        return new Angle(degrees, Unit.DEGREE);
    }

    /** Reads text such as {@code 26 deg}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Angle parse(String text) {
        return Quantities.parse(Angle.class, text);
    }

    public double degrees() {
        return base();
    }

    public double radians() {
        return Math.toRadians(degrees());
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
