package housewright.check.joining;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.joining.Ends.Misfit;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Adapter;
import housewright.model.Cable;
import housewright.model.Connector;
import housewright.model.Life;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Termination;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A plug that does not go into its socket: the other sex, or another kind. What the cable is made up with, the adapters
 * it names, and a lead that a person turns round are all counted before anything is said.
 */
public final class PlugDoesNotFit implements Rule {
    private static final Card CARD = new Card(
            "plug-does-not-fit",
            "Does the plug at each end of every cable go into its socket, with the adapters that are named?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Set<Signal>> signals = null;
        for (Lead lead : evidence.cabling().leads()) {
            List<Misfit> misfits = Ends.misfits(lead, Ends.adapters(lead, evidence.types()));
            if (!misfits.isEmpty()) {
                signals = signals == null ? evidence.cabling().signals() : signals;
                findings.add(finding(evidence, lead, misfits, signals.getOrDefault(lead.id(), Set.of())));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Lead lead, List<Misfit> misfits, Set<Signal> signals) {
        Misfit first = misfits.getFirst();
        Set<Subject> subjects = new LinkedHashSet<>(List.of(Subject.cable(lead.id())));
        misfits.forEach(each -> subjects.add(Subject.equipment(each.at().at().thing())));
        String what = Ends.isOwn(lead)
                ? "a " + first.plug().word() + " plug"
                : "its " + first.plug().word() + " end";
        String message = lead.id() + " does not go into " + first.at().at().saidPort() + ": " + what
                + " meets a socket for " + first.socket().mate().word()
                + (misfits.size() == 1 ? "." : ", and " + others(misfits.size() - 1) + ".");
        Signal signal = signals.size() == 1 ? signals.iterator().next() : null;
        return CARD.finding(
                Severity.FIX, List.copyOf(subjects), message, List.of(), fixes(evidence, lead, misfits, signal));
    }

    private static String others(int count) {
        return count == 1 ? "one more end does not go in either" : count + " more ends do not go in either";
    }

    private static List<Fix> fixes(Evidence evidence, Lead lead, List<Misfit> misfits, @Nullable Signal signal) {
        List<Fix> fixes = new ArrayList<>();
        Cable cable = Recabling.editable(evidence, lead).orElse(null);
        if (cable != null) {
            Fix adapters = byAdapters(evidence, cable, misfits, signal);
            boolean madeToFit = cable.terminated() == Termination.SITE
                    || (cable.terminated() == null && !cable.ends().isEmpty());
            if (madeToFit && signal != Signal.MAINS) {
                add(fixes, madeUp(cable, lead));
            }
            Fix other = signal == null || Ends.isOwn(lead)
                    ? null
                    : Recabling.findType(evidence.types(), lead, signal)
                            .map(type -> new Fix(
                                    "Take " + type.id() + " instead, which has " + ends(type.ends()) + ".",
                                    List.of(Recabling.put(Recabling.withType(cable, type.id())))))
                            .orElse(null);
            add(fixes, cable.life() == Life.NEW ? other : adapters);
            add(fixes, cable.life() == Life.NEW ? adapters : other);
        }
        if (fixes.isEmpty()) {
            fixes.add(Fix.of("Make the cable up with the plug that the socket takes, or plug it where it fits."));
        }
        return fixes;
    }

    private static void add(List<Fix> fixes, @Nullable Fix fix) {
        if (fix != null) {
            fixes.add(fix);
        }
    }

    private static @Nullable Fix byAdapters(
            Evidence evidence, Cable cable, List<Misfit> misfits, @Nullable Signal signal) {
        List<Adapter> known = Recabling.adaptersFor(evidence.types(), signal);
        Set<Adapter> needed = new LinkedHashSet<>();
        for (Misfit misfit : misfits) {
            Adapter adapter = Mating.between(misfit.plug(), misfit.socket(), known);
            if (adapter == null) {
                return null;
            }
            needed.add(adapter);
        }
        String words = needed.stream().map(Adapter::id).collect(Collectors.joining(" and "));
        return new Fix(
                "Put " + words + " between.", List.of(Recabling.put(Recabling.withMore(cable, List.copyOf(needed)))));
    }

    /** What is made up on site is made up to fit, where every way of it wants the same two plugs. */
    private static @Nullable Fix madeUp(Cable cable, Lead lead) {
        Connector from = Ends.socket(lead.joints().getFirst().from());
        Connector to = Ends.socket(lead.joints().getFirst().to());
        if (from == null || to == null) {
            return null;
        }
        List<Connector> ends = List.of(from.mate(), to.mate());
        return Ends.fit(lead, ends)
                ? new Fix(
                        "Make it up with " + ends(ends) + ".", List.of(Recabling.put(Recabling.withEnds(cable, ends))))
                : null;
    }

    private static String ends(List<Connector> ends) {
        return ends.getFirst() == ends.getLast()
                ? ends.getFirst().word() + " at both ends"
                : ends.getFirst().word() + " and " + ends.getLast().word();
    }
}
