package housewright.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest way from a source to a destination through what is there and what could be, past the places the feed
 * must pass, and within a delay. The A* algorithm over node and number of places passed, led by the least cost that
 * can lie {@link Ahead}; where a delay is asked for, a dearer but quicker way to the same node is kept, too.
 */
final class CheapestPath {
    /** Ways looked at before giving up; far beyond what a hall of this size needs. */
    private static final int MOST = 3_000_000;

    private final SignalGraph graph;
    private final Possible possible;
    /** By node and places passed: the least delay of a way gone on with; -1 for none yet. */
    private long[] quickest = {};

    /** By node and places passed: cost, rank and delay of one way waiting, to hold others to. */
    private long[] waitingCost = {};

    private int[] waitingRank = {};
    private long[] waitingDelay = {};
    /** States written in this search. */
    private int[] written = {};

    private int writtenCount;
    private boolean limited;
    private boolean gaveUp;
    /** Ways that cost as much as this are of no use; never more than {@link Ahead#NEVER}. */
    private long below;

    private BitSet apart = new BitSet();

    private final Ahead ahead;
    /** By number of places passed: least cost from each node to the next place, and from there to the end. */
    private long[][] toNext = {};

    private long[] afterNext = {};
    private long[][] delayToNext = {};
    private long[] delayAfterNext = {};

    CheapestPath(SignalGraph graph, Prospects.Field field) {
        this.graph = graph;
        this.possible = field.possible();
        this.ahead = field.ahead();
    }

    /**
     * What is asked.
     *
     * @param through nodes to pass, in order
     * @param apart nodes not to pass
     * @param limitNanos longest delay, from the source on; {@code Long.MAX_VALUE} for none
     */
    record Question(
            int source, int destination, List<Integer> through, BitSet apart, long startNanos, long limitNanos) {
        /** The same with no node shut out. */
        Question anywhere() {
            return new Question(source, destination, through, new BitSet(), startNanos, limitNanos);
        }
    }

    /** The steps of a way, each once, and what they cost together. */
    record Found(List<Step> steps, long cost) {}

    private record Label(
            int node,
            int stage,
            long cost,
            long atLeast,
            long delay,
            int rank,
            int hops,
            boolean byPatch,
            @Nullable Label before,
            List<Step> steps) {}

    /**
     * The cheapest way that uses none of the forbidden and costs less than {@code below}; what is bought already costs
     * nothing more.
     */
    @Nullable
    Found find(Question question, Set<Step> forbidden, @Nullable Step bought, long below) {
        limited = question.limitNanos() != Long.MAX_VALUE;
        look(question, bought);
        long first = (bought == null ? 0 : bought.cost());
        long least = first + least(question.source(), 0);
        if (least >= Math.min(below, Ahead.NEVER)) {
            return null;
        }
        PriorityQueue<Label> queue = new PriorityQueue<>(CheapestPath::compare);
        forget(graph.nodes * (question.through().size() + 1));
        this.below = Math.min(below, Ahead.NEVER);
        this.apart = question.apart();
        queue.add(new Label(question.source(), 0, first, least, question.startNanos(), 0, 0, false, null, List.of()));
        int looked = 0;
        while (!queue.isEmpty()) {
            if (looked++ == MOST) {
                gaveUp = true;
                return null;
            }
            Label at = queue.remove();
            int stage = at.stage();
            while (stage < question.through().size() && question.through().get(stage) == at.node()) {
                stage++;
            }
            if (isSettled(at.node(), stage, at.delay())) {
                continue;
            }
            int state = stage * graph.nodes + at.node();
            write(state);
            quickest[state] = at.delay();
            if (at.node() == question.destination()
                    && stage == question.through().size()) {
                return found(at, bought);
            }
            expand(at, stage, question.limitNanos(), forbidden, bought, queue);
        }
        return null;
    }

    /** No way on which a step is bought beforehand costs less. */
    long least(Question question, Step bought) {
        return ahead.leastWith(bought, question.source(), question.destination());
    }

    private void look(Question question, @Nullable Step bought) {
        List<Integer> targets = new ArrayList<>(question.through());
        targets.add(question.destination());
        int count = targets.size();
        toNext = new long[count][];
        afterNext = new long[count];
        delayToNext = new long[count][];
        delayAfterNext = new long[count];
        for (int i = count - 1; i >= 0; i--) {
            int target = targets.get(i);
            toNext[i] = bought == null ? ahead.costTo(target) : ahead.costTo(target, bought);
            delayToNext[i] = limited ? ahead.delayTo(target) : new long[0];
            if (i + 1 < count) {
                afterNext[i] = toNext[i + 1][target] + afterNext[i + 1];
                delayAfterNext[i] = limited ? delayToNext[i + 1][target] + delayAfterNext[i + 1] : 0;
            }
        }
    }

    /** The least that a way from here on can cost. */
    private long least(int node, int stage) {
        return Math.min(Ahead.NEVER, toNext[stage][node] + afterNext[stage]);
    }

    private boolean inTime(int node, int stage, long delay, long limit) {
        return !limited || delay + Math.min(Ahead.NEVER, delayToNext[stage][node] + delayAfterNext[stage]) <= limit;
    }

    /** Makes room, or clears what the last search wrote. */
    private void forget(int states) {
        if (quickest.length < states) {
            quickest = new long[states];
            Arrays.fill(quickest, -1);
            waitingCost = new long[states];
            Arrays.fill(waitingCost, Long.MAX_VALUE);
            waitingRank = new int[states];
            waitingDelay = new long[states];
            written = new int[states];
        } else {
            for (int i = 0; i < writtenCount; i++) {
                quickest[written[i]] = -1;
                waitingCost[written[i]] = Long.MAX_VALUE;
            }
        }
        writtenCount = 0;
    }

    private void write(int state) {
        if (quickest[state] < 0 && waitingCost[state] == Long.MAX_VALUE) {
            written[writtenCount++] = state;
        }
    }

    /** A search looked at so many ways that it was ended without an answer. */
    boolean gaveUp() {
        return gaveUp;
    }

    private static int compare(Label one, Label other) {
        if (one.atLeast() != other.atLeast()) {
            return Long.compare(one.atLeast(), other.atLeast());
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
            int next = graph.to[e];
            long least = at.cost() + least(next, stage);
            if (!graph.contested[e]
                    && least < below
                    && !apart.get(next)
                    && inTime(next, stage, delay, limit)
                    && isBetter(next, stage, at.cost(), delay, at.rank())) {
                queue.add(new Label(
                        next, stage, at.cost(), least, delay, at.rank(), at.hops() + 1, false, at, List.of()));
            }
        }
        for (Possible.Offer offer : possible.from(node)) {
            long delay = at.delay() + offer.delayNanos();
            if (!isSettled(offer.to(), stage, delay)
                    && !apart.get(offer.to())
                    && inTime(offer.to(), stage, delay, limit)
                    && !isPointless(at, stage, offer)) {
                offer(at, stage, delay, offer, forbidden, bought, queue);
            }
        }
    }

    private boolean isPointless(Label at, int stage, Possible.Offer offer) {
        return offer.isPatch()
                && at.byPatch()
                && stage == at.stage()
                && at.before() != null
                && possible.isNeverBetterInTwo(at.before().node(), offer.to());
    }

    /** A way to this node that is no dearer and no slower has been gone on with. */
    private boolean isSettled(int node, int stage, long delay) {
        long known = quickest[stage * graph.nodes + node];
        return known >= 0 && (!limited || known <= delay);
    }

    /** A way to this node is worth going on with; when it is, it is remembered as waiting. */
    private boolean isBetter(int node, int stage, long cost, long delay, int rank) {
        if (isSettled(node, stage, delay)) {
            return false;
        }
        int state = stage * graph.nodes + node;
        boolean dearer = cost > waitingCost[state] || (cost == waitingCost[state] && rank >= waitingRank[state]);
        if (dearer && (!limited || delay >= waitingDelay[state])) {
            return false;
        }
        // where a delay is asked for, a dearer but quicker way waits beside it, and it goes on being what others are
        // held to
        if (!dearer && (!limited || delay <= waitingDelay[state] || waitingCost[state] == Long.MAX_VALUE)) {
            write(state);
            waitingCost[state] = cost;
            waitingRank[state] = rank;
            waitingDelay[state] = delay;
        }
        return true;
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
            cost += step.equals(bought) || isTaken(at, step) ? 0 : step.cost();
        }
        int rank = at.rank() + offer.rankAfter(at.hops());
        long least = cost + least(offer.to(), stage);
        if (least < below && isBetter(offer.to(), stage, cost, delay, rank)) {
            queue.add(new Label(
                    offer.to(), stage, cost, least, delay, rank, at.hops() + 1, offer.isPatch(), at, offer.steps()));
        }
    }

    /** The step is on the way already. */
    private static boolean isTaken(Label at, Step step) {
        for (Label each = at; each != null; each = each.before()) {
            if (!each.steps().isEmpty() && each.steps().contains(step)) {
                return true;
            }
        }
        return false;
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
