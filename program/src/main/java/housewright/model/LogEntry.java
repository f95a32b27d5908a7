package housewright.model;

import housewright.unit.TimeSpan;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What happened with a task, or with the delivery of an order, by whose id it stands. */
public record LogEntry(
        String id,
        SiteState state,
        @Doc("When it was begun") @Nullable LocalDateTime from,
        @Doc("When it was done") @Nullable LocalDateTime to,
        @Doc("Who was at it") List<String> people,
        @Doc("What is left of a task begun") @Nullable TimeSpan left,
        @Doc("Why it is late or blocked") @Nullable String why,

        @Doc("Until when it is blocked, or when it comes; nobody knows where this is left out") @Nullable
        LocalDateTime until,

        Remarks remarks) {
    public LogEntry {
        people = List.copyOf(people);
        if (from != null && to != null && !to.isAfter(from)) {
            throw new IllegalArgumentException("an end after the beginning");
        }
        if (state == SiteState.LATE && until == null) {
            throw new IllegalArgumentException("until: when it comes; what nobody knows is blocked");
        }
    }
}
