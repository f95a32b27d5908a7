package housewright.model;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

/** When somebody is free. */
public record Free(
        Days days,
        LocalTime from,
        LocalTime to,
        @Doc("First and last day") List<LocalDate> between) {
    public Free {
        between = List.copyOf(between);
    }
}
