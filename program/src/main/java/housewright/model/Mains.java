package housewright.model;

import housewright.unit.Frequency;
import housewright.unit.Voltage;
import org.jspecify.annotations.Nullable;

/** The mains of the building. */
public record Mains(@Nullable Voltage voltage, @Nullable Frequency frequency) {}
