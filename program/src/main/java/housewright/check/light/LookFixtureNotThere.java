package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Look;
import housewright.model.Model;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A look that uses what will not be there, or what is no lamp. */
public final class LookFixtureNotThere implements Rule {
    private static final Card CARD = new Card(
            "look-fixture-not-there",
            "Is every fixture of every look there when the work is done?",
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
        for (Look look : Looks.all(evidence).values()) {
            List<String> gone = new ArrayList<>();
            List<String> dark = new ArrayList<>();
            for (String id : look.levels().keySet()) {
                Equipment equipment = evidence.project().equipment().get(id);
                if (equipment == null || !equipment.life().target()) {
                    gone.add(id);
                } else if (!canShine(evidence, equipment)) {
                    dark.add(id);
                }
            }
            if (!gone.isEmpty()) {
                findings.add(finding(look, gone, Said.be(gone.size()) + " not there when the work is done."));
            }
            if (!dark.isEmpty()) {
                findings.add(finding(look, dark, Said.be(dark.size()) + " no lamp."));
            }
        }
        return findings.stream();
    }

    private static boolean canShine(Evidence evidence, Equipment equipment) {
        Model model = evidence.types().findModel(equipment.model()).orElse(null);
        return model == null
                || equipment.light() != null
                || model.light() != null
                || model.kind() == Kind.FIXTURE
                || model.kind() == Kind.DIMMER
                || !model.portsKnown();
    }

    private static Finding finding(Look look, List<String> wrong, String rest) {
        return CARD.finding(
                Severity.FIX,
                Said.subjects(Said.look(look.id()), Said.equipment(wrong)),
                "The look " + Words.said(look.id()) + " uses " + Said.things(wrong) + ", which " + rest,
                List.of(new Value("fixtures of the look", wrong.size(), 0.0, "")),
                List.of(new Fix(
                        "Take " + Said.things(wrong) + " out of the look, and see that the others do without.",
                        List.of(Looks.put(
                                look, Looks.without(look.levels(), wrong), Looks.without(look.colours(), wrong))))));
    }
}
