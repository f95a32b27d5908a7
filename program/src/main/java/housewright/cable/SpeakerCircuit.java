package housewright.cable;

import housewright.model.Model;
import housewright.model.Port;
import housewright.unit.Level;
import housewright.unit.Power;
import housewright.unit.Resistance;
import housewright.unit.Unit;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Everything that hangs on one output of an amplifier: through cables, panels, the link sockets of loudspeakers and
 * volume controls. All of it is in parallel.
 *
 * @param output in what gives the power
 * @param loads loudspeakers and loops, each once
 * @param foreign sockets reached that are not for loudspeakers
 * @param panels passive sockets on the way
 * @param others outputs of amplifiers that are on the same wires
 * @param cables on the way, in the order they are come upon
 * @param whole false where a cable leads to where nobody knows, so that there may be more
 */
public record SpeakerCircuit(
        Plug output,
        List<Plug> loads,
        List<Plug> foreign,
        List<Plug> panels,
        List<Plug> others,
        Set<String> cables,
        boolean whole) {

    /** No loudspeaker without a transformer has more; no amplifier made for such needs more. */
    private static final double MOST_OF_LOW_OHMS = 32;

    private static final double LEAST_OF_LINE_OHMS = 16;

    /** Where a line has a nominal level of its own, it is 25 V or more: 28 dBV. */
    private static final double LEAST_OF_LINE_DBV = 27;

    public SpeakerCircuit {
        loads = List.copyOf(loads);
        foreign = List.copyOf(foreign);
        panels = List.copyOf(panels);
        others = List.copyOf(others);
        cables = Collections.unmodifiableSet(new LinkedHashSet<>(cables));
    }

    /** The socket of one of its plugs, all of which are in sockets that are known. */
    public static Port port(Plug plug) {
        return Objects.requireNonNull(plug.port());
    }

    /** The type of the thing that one of its plugs is in. */
    public static Model model(Plug plug) {
        return Objects.requireNonNull(plug.model());
    }

    /**
     * The amplifier is made for lines of loudspeakers with transformers: its output states the nominal voltage of a
     * line (a big one may go down to a few ohms: 1000 W at 100 V is 10 ohm), or its least load is above any plain
     * loudspeaker's.
     */
    public boolean isLine() {
        Resistance least = port(output).minLoad();
        return least != null && (least.ohms() > LEAST_OF_LINE_OHMS || isAtLineVoltage(port(output)));
    }

    /** The amplifier is made for loudspeakers without transformers. */
    public boolean isLow() {
        return port(output).minLoad() != null && !isLine();
    }

    /**
     * A big amplifier that drives a line straight: its least load is as low as a plain one's (600 W at 70.7 V are 8.3
     * ohm), but its voltage is that of all the loudspeakers on it, to a decibel.
     */
    public boolean drivesLine() {
        OptionalDouble volts = ownVolts();
        return isLow()
                && volts.isPresent()
                && !loads.isEmpty()
                && loads.stream()
                        .allMatch(load -> isLineLoad(load)
                                && lineVolts(load).isPresent()
                                && volts.getAsDouble() >= 0.89 * lineVolts(load).getAsDouble());
    }

    /** What an amplifier gives at full power into its least load, by V² = P·R, or what it says it gives at most, if less. */
    public OptionalDouble ownVolts() {
        Port port = port(output);
        Power power = port.power();
        Resistance least = port.minLoad();
        OptionalDouble stated = lineVolts();
        return power == null || least == null || stated.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.min(stated.getAsDouble(), Math.sqrt(power.watts() * least.ohms())));
    }

    /** Voltage of the line that a loudspeaker with a transformer is made for; empty where it does not say. */
    public static OptionalDouble lineVolts(Plug load) {
        Level nominal = port(load).nominal();
        return nominal != null && nominal.comparesWith(new Level(0, Unit.DBV)) && isLineLoad(load)
                ? OptionalDouble.of(nominal.toVoltage().volts())
                : OptionalDouble.empty();
    }

    /** As people call it: 70 V for 70.7 V. */
    public static String said(double volts) {
        return Math.abs(volts / 70.71 - 1) < 0.03 ? "70 V" : String.format(Locale.ROOT, "%.0f V", volts);
    }

    private static boolean isAtLineVoltage(Port port) {
        Level nominal = port.nominal();
        return nominal != null
                && nominal.comparesWith(new Level(0, Unit.DBV))
                && nominal.in(Unit.DBV) >= LEAST_OF_LINE_DBV;
    }

    /** A loudspeaker with a transformer, by its impedance or the line it is marked for. */
    public static boolean isLineLoad(Plug load) {
        Resistance impedance = port(load).impedance();
        return (impedance != null && impedance.ohms() > MOST_OF_LOW_OHMS) || isAtLineVoltage(port(load));
    }

    /** A loudspeaker without a transformer; neither this nor the other where its impedance is not known. */
    public static boolean isLowLoad(Plug load) {
        Resistance impedance = port(load).impedance();
        return impedance != null && impedance.ohms() <= MOST_OF_LOW_OHMS && !isLineLoad(load);
    }

    /** Voltage of the line at full power: the root of P times R, from V² = P·R. */
    public OptionalDouble lineVolts() {
        Port port = port(output);
        Power power = port.power();
        Resistance least = port.minLoad();
        if (port.max() != null && port.max().comparesWith(new Level(0, Unit.DBV))) {
            return OptionalDouble.of(port.max().toVoltage().volts());
        }
        return power == null || least == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.sqrt(power.watts() * least.ohms()));
    }

    /**
     * What a loudspeaker with a transformer draws on this line: its tap's watts, which go with the square of the
     * voltage (CV-04), else the line's V²/Z (CV-01); empty where neither is known.
     */
    public OptionalDouble draws(Plug load) {
        Port port = port(load);
        OptionalDouble volts = lineVolts();
        Level nominal = port.nominal();
        if (port.power() != null) {
            boolean both = volts.isPresent() && nominal != null && nominal.comparesWith(new Level(0, Unit.DBV));
            double ratio = both
                    ? volts.getAsDouble()
                            / Objects.requireNonNull(nominal).toVoltage().volts()
                    : 1;
            // the same line written once as 100 V and once as 42.2 dBu
            return OptionalDouble.of(port.power().watts() * (Math.abs(ratio - 1) < 0.03 ? 1 : ratio * ratio));
        }
        Resistance impedance = port.impedance();
        return volts.isPresent() && impedance != null && impedance.ohms() > 0
                ? OptionalDouble.of(volts.getAsDouble() * volts.getAsDouble() / impedance.ohms())
                : OptionalDouble.empty();
    }

    /** All loads in parallel, in ohm; empty where there is none or one is not known. */
    public OptionalDouble parallel() {
        double siemens = 0;
        for (Plug load : loads) {
            Resistance impedance = port(load).impedance();
            if (impedance == null || impedance.ohms() <= 0) {
                return OptionalDouble.empty();
            }
            siemens += 1 / impedance.ohms();
        }
        return siemens == 0 ? OptionalDouble.empty() : OptionalDouble.of(1 / siemens);
    }
}
