package housewright.unit;

/**
 * A level in dB over a reference: electrical (dBu, dBV), digital (dBFS) or sound pressure (dB SPL, dBA).
 *
 * <p>Levels are not amounts: two of them do not add. A {@link Gain} added to a level gives a level over the same
 * reference; the difference of two levels over one reference is a gain. dBu and dBV convert into each other (0 dBV =
 * 2.218 dBu, because 0 dBu is the square root of 0.6 V, and 0 dBV is 1 V); what dBFS means in volts depends on the
 * converter: see {@link FullScale}.
 */
public record Level(double value, Unit unit) implements Quantity, Comparable<Level> {

    public Level {
        value = Dimension.LEVEL.checked(value, unit);
    }

    public static Level ofDbu(double dbu) {
        return new Level(dbu, Unit.DBU);
    }

    /** The level of an rms voltage above 0 V, in dBu. */
    public static Level ofVoltage(Voltage voltage) {
        return new Level(20 * Math.log10(voltage.volts()), Unit.DBV).to(Unit.DBU);
    }

    /** Reads text such as {@code 4 dBu}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Level parse(String text) {
        return Quantities.parse(Level.class, text);
    }

    /** dBu for dBu and dBV; for the others, whose references have nothing in common, the value as written. */
    @Override
    public double base() {
        return Quantity.super.base();
    }

    /** Whether both are measured against references of which one can be worked out from the other. */
    public boolean comparesWith(Level other) {
        return unit.convertsTo(other.unit);
    }

    /** @throws IllegalArgumentException if that unit has another reference */
    public Level to(Unit other) {
        return new Level(in(other), other);
    }

    /** The level after this gain, over the same reference. */
    public Level plus(Gain gain) {
        return new Level(value + gain.decibels(), unit);
    }

    /**
     * How far this is above the other.
     *
     * @throws IllegalArgumentException if the other has another reference; the message names both
     */
    public Gain minus(Level other) {
        return Gain.ofDecibels(value - other.in(unit));
    }

    /**
     * The rms voltage of an electrical level.
     *
     * @throws IllegalArgumentException if this is no electrical level
     */
    public Voltage toVoltage() {
        return Voltage.ofVolts(Math.pow(10, in(Unit.DBV) / 20));
    }

    /** @throws IllegalArgumentException if the other has another reference; the message names both */
    @Override
    public int compareTo(Level other) {
        unit.requireConvertible(other.unit);
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
