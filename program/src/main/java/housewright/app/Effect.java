package housewright.app;

import housewright.finding.Finding;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What an edit did.
 *
 * @param feeds that are in another state now, in the order of the file
 * @param found findings that are due and were not there before; those that only say the state of a feed are left out
 * @param settled findings that are not there any more
 */
public record Effect(List<Feed> feeds, List<Finding> found, List<Finding> settled) {

    /**
     * A feed that is in another state.
     *
     * @param was null where there was no such feed
     * @param now null where there is none any more
     */
    public record Feed(
            String id, @Nullable FeedState was, @Nullable FeedState now) {}

    public Effect {
        feeds = List.copyOf(feeds);
        found = List.copyOf(found);
        settled = List.copyOf(settled);
    }

    static Effect of(Study before, Study after) {
        List<Feed> feeds = new ArrayList<>();
        for (FeedProof now : after.proofs()) {
            String id = now.feed().id();
            FeedState was = before.findProof(id).map(FeedProof::state).orElse(null);
            if (was != now.state()) {
                feeds.add(new Feed(id, was, now.state()));
            }
        }
        for (FeedProof was : before.proofs()) {
            if (after.findProof(was.feed().id()).isEmpty()) {
                feeds.add(new Feed(was.feed().id(), was.state(), null));
            }
        }
        List<Finding> earlier = before.findingsBeyondFeeds();
        List<Finding> later = after.findingsBeyondFeeds();
        return new Effect(feeds, without(later, earlier), without(earlier, later));
    }

    private static List<Finding> without(List<Finding> findings, List<Finding> others) {
        Set<Finding> known = new HashSet<>(others);
        return findings.stream().filter(each -> !known.contains(each)).toList();
    }
}
