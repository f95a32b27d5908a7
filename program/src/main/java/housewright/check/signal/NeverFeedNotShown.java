package housewright.check.signal;

import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.PairProof;
import java.util.Set;

/** It cannot be shown that nothing arrives, since part of the way is not known. */
public final class NeverFeedNotShown extends FeedRule {
    private static final Card CARD = new Card(
            "never-feed-not-shown",
            "Can it be shown that what must never arrive does not?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            DUE);

    public NeverFeedNotShown() {
        super(true, FeedState.BROKEN);
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    String message(FeedProof proof, PairProof pair) {
        return proof.feed().id() + " is not shown to hold" + because(pair);
    }

    @Override
    String advice(FeedProof proof, PairProof pair) {
        return "Find out what is inside and connected there, and enter it.";
    }
}
