package housewright.check.joining;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Adapter;
import housewright.model.Connector;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** An adapter named on a cable that is not made for its signal, or that has nothing to do there. */
public final class AdapterOfNoUse implements Rule {
    private static final Card CARD = new Card(
            "adapter-of-no-use",
            "Is every adapter that a cable names needed there, and made for what the cable carries?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.ORDER);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Set<Signal>> signals = null;
        for (Lead lead : evidence.cabling().leads()) {
            if (lead.cable().adapters().isEmpty()) {
                continue;
            }
            signals = signals == null ? evidence.cabling().signals() : signals;
            Set<Signal> carried = signals.getOrDefault(lead.id(), Set.of());
            List<Adapter> all = Ends.adapters(lead, evidence.types());
            boolean fits = Ends.misfits(lead, all).isEmpty();
            for (Adapter adapter : all) {
                if (!adapter.carries().isEmpty() && !adapter.carries().containsAll(carried)) {
                    findings.add(notMadeFor(lead, adapter, carried));
                } else if (fits && bothEndsKnown(lead) && !hasSupplyOfItsOwn(lead) && isIdle(lead, all, adapter)) {
                    findings.add(idle(evidence, lead, adapter));
                }
            }
        }
        return findings.stream();
    }

    /** Whether its supply is a plug-top or has an inlet, and so what goes between, its type does not say. */
    private static boolean hasSupplyOfItsOwn(Lead lead) {
        return Ends.isOwn(lead)
                && lead.joints().stream()
                        .flatMap(joint -> joint.plugs().stream())
                        .anyMatch(plug -> Ends.socket(plug) == Connector.ADAPTER);
    }

    private static boolean isIdle(Lead lead, List<Adapter> all, Adapter adapter) {
        List<Adapter> others = new ArrayList<>(all);
        others.remove(adapter);
        return Ends.misfits(lead, others).isEmpty();
    }

    /** Else what it is there for may not be known yet. */
    private static boolean bothEndsKnown(Lead lead) {
        return lead.joints().stream()
                .allMatch(joint -> Ends.socket(joint.from()) != null
                        && Ends.socket(joint.to()) != null
                        && (Ends.isOwn(lead)
                                || (joint.from() != null
                                        && joint.from().connector() != null
                                        && joint.to() != null
                                        && joint.to().connector() != null)));
    }

    private static Finding notMadeFor(Lead lead, Adapter adapter, Set<Signal> carried) {
        String wrong = carried.stream()
                .filter(signal -> !adapter.carries().contains(signal))
                .findFirst()
                .orElseThrow()
                .word();
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.cable(lead.id())),
                lead.id() + " carries " + wrong + ", and its adapter " + adapter.id() + " is not made for that.",
                List.of(),
                List.of(Fix.of("Take an adapter that is made for " + wrong + ", or a cable with the right ends.")));
    }

    private static Finding idle(Evidence evidence, Lead lead, Adapter adapter) {
        List<Fix> fixes = Recabling.editable(evidence, lead)
                .map(cable -> {
                    List<String> rest = new ArrayList<>(cable.adapters());
                    rest.remove(adapter.id());
                    return new Fix(
                            "Take it off the list.", List.of(Recabling.put(Recabling.withAdapters(cable, rest))));
                })
                .stream()
                .toList();
        return CARD.finding(
                Severity.NOTE,
                List.of(Subject.cable(lead.id())),
                lead.id() + " names the adapter " + adapter.id()
                        + ", and both its ends go in without: it would be bought for nothing.",
                List.of(),
                fixes);
    }
}
