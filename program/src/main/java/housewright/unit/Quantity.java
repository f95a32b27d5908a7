package housewright.unit;

/**
 * A value with its unit, as somebody wrote it. Two quantities are equal when they are written the same ({@code 1000 mm}
 * is not equal to {@code 1 m}); they compare by what they amount to.
 *
 * <p>Values are finite, below 10<sup>12</sup> in size; what arithmetic leaves in the last bits of a zero or of
 * a compound form such as {@code 1 ft 7 in} is dropped.
 * Constructors throw {@link IllegalArgumentException} when the value is out of range for its kind (weights are not
 * negative) or the unit is of another kind.
 */
public sealed interface Quantity
        permits Angle,
                CapacitancePerLength,
                ColourTemperature,
                CrossSection,
                Current,
                DataRate,
                Delay,
                Energy,
                Force,
                Frequency,
                Gain,
                Illuminance,
                Intensity,
                Length,
                Level,
                Luminance,
                LuminousFlux,
                Mass,
                Power,
                RackUnits,
                Ratio,
                Resistance,
                ResistancePerLength,
                Sensitivity,
                Temperature,
                TimeSpan,
                Voltage {

    /** The number as written, in {@link #unit()}. */
    double value();

    Unit unit();

    /**
     * The value in the base unit of its kind. {@link Level} and {@link Delay} have more than one base, because not all
     * of their units can be converted into each other: see there.
     */
    default double base() {
        return unit().toBase(value());
    }

    /**
     * The value in another unit of the same kind.
     *
     * @throws IllegalArgumentException if this cannot be converted to that unit; the message names both
     */
    default double in(Unit other) {
        return unit() == other
                ? value()
                : other.fromBase(unit().requireConvertible(other).toBase(value()));
    }

    /** What a person writes; reading it gives an equal quantity. */
    default String text() {
        return QuantityWriter.text(value(), unit());
    }
}
