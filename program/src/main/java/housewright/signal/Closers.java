package housewright.signal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Single things to do that lead from where a source does arrive to what leads on to its destination: one cable, one
 * patch entry, one switch; and one cable that carries both ways, by which a signal goes to a desk and comes back. Where
 * many feeds stop at one place, what closes the gap of most of them is what came apart there.
 */
final class Closers {
    private final SignalGraph graph;
    private final Possible possible;
    private final Search search;
    private final Search onward;
    private final Map<Integer, BitSet> leading = new HashMap<>();
    private final Map<List<Step>, Closer> all = new LinkedHashMap<>();
    private final Map<Integer, List<Closer>> byPair = new HashMap<>();
    /** Where each single thing would lead, from node to node. */
    private final Map<List<Step>, List<int[]>> arcs = new HashMap<>();

    /** Steps done as one, and the broken pairs for which they close the gap, counted through all feeds. */
    record Closer(List<Step> steps, int rank, BitSet pairs) {
        private long cost() {
            return steps.stream().mapToLong(Step::cost).sum();
        }

        private String key() {
            return String.join(
                    "\n", steps.stream().map(step -> step.key().toString()).toList());
        }
    }

    Closers(Signals signals, Possible possible) {
        this.graph = signals.graph();
        this.possible = possible;
        this.search = new Search(graph);
        this.onward = new Search(graph);
        for (int node = 0; node < graph.nodes; node++) {
            for (Possible.Offer offer : possible.joining(node)) {
                arcs.computeIfAbsent(offer.steps(), key -> new ArrayList<>()).add(new int[] {node, offer.to()});
            }
        }
        int number = 0;
        for (FeedProof proof : signals.proofs()) {
            for (PairProof pair : proof.pairs()) {
                if (!pair.proven() && !proof.feed().never()) {
                    find(pair, number);
                }
                number++;
            }
        }
        for (Closer closer : all.values()) {
            closer.pairs().stream()
                    .forEach(pair -> byPair.computeIfAbsent(pair, key -> new ArrayList<>())
                            .add(closer));
        }
    }

    private void find(PairProof pair, int number) {
        int source = graph.end(pair.from(), true);
        int destination = graph.end(pair.to(), false);
        if (source < 0 || destination < 0) {
            return;
        }
        search.from(source, false);
        BitSet wanted = leading.computeIfAbsent(destination, new Backward(graph)::reaching);
        Set<List<Step>> touching = new LinkedHashSet<>();
        for (int node : search.reached()) {
            for (Possible.Offer offer : possible.from(node)) {
                if (wanted.get(offer.to())) {
                    closes(offer.steps(), offer.rankAfter(search.hops(node)), number);
                } else if (!offer.isPatch()) {
                    touching.add(offer.steps());
                }
            }
        }
        for (List<Step> steps : touching) {
            if (thereAndBack(arcs.getOrDefault(steps, List.of()), wanted)) {
                closes(steps, 0, number);
            }
        }
    }

    private void closes(List<Step> steps, int rank, int pair) {
        all.computeIfAbsent(steps, key -> new Closer(key, rank, new BitSet()))
                .pairs()
                .set(pair);
    }

    /** By these arcs a signal gets to where it can come back by others of them. */
    private boolean thereAndBack(List<int[]> ways, BitSet wanted) {
        List<int[]> back = ways.stream().filter(way -> wanted.get(way[1])).toList();
        if (back.isEmpty()) {
            return false;
        }
        for (int[] there : ways) {
            if (search.reaches(there[0])) {
                onward.from(there[1], false);
                if (back.stream().anyMatch(way -> onward.reaches(way[0]))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** What may close the gap of all these pairs: first what closes the most others, too, then the cheapest. */
    List<Closer> of(BitSet pairs) {
        return byPair.getOrDefault(pairs.nextSetBit(0), List.of()).stream()
                .filter(closer -> holdsAll(closer.pairs(), pairs))
                .sorted(Comparator.comparingInt(
                                (Closer closer) -> -closer.pairs().cardinality())
                        .thenComparingLong(Closer::cost)
                        .thenComparingInt(Closer::rank)
                        .thenComparing(Closer::key))
                .toList();
    }

    /** Plugs that change places, by which a source of this pair gets where it should: what mends crossed ways. */
    List<Closer> exchanging(int pair) {
        BitSet only = new BitSet();
        only.set(pair);
        return of(only).stream()
                .filter(closer -> closer.steps().stream().allMatch(Step::isExchange))
                .toList();
    }

    static boolean holdsAll(BitSet all, BitSet some) {
        BitSet missing = (BitSet) some.clone();
        missing.andNot(all);
        return missing.isEmpty();
    }
}
