package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Control;
import housewright.model.Stage;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Looks that no button and no time calls. */
public final class LookNotCalled implements Rule {
    private static final Card CARD = new Card(
            "look-not-called",
            "Is every look called by a button or at a time?",
            Set.of(Severity.NOTE),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Set<String> called = new HashSet<>();
        for (Control each : evidence.project().controls().values()) {
            if (each.calls() != null) {
                called.add(each.calls());
            }
        }
        List<String> idle = Looks.all(evidence).keySet().stream()
                .filter(look -> !called.contains(look))
                .toList();
        if (idle.isEmpty() || called.isEmpty()) {
            return Stream.empty(); // where nothing calls looks, they are on the desk's faders
        }
        return Stream.of(CARD.finding(
                Severity.NOTE,
                idle.stream().map(Said::look).toList(),
                "No button and no time calls " + Said.things(idle) + ": only whoever programmed "
                        + (idle.size() == 1 ? "it" : "them") + " will find " + (idle.size() == 1 ? "it" : "them") + ".",
                List.of(new Value("looks without a button", idle.size(), 0.0, "")),
                List.of(Fix.of("Put it on a button, or leave it out of the file."))));
    }
}
