package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.light.Lights;
import housewright.light.Receiver;
import housewright.model.Stage;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Fixtures that hang on DMX and whose address nobody has written down. */
public final class AddressMissing implements Rule {
    private static final Card CARD = new Card(
            "dmx-address-missing",
            "Is the address written down of everything that hangs on DMX?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.INSTALL);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<String> ids = evidence.lights().receivers().stream()
                .filter(Lights::takesDmx)
                .filter(each -> each.address() == null)
                .map(Receiver::id)
                .toList();
        if (ids.isEmpty()) {
            return Stream.empty();
        }
        return Stream.of(CARD.finding(
                Severity.NOTE,
                Said.equipment(ids),
                "No address is written down of " + Said.things(ids) + ": whoever stands on the lift will ask for it.",
                List.of(new Value("without an address", ids.size(), 0.0, "")),
                List.of(Fix.of("Write down universe, address and mode of each, as its display shows them."))));
    }
}
