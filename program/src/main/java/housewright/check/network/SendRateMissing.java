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
import housewright.network.Sent;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Sends of pictures without a rate: what the links carry is summed without them. One note for all of them. */
public final class SendRateMissing implements Rule {
    private static final Card CARD = new Card(
            "send-rate-missing",
            "Is the rate of every picture on the network known?",
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
        for (Sent sent : evidence.networks().sends()) {
            if (!sent.rateKnown()) {
                missing.add(sent.send().id());
            }
        }
        return missing.isEmpty() ? Stream.empty() : Stream.of(finding(missing));
    }

    private static Finding finding(Set<String> missing) {
        List<Subject> subjects =
                missing.stream().map(id -> new Subject("network-send", id)).toList();
        return CARD.finding(
                Severity.NOTE,
                subjects,
                "No rate is given for " + Said.some(missing, 5) + ", so the load of the links is summed without "
                        + (missing.size() == 1 ? "it" : "them") + ".",
                List.of(new Value("sends without a rate", missing.size(), 0.0, "")),
                List.of(Fix.of(
                        "Enter rate: 100 to 150 Mbit/s for a picture within the house, what the encoder is set to"
                                + " for a stream.")));
    }
}
