package housewright.model;

import org.jspecify.annotations.Nullable;

/** What the hall is handed with a thing. The password itself does not belong here, only who keeps it. */
public record Handover(
        @Doc("Who keeps the password, and where; never the password itself") @Nullable
        String password,

        @Doc("Whom the licence is made out to, and until when") @Nullable
        String licence,

        @Doc("The version it was tested with") @Nullable String firmware) {}
