package housewright.check.cable;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Cable;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Two cables that say the same at their ends, or one that says the number of another. */
public final class LabelTwice implements Rule {
    private static final Card CARD = new Card(
            "label-twice",
            "Does every cable say something at its ends that no other says?",
            Set.of(Severity.FIX),
            new Source.FromMemory("INFOCOMM F501.01:2015 practice: one identifier for one cable"),
            Stage.INSTALL);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Lead> leads = evidence.cabling().leads();
        Map<String, String> taken = new HashMap<>(2 * leads.size());
        leads.forEach(lead -> taken.put(plain(lead.id()), lead.id()));
        List<Finding> findings = new ArrayList<>();
        for (Lead lead : leads) {
            String label = lead.cable().label();
            if (label == null || label.isBlank()) {
                continue;
            }
            String other = taken.putIfAbsent(plain(label), lead.id());
            if (other != null && !other.equals(lead.id())) {
                findings.add(finding(evidence, lead, label, other));
            }
        }
        return findings.stream();
    }

    private static String plain(String label) {
        return label.strip().toLowerCase(Locale.ROOT);
    }

    private static Finding finding(Evidence evidence, Lead lead, String label, String other) {
        Cable cable = evidence.project().cables().get(lead.id());
        String better = label.strip() + " " + lead.id();
        Fix fix = cable == null
                ? Fix.of("Label one of them otherwise.")
                : new Fix("Label " + lead.id() + " \"" + better + "\".", List.of(Recut.labelled(cable, better)));
        return CARD.finding(
                Severity.FIX,
                Said.subjects(List.of(lead.id(), other)),
                lead.id() + " and " + other + " both say \"" + label.strip() + "\" at their ends.",
                List.of(new Value("cables with one label", 2, 1.0, "")),
                List.of(fix));
    }
}
