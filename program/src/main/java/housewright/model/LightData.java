package housewright.model;

import housewright.unit.Angle;
import housewright.unit.ColourTemperature;
import housewright.unit.Intensity;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a fixture does with light, and its control modes. */
public record LightData(
        @Doc("Control modes and how many channels each takes")
        Map<String, Integer> modes,

        @Doc("Full angle at half intensity") @Nullable Angle beam,

        @Doc("Full angle at a tenth of the intensity") @Nullable
        Angle field,

        @Doc("Intensity in the middle") @Nullable Intensity peak,
        @Doc("Colour of white, where fixed") @Nullable ColourTemperature white,

        @Doc("Gives white from warm to cold, and no other colour")
        boolean tunableWhite,

        @Doc("Needs a dimmer") boolean dimmed,

        @Doc("Its address can be set from the floor, over the cable (RDM, ANSI E1.20)") @Nullable
        Boolean rdm) {
    public LightData {
        modes = Ordered.copy(modes);
    }
}
