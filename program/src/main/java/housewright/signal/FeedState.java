package housewright.signal;

import java.util.Locale;

/** What is known of a feed, best first; the worst of its pairs applies. */
public enum FeedState {
    /** What the feed asks for holds. */
    PROVEN,
    /** It arrives, later than allowed. */
    LATE,
    /** It arrives where another source of the feed belongs, and not where it should. */
    CROSSED,
    /** It does not arrive; or, for a never-feed, it cannot be shown that nothing does. */
    BROKEN,
    /** A never-feed that does arrive. */
    ARRIVES;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
