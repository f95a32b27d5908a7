package housewright.app.plan;

import housewright.plan.Effort;
import housewright.plan.Plan;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.axis.Frozen;
import housewright.plan.chance.Chance;
import housewright.plan.chance.Likelihood;
import housewright.plan.check.Breach;
import housewright.plan.check.PlanChecker;
import housewright.plan.check.Verdict;
import housewright.study.PlanBasis;
import housewright.study.Study;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The accepted plan at a moment: with what has happened since in its place, and held against the project as it is now.
 *
 * @param now the moment
 * @param plan null where none is accepted
 * @param unticked tasks that were to be begun by now and are in no log, by id
 * @param broken what cannot be done as the plan has it any more, in sentences
 */
public record Standing(
        PlanBasis basis, LocalDateTime now, @Nullable Plan plan, Set<String> unticked, List<String> broken) {
    private static final int DRAWS = 400;
    private static final Effort NONE = Effort.quick(1, 1);

    public Standing {
        unticked = java.util.Collections.unmodifiableSet(new TreeSet<>(unticked));
        broken = List.copyOf(broken);
    }

    public static Standing of(Study study, LocalDateTime now) {
        PlanBasis basis = study.planBasis(now, study.project().log());
        if (!basis.isAccepted() || !basis.unplanned().isEmpty()) {
            return new Standing(basis, now, null, Set.of(), List.of());
        }
        Map<String, Slot> slots = new LinkedHashMap<>(basis.accepted().byTask());
        Frozen.slots(basis.job(), basis.log()).forEach(slot -> slots.put(slot.task(), slot));
        Schedule schedule = new Schedule(List.copyOf(slots.values()));
        Request request = basis.anew(NONE);
        Verdict verdict = PlanChecker.check(request, schedule);
        Set<String> unticked = verdict.breaches().stream()
                .filter(breach -> breach.rule().equals("past"))
                .map(Breach::task)
                .collect(Collectors.toSet());
        List<String> broken = verdict.breaches().stream()
                .filter(breach -> !unticked.contains(breach.task()))
                .map(breach -> breach.says() + ".")
                .toList();
        Plan plan = Planning.standing(request, schedule);
        return new Standing(basis, now, plan, unticked, broken);
    }

    /** How likely each event finds what it needs, which takes a while to play; empty where the plan does not hold. */
    public List<Chance> likelihood() {
        return plan == null || !holds()
                ? List.of()
                : Likelihood.of(basis.job(), basis.log(), plan.schedule(), 1, DRAWS);
    }

    /** Whether it can be kept as it is. */
    public boolean holds() {
        return plan != null && unticked.isEmpty() && broken.isEmpty();
    }
}
