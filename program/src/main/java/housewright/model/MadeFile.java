package housewright.model;

import housewright.unit.TimeSpan;
import org.jspecify.annotations.Nullable;

/** A file made beforehand and loaded on the day. */
public record MadeFile(
        String id,
        @Key("for") @Nullable String device,
        @Nullable String madeBy,
        @Nullable Where where,
        @Nullable TimeSpan takes,
        Remarks remarks) {}
