package housewright.unit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A kind of quantity: its trade word, whether it may be negative, an example, and its record. */
enum Dimension {
    LENGTH("length", true, "31 m", Length.class),
    TIME("time", false, "2 h 30 min", TimeSpan.class),
    MASS("weight", false, "12 kg", Mass.class),
    POWER("power", false, "120 W", Power.class),
    VOLTAGE("voltage", false, "230 V", Voltage.class),
    CURRENT("current", false, "16 A", Current.class),
    RESISTANCE("resistance", false, "8 ohm", Resistance.class),
    FREQUENCY("frequency", false, "606.5 MHz", Frequency.class),
    DATA_RATE("data rate", false, "1.5 Gbit/s", DataRate.class),
    ILLUMINANCE("illuminance", false, "700 lx", Illuminance.class),
    INTENSITY("luminous intensity", false, "12000 cd", Intensity.class),
    ANGLE("angle", true, "26 deg", Angle.class),
    RATIO("percentage", false, "60 %", Ratio.class),
    TEMPERATURE("temperature", true, "20 degC", Temperature.class),
    COLOUR_TEMPERATURE("colour temperature", false, "3200 K", ColourTemperature.class),
    CROSS_SECTION("cross-section", false, "2.5 mm2", CrossSection.class),
    GAIN("gain", true, "-6 dB", Gain.class),
    LEVEL("level", true, "4 dBu", Level.class),
    SENSITIVITY("sensitivity", false, "2 mV/Pa", Sensitivity.class),
    RACK_UNITS("rack height", false, "2 U", RackUnits.class),
    ENERGY("energy", false, "500 Wh", Energy.class),
    CAPACITANCE_PER_LENGTH("capacitance per length", false, "100 pF/m", CapacitancePerLength.class),
    RESISTANCE_PER_LENGTH("resistance per length", false, "84 ohm/km", ResistancePerLength.class),
    FORCE("force", false, "110 N", Force.class),
    LUMINOUS_FLUX("luminous flux", false, "5000 lm", LuminousFlux.class),
    LUMINANCE("luminance", false, "300 cd/m2", Luminance.class),
    DELAY("delay", false, "0.7 ms", Delay.class);

    /** Anything nearer to zero is what sums leave over. */
    private static final double SMALLEST = 1e-18;

    private static final Map<Class<?>, Dimension> BY_KIND = byKind();

    private final String word;
    private final boolean signed;
    private final String example;
    private final Class<? extends Quantity> kind;

    Dimension(String word, boolean signed, String example, Class<? extends Quantity> kind) {
        this.word = word;
        this.signed = signed;
        this.example = example;
        this.kind = kind;
    }

    static Dimension getByKind(Class<?> kind) {
        Dimension found = BY_KIND.get(kind);
        if (found == null) {
            throw new IllegalArgumentException(kind.getName() + " is not a kind of quantity");
        }
        return found;
    }

    /** As the trade says it: a mass is a weight. */
    String word() {
        return word;
    }

    String wordWithArticle() {
        return ("aeio".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }

    boolean signed() {
        return signed;
    }

    String example() {
        return example;
    }

    Class<? extends Quantity> kind() {
        return kind;
    }

    /** A delay is in frames, or in those units of time in which anybody counts delays. */
    boolean takes(Unit unit) {
        return unit.dimension() == this
                || (this == DELAY && (unit == Unit.MICROSECOND || unit == Unit.MILLISECOND || unit == Unit.SECOND));
    }

    /** Whether another unit may follow this one, as inches follow feet. */
    boolean takesSmaller(Unit unit) {
        Unit smaller = unit.smaller();
        return smaller != null && takes(smaller);
    }

    List<Unit> units() {
        var units = new ArrayList<Unit>();
        for (Unit unit : Unit.values()) {
            if (takes(unit)) {
                units.add(unit);
            }
        }
        return units;
    }

    List<String> symbols() {
        return units().stream().map(Unit::symbol).toList();
    }

    /**
     * The value as a record keeps it: no negative zero, no dust left over by arithmetic.
     *
     * @throws IllegalArgumentException if no such quantity can be
     */
    double checked(double value, Unit unit) {
        if (!takes(unit)) {
            throw new IllegalArgumentException(wordWithArticle() + " has no unit " + unit.symbol());
        }
        String trouble = findTrouble(value, unit);
        if (trouble != null) {
            throw new IllegalArgumentException(value + " " + unit.symbol() + " " + trouble);
        }
        return withoutDust(value, unit);
    }

    /**
     * Arithmetic leaves the last bits of a double to chance; where a compound form such as {@code 1 ft 7 in} is meant,
     * they decide whether it can be printed, so the nearest one within four of them is taken.
     */
    private static double withoutDust(double value, Unit unit) {
        if (Math.abs(value) < SMALLEST) {
            return 0.0;
        }
        if (unit.smaller() == null) {
            return value;
        }
        int parts = 1;
        Unit larger = unit;
        for (Unit smaller = unit.smaller(); smaller != null; smaller = smaller.smaller()) {
            parts *= larger.smallerPerOne(smaller);
            larger = smaller;
        }
        double nearest = Math.rint(value * parts) / parts;
        return Math.abs(nearest - value) <= 4 * Math.ulp(value) ? nearest : value;
    }

    /** What is wrong with a value in a unit that this kind takes, to be read after the value; null when nothing is. */
    @Nullable
    String findTrouble(double value, Unit unit) {
        if (!(Math.abs(value) < 1e12)) {
            return "is not a number below a million million";
        }
        if (value < unit.least()) {
            return switch (unit) {
                case DEGREE_CELSIUS, DEGREE_FAHRENHEIT -> "is below absolute zero";
                case AWG -> WireGauge.RANGE;
                default -> negativeTrouble();
            };
        }
        if (unit == Unit.RACK_UNIT && value * 2 != Math.rint(value * 2)) {
            return "is neither whole nor half rack units";
        }
        if (unit == Unit.AWG && !WireGauge.isGauge(value)) {
            return WireGauge.RANGE;
        }
        return null;
    }

    String negativeTrouble() {
        return "is negative, which " + wordWithArticle() + " cannot be";
    }

    /** The record of this kind. */
    Quantity of(double value, Unit unit) {
        return switch (this) {
            case LENGTH -> new Length(value, unit);
            case TIME -> new TimeSpan(value, unit);
            case MASS -> new Mass(value, unit);
            case POWER -> new Power(value, unit);
            case VOLTAGE -> new Voltage(value, unit);
            case CURRENT -> new Current(value, unit);
            case RESISTANCE -> new Resistance(value, unit);
            case FREQUENCY -> new Frequency(value, unit);
            case DATA_RATE -> new DataRate(value, unit);
            case ILLUMINANCE -> new Illuminance(value, unit);
            case INTENSITY -> new Intensity(value, unit);
            case ANGLE -> new Angle(value, unit);
            case RATIO -> new Ratio(value, unit);
            case TEMPERATURE -> new Temperature(value, unit);
            case COLOUR_TEMPERATURE -> new ColourTemperature(value, unit);
            case CROSS_SECTION -> new CrossSection(value, unit);
            case GAIN -> new Gain(value, unit);
            case LEVEL -> new Level(value, unit);
            case SENSITIVITY -> new Sensitivity(value, unit);
            case RACK_UNITS -> new RackUnits(value, unit);
            case ENERGY -> new Energy(value, unit);
            case CAPACITANCE_PER_LENGTH -> new CapacitancePerLength(value, unit);
            case RESISTANCE_PER_LENGTH -> new ResistancePerLength(value, unit);
            case FORCE -> new Force(value, unit);
            case LUMINOUS_FLUX -> new LuminousFlux(value, unit);
            case LUMINANCE -> new Luminance(value, unit);
            case DELAY -> new Delay(value, unit);
        };
    }

    private static Map<Class<?>, Dimension> byKind() {
        var dimensions = new HashMap<Class<?>, Dimension>();
        for (Dimension dimension : values()) {
            dimensions.put(dimension.kind, dimension);
        }
        return dimensions;
    }
}
