package housewright.model;

import housewright.unit.Length;
import org.jspecify.annotations.Nullable;

/** Somebody who works at a place during a service, and what stands between them and the stage. */
public record Operator(
        @Doc("On their feet all the time; else seated") boolean stands,

        @Doc("Height of the eye above the floor it stands on, where it is known of the people themselves") @Nullable
        Length eye,

        @Doc("Height of that floor above the building's zero, where it is not the room's floor") @Nullable
        Length floor,

        @Doc("Top edge of what stands in front of them, above that floor") @Nullable
        Length screen) {}
