package housewright.model;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Something hired by the day. */
public record Hire(
        String id,
        @Nullable String kind,
        @Nullable BigDecimal perDay,
        @Doc("First and last day it can be had") List<LocalDate> offered,

        @Doc("What its operator must be trained in") @Nullable
        String skill,

        Remarks remarks) {
    public Hire {
        offered = List.copyOf(offered);
    }

    /** A machine that lifts people, by its id and kind; of a platform alone nobody knows whether it does. */
    public boolean isLift() {
        return says("lift", "boom", "cherry", "aerial", "elevating", "scissor");
    }

    /** A tower to stand on, by its id and kind. */
    public boolean isTower() {
        return says("tower", "scaffold");
    }

    private boolean says(String... words) {
        String text = (id + " " + kind).toLowerCase(Locale.ROOT);
        return Stream.of(words).anyMatch(text::contains);
    }
}
