package housewright.unit;

/**
 * Electrical or acoustic power in W, 0 or more. Apparent power in VA counts as the same number of watts, and stays
 * written in VA.
 */
public record Power(double value, Unit unit) implements Quantity, Comparable<Power> {

    public Power {
        value = Dimension.POWER.checked(value, unit);
    }

    public static Power ofWatts(double watts) {
        return new Power(watts, Unit.WATT);
    }

    /** Reads text such as {@code 120 W}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Power parse(String text) {
        return Quantities.parse(Power.class, text);
    }

    public double watts() {
        return base();
    }

    /** In the unit of this one. */
    public Power plus(Power other) {
        return new Power(value + other.in(unit), unit);
    }

    @Override
    public int compareTo(Power other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
