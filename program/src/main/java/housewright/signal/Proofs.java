package housewright.signal;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All feeds proven, the pairs that begin at the same place one after the other, so that they share a search. */
final class Proofs {
    private final SignalGraph graph;
    private final boolean brief;

    Proofs(SignalGraph graph, boolean brief) {
        this.brief = brief;
        this.graph = graph;
    }

    Map<String, FeedProof> all() {
        List<Asked> feeds = graph.asked;
        int count = 0;
        for (Asked asked : feeds) {
            count += asked.pairs.size();
        }
        Asked[] whose = new Asked[count];
        Asked.Pair[] pairs = new Asked.Pair[count];
        long[] order = new long[count]; // by source, those of never-feeds last
        int at = 0;
        for (Asked asked : feeds) {
            for (Asked.Pair pair : asked.pairs) {
                whose[at] = asked;
                pairs[at] = pair;
                order[at] = ((pair.source() + 1L) << 32) | (asked.feed.never() ? 1L << 31 : 0) | at;
                at++;
            }
        }
        Arrays.sort(order);
        PairProof[] proofs = new PairProof[count];
        Prover prover = new Prover(graph, brief);
        for (long each : order) {
            int pair = (int) each & Integer.MAX_VALUE;
            proofs[pair] = prover.prove(whose[pair], pairs[pair]);
        }
        return gathered(feeds, proofs);
    }

    private static Map<String, FeedProof> gathered(List<Asked> feeds, PairProof[] proofs) {
        Map<String, FeedProof> gathered = new LinkedHashMap<>();
        int at = 0;
        for (Asked asked : feeds) {
            List<PairProof> own = Arrays.asList(proofs).subList(at, at + asked.pairs.size());
            FeedState worst = own.isEmpty() ? FeedState.BROKEN : FeedState.PROVEN;
            for (PairProof proof : own) {
                worst = proof.state().compareTo(worst) > 0 ? proof.state() : worst;
            }
            gathered.put(asked.feed.id(), new FeedProof(asked.feed, worst, own));
            at += own.size();
        }
        return gathered;
    }
}
