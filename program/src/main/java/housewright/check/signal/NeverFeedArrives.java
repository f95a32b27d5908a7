package housewright.check.signal;

import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.PairProof;
import java.util.List;
import java.util.Set;

/** What must never arrive does. */
public final class NeverFeedArrives extends FeedRule {
    private static final Card CARD = new Card(
            "never-feed-arrives",
            "Does anything arrive where it must never be heard or seen?",
            Set.of(Severity.STOP),
            new Source.TheProject(),
            DUE);

    public NeverFeedArrives() {
        super(true, FeedState.ARRIVES);
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    String message(FeedProof proof, PairProof pair) {
        return proof.feed().id() + " is broken: " + pair.from().said() + " arrives at "
                + pair.to().said();
    }

    @Override
    String advice(FeedProof proof, PairProof pair) {
        return "Take away one join on the way to " + pair.to().said() + " that no other feed needs.";
    }

    @Override
    List<Value> evidence(FeedProof proof, PairProof pair) {
        return List.of(new Value("gain on the way", pair.gainDb(), null, "dB"));
    }
}
