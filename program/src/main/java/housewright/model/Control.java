package housewright.model;

import housewright.unit.TimeSpan;
import org.jspecify.annotations.Nullable;

/** What is pressed, or when, and what that does. */
public record Control(
        String id,
        @Doc("What is pressed") @Nullable Ref press,
        @Doc("A look it calls") @Nullable String calls,

        @Doc("Something else it does") @Key("does") @Nullable
        Ref does,

        @Doc("An event it happens at") @Nullable String at,
        @Nullable TimeSpan before,
        Remarks remarks) {}
