package housewright.signal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest way from a source to a destination through what is there and what could be, past the places the feed
 * must pass, and within a delay. Dijkstra's algorithm over node and number of places passed; where a delay is asked
 * for, a dearer but quicker way to the same node is kept, too.
 */
final class CheapestPath {
    /** Ways looked at before giving up; far beyond what a hall of this size needs. */
    private static final int MOST = 3_000_000;

    private final SignalGraph graph;
    private final Possible possible;

    CheapestPath(SignalGraph graph, Possible possible) {
        this.graph = graph;
        this.possible = possible;
    }

    /**
     * What is asked.
     *
     * @param through nodes to pass, in order
     * @param limitNanos longest delay, from the source on; {@code Long.MAX_VALUE} for none
     */
    record Question(int source, int destination, List<Integer> through, long startNanos, long limitNanos) {}

    /** The steps of a way, each once, and what they cost together. */
    record Found(List<Step> steps, long cost) {}

    private record Label(
            int node,
            int stage,
            long cost,
            long delay,
            int rank,
            int hops,
            boolean byPatch,
            @Nullable Label before,
            List<Step> steps) {}

    /** The cheapest way that uses none of the forbidden; what is bought already costs nothing more. */
    @Nullable
    Found find(Question question, Set<Step> forbidden, @Nullable Step bought) {
        PriorityQueue<Label> queue = new PriorityQueue<>(Comparator.comparingLong(Label::cost)
                .thenComparingInt(Label::rank)
                .thenComparingLong(Label::delay)
                .thenComparingInt(Label::hops)
                .thenComparingInt(Label::node));
        Map<Long, Long> quickest = new HashMap<>();
        boolean limited = question.limitNanos() != Long.MAX_VALUE;
        queue.add(new Label(
                question.source(),
                0,
                bought == null ? 0 : bought.cost(),
                question.startNanos(),
                0,
                0,
                false,
                null,
                List.of()));
        int looked = 0;
        while (!queue.isEmpty() && looked++ < MOST) {
            Label at = queue.remove();
            int stage = at.stage();
            while (stage < question.through().size() && question.through().get(stage) == at.node()) {
                stage++;
            }
            long state = (long) stage * graph.nodes + at.node();
            Long known = quickest.get(state);
            if (known != null && (!limited || known <= at.delay())) {
                continue;
            }
            quickest.put(state, at.delay());
            if (at.node() == question.destination()
                    && stage == question.through().size()) {
                return found(at, bought);
            }
            expand(at, stage, question.limitNanos(), forbidden, bought, queue);
        }
        return null;
    }

    private void expand(
            Label at, int stage, long limit, Set<Step> forbidden, @Nullable Step bought, PriorityQueue<Label> queue) {
        int node = at.node();
        for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
            long delay = at.delay() + graph.delay[e];
            if (!graph.contested[e] && delay <= limit) {
                queue.add(new Label(
                        graph.to[e], stage, at.cost(), delay, at.rank(), at.hops() + 1, false, at, List.of()));
            }
        }
        possible.from(node, at.hops(), at.byPatch(), (to, steps, nanos, rank) -> {
            long delay = at.delay() + nanos;
            if (delay > limit) {
                return;
            }
            long cost = at.cost();
            boolean patch = false;
            for (Step step : steps) {
                if (forbidden.contains(step)) {
                    return;
                }
                cost += step.equals(bought) ? 0 : step.cost();
                patch |= step.key().startsWith("patch ");
            }
            queue.add(new Label(to, stage, cost, delay, at.rank() + rank, at.hops() + 1, patch, at, steps));
        });
    }

    private static Found found(Label end, @Nullable Step bought) {
        Set<Step> steps = new LinkedHashSet<>();
        List<Label> labels = new ArrayList<>();
        for (Label at = end; at != null; at = at.before()) {
            labels.addFirst(at);
        }
        for (Label each : labels) {
            steps.addAll(each.steps());
        }
        long cost = 0;
        for (Step step : steps) {
            cost += step.cost();
        }

        return new Found(List.copyOf(steps), bought == null || steps.contains(bought) ? cost : cost + bought.cost());
    }
}
