package housewright.model;

import housewright.unit.Level;
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

        @Doc("Level at the loudest seat, averaged over its length, in dBA") @Nullable
        Level level,

        Remarks remarks) {}
