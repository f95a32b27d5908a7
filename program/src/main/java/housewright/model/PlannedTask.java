package housewright.model;

import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;

/** When a task is done in the accepted plan, and by whom. */
public record PlannedTask(
        String id,
        LocalDateTime from,
        @Doc("End of its first stretch") LocalDateTime to,

        @Doc("Further stretches, where it is laid down and taken up again")
        List<Stretch> then,

        List<String> people,
        List<String> hires) {
    public PlannedTask {
        then = List.copyOf(then);
        people = List.copyOf(people);
        hires = List.copyOf(hires);
        if (!to.isAfter(from)) {
            throw new IllegalArgumentException("an end after the beginning");
        }
    }

    /** In order of time; one or more. */
    public List<Stretch> stretches() {
        return Stream.concat(Stream.of(new Stretch(from, to)), then.stream()).toList();
    }
}
