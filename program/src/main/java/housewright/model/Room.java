package housewright.model;

import housewright.unit.Length;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A room of the building. */
public record Room(
        String id,
        @Doc("Floor plan, counter-clockwise") List<FloorPoint> outline,

        @Doc("Height of the floor above the building's zero") @Nullable
        Length floor,

        @Doc("Height of the ceiling above the same zero") @Nullable
        Length ceiling,

        @Doc("What the walls, floor and ceiling are made of")
        Map<String, String> surfaces,

        @Nullable Seats seats,
        Remarks remarks) {
    public Room {
        outline = List.copyOf(outline);
        surfaces = Ordered.copy(surfaces);
    }
}
