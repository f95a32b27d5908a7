package housewright.cable;

import housewright.unit.DataRate;
import housewright.unit.VideoFormat;
import java.util.Optional;

/** The serial digital links: SMPTE ST 259, ST 292-1, ST 424, ST 2081-1, ST 2082-1. */
public enum SdiRate {
    SD("SD-SDI", 270),
    HD("HD-SDI", 1485),
    THREE("3G-SDI", 2970),
    SIX("6G-SDI", 5940),
    TWELVE("12G-SDI", 11_880);

    private final String said;
    private final double megabits;

    SdiRate(String said, double megabits) {
        this.said = said;
        this.megabits = megabits;
    }

    /** The link that carries a format; empty where none does. */
    public static Optional<SdiRate> of(VideoFormat format) {
        double megabits = format.findSdiRate().map(DataRate::bitsPerSecond).orElse(0.0) / 1e6;
        for (SdiRate rate : values()) {
            if (Math.abs(rate.megabits - megabits) < 1) {
                return Optional.of(rate);
            }
        }
        return Optional.empty();
    }

    public String said() {
        return said;
    }

    /** Half the clock, in MHz: where the loss of the cable is counted. */
    public double halfClockMegahertz() {
        return megabits / 2;
    }
}
