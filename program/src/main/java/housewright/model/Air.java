package housewright.model;

import housewright.unit.Ratio;
import housewright.unit.Temperature;
import org.jspecify.annotations.Nullable;

/** The air of the room, for the speed of sound. */
public record Air(
        @Nullable Temperature temperature, @Nullable Ratio humidity) {}
