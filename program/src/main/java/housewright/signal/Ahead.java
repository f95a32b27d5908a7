package housewright.signal;

import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * The least it could cost to get from place to place over what is there and what could be: what a search for the
 * cheapest way may count on without looking. Within a device that is patched, every source is taken to reach every target
 * of its medium at the cost of the target's entry alone. Never more than it does cost, but where one cable serves a way
 * twice: that is asked about for one such step at a time.
 */
final class Ahead {
    /** No way at all. */
    static final long NEVER = Long.MAX_VALUE / 4;

    private final SignalGraph graph;
    private final Arcs arcs = new Arcs();
    private final int[][] into;
    private final int[][] out;
    /** Places of patched devices from which one medium may be patched, and those it may be patched to. */
    private final List<List<Integer>> sources = new ArrayList<>();

    private final List<List<Integer>> targets = new ArrayList<>();
    /** By node: the groups it is a source of, and the one it is a target of. */
    private final List<List<Integer>> sourceOf;

    private final int[] targetOf;
    private final long[] entry;
    /** What may serve a way more than once, and the arcs it makes. */
    private final Map<Step, List<Integer>> shared = new HashMap<>();

    private final Map<Integer, long[]> costs = new HashMap<>();
    private final Map<Integer, long[]> costsWithFree = new HashMap<>();
    private @Nullable Step lastFree;
    private final Map<Integer, long[]> delays = new HashMap<>();
    private final Map<Integer, long[]> costsFrom = new HashMap<>();

    private static final class Arcs {
        int count;
        int[] from = new int[1024];
        int[] to = new int[1024];
        long[] cost = new long[1024];
        long[] delay = new long[1024];

        void add(int one, int other, long price, long nanos) {
            if (count == from.length) {
                from = Arrays.copyOf(from, count * 2);
                to = Arrays.copyOf(to, count * 2);
                cost = Arrays.copyOf(cost, count * 2);
                delay = Arrays.copyOf(delay, count * 2);
            }
            from[count] = one;
            to[count] = other;
            cost[count] = price;
            delay[count++] = nanos;
        }

        /** By node, the numbers of the arcs that have it at this end. */
        int[][] by(int[] end, int nodes) {
            int[] sizes = new int[nodes];
            for (int i = 0; i < count; i++) {
                sizes[end[i]]++;
            }
            int[][] by = new int[nodes][];
            for (int node = 0; node < nodes; node++) {
                by[node] = new int[sizes[node]];
            }
            for (int i = count - 1; i >= 0; i--) {
                by[end[i]][--sizes[end[i]]] = i;
            }
            return by;
        }
    }

    Ahead(SignalGraph graph, Possible possible) {
        this.graph = graph;
        this.targetOf = new int[graph.nodes];
        this.entry = new long[graph.nodes];
        this.sourceOf = new ArrayList<>();
        possible.shared().forEach(step -> shared.put(step, new ArrayList<>()));
        for (int node = 0; node < graph.nodes; node++) {
            sourceOf.add(List.of());
            targetOf[node] = -1;
            for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
                if (!graph.contested[e]) {
                    arcs.add(node, graph.to[e], 0, graph.delay[e]);
                }
            }
            for (Possible.Offer offer : possible.joining(node)) {
                long cost = 0;
                Step gate = possible.gate(node); // paid for on the way in
                for (Step step : offer.steps()) {
                    if (step.equals(gate)) {
                        continue;
                    }
                    cost += step.cost();
                    List<Integer> own = shared.get(step);
                    if (own != null) {
                        own.add(arcs.count);
                    }
                }
                arcs.add(node, offer.to(), cost, offer.delayNanos());
            }
        }
        this.into = arcs.by(arcs.to, graph.nodes);
        this.out = arcs.by(arcs.from, graph.nodes);
        graph.pieces.forEach(piece -> group(piece, possible));
    }

    private void group(Piece piece, Possible possible) {
        Layout layout = piece.layout();
        if (layout == null || layout.model.patch() == null) {
            return;
        }
        Map<Optional<Media>, Integer> byMedium = new HashMap<>();
        for (int local = 0; local < layout.nodes.size(); local++) {
            if (layout.nodes.get(local).side() != Side.ARRIVING) {
                int node = piece.base() + local;
                Optional<Media> medium =
                        Optional.ofNullable(layout.nodes.get(local).media());
                targetOf[node] = byMedium.computeIfAbsent(medium, key -> sources(piece, layout, key));
                targets.get(targetOf[node]).add(node);
                entry[node] = possible.leastPatch(node);
            }
        }
    }

    /** The number of the group of what may be patched to a place of this medium; of any medium where it has none. */
    private int sources(Piece piece, Layout layout, Optional<Media> medium) {
        List<Integer> own = new ArrayList<>();
        for (int local = 0; local < layout.nodes.size(); local++) {
            Media media = layout.nodes.get(local).media();
            boolean fits = media == null || medium.isEmpty() || medium.get() == media;
            if (fits && layout.nodes.get(local).side() != Side.LEAVING) {
                int node = piece.base() + local;
                own.add(node);
                List<Integer> groups = new ArrayList<>(sourceOf.get(node));
                groups.add(sources.size());
                sourceOf.set(node, groups);
            }
        }
        sources.add(own);
        targets.add(new ArrayList<>());
        return sources.size() - 1;
    }

    /** By node, the least cost from it to the target. */
    long[] costTo(int target) {
        return costs.computeIfAbsent(target, key -> least(target, false, arcs.cost, true));
    }

    /** The same where this step costs nothing; kept for one such step at a time, since they are asked for in turn. */
    long[] costTo(int target, Step free) {
        List<Integer> own = shared.get(free);
        if (own == null || own.isEmpty()) {
            return costTo(target);
        }
        if (!free.equals(lastFree)) {
            lastFree = free;
            costsWithFree.clear();
        }
        return costsWithFree.computeIfAbsent(target, key -> {
            long[] cost = arcs.cost.clone();
            own.forEach(arc -> cost[arc] -= free.cost());
            return least(target, false, cost, true);
        });
    }

    /** By node, the least delay from it to the target, in nanoseconds. */
    long[] delayTo(int target) {
        return delays.computeIfAbsent(target, key -> least(target, false, arcs.delay, false));
    }

    /** No way from the source to the target on which this step serves more than once, and no other does, costs less. */
    long leastWith(Step twice, int source, int target) {
        List<Integer> own = shared.get(twice);
        if (own == null || own.isEmpty()) {
            return NEVER;
        }
        long[] before = costsFrom.computeIfAbsent(source, key -> least(source, true, arcs.cost, true));
        long[] after = costTo(target);
        long first = NEVER;
        long last = NEVER;
        for (int arc : own) {
            first = Math.min(first, before[arcs.from[arc]]);
            last = Math.min(last, after[arcs.to[arc]]);
        }
        return Math.min(NEVER, first + last + twice.cost());
    }

    private long[] least(int start, boolean forward, long[] price, boolean entriesCost) {
        long[] least = new long[graph.nodes + sources.size()];
        Arrays.fill(least, NEVER);
        PriorityQueue<long[]> queue = new PriorityQueue<>((a, b) -> Long.compare(a[0], b[0]));
        relax(least, queue, start, 0);
        int[][] next = forward ? out : into;
        int[] end = forward ? arcs.to : arcs.from;
        for (long[] head = queue.poll(); head != null; head = queue.poll()) {
            int at = (int) head[1];
            if (head[0] > least[at]) {
                continue;
            }
            if (at >= graph.nodes) {
                for (int node : (forward ? targets : sources).get(at - graph.nodes)) {
                    relax(least, queue, node, head[0] + (forward && entriesCost ? entry[node] : 0));
                }
                continue;
            }
            for (int arc : next[at]) {
                relax(least, queue, end[arc], head[0] + price[arc]);
            }
            if (forward) {
                for (int group : sourceOf.get(at)) {
                    relax(least, queue, graph.nodes + group, head[0]);
                }
            } else if (targetOf[at] >= 0) {
                relax(least, queue, graph.nodes + targetOf[at], head[0] + (entriesCost ? entry[at] : 0));
            }
        }
        return least;
    }

    private static void relax(long[] least, PriorityQueue<long[]> queue, int node, long value) {
        if (value < least[node]) {
            least[node] = value;
            queue.add(new long[] {value, node});
        }
    }
}
