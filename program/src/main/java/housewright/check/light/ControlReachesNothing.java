package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.light.Lights;
import housewright.model.Control;
import housewright.model.Look;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** A button whose press does not get to the lamps of the look it calls, or to what it is to start. */
public final class ControlReachesNothing implements Rule {
    private static final Card CARD = new Card(
            "control-reaches-nothing",
            "Does the press of every button get to what it is to move?",
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
        Map<String, Set<String>> reached = new HashMap<>();
        for (Control control : evidence.project().controls().values()) {
            Ref press = control.press();
            if (press == null || !evidence.lights().things().containsKey(press.thing())) {
                continue; // by the clock, or not there yet
            }
            Address button = press.addresses().getFirst();
            Set<String> all = reached.computeIfAbsent(button.toString(), key -> reachedBy(evidence, button));
            look(evidence, control, button, all, findings);
            Ref does = control.does();
            if (does != null && !all.contains(does.thing()) && !does.thing().equals(button.thing())) {
                findings.add(finding(
                        control,
                        List.of(does.thing()),
                        button.said() + " is to move "
                                + does.addresses().getFirst().said() + ", and nothing leads there."));
            }
        }
        return findings.stream();
    }

    private static Set<String> reachedBy(Evidence evidence, Address button) {
        Set<String> things = new HashSet<>();
        evidence.signals().reaches(button, at -> {
            things.add(at.thing());
            return false;
        });
        things.remove(button.thing());
        return things;
    }

    private static void look(
            Evidence evidence, Control control, Address button, Set<String> reached, List<Finding> findings) {
        Look look = control.calls() == null ? null : Looks.all(evidence).get(control.calls());
        if (look == null) {
            return;
        }
        Lights lights = evidence.lights();
        List<String> lamps = look.levels().keySet().stream()
                .filter(id -> lights.things().containsKey(id))
                .toList();
        List<String> missed = lamps.stream().filter(id -> !reached.contains(id)).toList();
        String calls = button.said() + " calls the look " + Words.said(look.id());
        if (lamps.isEmpty()) {
            if (reached.stream().noneMatch(id -> lights.findReceiver(id).isPresent())) {
                findings.add(finding(control, List.of(), calls + ", and nothing leads from it to any lamp."));
            }
        } else if (missed.size() == lamps.size()) {
            findings.add(finding(control, missed, calls + ", and nothing leads from it to any lamp of it."));
        } else if (!missed.isEmpty()) {
            findings.add(finding(
                    control,
                    missed,
                    calls + ", and " + Said.things(missed) + " of it " + Said.be(missed.size()) + " not reached."));
        }
    }

    private static Finding finding(Control control, List<String> missed, String message) {
        Set<Subject> subjects = new LinkedHashSet<>(Said.equipment(missed));
        if (control.press() != null) {
            subjects.add(Subject.equipment(control.press().thing()));
        }
        return CARD.finding(
                Severity.FIX,
                Said.subjects(Said.control(control.id()), subjects),
                message,
                List.of(new Value("not reached", missed.size(), 0.0, "")),
                List.of(Fix.of("Follow it with `trace` from the button on; where it stops, a cable or a network-send to"
                        + " what holds the looks is missing.")));
    }
}
