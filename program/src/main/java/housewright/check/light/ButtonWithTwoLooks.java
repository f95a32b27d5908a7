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
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Signal;
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

/** One button that calls two looks, or two that close one contact: which look comes is a matter of luck. */
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
        byContact(evidence, byButton).forEach((input, buttons) -> {
            Set<String> looks = new LinkedHashSet<>();
            buttons.forEach(button -> looks.add(Objects.requireNonNull(button.calls())));
            if (looks.size() > 1) {
                findings.add(contact(input, buttons));
            }
        });
        return findings.stream();
    }

    /** The first control of each button, by the contact inputs that the button closes. */
    private static Map<String, List<Control>> byContact(Evidence evidence, Map<String, List<Control>> byButton) {
        Map<String, List<Control>> byContact = new LinkedHashMap<>();
        byButton.values().forEach(these -> {
            Control first = these.getFirst();
            Address button = Objects.requireNonNull(first.press()).addresses().getFirst();
            Present panel = evidence.lights().things().get(button.thing());
            if (panel == null || panel.model() == null || !givesContact(panel.model())) {
                return;
            }
            for (String socket : Reached.by(evidence, button).sockets()) {
                int dot = socket.lastIndexOf('.');
                String thing = socket.substring(0, Math.max(0, dot));
                Present present = evidence.lights().things().get(thing);
                if (!thing.equals(button.thing())
                        && present != null
                        && present.model() != null
                        && takesContact(present.model(), socket.substring(dot + 1))) {
                    byContact.computeIfAbsent(socket, key -> new ArrayList<>(1)).add(first);
                }
            }
        });
        return byContact;
    }

    private static boolean givesContact(Model model) {
        return model.ports().values().stream().anyMatch(port -> port.out() == Signal.CONTACT);
    }

    private static boolean takesContact(Model model, String port) {
        return model.ports().entrySet().stream()
                .anyMatch(each -> each.getValue().in() == Signal.CONTACT
                        && each.getKey().names().contains(port));
    }

    private static Finding contact(String input, List<Control> buttons) {
        List<Subject> subjects = new ArrayList<>();
        buttons.forEach(each -> subjects.add(Said.control(each.id())));
        subjects.add(Subject.equipment(input.substring(0, input.lastIndexOf('.'))));
        return CARD.finding(
                Severity.FIX,
                subjects,
                Said.some(buttons.stream()
                                .map(each -> Objects.requireNonNull(each.press())
                                        .addresses()
                                        .getFirst()
                                        .said())
                                .toList())
                        + " close the same contact, "
                        + new Ref(input).addresses().getFirst().said() + ", and call "
                        + Said.some(buttons.stream()
                                .map(each -> Words.said(Objects.requireNonNull(each.calls())))
                                .toList())
                        + ": whichever is pressed, the same look comes.",
                List.of(new Value("buttons on the contact", buttons.size(), 1.0, "")),
                List.of(Fix.of("Bring each button to a contact of its own.")));
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
