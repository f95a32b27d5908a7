package housewright.model;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
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
    private static final Set<String> LIFTS =
            Set.of("lift", "lifts", "mewp", "elevating", "scissor", "cherrypicker", "picker");
    private static final Set<String> TOWERS = Set.of("tower", "scaffold", "scaffolding");

    public Hire {
        offered = List.copyOf(offered);
    }

    /** A machine that lifts people, by the words of its id and kind; of a platform alone nobody knows whether it does. */
    public boolean isLift() {
        Set<String> words = words();
        boolean lifts = !Collections.disjoint(words, LIFTS)
                || (words.contains("aerial") && words.contains("platform")); // alone it may be an antenna
        return lifts && !words.contains("fork"); // which lifts nobody
    }

    /** A tower to stand on, by the words of its id and kind. */
    public boolean isTower() {
        return !Collections.disjoint(words(), TOWERS);
    }

    private Set<String> words() {
        return new HashSet<>(
                Arrays.asList((id + " " + kind).toLowerCase(Locale.ROOT).split("[^a-z]+", -1)));
    }
}
