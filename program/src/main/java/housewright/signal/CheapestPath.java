package housewright.signal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
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
    /** By node and places passed: the least delay of a way gone on with; -1 for none yet. */
    private long[] quickest = {};

    /** By node and places passed: cost and rank of the best way waiting, where no delay is asked for. */
    private long[] waitingCost = {};

    private int[] waitingRank = {};
    private boolean limited;

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
        PriorityQueue<Label> queue = new PriorityQueue<>(CheapestPath::compare);
        int states = graph.nodes * (question.through().size() + 1);
        quickest = new long[states];
        java.util.Arrays.fill(quickest, -1);
        waitingCost = new long[states];
        java.util.Arrays.fill(waitingCost, Long.MAX_VALUE);
        waitingRank = new int[states];
        limited = question.limitNanos() != Long.MAX_VALUE;
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
            int state = stage * graph.nodes + at.node();
            long known = quickest[state];
            if (known >= 0 && (!limited || known <= at.delay())) {
                continue;
            }
            quickest[state] = at.delay();
            if (at.node() == question.destination()
                    && stage == question.through().size()) {
                return found(at, bought);
            }
            expand(at, stage, question.limitNanos(), forbidden, bought, queue);
        }
        return null;
    }

    private static int compare(Label one, Label other) {
        if (one.cost() != other.cost()) {
            return Long.compare(one.cost(), other.cost());
        }
        if (one.rank() != other.rank()) {
            return Integer.compare(one.rank(), other.rank());
        }
        if (one.delay() != other.delay()) {
            return Long.compare(one.delay(), other.delay());
        }
        return one.hops() != other.hops()
                ? Integer.compare(one.hops(), other.hops())
                : Integer.compare(one.node(), other.node());
    }

    private void expand(
            Label at, int stage, long limit, Set<Step> forbidden, @Nullable Step bought, PriorityQueue<Label> queue) {
        int node = at.node();
        for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
            long delay = at.delay() + graph.delay[e];
            if (!graph.contested[e] && delay <= limit && isBetter(graph.to[e], stage, at.cost(), delay, at.rank())) {
                queue.add(new Label(
                        graph.to[e], stage, at.cost(), delay, at.rank(), at.hops() + 1, false, at, List.of()));
            }
        }
        for (Possible.Offer offer : possible.from(node)) {
            long delay = at.delay() + offer.delayNanos();
            boolean pointless = offer.isPatch() && at.byPatch() && stage == at.stage() && possible.patchesFreely(node);
            if (delay <= limit && !pointless) {
                offer(at, stage, delay, offer, forbidden, bought, queue);
            }
        }
    }

    /** A way to this node is worth going on with; when it is, it is remembered as waiting. */
    private boolean isBetter(int node, int stage, long cost, long delay, int rank) {
        int state = stage * graph.nodes + node;
        if (quickest[state] >= 0 && (!limited || quickest[state] <= delay)) {
            return false;
        }
        if (limited) {
            return true;
        }
        boolean better = cost < waitingCost[state] || (cost == waitingCost[state] && rank < waitingRank[state]);
        if (better) {
            waitingCost[state] = cost;
            waitingRank[state] = rank;
        }
        return better;
    }

    private void offer(
            Label at,
            int stage,
            long delay,
            Possible.Offer offer,
            Set<Step> forbidden,
            @Nullable Step bought,
            PriorityQueue<Label> queue) {
        long cost = at.cost();
        for (Step step : offer.steps()) {
            if (!forbidden.isEmpty() && forbidden.contains(step)) {
                return;
            }
            cost += step.equals(bought) ? 0 : step.cost();
        }
        // of patches that cost the same, one from deep in is what a person would set
        int rank = at.rank() + offer.rank() + (offer.isPatch() ? Math.max(0, 50 - at.hops()) : 0);
        if (isBetter(offer.to(), stage, cost, delay, rank)) {
            queue.add(
                    new Label(offer.to(), stage, cost, delay, rank, at.hops() + 1, offer.isPatch(), at, offer.steps()));
        }
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
