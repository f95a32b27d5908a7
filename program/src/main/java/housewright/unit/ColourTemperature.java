package housewright.unit;

/** Correlated colour temperature of light in K, 0 or more. */
public record ColourTemperature(double value, Unit unit) implements Quantity, Comparable<ColourTemperature> {

    public ColourTemperature {
        value = Dimension.COLOUR_TEMPERATURE.checked(value, unit);
    }

    public static ColourTemperature ofKelvin(double kelvin) {
        return new ColourTemperature(kelvin, Unit.KELVIN);
    }

    /** Reads text such as {@code 3200 K}; throws a {@link UnitException} that says what is wrong with any other. */
    public static ColourTemperature parse(String text) {
        return Quantities.parse(ColourTemperature.class, text);
    }

    public double kelvin() {
        return base();
    }

    @Override
    public int compareTo(ColourTemperature other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
