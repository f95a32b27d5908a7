package housewright.check.network;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.network.Sent;
import housewright.signal.Present;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Things that send or take something by network and have no address yet: one note for all of them. */
public final class AddressMissing implements Rule {
    private static final Card CARD = new Card(
            "address-missing",
            "Is the address of everything written down that sends or takes something by network?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.INSTALL);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Set<String> missing = new TreeSet<>();
        for (Sent sent : evidence.networks().sends()) {
            for (String thing : List.of(sent.from(), sent.to())) {
                Present present = evidence.networks().thing(thing);
                if (present != null && present.equipment().ip() == null && !missing.contains(thing)) {
                    missing.add(thing);
                }
            }
        }
        return missing.isEmpty() ? Stream.empty() : Stream.of(finding(missing));
    }

    private static Finding finding(Set<String> missing) {
        boolean one = missing.size() == 1;
        return CARD.finding(
                Severity.NOTE,
                Said.equipment(missing),
                Said.things(missing, 6) + (one ? " has" : " have") + " no network address written down.",
                List.of(new Value("without an address", missing.size(), 0.0, "")),
                List.of(Fix.of("Enter ip for " + (one ? "it" : "each")
                        + ", fixed or reserved in the router, and put it on its label.")));
    }
}
