package housewright.model;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
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
}
