package housewright.check.joining;

import housewright.model.LevelClass;
import housewright.model.Model;
import housewright.model.Port;
import housewright.unit.Level;
import housewright.unit.Sensitivity;
import housewright.unit.Unit;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Levels of ports in dBu. */
final class Levels {
    /** Line level where a port is marked so and states no figure: +4 dBu, as professional equipment has it. */
    static final double LINE_DBU = 4;

    /** Consumer level, -10 dBV. */
    static final double CONSUMER_DBU = new Level(-10, Unit.DBV).in(Unit.DBU);

    /** 1 Pa, near enough; a sensitivity is what a microphone gives at that. */
    static final double LOUD_DB_SPL = 94;

    private Levels() {}

    static OptionalDouble dbu(@Nullable Level level) {
        return level == null || !level.comparesWith(Level.ofDbu(0))
                ? OptionalDouble.empty()
                : OptionalDouble.of(level.in(Unit.DBU));
    }

    /** The level a line port works at: as stated, else by its class; empty for the other classes. */
    static OptionalDouble working(Port port) {
        OptionalDouble stated = dbu(port.nominal());
        if (stated.isPresent() || port.level() == null) {
            return stated;
        }
        return switch (port.level()) {
            case LINE -> OptionalDouble.of(LINE_DBU);
            case CONSUMER -> OptionalDouble.of(CONSUMER_DBU);
            case MIC, INSTRUMENT, PHONES, SPEAKER -> OptionalDouble.empty();
        };
    }

    /** What a microphone gives at a sound pressure: its sensitivity in dBV/Pa, and 1 Pa is 94 dB SPL (MIC-06, MIC-08). */
    static double microphoneDbu(Sensitivity sensitivity, double dbSpl) {
        double dbv = 20 * Math.log10(sensitivity.millivoltsPerPascal() / 1000);
        return new Level(dbv + dbSpl - LOUD_DB_SPL, Unit.DBV).in(Unit.DBU);
    }

    /** The level at a microphone's output when it is loud, or that its output states. */
    static OptionalDouble microphoneDbu(@Nullable Model model, Port port) {
        OptionalDouble stated = dbu(port.nominal());
        if (stated.isPresent()) {
            return stated;
        }
        Sensitivity sensitivity = model == null ? null : model.sensitivity();
        return sensitivity == null || sensitivity.millivoltsPerPascal() <= 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(microphoneDbu(sensitivity, LOUD_DB_SPL));
    }

    /** It is made for levels that need no microphone amplifier. */
    static boolean isLineInput(Port port) {
        return port.level() == LevelClass.LINE || port.level() == LevelClass.CONSUMER;
    }

    /** "4 dBu", "-39.7 dBu". */
    static String said(double dbu) {
        String text = String.format(Locale.ROOT, "%.1f", dbu);
        return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + " dBu";
    }
}
