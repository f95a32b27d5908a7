package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.light.Receiver;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** A fixture whose channels begin before the first or end after the last slot of its universe. */
public final class AddressPast512 implements Rule {
    static final Limit LAST = Limit.most("last channel of a universe", Receiver.SLOTS, "");

    private static final Card CARD = new Card(
            "dmx-address-past-512",
            "Do all channels of every fixture lie within the 512 of its universe?",
            Set.of(Severity.FIX),
            new Source.Published("ANSI E1.11 (DMX512-A), as quoted", "512 slots after the start code"),
            Stage.DESIGN,
            List.of(LAST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, LAST);
        List<Finding> findings = new ArrayList<>();
        for (Receiver each : evidence.lights().receivers()) {
            Integer first = each.address();
            Integer last = each.last();
            if (first != null && last != null && (first < 1 || last > most)) {
                findings.add(finding(evidence, each, first, last, most));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Receiver receiver, int first, int last, double most) {
        List<Change> changes = Addresses.anew(evidence, List.of(receiver));
        Fix fix = changes.isEmpty()
                ? Fix.of("Put it into another universe, or into a mode with fewer channels.")
                : new Fix("Give it the lowest free address of its universe.", changes);
        String message = first < 1
                ? Words.said(receiver.id()) + " is set to address " + first + ": the first channel of a universe is 1."
                : Words.said(receiver.id()) + " begins at " + first + Said.ofUniverse(receiver.universe())
                        + " and takes " + (last - first + 1) + ", so its channels run to " + last + "; "
                        + String.format(Locale.ROOT, "%.0f", most) + " is the last there is.";
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(receiver.id())),
                message,
                List.of(new Value("last channel", last, most, "")),
                List.of(fix));
    }
}
