package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.light.DmxLine;
import housewright.light.Lights;
import housewright.model.Control;
import housewright.model.Look;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

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
        Map<String, Reached> known = new HashMap<>();
        Map<Set<String>, List<Gap>> gaps = new LinkedHashMap<>();
        for (Control control : evidence.project().controls().values()) {
            Ref press = control.press();
            if (press == null || !evidence.lights().things().containsKey(press.thing())) {
                continue; // by the clock, or not there yet
            }
            Address button = press.addresses().getFirst();
            Reached reached = known.computeIfAbsent(button.toString(), key -> Reached.by(evidence, button));
            Gap gap = gap(evidence, control, button, reached);
            if (gap != null && reached.light()) {
                findings.add(finding(List.of(gap)));
            } else if (gap != null) {
                gaps.computeIfAbsent(reached.sockets(), key -> new ArrayList<>(1))
                        .add(gap);
            }
            Ref does = control.does();
            if (does != null
                    && !reached.things().contains(does.thing())
                    && !does.thing().equals(button.thing())) {
                findings.add(finding(List.of(new Gap(
                        control,
                        List.of(does.thing()),
                        button.said() + " is to move "
                                + does.addresses().getFirst().said() + ", and nothing leads there"))));
            }
        }
        if (!gaps.isEmpty()) { // what a broken feed from there stops at is said by the feed
            Reached.broken(evidence)
                    .forEach(pair ->
                            gaps.remove(Reached.by(evidence, pair.from()).sockets()));
        }
        gaps.values().forEach(these -> findings.add(finding(these)));
        return findings.stream();
    }

    /** @param message without its full stop */
    private record Gap(Control control, List<String> missed, String message) {}

    private static @Nullable Gap gap(Evidence evidence, Control control, Address button, Reached reached) {
        Look look = control.calls() == null ? null : Looks.all(evidence).get(control.calls());
        if (look == null) {
            return null;
        }
        Lights lights = evidence.lights();
        List<String> lamps = look.levels().keySet().stream()
                .filter(id -> lights.things().containsKey(id))
                .toList();
        List<String> missed =
                lamps.stream().filter(id -> !reached.things().contains(id)).toList();
        String calls = button.said() + " calls the look " + Words.said(look.id());
        if (lamps.isEmpty()) {
            return reached.light()
                            || reached.things().stream()
                                    .anyMatch(id -> lights.findReceiver(id).isPresent())
                    ? null
                    : new Gap(control, List.of(), calls + ", and nothing leads from it to any lamp");
        }
        if (reached.light() && !missed.isEmpty()) {
            Set<String> told = Reached.missedAsLight(evidence);
            missed = missed.stream()
                    .filter(id -> !told.contains(id) && isFed(lights, Reached.hangsOn(evidence, id)))
                    .toList();
        }
        if (missed.isEmpty()) {
            return null;
        }
        return new Gap(
                control,
                missed,
                missed.size() == lamps.size()
                        ? calls + ", and nothing leads from it to any lamp of it"
                        : calls + ", and " + Said.things(missed) + " of it " + Said.be(missed.size()) + " not reached");
    }

    /** Else it is told of the line, or of the lamp that hangs on none. */
    private static boolean isFed(Lights lights, String lamp) {
        return lights.findReceiver(lamp).filter(Lights::takesDmx).isEmpty()
                || lights.findLine(lamp).filter(DmxLine::fed).isPresent();
    }

    /** One finding for all that stop at the same sockets. */
    private static Finding finding(List<Gap> gaps) {
        Gap first = gaps.getFirst();
        Set<Subject> subjects = new LinkedHashSet<>();
        gaps.forEach(gap -> subjects.add(Said.control(gap.control().id())));
        gaps.forEach(gap -> subjects.addAll(Said.equipment(gap.missed())));
        if (first.control().press() != null) {
            subjects.add(Subject.equipment(first.control().press().thing()));
        }
        String rest = gaps.size() == 1
                ? "."
                : "; so it is with "
                        + Said.some(gaps.stream()
                                .skip(1)
                                .map(gap ->
                                        Words.said(String.valueOf(gap.control().calls())))
                                .toList())
                        + ".";
        return CARD.finding(
                Severity.FIX,
                List.copyOf(subjects),
                first.message() + rest,
                List.of(new Value("not reached", first.missed().size(), 0.0, "")),
                List.of(Fix.of("Follow it with `trace` from the button on; where it stops, a cable or a network-send to"
                        + " what holds the looks is missing.")));
    }
}
