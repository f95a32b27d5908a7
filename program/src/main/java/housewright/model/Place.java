package housewright.model;

import org.jspecify.annotations.Nullable;

/** A named point where things stand, hang or are racked. */
public record Place(
        String id,
        @Nullable String room,
        @Doc("Where it is: along, across, up") @Nullable SpacePoint at,

        @Doc("A rack; without it things stand free") @Nullable
        RackSpace rack,

        @Doc("Things hang here") @Nullable Hanging hang,

        @Doc("Somebody works here during a service") @Nullable
        Operator operator,

        Remarks remarks) {}
