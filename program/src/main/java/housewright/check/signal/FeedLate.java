package housewright.check.signal;

import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.PairProof;
import housewright.unit.Delay;
import java.util.List;
import java.util.Set;

/** It arrives later than the feed allows. */
public final class FeedLate extends FeedRule {
    private static final Card CARD = new Card(
            "feed-late",
            "Does every feed arrive in the time it is allowed?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            DUE);

    public FeedLate() {
        super(false, FeedState.LATE);
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    String message(FeedProof proof, PairProof pair) {
        return proof.feed().id() + " arrives late at " + pair.to().said() + because(pair);
    }

    @Override
    String advice(FeedProof proof, PairProof pair) {
        return "Take a shorter way to " + pair.to().said()
                + ", with fewer devices that add delay, or allow the feed more.";
    }

    @Override
    List<Value> evidence(FeedProof proof, PairProof pair) {
        Delay within = proof.feed().within();
        Double limit = within == null || within.inFrames() ? null : within.base() * 1e3;
        return List.of(new Value("delay", pair.delayNanos() / 1e6, limit, "ms"));
    }
}
