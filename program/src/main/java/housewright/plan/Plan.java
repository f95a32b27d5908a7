package housewright.plan;

import java.util.List;

/**
 * A plan as people read it.
 *
 * @param tasks in order of time
 * @param levels how good it is in each goal, and what no plan could be better than
 * @param missed what it leaves undone or too late, in sentences
 * @param clashes why
 * @param moves what it puts elsewhere than the plan before; empty for a first plan
 */
public record Plan(
        List<Planned> tasks,
        List<Readiness> events,
        List<Level> levels,
        List<String> missed,
        List<Clash> clashes,
        List<Move> moves,
        Solved.Ended ended,
        String remark) {
    public Plan {
        tasks = List.copyOf(tasks);
        events = List.copyOf(events);
        levels = List.copyOf(levels);
        missed = List.copyOf(missed);
        clashes = List.copyOf(clashes);
        moves = List.copyOf(moves);
    }

    public Schedule schedule() {
        return new Schedule(tasks.stream().map(Planned::slot).toList());
    }

    /** How much is missed, in words that do not say whether another plan could miss less. */
    public String saidMissed() {
        return missed.size() == 1 ? "one thing is missed" : missed.size() + " things are missed";
    }
}
