package housewright.signal;

import housewright.model.Feed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All feeds proven, those that begin at the same place one after the other, so that they share a search. */
final class Proofs {
    private final SignalGraph graph;
    private final boolean brief;

    Proofs(SignalGraph graph, boolean brief) {
        this.brief = brief;
        this.graph = graph;
    }

    Map<String, FeedProof> all() {
        Prover prover = new Prover(graph, brief);
        Map<String, List<Feed>> bySource = new LinkedHashMap<>();
        for (Feed feed : graph.project.feeds().values()) {
            String source = feed.from().isEmpty() ? "" : feed.from().getFirst().text();
            bySource.computeIfAbsent(source, key -> new ArrayList<>(2)).add(feed);
        }
        Map<String, FeedProof> found = new LinkedHashMap<>();
        for (List<Feed> feeds : bySource.values()) {
            for (Feed feed : feeds) {
                found.put(feed.id(), prover.prove(feed));
            }
        }
        Map<String, FeedProof> ordered = new LinkedHashMap<>();
        for (Feed feed : graph.project.feeds().values()) {
            FeedProof proof = found.get(feed.id());
            if (proof != null) {
                ordered.put(feed.id(), proof);
            }
        }
        return ordered;
    }
}
