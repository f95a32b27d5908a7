package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.light.DmxLine;
import housewright.light.Lights;
import housewright.model.Equipment;
import housewright.model.Fitted;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A terminator at a fixture that hands the line on. */
public final class TerminatorMidLine implements Rule {
    private static final Card CARD = new Card(
            "dmx-terminator-mid-line",
            "Is a terminator fitted at the far end of a line only?",
            Set.of(Severity.FIX),
            new Source.Published("ANSI E1.11 (DMX512-A), as quoted", "120 ohm across the data pair at the far end"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Lights lights = evidence.lights();
        List<Finding> findings = new ArrayList<>();
        for (DmxLine line : lights.lines()) {
            Set<String> ends = new HashSet<>();
            line.ends().forEach(end -> ends.add(end.at().thing()));
            for (String load : line.loads()) {
                Present thing = lights.things().get(load);
                if (thing != null && thing.equipment().terminator() == Fitted.FITTED && !ends.contains(load)) {
                    Equipment equipment = evidence.getEquipment(load);
                    findings.add(CARD.finding(
                            Severity.FIX,
                            List.of(Subject.equipment(load)),
                            Words.said(load) + " has a terminator and is not the last of its line: one there loads the"
                                    + " line twice, and its output cannot hold a cable and a terminator both.",
                            List.of(),
                            List.of(new Fix(
                                    "Take the terminator of " + Words.said(load) + " to the end of the line.",
                                    List.of(new Change.Put(
                                            Section.EQUIPMENT, load, equipment.withTerminator(null)))))));
                }
            }
        }
        return findings.stream();
    }
}
