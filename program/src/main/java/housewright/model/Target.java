package housewright.model;

import housewright.unit.Angle;
import housewright.unit.Illuminance;
import housewright.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where light must fall. */
public record Target(
        String id,
        List<FloorPoint> area,
        @Nullable Length height,
        @Nullable Angle facing,
        @Doc("On a face turned that way") @Nullable Illuminance face,
        @Doc("Least over mean") @Nullable Double evenness,
        boolean camera,
        Remarks remarks) {
    public Target {
        area = List.copyOf(area);
    }
}
