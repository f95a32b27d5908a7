package housewright.model;

import housewright.unit.Delay;
import housewright.unit.Frequency;
import org.jspecify.annotations.Nullable;

/** A radio link between two antennas. */
public record RadioLink(
        String id,
        Ref from,
        Ref to,
        @Nullable Frequency frequency,
        @Nullable Frequency bandwidth,
        @Nullable Delay delay,
        @Default("keep") Life life,
        Remarks remarks) {}
