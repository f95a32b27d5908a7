package housewright.check.signal;

import housewright.check.Rule;
import java.util.List;

/** The rules about signals, written out: easy to find, and always in the same order. */
public final class SignalRules {
    private SignalRules() {}

    /** Whether a rule only says the state of a feed, which a face that shows the feeds shows anyway. */
    public static boolean isStateOfFeed(Rule rule) {
        return rule instanceof FeedRule;
    }

    /** The same of a rule by its id. */
    public static boolean isStateOfFeed(String rule) {
        return all().stream()
                .anyMatch(each -> isStateOfFeed(each) && each.card().id().equals(rule));
    }

    public static List<Rule> all() {
        return List.of(
                new FeedDoesNotArrive(),
                new NeverFeedArrives(),
                new NeverFeedNotShown(),
                new FeedCrossed(),
                new FeedLate(),
                new FeedUnfinished(),
                new TwoSourcesOneOutput(),
                new CableJoinsNothing(),
                new TwoCablesOnePort(),
                new CableUnfinished(),
                new LoopAtUnity(),
                new TwoPathsComb(),
                new LipSync(),
                new FiguresMissing());
    }
}
