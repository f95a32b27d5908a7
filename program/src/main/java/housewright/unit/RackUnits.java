package housewright.unit;

/** Height in a rack in whole or half rack units, 0 or more. */
public record RackUnits(double value, Unit unit) implements Quantity, Comparable<RackUnits> {

    public RackUnits {
        value = Dimension.RACK_UNITS.checked(value, unit);
    }

    public static RackUnits ofUnits(double units) {
        return new RackUnits(units, Unit.RACK_UNIT);
    }

    /** Reads text such as {@code 2 U}; throws a {@link UnitException} that says what is wrong with any other. */
    public static RackUnits parse(String text) {
        return Quantities.parse(RackUnits.class, text);
    }

    public double units() {
        return base();
    }

    @Override
    public int compareTo(RackUnits other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
