package housewright.model;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What somebody wants of a task in every plan: who is at it, when it begins, or both. */
public record Pin(
        String id, @Doc("When it begins") @Nullable LocalDateTime from, List<String> people, Remarks remarks) {
    public Pin {
        people = List.copyOf(people);
    }

    /** The same, held to others; nobody for whoever is free. */
    public Pin by(List<String> others) {
        return new Pin(id, from, others, remarks);
    }

    /** The same, held to another moment; null for whenever. */
    public Pin at(@Nullable LocalDateTime moment) {
        return new Pin(id, moment, people, remarks);
    }

    public boolean holdsNothing() {
        return from == null && people.isEmpty();
    }
}
