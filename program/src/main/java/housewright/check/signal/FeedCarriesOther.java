package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Carries;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.Media;
import housewright.signal.PairProof;
import housewright.signal.Signals;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A feed said to be sound whose path runs over a picture channel, and the like: one of the two is a slip. */
public final class FeedCarriesOther implements Rule {
    private static final Card CARD = new Card(
            "feed-carries-other",
            "Does the path of every feed carry what the feed says: sound, picture, or control?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.signals().proofs().stream()
                .filter(proof -> !proof.feed().never())
                .flatMap(proof -> check(evidence.signals(), proof).stream());
    }

    private static Optional<Finding> check(Signals signals, FeedProof proof) {
        Carries said = proof.feed().carries();
        if (said == null) {
            return Optional.empty();
        }
        Media wanted = media(said);
        for (PairProof pair : proof.pairs()) {
            for (Hop hop : pair.hops()) {
                Optional<Media> found = signals.findMedia(hop.to());
                if (found.isPresent() && found.get() != wanted) {
                    return Optional.of(finding(proof, said, hop.to(), found.get()));
                }
            }
        }
        return Optional.empty();
    }

    private static Finding finding(FeedProof proof, Carries said, Address at, Media found) {
        String id = proof.feed().id();
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.feed(id), Subject.equipment(at.thing())),
                id + " is said to carry " + said.word() + ", but at " + at.said() + " its path carries " + word(found)
                        + ".",
                List.of(),
                List.of(Fix.of("Lead it over the right channel there, or correct what the feed carries.")));
    }

    private static Media media(Carries carries) {
        return switch (carries) {
            case AUDIO -> Media.AUDIO;
            case PICTURE -> Media.VIDEO;
            case LIGHT, CONTROL, DATA -> Media.CONTROL;
        };
    }

    private static String word(Media media) {
        return switch (media) {
            case AUDIO -> "audio";
            case VIDEO -> "picture";
            case CONTROL -> "control data";
        };
    }
}
