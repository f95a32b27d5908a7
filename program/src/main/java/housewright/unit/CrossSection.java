package housewright.unit;

/**
 * Copper cross-section of a conductor in mm2, or its American wire gauge from 4/0 to 56 as a solid wire (ASTM B258).
 */
public record CrossSection(double value, Unit unit) implements Quantity, Comparable<CrossSection> {

    public CrossSection {
        value = Dimension.CROSS_SECTION.checked(value, unit);
    }

    public static CrossSection ofSquareMillimetres(double squareMillimetres) {
        return new CrossSection(squareMillimetres, Unit.SQUARE_MILLIMETRE);
    }

    /** Reads text such as {@code 2.5 mm2}; throws a {@link UnitException} that says what is wrong with any other. */
    public static CrossSection parse(String text) {
        return Quantities.parse(CrossSection.class, text);
    }

    public double squareMillimetres() {
        return base();
    }

    @Override
    public int compareTo(CrossSection other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
