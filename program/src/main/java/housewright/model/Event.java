package housewright.model;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** Something the room is needed for. */
public record Event(
        String id,
        @Nullable LocalDateTime from,
        @Nullable LocalDateTime to,
        @Doc("elsewhere, when not in the room") @Nullable String at,
        @Nullable Needs needs,
        @Doc("The day that cannot move") boolean deadline,
        Remarks remarks) {}
