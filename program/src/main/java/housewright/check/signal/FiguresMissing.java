package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.signal.FeedProof;
import housewright.signal.PairProof;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Figures for want of which delays are shown too short: one note for all of them, since it is one evening's work. */
public final class FiguresMissing implements Rule {
    private static final int NAMED = 4;

    private static final Card CARD = new Card(
            "figures-missing",
            "Are all figures known on which the delays of the feeds rest?",
            Set.of(Severity.NOTE),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Set<String> missing = new LinkedHashSet<>();
        Set<Subject> feeds = new LinkedHashSet<>();
        for (FeedProof proof : evidence.signals().proofs()) {
            for (PairProof pair : proof.pairs()) {
                if (!pair.lacking().isEmpty()) {
                    missing.addAll(pair.lacking());
                    feeds.add(Subject.feed(proof.feed().id()));
                }
            }
        }
        return missing.isEmpty() ? Stream.empty() : Stream.of(finding(List.copyOf(missing), List.copyOf(feeds)));
    }

    private static Finding finding(List<String> missing, List<Subject> feeds) {
        String named = String.join(", ", missing.subList(0, Math.min(NAMED, missing.size())));
        String more = missing.size() > NAMED ? " and " + (missing.size() - NAMED) + " more" : "";
        String message = (missing.size() == 1 ? "A figure is" : missing.size() + " figures are")
                + " not known, so the delay of "
                + (feeds.size() == 1 ? "one feed" : feeds.size() + " feeds")
                + " is shown without: " + named + more + ".";
        return CARD.finding(
                Severity.NOTE,
                feeds,
                message,
                List.of(new Value("figures missing", missing.size(), 0.0, "")),
                List.of(Fix.of("Take them from the data sheets, and enter them in the types.")));
    }
}
