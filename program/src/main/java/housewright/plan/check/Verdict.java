package housewright.plan.check;

import housewright.plan.Goal;
import housewright.plan.Promise;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What the checker found.
 *
 * @param breaches rules that no schedule may break; empty for a legal one
 * @param out tasks left out
 * @param late tasks ended after they are due
 * @param broken promises not kept
 * @param values in the units of {@link Goal}; {@link Goal#MOVED} only where there was a plan before
 */
public record Verdict(
        List<Breach> breaches, List<String> out, List<String> late, List<Promise> broken, Map<Goal, Long> values) {
    public Verdict {
        breaches = List.copyOf(breaches);
        out = List.copyOf(out);
        late = List.copyOf(late);
        broken = List.copyOf(broken);
        values = new EnumMap<>(values);
    }

    public boolean legal() {
        return breaches.isEmpty();
    }
}
