package housewright.drawing;

import housewright.signal.FeedProof;

/** How a feed stands, in a word or two. */
final class FeedWords {
    private FeedWords() {}

    static String of(FeedProof proof) {
        boolean never = proof.feed().never();
        if (proof.pairs().isEmpty()) {
            return "not finished";
        }
        return switch (proof.state()) {
            case PROVEN -> never ? "proven to stay out" : "proven";
            case BROKEN -> never ? "cannot be shown to stay out" : "does not arrive";
            case CROSSED -> "crossed";
            case LATE -> "late";
            case ARRIVES -> "arrives where it must not";
        };
    }
}
