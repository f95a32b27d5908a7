package housewright.check.light;

import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.light.DmxLine;
import housewright.model.Equipment;
import housewright.model.Fitted;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A line whose last fixture has no terminator. */
public final class TerminatorMissing implements Rule {
    private static final Card CARD = new Card(
            "dmx-terminator-missing",
            "Is there a terminator at the far end of every line of DMX?",
            Set.of(Severity.FIX),
            new Source.Published("ANSI E1.11 (DMX512-A), as quoted", "120 ohm across the data pair at the far end"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (DmxLine line : evidence.lights().lines()) {
            for (Plug end : line.ends()) {
                Model model = end.model();
                Equipment equipment = end.equipment();
                if (model == null || equipment == null || !passesOn(model) || equipment.terminator() == Fitted.FITTED) {
                    continue;
                }
                if (line.loads().contains(equipment.id())) { // a terminator drawn as a thing of its own is no load
                    findings.add(finding(evidence, line, equipment.id()));
                }
            }
        }
        return findings.stream();
    }

    /** It could hand the line on; what ends it inside (a splitter, a node, a desk) is not asked. */
    private static boolean passesOn(Model model) {
        return model.kind() == Kind.FIXTURE
                || model.kind() == Kind.DIMMER
                || model.kind() == Kind.POWER_DISTRIBUTOR
                || model.kind() == Kind.OTHER;
    }

    private static Finding finding(Evidence evidence, DmxLine line, String last) {
        Equipment equipment = evidence.getEquipment(last);
        String begin =
                line.source() == null ? "" : " from " + line.source().at().saidPort();
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(last)),
                "The DMX line" + begin + " ends at " + Words.said(last)
                        + " without a terminator: echoes on it make lamps" + " flicker, most of all on a long line.",
                List.of(new Value("fixtures on the line", line.loads().size(), null, "")),
                List.of(new Fix(
                        "Fit a 120 ohm terminator in the DMX output of " + Words.said(last) + ", and order it.",
                        List.of(new Change.Put(Section.EQUIPMENT, last, equipment.withTerminator(Fitted.FITTED))))));
    }
}
