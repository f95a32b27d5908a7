package housewright.model;

import housewright.unit.TimeSpan;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A stay of somebody who travels to the job: of the time said to be free there, only what lies within one counts. */
public record Stay(
        @Doc("First day there, on which the way there is travelled")
        LocalDate from,

        @Doc("Last day there, on which the way back is travelled")
        LocalDate to,

        @Doc("Of the first day's free time, spent on the road") @Nullable
        TimeSpan wayThere,

        @Doc("Of the last day's free time, spent on the road") @Nullable
        TimeSpan wayBack) {}
