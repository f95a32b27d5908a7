package housewright.signal;

import housewright.model.Feed;
import java.util.List;

/** A feed, and what is shown of each of its pairs. */
public record FeedProof(Feed feed, FeedState state, List<PairProof> pairs) {
    public FeedProof {
        pairs = List.copyOf(pairs);
    }

    public boolean proven() {
        return state == FeedState.PROVEN;
    }
}
