package housewright.model;

import java.time.LocalDateTime;

/** From one moment to another. */
public record Stretch(LocalDateTime from, LocalDateTime to) implements Tuple {
    public Stretch {
        if (!to.isAfter(from)) {
            throw new IllegalArgumentException("an end after the beginning");
        }
    }
}
