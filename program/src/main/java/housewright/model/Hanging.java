package housewright.model;

import housewright.unit.Mass;
import org.jspecify.annotations.Nullable;

/** What a hanging point may carry, as stated by somebody entitled to state it. */
public record Hanging(
        @Doc("The stated limit; never worked out by the program") @Nullable
        Mass limit,

        @Doc("Who stated it, and when") @Nullable String statedBy) {}
