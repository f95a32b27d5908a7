package housewright.check.network;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.network.Networks;
import housewright.signal.Cause;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.PairProof;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The switch with which most feeds stop: one note, so that somebody thinks of a spare. */
public final class AllHangsOnOne implements Rule {
    /** Fewer feeds than this are no reason for a spare switch. */
    static final int FEW = 3;

    private static final Card CARD = new Card(
            "all-hangs-on-one",
            "Is there one switch with which much of the service stops?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Networks networks = evidence.networks();
        Map<String, Set<String>> feeds = new LinkedHashMap<>();
        for (FeedProof proof : evidence.signals().proofs()) {
            if (proof.feed().never()) {
                continue;
            }
            for (PairProof pair : proof.pairs()) {
                if (!pair.others().isEmpty()) {
                    continue; // it comes another way, too
                }
                for (Hop hop : pair.hops()) {
                    if (hop.cause() instanceof Cause.BySend send) {
                        for (String each : send.over()) {
                            if (networks.isSwitch(each)) {
                                feeds.computeIfAbsent(each, key -> new LinkedHashSet<>())
                                        .add(proof.feed().id());
                            }
                        }
                    }
                }
            }
        }
        String most = null;
        for (Map.Entry<String, Set<String>> each : feeds.entrySet()) {
            if (most == null
                    || each.getValue().size()
                            > feeds.getOrDefault(most, Set.of()).size()) {
                most = each.getKey();
            }
        }
        Set<String> stopped = most == null ? Set.of() : feeds.getOrDefault(most, Set.of());
        return most == null || stopped.size() < FEW ? Stream.empty() : Stream.of(finding(most, stopped));
    }

    private static Finding finding(String hub, Set<String> feeds) {
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(hub));
        feeds.forEach(feed -> subjects.add(Subject.feed(feed)));
        return CARD.finding(
                Severity.NOTE,
                subjects,
                feeds.size() + " feeds stop when " + Words.said(hub) + " does: " + Said.some(feeds, 5) + ".",
                List.of(new Value("feeds", feeds.size(), null, "")),
                List.of(Fix.of("Keep a spare of its type in the rack with the same settings loaded, and its settings on"
                        + " paper.")));
    }
}
