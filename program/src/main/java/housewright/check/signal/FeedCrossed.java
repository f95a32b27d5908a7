package housewright.check.signal;

import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.PairProof;
import java.util.Set;

/** Left arrives at the right, or one channel where another belongs. */
public final class FeedCrossed extends FeedRule {
    private static final Card CARD = new Card(
            "feed-crossed",
            "Does every channel of a feed arrive at its own place, left at the left?",
            Set.of(Severity.STOP),
            new Source.TheProject(),
            DUE);

    public FeedCrossed() {
        super(false, FeedState.CROSSED);
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    String message(FeedProof proof, PairProof pair) {
        return proof.feed().id() + " is crossed on the way to " + pair.to().said() + because(pair);
    }

    @Override
    String advice(FeedProof proof, PairProof pair) {
        return "Swap the channels back on the way to " + pair.to().said() + ".";
    }
}
