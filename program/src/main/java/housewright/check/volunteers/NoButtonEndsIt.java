package housewright.check.volunteers;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Control;
import housewright.model.Lighting;
import housewright.model.Look;
import housewright.model.Ref;
import housewright.model.Stage;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Buttons that call light, and none that takes it away. */
public final class NoButtonEndsIt implements Rule {
    private static final Card CARD = new Card(
            "no-button-ends-it",
            "Does one button take the light away at the end?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Lighting lighting = evidence.project().lighting();
        Set<String> panels = new LinkedHashSet<>();
        boolean dark = false;
        for (Control control : evidence.project().controls().values()) {
            Look look = lighting == null || control.calls() == null
                    ? null
                    : lighting.looks().get(control.calls());
            if (look != null && control.press() != null && !isFader(control.press())) {
                panels.add(control.press().thing());
                dark |= look.levels().values().stream().allMatch(level -> level.base() == 0);
            }
        }
        return panels.isEmpty() || dark
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        Severity.NOTE,
                        panels.stream().map(Subject::equipment).toList(),
                        "The buttons of " + Wording.things(panels, 4)
                                + " call light and none takes it away: at the end somebody must go elsewhere.",
                        List.of(),
                        List.of(Fix.of(
                                "Give one button a look with no lamp in it; the house's own lights and the emergency"
                                        + " lighting stay as they are."))));
    }

    /** What a hand pushes up, it pulls down again. */
    private static boolean isFader(Ref press) {
        String name = press.addresses().getFirst().spot().name();
        return name.startsWith("fader") || name.startsWith("playback");
    }
}
