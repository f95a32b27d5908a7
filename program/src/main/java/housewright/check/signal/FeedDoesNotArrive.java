package housewright.check.signal;

import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.PairProof;
import java.util.Set;

/** What must arrive does not. */
public final class FeedDoesNotArrive extends FeedRule {
    private static final Card CARD = new Card(
            "feed-does-not-arrive",
            "Does every feed arrive where it must?",
            Set.of(Severity.STOP),
            new Source.TheProject(),
            DUE);

    public FeedDoesNotArrive() {
        super(false, FeedState.BROKEN);
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    String message(FeedProof proof, PairProof pair) {
        return proof.feed().id() + " does not arrive at " + pair.to().said() + because(pair);
    }

    @Override
    String advice(FeedProof proof, PairProof pair) {
        return "No single mend within reach is known: add what is missing on the way to "
                + pair.to().said() + ", or change what the feed asks for.";
    }
}
