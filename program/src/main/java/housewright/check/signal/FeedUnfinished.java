package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Feed;
import housewright.model.Stage;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A feed that does not say where it begins or where it must arrive: nothing is proven of it. */
public final class FeedUnfinished implements Rule {
    private static final Card CARD = new Card(
            "feed-unfinished",
            "Does every feed say where it begins and where it must arrive?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.TheProject(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        boolean early = evidence.project().about().stage().compareTo(Stage.DESIGN) <= 0;
        return evidence.project().feeds().values().stream()
                .filter(feed -> feed.from().isEmpty() || feed.to().isEmpty())
                .map(feed -> CARD.finding(
                        early ? Severity.NOTE : Severity.FIX,
                        List.of(Subject.feed(feed.id())),
                        feed.id() + " does not say yet " + missing(feed) + ", so nothing is proven of it.",
                        List.of(),
                        List.of(Fix.of("Enter " + missing(feed) + "."))));
    }

    private static String missing(Feed feed) {
        if (!feed.from().isEmpty()) {
            return "where it must arrive";
        }
        return feed.to().isEmpty() ? "where it begins and where it must arrive" : "where it begins";
    }
}
