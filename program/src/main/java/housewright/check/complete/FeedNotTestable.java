package housewright.check.complete;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Feed;
import housewright.model.Kind;
import housewright.model.Ref;
import housewright.model.Stage;
import housewright.signal.Present;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Feeds that end where nobody in the room sees or hears them. */
public final class FeedNotTestable implements Rule {
    /** What it takes to hear or see there. */
    private static final Map<Kind, String> UNSEEN = Map.of(
            Kind.HEARING_LOOP, "a loop wants a loop receiver with headphones, at several seats",
            Kind.INTERNET_ROUTER, "a stream wants somebody outside who watches it on another connection",
            Kind.ENCODER, "a stream wants somebody outside who watches it on another connection");

    private static final Card CARD = new Card(
            "feed-not-testable",
            "Is there a way to try out every feed?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.INSTALL);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, Kind> kinds = new HashMap<>();
        for (Present thing : evidence.pictures().things()) {
            if (thing.model() != null) {
                kinds.put(thing.id(), thing.model().kind());
            }
        }
        Set<String> blind = new LinkedHashSet<>();
        Set<String> ends = new LinkedHashSet<>();
        for (Feed feed : evidence.project().feeds().values()) {
            if (feed.never() || feed.test() != null) {
                continue;
            }
            for (Ref to : feed.to()) {
                Kind kind = kinds.get(to.addresses().getFirst().thing());
                if (kind != null && UNSEEN.containsKey(kind)) {
                    blind.add(feed.id());
                    ends.add(UNSEEN.get(kind));
                }
            }
        }
        return blind.isEmpty()
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        Severity.NOTE,
                        blind.stream().map(Subject::feed).toList(),
                        Wording.things(blind, 5)
                                + (blind.size() == 1
                                        ? " ends where nobody in the room sees or hears it, and nothing says how it is tried out."
                                        : " end where nobody in the room sees or hears them, and nothing says how they are tried out."),
                        List.of(new Value("feeds", blind.size(), null, "")),
                        List.of(Fix.of("Say under test: how; " + String.join("; ", ends) + "."))));
    }
}
