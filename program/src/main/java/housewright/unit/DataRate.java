package housewright.unit;

/** Bits a second, with decimal prefixes (1 Gbit/s is 10<sup>9</sup> bit/s), 0 or more. */
public record DataRate(double value, Unit unit) implements Quantity, Comparable<DataRate> {

    public DataRate {
        value = Dimension.DATA_RATE.checked(value, unit);
    }

    public static DataRate ofBitsPerSecond(double bitsPerSecond) {
        return new DataRate(bitsPerSecond, Unit.BIT_PER_SECOND);
    }

    /** Reads text such as {@code 1.5 Gbit/s}; throws a {@link UnitException} that says what is wrong with any other. */
    public static DataRate parse(String text) {
        return Quantities.parse(DataRate.class, text);
    }

    public double bitsPerSecond() {
        return base();
    }

    /** In the unit of this one. */
    public DataRate plus(DataRate other) {
        return new DataRate(value + other.in(unit), unit);
    }

    @Override
    public int compareTo(DataRate other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
