package housewright.unit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Every unit that a quantity can be written in: its symbol, and how it turns into the base unit of its kind.
 *
 * <p>Factors are kept as a multiplier and a divisor that a double holds exactly, so that {@code 9 mm} is 0.009 m and
 * not 0.009000000000000001 m. They are exact by definition: foot 0.3048 m, pound 0.45359237 kg, pound-force
 * 4.4482216152605 N (NIST SP 811, appendix B.8).
 */
public enum Unit {
    MILLIMETRE(Dimension.LENGTH, "mm", 1, 1000),
    CENTIMETRE(Dimension.LENGTH, "cm", 1, 100),
    METRE(Dimension.LENGTH, "m", 1, 1),
    KILOMETRE(Dimension.LENGTH, "km", 1000, 1),
    INCH(Dimension.LENGTH, "in", 254, 10_000),
    FOOT(Dimension.LENGTH, "ft", 3048, 10_000),
    YARD(Dimension.LENGTH, "yd", 9144, 10_000),

    NANOSECOND(Dimension.TIME, "ns", 1, 1e9),
    MICROSECOND(Dimension.TIME, "us", 1, 1e6, "\u00b5s", "\u03bcs"),
    MILLISECOND(Dimension.TIME, "ms", 1, 1000),
    SECOND(Dimension.TIME, "s", 1, 1),
    MINUTE(Dimension.TIME, "min", 60, 1),
    HOUR(Dimension.TIME, "h", 3600, 1),
    DAY(Dimension.TIME, "d", 86_400, 1),

    GRAM(Dimension.MASS, "g", 1, 1000),
    KILOGRAM(Dimension.MASS, "kg", 1, 1),
    TONNE(Dimension.MASS, "t", 1000, 1),
    OUNCE(Dimension.MASS, "oz", 45_359_237, 16e8),
    POUND(Dimension.MASS, "lb", 45_359_237, 1e8),

    MILLIWATT(Dimension.POWER, "mW", 1, 1000),
    WATT(Dimension.POWER, "W", 1, 1),
    KILOWATT(Dimension.POWER, "kW", 1000, 1),
    VOLT_AMPERE(Dimension.POWER, "VA", 1, 1),
    KILOVOLT_AMPERE(Dimension.POWER, "kVA", 1000, 1),

    MILLIVOLT(Dimension.VOLTAGE, "mV", 1, 1000),
    VOLT(Dimension.VOLTAGE, "V", 1, 1),
    KILOVOLT(Dimension.VOLTAGE, "kV", 1000, 1),

    MILLIAMPERE(Dimension.CURRENT, "mA", 1, 1000),
    AMPERE(Dimension.CURRENT, "A", 1, 1),

    MILLIOHM(Dimension.RESISTANCE, "mohm", 1, 1000, "m\u03a9", "m\u2126"),
    OHM(Dimension.RESISTANCE, "ohm", 1, 1, "\u03a9", "\u2126"),
    KILOHM(Dimension.RESISTANCE, "kohm", 1000, 1, "k\u03a9", "k\u2126"),

    HERTZ(Dimension.FREQUENCY, "Hz", 1, 1),
    KILOHERTZ(Dimension.FREQUENCY, "kHz", 1000, 1),
    MEGAHERTZ(Dimension.FREQUENCY, "MHz", 1e6, 1),
    GIGAHERTZ(Dimension.FREQUENCY, "GHz", 1e9, 1),

    BIT_PER_SECOND(Dimension.DATA_RATE, "bit/s", 1, 1),
    KILOBIT_PER_SECOND(Dimension.DATA_RATE, "kbit/s", 1000, 1),
    MEGABIT_PER_SECOND(Dimension.DATA_RATE, "Mbit/s", 1e6, 1),
    GIGABIT_PER_SECOND(Dimension.DATA_RATE, "Gbit/s", 1e9, 1),

    LUX(Dimension.ILLUMINANCE, "lx", 1, 1),
    FOOTCANDLE(Dimension.ILLUMINANCE, "fc", 1e8, 9_290_304), // one lumen a square foot: 1 / 0.3048 squared

    CANDELA(Dimension.INTENSITY, "cd", 1, 1),
    KILOCANDELA(Dimension.INTENSITY, "kcd", 1000, 1),

    DEGREE(Dimension.ANGLE, "deg", 1, 1, "\u00b0"),

    PERCENT(Dimension.RATIO, "%", 1, 100),

    DEGREE_CELSIUS(Dimension.TEMPERATURE, "degC", 1, 1, "\u00b0C"),
    DEGREE_FAHRENHEIT(Dimension.TEMPERATURE, "degF", 1, 1, "\u00b0F"),

    KELVIN(Dimension.COLOUR_TEMPERATURE, "K", 1, 1),

    SQUARE_MILLIMETRE(Dimension.CROSS_SECTION, "mm2", 1, 1, "mm\u00b2"),
    /** American wire gauge. The value is the gauge number; 1/0 to 4/0 are 0 to -3. */
    AWG(Dimension.CROSS_SECTION, "AWG", 1, 1),

    DECIBEL(Dimension.GAIN, "dB", 1, 1),

    /** Over the square root of 0.6 V, about 0.775 V. */
    DBU(Dimension.LEVEL, "dBu", 1, 1),
    /** Over 1 V. */
    DBV(Dimension.LEVEL, "dBV", 1, 1),
    /** Over digital full scale. */
    DBFS(Dimension.LEVEL, "dBFS", 1, 1),
    /** Sound pressure over 20 micropascal, unweighted. */
    DB_SPL(Dimension.LEVEL, "dB SPL", 1, 1),
    /** Sound pressure over 20 micropascal, A-weighted. */
    DBA(Dimension.LEVEL, "dBA", 1, 1),

    MILLIVOLT_PER_PASCAL(Dimension.SENSITIVITY, "mV/Pa", 1, 1),
    DBV_PER_PASCAL(Dimension.SENSITIVITY, "dBV/Pa", 1, 1),

    RACK_UNIT(Dimension.RACK_UNITS, "U", 1, 1),

    WATT_HOUR(Dimension.ENERGY, "Wh", 1, 1),
    KILOWATT_HOUR(Dimension.ENERGY, "kWh", 1000, 1),

    PICOFARAD_PER_METRE(Dimension.CAPACITANCE_PER_LENGTH, "pF/m", 1, 1),
    PICOFARAD_PER_FOOT(Dimension.CAPACITANCE_PER_LENGTH, "pF/ft", 10_000, 3048),

    OHM_PER_KILOMETRE(Dimension.RESISTANCE_PER_LENGTH, "ohm/km", 1, 1, "\u03a9/km", "\u2126/km"),
    OHM_PER_1000_FEET(Dimension.RESISTANCE_PER_LENGTH, "ohm/1000ft", 10_000, 3048, "\u03a9/1000ft", "\u2126/1000ft"),

    NEWTON(Dimension.FORCE, "N", 1, 1),
    KILONEWTON(Dimension.FORCE, "kN", 1000, 1),
    POUND_FORCE(Dimension.FORCE, "lbf", 44_482_216_152_605.0, 1e13),

    LUMEN(Dimension.LUMINOUS_FLUX, "lm", 1, 1),

    CANDELA_PER_SQUARE_METRE(Dimension.LUMINANCE, "cd/m2", 1, 1, "cd/m\u00b2"),

    FRAME(Dimension.DELAY, "frame", 1, 1, "frames");

    /** dBu = dBV + 2.218: 0 dBu is the square root of 0.6 V. */
    private static final double DBU_OVER_DBV = -10 * Math.log10(0.6);

    private static final Map<String, Unit> BY_SYMBOL = bySymbol();

    private final Dimension dimension;
    private final String symbol;
    private final double times;
    private final double over;

    @SuppressWarnings("ImmutableEnumChecker") // it is List.of
    private final List<String> aliases;

    Unit(Dimension dimension, String symbol, double times, double over, String... aliases) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.times = times;
        this.over = over;
        this.aliases = List.of(aliases);
    }

    /** As it is printed; reading also takes the typographic sign, such as the Greek letter for {@code ohm}. */
    public String symbol() {
        return symbol;
    }

    /** Whether a value in this unit can be worked out in the other one from the two units alone. */
    public boolean convertsTo(Unit other) {
        return this == other || (dimension == other.dimension && scale() == other.scale());
    }

    Dimension dimension() {
        return dimension;
    }

    /** Other spellings that mean the same and are normalised on reading. */
    List<String> aliases() {
        return aliases;
    }

    static @Nullable Unit findBySymbol(String symbolOrAlias) {
        return BY_SYMBOL.get(symbolOrAlias);
    }

    Unit requireConvertible(Unit other) {
        if (!convertsTo(other)) {
            throw new IllegalArgumentException(symbol + " cannot be converted to " + other.symbol);
        }
        return this;
    }

    double toBase(double value) {
        return switch (this) {
            case DEGREE_FAHRENHEIT -> (value - 32) * 5 / 9;
            case AWG -> WireGauge.squareMillimetres(value);
            case DBV -> value + DBU_OVER_DBV;
            case DBV_PER_PASCAL -> 1000 * Math.pow(10, value / 20);
            default -> value * times / over;
        };
    }

    double fromBase(double base) {
        return switch (this) {
            case DEGREE_FAHRENHEIT -> base * 9 / 5 + 32;
            case AWG -> WireGauge.ofSquareMillimetres(base);
            case DBV -> base - DBU_OVER_DBV;
            case DBV_PER_PASCAL -> 20 * Math.log10(base / 1000);
            default -> base * over / times;
        };
    }

    /** The unit that may follow this one, as inches follow feet in {@code 6 ft 3 in}. */
    @Nullable
    Unit smaller() {
        return switch (this) {
            case FOOT -> INCH;
            case DAY -> HOUR;
            case HOUR -> MINUTE;
            case MINUTE -> SECOND;
            case POUND -> OUNCE;
            default -> null;
        };
    }

    /** How many of a smaller unit make one of this. */
    int smallerPerOne(Unit smaller) {
        return (int) Math.round(toBase(1) / smaller.toBase(1));
    }

    /** The least value that makes sense, for example absolute zero. */
    double least() {
        return switch (this) {
            case DEGREE_CELSIUS -> -273.15;
            case DEGREE_FAHRENHEIT -> -459.67;
            case AWG -> WireGauge.HEAVIEST;
            case DBV_PER_PASCAL -> Double.NEGATIVE_INFINITY;
            default -> dimension.signed() ? Double.NEGATIVE_INFINITY : 0;
        };
    }

    /** Units of one kind with different scales measure against references that only further facts can relate. */
    private int scale() {
        return switch (this) {
            case DBFS -> 1;
            case DB_SPL -> 2;
            case DBA -> 3;
            default -> 0;
        };
    }

    private static Map<String, Unit> bySymbol() {
        var units = new HashMap<String, Unit>();
        for (Unit unit : values()) {
            units.put(unit.symbol, unit);
            for (String alias : unit.aliases) {
                units.put(alias, unit);
            }
        }
        return units;
    }
}
