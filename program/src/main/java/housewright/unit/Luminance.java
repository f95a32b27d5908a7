package housewright.unit;

/** How bright a surface such as a screen is, in cd/m2, 0 or more. */
public record Luminance(double value, Unit unit) implements Quantity, Comparable<Luminance> {

    public Luminance {
        value = Dimension.LUMINANCE.checked(value, unit);
    }

    public static Luminance ofCandelasPerSquareMetre(double candelasPerSquareMetre) {
        return new Luminance(candelasPerSquareMetre, Unit.CANDELA_PER_SQUARE_METRE);
    }

    /** Reads text such as {@code 700 lx}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Luminance parse(String text) {
        return Quantities.parse(Luminance.class, text);
    }

    public double candelasPerSquareMetre() {
        return base();
    }

    @Override
    public int compareTo(Luminance other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
