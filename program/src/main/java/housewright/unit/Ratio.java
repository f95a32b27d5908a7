package housewright.unit;

/** A share written in %, 0 % or more; the base is the fraction, 0.6 for {@code 60 %}. */
public record Ratio(double value, Unit unit) implements Quantity, Comparable<Ratio> {

    public Ratio {
        value = Dimension.RATIO.checked(value, unit);
    }

    public static Ratio ofFraction(double fraction) {
        return new Ratio(fraction * 100, Unit.PERCENT);
    }

    /** Reads text such as {@code 60 %}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Ratio parse(String text) {
        return Quantities.parse(Ratio.class, text);
    }

    /** 0.6 for {@code 60 %}. */
    public double fraction() {
        return base();
    }

    @Override
    public int compareTo(Ratio other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
