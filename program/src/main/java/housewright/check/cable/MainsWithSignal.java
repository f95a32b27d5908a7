package housewright.check.cable;

import housewright.cable.Lead;
import housewright.cable.Use;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Pathway;
import housewright.model.PathwayKind;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Mains and signal in one conduit: where a sheath is cut while pulling, mains comes out of a microphone. A trunking may
 * have a divider, which nobody enters, so that wants settling and does not stop.
 */
public final class MainsWithSignal implements Rule {
    private static final Card CARD = new Card(
            "mains-with-signal",
            "Is mains cable kept out of every conduit and trunking that signal cable lies in?",
            Set.of(Severity.STOP, Severity.FIX),
            new Source.ByRuleSet(
                    new Source.FromMemory("BS 7671 528.1 and BS 6701"), new Source.FromMemory("NFPA 70 (NEC) 725.136")),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, Use> uses = evidence.cabling().uses();
        if (!uses.containsValue(Use.MAINS)) {
            return Stream.empty();
        }
        List<Finding> findings = new ArrayList<>();
        for (Pathway pathway : evidence.project().venue().pathways().values()) {
            if (pathway.kind() != PathwayKind.CONDUIT && pathway.kind() != PathwayKind.TRUNKING) {
                continue;
            }
            List<String> mains = new ArrayList<>();
            List<String> signals = new ArrayList<>();
            for (Lead lead : evidence.cabling().along(pathway)) {
                if (uses.get(lead.id()) == Use.MAINS) {
                    mains.add(lead.id());
                } else if (uses.get(lead.id()) != Use.OTHER || lead.type() != null) { // else it may be mains, too
                    signals.add(lead.id());
                }
            }
            if (!mains.isEmpty() && !signals.isEmpty()) {
                findings.add(finding(pathway, mains, signals));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Pathway pathway, List<String> mains, List<String> signals) {
        boolean conduit = pathway.kind() == PathwayKind.CONDUIT;
        List<Subject> subjects = new ArrayList<>(List.of(Said.pathway(pathway.id())));
        subjects.addAll(Said.subjects(mains));
        subjects.addAll(Said.subjects(signals));
        return CARD.finding(
                conduit ? Severity.STOP : Severity.FIX,
                subjects,
                Said.place(pathway.id()) + " has mains in one " + (conduit ? "conduit" : "trunking") + " with signal: "
                        + Said.some(mains) + " with " + Said.some(signals) + "."
                        + (conduit ? "" : " That is allowed only with a divider between."),
                List.of(new Value("mains cables among signal", mains.size(), 0.0, "")),
                List.of(Fix.of(
                        "Give the mains a way of its own; a licensed electrician says where, by the local code.")));
    }
}
