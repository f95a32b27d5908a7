package housewright.signal;

import housewright.model.Feed;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.signal.GraphBuilder.PortKey;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Steps tried on the project: what they change and which pairs hold then. Each set is tried once. */
final class Trials {
    private final Signals before;
    private final BitSet proven;
    private final Set<List<Integer>> crossings;
    private final Map<Set<Step>, Optional<Outcome>> known = new HashMap<>();

    Trials(Signals before) {
        this.before = before;
        this.proven = proven(before);
        this.crossings = crossings(before);
    }

    /**
     * What came of it.
     *
     * @param proven the pairs that hold, counted through all feeds in the order of the file
     * @param crosses a source arrives where another of its feed belongs, as it did not before
     * @param cost of all steps
     */
    record Outcome(
            Project project,
            List<Change> changes,
            List<String> words,
            Set<String> assumed,
            BitSet proven,
            boolean crosses,
            long cost) {}

    /** With this outcome the pair's source does not arrive where another source of its feed belongs. */
    boolean isUncrossed(Outcome outcome, Feed feed, int pair) {
        return isUncrossed(before.with(outcome.project()), feed, pair);
    }

    private static boolean isUncrossed(Signals after, Feed feed, int pair) {
        SignalGraph graph = after.graph();
        Search search = new Search(graph);
        for (Asked asked : graph.asked) {
            List<Asked.Pair> pairs = asked.feed.id().equals(feed.id()) ? asked.instead : List.<Asked.Pair>of();
            if (pair < pairs.size() && pairs.get(pair).source() >= 0) {
                search.from(pairs.get(pair).source(), false);
                for (Asked.Pair other : pairs) {
                    if (!pairs.get(pair).to().equals(other.to()) && search.reaches(other.destination())) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** No source of the feed arrives where another belongs. */
    static boolean isUncrossed(Signals after, Feed feed) {
        int pairs =
                after.findProof(feed.id()).map(proof -> proof.pairs().size()).orElse(0);
        for (int pair = 0; pair < pairs; pair++) {
            if (!isUncrossed(after, feed, pair)) {
                return false;
            }
        }
        return true;
    }

    /** The pairs that hold before. */
    BitSet proven() {
        return proven;
    }

    /** The numbers of a feed's pairs, counted through all feeds. */
    static BitSet pairs(Signals signals, Feed feed) {
        BitSet pairs = new BitSet();
        int first = 0;
        for (FeedProof proof : signals.proofs()) {
            int end = first + proof.pairs().size();
            if (proof.feed().id().equals(feed.id())) {
                pairs.set(first, end);
            }
            first = end;
        }
        return pairs;
    }

    /**
     * Null where two steps want one port, a pair that held no longer does, a patch entry leads a source where another
     * of its feed belongs, or it is not safe to propose.
     */
    @Nullable
    Outcome of(List<Step> steps) {
        return known.computeIfAbsent(Set.copyOf(steps), key -> Optional.ofNullable(tried(steps)))
                .orElse(null);
    }

    private @Nullable Outcome tried(List<Step> steps) {
        before.work().trial();
        Set<PortKey> taken = new HashSet<>();
        List<Change> changes = new ArrayList<>();
        List<String> words = new ArrayList<>();
        Set<String> assumed = new LinkedHashSet<>();
        NewIds ids = new NewIds(before.project());
        Project changed = before.project();
        long cost = 0;
        for (Step step : steps) {
            for (PortKey port : step.takes()) {
                if (!taken.add(port)) {
                    return null;
                }
            }
            Step.Done done = step.done().on(changed, ids);
            changed = Change.apply(changed, done.changes());
            changes.addAll(done.changes());
            words.addAll(done.words());
            assumed.addAll(done.assumed());
            cost += step.cost();
        }
        Signals after = before.with(changed);
        BitSet now = proven(after);
        if (!holds(now) || !SafeToOffer.is(changes, before, after)) {
            return null;
        }
        boolean crosses = !crossings.containsAll(crossings(after));
        if (crosses && changes.stream().anyMatch(change -> change instanceof Change.Patch)) {
            return null; // what is joined to what is the project's to decide; a cable only restores it
        }
        return new Outcome(changed, List.copyOf(changes), List.copyOf(words), assumed, now, crosses, cost);
    }

    /** Where a source of a feed whose pairs go in order arrives in another's place: number of the feed, source, place. */
    private static Set<List<Integer>> crossings(Signals signals) {
        Set<List<Integer>> crossings = new HashSet<>();
        SignalGraph graph = signals.graph();
        Search search = new Search(graph);
        for (int feed = 0; feed < graph.asked.size(); feed++) {
            List<Asked.Pair> pairs = graph.asked.get(feed).instead;
            for (int i = 0; i < pairs.size(); i++) {
                if (pairs.get(i).source() < 0) {
                    continue;
                }
                search.from(pairs.get(i).source(), false);
                for (int j = 0; j < pairs.size(); j++) {
                    if (i != j && search.reaches(pairs.get(j).destination())) {
                        crossings.add(List.of(feed, i, j));
                    }
                }
            }
        }
        return crossings;
    }

    /** Every pair that was proven still is. */
    private boolean holds(BitSet now) {
        BitSet lost = (BitSet) proven.clone();
        lost.andNot(now);
        return lost.isEmpty();
    }

    boolean harmsNothing(Signals after) {
        return holds(proven(after));
    }

    /** The pairs that hold, counted through all feeds in the order of the file. */
    static BitSet proven(Signals signals) {
        BitSet proven = new BitSet();
        int pair = 0;
        for (FeedProof proof : signals.proofs()) {
            for (PairProof each : proof.pairs()) {
                proven.set(pair++, each.proven());
            }
        }
        return proven;
    }
}
