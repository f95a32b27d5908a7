package housewright.check.joining;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.CableType;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A cable whose type is not for the signal of its sockets. Thin screened cable gets hot with a loudspeaker on it and may
 * upset the amplifier, and mains is never anything's but mains cable's: those stop.
 */
public final class CableWrongForSignal implements Rule {
    private static final Card CARD = new Card(
            "cable-wrong-for-signal",
            "Is every cable of a type that is made for the signal in its sockets?",
            Set.of(Severity.STOP, Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Set<Signal>> signals = evidence.cabling().signals();
        for (Lead lead : evidence.cabling().leads()) {
            CableType type = lead.type();
            Set<Signal> carried = signals.getOrDefault(lead.id(), Set.of());
            // two signals on one way, or several ways: cable-joins-nothing and run-joins-nothing say what is wrong
            boolean one = carried.size() == 1 || (lead.joints().size() > 1 && !carried.isEmpty());
            if (type == null || type.carries().isEmpty() || !one) {
                continue;
            }
            for (Signal signal : carried) {
                if (!type.carries().contains(signal)) {
                    findings.add(finding(evidence, lead, type, signal));
                    break;
                }
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Lead lead, CableType type, Signal signal) {
        Severity severity = signal == Signal.MAINS || signal == Signal.SPEAKER ? Severity.STOP : Severity.FIX;
        String made = type.carries().stream().map(Signal::word).collect(Collectors.joining(", "));
        List<Fix> fixes = new ArrayList<>();
        Recabling.editable(evidence, lead)
                .ifPresent(cable -> Recabling.findType(evidence.types(), lead, signal)
                        .ifPresent(other -> fixes.add(new Fix(
                                "Take " + other.id() + " instead.",
                                List.of(Recabling.put(Recabling.withType(cable, other.id())))))));
        if (fixes.isEmpty()) {
            fixes.add(Fix.of("Take a cable that is made for " + signal.word() + "."));
        }
        return CARD.finding(
                severity,
                List.of(Subject.cable(lead.id())),
                lead.id() + " carries " + signal.word() + " on " + type.id() + ", which is made for " + made + ".",
                List.of(),
                fixes);
    }
}
