package housewright.unit;

/** Energy, such as that of a battery, in Wh, 0 or more. */
public record Energy(double value, Unit unit) implements Quantity, Comparable<Energy> {

    public Energy {
        value = Dimension.ENERGY.checked(value, unit);
    }

    public static Energy ofWattHours(double wattHours) {
        return new Energy(wattHours, Unit.WATT_HOUR);
    }

    /** Reads text such as {@code 500 Wh}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Energy parse(String text) {
        return Quantities.parse(Energy.class, text);
    }

    public double wattHours() {
        return base();
    }

    @Override
    public int compareTo(Energy other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
