package housewright.model;

import housewright.unit.Length;
import org.jspecify.annotations.Nullable;

/** Where cable can run between two places. */
public record Pathway(
        String id,
        @Nullable String from,
        @Nullable String to,
        @Nullable PathwayKind kind,
        @Doc("Inside diameter") @Nullable Length bore,
        @Nullable Length length,
        @Doc("Its tightest bend, inside radius") @Nullable Length bend,
        @Doc("Height above the floor") @Nullable Length height,
        @Doc("A space that air is moved through") @Nullable Boolean airHandling,
        @Doc("What it runs beside, such as mains") @Nullable String beside,

        @Doc("Separation from what it runs beside") @Nullable
        Length apart,

        Remarks remarks) {}
