package housewright.unit;

/** Light that arrives on a surface, in lx, 0 or more. 1 fc is one lumen a square foot, 10.7639 lx. */
public record Illuminance(double value, Unit unit) implements Quantity, Comparable<Illuminance> {

    public Illuminance {
        value = Dimension.ILLUMINANCE.checked(value, unit);
    }

    public static Illuminance ofLux(double lux) {
        return new Illuminance(lux, Unit.LUX);
    }

    /** Reads text such as {@code 700 lx}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Illuminance parse(String text) {
        return Quantities.parse(Illuminance.class, text);
    }

    public double lux() {
        return base();
    }

    @Override
    public int compareTo(Illuminance other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
