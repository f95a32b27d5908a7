package housewright.model;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A question to somebody. */
public record Question(
        String id,
        @Nullable String to,

        @Doc("The section and id it is about, such as equipment.desk") @Nullable
        String about,

        @Nullable String asks,
        @Nullable LocalDate due,
        @Nullable String answer,
        Remarks remarks) {}
