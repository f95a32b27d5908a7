package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Control;
import housewright.model.NamePattern;
import housewright.model.Ref;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One button that calls two looks: which one comes is a matter of luck. */
public final class ButtonWithTwoLooks implements Rule {
    private static final Card CARD = new Card(
            "button-with-two-looks",
            "Does every button call one look only?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, List<Control>> byButton = new LinkedHashMap<>();
        for (Control each : evidence.project().controls().values()) {
            if (each.press() != null && each.calls() != null) {
                byButton.computeIfAbsent(each.press().addresses().getFirst().toString(), key -> new ArrayList<>(1))
                        .add(each);
            }
        }
        List<Finding> findings = new ArrayList<>();
        byButton.values().forEach(these -> {
            Set<String> looks = new LinkedHashSet<>();
            these.forEach(each -> looks.add(Words.said(Objects.requireNonNull(each.calls()))));
            if (looks.size() > 1) {
                findings.add(finding(evidence, these, looks));
            }
        });
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, List<Control> these, Set<String> looks) {
        Control first = these.getFirst();
        Ref press = Objects.requireNonNull(first.press());
        List<Subject> subjects = new ArrayList<>();
        these.forEach(each -> subjects.add(Said.control(each.id())));
        subjects.add(Subject.equipment(press.thing()));
        Ref free = free(evidence, press);
        List<Fix> fixes = new ArrayList<>();
        if (free != null && these.size() == 2) {
            Control other = these.getLast();
            fixes.add(new Fix(
                    "Put " + Words.said(Objects.requireNonNull(other.calls())) + " on "
                            + free.addresses().getFirst().said() + ", which calls nothing yet.",
                    List.of(new Change.Put(
                            Section.CONTROLS,
                            other.id(),
                            new Control(
                                    other.id(),
                                    free,
                                    other.calls(),
                                    other.does(),
                                    other.at(),
                                    other.before(),
                                    other.remarks())))));
        }
        fixes.add(Fix.of("Give each look a button of its own."));
        return CARD.finding(
                Severity.FIX,
                subjects,
                press.addresses().getFirst().said() + " calls " + Said.some(List.copyOf(looks))
                        + ": nobody can say which of them comes.",
                List.of(new Value("looks on the button", looks.size(), 1.0, "")),
                fixes);
    }

    /** A button of the same panel that no control presses. */
    private static @Nullable Ref free(Evidence evidence, Ref press) {
        Present panel = evidence.lights().things().get(press.thing());
        if (panel == null || panel.model() == null) {
            return null;
        }
        Set<String> used = new HashSet<>();
        for (Control each : evidence.project().controls().values()) {
            if (each.press() != null) {
                each.press().addresses().forEach(at -> used.add(at.toString()));
            }
        }
        for (NamePattern points : panel.model().points()) {
            for (String point : points.names()) {
                String at = press.thing() + "." + point;
                if (point.startsWith("button-") && !used.contains(at)) {
                    return new Ref(at);
                }
            }
        }
        return null;
    }
}
