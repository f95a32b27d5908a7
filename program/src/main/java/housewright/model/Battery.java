package housewright.model;

import housewright.unit.TimeSpan;
import org.jspecify.annotations.Nullable;

/** The batteries a thing runs on. */
public record Battery(
        @Nullable String type,
        @Nullable Integer count,
        @Doc("How long a set runs") @Nullable TimeSpan runs) {}
