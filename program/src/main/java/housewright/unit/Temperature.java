package housewright.unit;

/** A temperature (not a difference of two) in degrees Celsius, not below absolute zero. */
public record Temperature(double value, Unit unit) implements Quantity, Comparable<Temperature> {

    public Temperature {
        value = Dimension.TEMPERATURE.checked(value, unit);
    }

    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius, Unit.DEGREE_CELSIUS);
    }

    /** Reads text such as {@code 20 degC}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Temperature parse(String text) {
        return Quantities.parse(Temperature.class, text);
    }

    public double celsius() {
        return base();
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
