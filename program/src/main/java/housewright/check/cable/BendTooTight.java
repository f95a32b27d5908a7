package housewright.check.cable;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Pathway;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A pathway whose tightest bend is tighter than a cable in it may be bent. That is what the cable's type says, else four
 * diameters for twisted pair and ten for coax; a pathway that says nothing of its bends is not judged.
 */
public final class BendTooTight implements Rule {
    static final Limit PAIR = Limit.least("bend of twisted pair, in outside diameters,", 4, "");
    static final Limit COAX = Limit.least("bend of coax, in outside diameters,", 10, "");

    private static final Card CARD = new Card(
            "bend-too-tight",
            "Is no cable bent tighter than its type allows?",
            Set.of(Severity.FIX),
            new Source.Published("ANSI/TIA-568.0-D, as reported, and an SDI equipment manual", ""),
            Stage.DESIGN,
            List.of(PAIR, COAX));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Pathway pathway : evidence.project().venue().pathways().values()) {
            if (pathway.bend() == null) {
                continue;
            }
            double bend = pathway.bend().metres() * 1000;
            List<String> cables = new ArrayList<>();
            double most = 0;
            String type = "";
            for (Lead lead : evidence.cabling().along(pathway)) {
                Double least = leastMillimetres(evidence, lead.type());
                if (least != null && least > bend) {
                    cables.add(lead.id());
                    type = least > most && lead.type() != null ? lead.type().id() : type;
                    most = Math.max(most, least);
                }
            }
            if (!cables.isEmpty()) {
                findings.add(finding(pathway, cables, type, bend, most));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Pathway pathway, List<String> cables, String type, double bend, double most) {
        List<Subject> subjects = new ArrayList<>(List.of(Said.pathway(pathway.id())));
        subjects.addAll(Said.subjects(cables));
        return CARD.finding(
                Severity.FIX,
                subjects,
                String.format(
                        Locale.ROOT,
                        "%s bends too tightly for %s: its tightest bend is %s mm, and %s wants %s mm.",
                        Said.place(pathway.id()),
                        Said.some(cables),
                        Said.number(bend),
                        type,
                        Said.number(most)),
                List.of(new Value("bend radius", bend, most, "mm")),
                List.of(Fix.of("Ease the bend, go another way, or take thinner cable.")));
    }

    private static @Nullable Double leastMillimetres(Evidence evidence, @Nullable CableType type) {
        if (type == null) {
            return null;
        }
        if (type.bend() != null) {
            return type.bend().metres() * 1000;
        }
        double diameter = type.diameter() == null ? 0 : type.diameter().metres() * 1000;
        if (diameter == 0) {
            return null;
        }
        boolean pair = type.ends().contains(Connector.RJ45);
        return type.attenuation() != null
                ? (Double) (COAX.value() * diameter)
                : pair ? (Double) (evidence.limit(CARD, PAIR) * diameter) : null;
    }
}
