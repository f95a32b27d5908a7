package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.power.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Amplifiers, lamps and projectors on a UPS, which they empty in minutes. */
public final class UpsFeedsHeavy implements Rule {
    private static final Set<Kind> HEAVY =
            Set.of(Kind.AMPLIFIER, Kind.LOUDSPEAKER, Kind.DIMMER, Kind.FIXTURE, Kind.PROJECTOR);

    private static final Card CARD = new Card(
            "ups-feeds-heavy",
            "Is every UPS kept for what must not stop, and free of amplifiers, lamps and projectors?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Upses.Ups each : Upses.all(evidence)) {
            List<String> heavy = Upses.below(evidence, each.thing().id()).stream()
                    .filter(one -> one.thing().model() != null
                            && HEAVY.contains(one.thing().model().kind()))
                    .map(Supply::id)
                    .toList();
            if (!heavy.isEmpty()) {
                findings.add(CARD.finding(
                        Severity.NOTE,
                        Said.subjects(Subject.equipment(each.thing().id()), heavy),
                        Said.things(heavy) + " " + Said.be(heavy.size()) + " on "
                                + Words.said(each.thing().id())
                                + " and will empty it before the desk and the stream have had their use of it.",
                        List.of(new Value("heavy loads", heavy.size(), 0.0, "")),
                        List.of(Fix.of("Plug them in past the UPS."))));
            }
        }
        return findings.stream();
    }
}
