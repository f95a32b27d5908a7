package housewright.model;

import housewright.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where the audience sits. */
public record Seats(
        List<FloorPoint> area,
        @Nullable Integer rows,

        @Doc("Height of a seated ear above the floor") @Nullable
        Length ear,

        @Doc("Height of a seated eye above the floor") @Nullable
        Length eye,

        @Doc("How much each row stands above the one before") @Nullable
        Length rise) {
    public Seats {
        area = List.copyOf(area);
    }
}
