package housewright.unit;

/** Luminous intensity of a lamp in one direction, in cd, 0 or more. */
public record Intensity(double value, Unit unit) implements Quantity, Comparable<Intensity> {

    public Intensity {
        value = Dimension.INTENSITY.checked(value, unit);
    }

    public static Intensity ofCandelas(double candelas) {
        return new Intensity(candelas, Unit.CANDELA);
    }

    /** Reads text such as {@code 12000 cd}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Intensity parse(String text) {
        return Quantities.parse(Intensity.class, text);
    }

    public double candelas() {
        return base();
    }

    @Override
    public int compareTo(Intensity other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
