package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.light.Lights;
import housewright.light.Receiver;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/** A fixture that is ganged with another, and answers to other channels. */
public final class GangApart implements Rule {
    private static final Card CARD = new Card(
            "gang-apart",
            "Has every fixture that is ganged with another the same address and mode?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Lights lights = evidence.lights();
        for (Receiver each : lights.receivers()) {
            String gang = each.thing().equipment().gang();
            if (gang == null) {
                continue;
            }
            Receiver other = lights.findReceiver(gang).orElse(null);
            if (other == null) {
                findings.add(finding(each, gang, "and that does not answer to DMX here.", List.of()));
            } else if (!Objects.equals(each.universe(), other.universe())
                    || !Objects.equals(each.address(), other.address())) {
                boolean alike = Objects.equals(each.footprint(), other.footprint());
                findings.add(finding(
                        each,
                        gang,
                        "and is at " + at(each) + " while " + Words.said(gang) + " is at " + at(other) + ".",
                        alike && other.address() != null
                                ? List.of(Addresses.put(evidence, each, other.universe(), other.address()))
                                : List.of()));
            } else if (!Objects.equals(each.footprint(), other.footprint())) {
                findings.add(finding(
                        each,
                        gang,
                        "and takes " + each.footprint() + " channels where " + Words.said(gang) + " takes "
                                + other.footprint() + ": the same channel will not mean the same in both.",
                        List.of()));
            }
        }
        return findings.stream();
    }

    private static String at(Receiver receiver) {
        return receiver.address() == null
                ? "no address"
                : "address " + receiver.address() + Said.ofUniverse(receiver.universe());
    }

    private static Finding finding(Receiver receiver, String gang, String rest, List<Change> changes) {
        List<Subject> subjects = List.of(Subject.equipment(receiver.id()), Subject.equipment(gang));
        Fix fix = changes.isEmpty()
                ? Fix.of("Set both to the same address and mode, or take the gang away.")
                : new Fix("Set " + Words.said(receiver.id()) + " to the address of " + Words.said(gang) + ".", changes);
        return CARD.finding(
                Severity.FIX,
                subjects,
                Words.said(receiver.id()) + " is ganged with " + Words.said(gang) + " " + rest,
                List.of(),
                List.of(fix));
    }
}
