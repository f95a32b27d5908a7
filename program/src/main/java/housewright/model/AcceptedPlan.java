package housewright.model;

import java.time.LocalDateTime;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The plan that holds, and what every plan is held to. */
public record AcceptedPlan(
        @Doc("When it was accepted") @Nullable LocalDateTime made,

        @Doc("The seed it was found with, where it can be found again") @Nullable
        Integer seed,

        @Doc("Who does what when, by the ids of the tasks") Map<String, PlannedTask> times,

        @Doc("What every plan is held to, by the ids of the tasks")
        Map<String, Pin> pins) {
    /** No plan yet, and no pins. */
    public static final AcceptedPlan NONE = new AcceptedPlan(null, null, Map.of(), Map.of());

    public AcceptedPlan {
        times = Ordered.copy(times);
        pins = Ordered.copy(pins);
    }

    public boolean isNothing() {
        return equals(NONE);
    }

    public AcceptedPlan withPins(Map<String, Pin> others) {
        return new AcceptedPlan(made, seed, times, others);
    }
}
