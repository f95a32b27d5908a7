package housewright.app.plan;

import housewright.model.AcceptedPlan;
import housewright.model.PlannedTask;
import housewright.model.Stretch;
import housewright.model.change.Change;
import housewright.plan.Job;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.Window;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes a plan the one that holds. */
public final class Acceptance {
    private Acceptance() {}

    /**
     * The change that does it; pins stay as they are.
     *
     * @param made when it was accepted, in the project's time
     * @param seed it was found with, where it can be found again
     */
    public static Change of(Job job, Plan plan, LocalDateTime made, @Nullable Long seed) {
        Map<String, PlannedTask> times = new LinkedHashMap<>();
        plan.tasks().forEach(task -> times.put(task.slot().task(), times(job, task)));
        Integer kept = seed != null && seed == seed.intValue() ? Integer.valueOf(seed.intValue()) : null;
        return new Change.Accept(new AcceptedPlan(made.truncatedTo(ChronoUnit.MINUTES), kept, times, Map.of()));
    }

    private static PlannedTask times(Job job, Planned task) {
        List<Stretch> stretches =
                task.slot().pieces().stream().map(piece -> stretch(job, piece)).toList();
        return new PlannedTask(
                task.slot().task(),
                stretches.getFirst().from(),
                stretches.getFirst().to(),
                stretches.subList(1, stretches.size()),
                task.slot().people(),
                task.hire() == null ? List.of() : List.of(task.hire()));
    }

    private static Stretch stretch(Job job, Window piece) {
        return new Stretch(job.at(piece.from()), job.at(piece.to()));
    }
}
