package housewright.check.cable;

import housewright.cable.Cabling;
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
import housewright.model.RuleSet;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Signal cable nearer to mains than the standards let it be, without a divider. Whether the mains is screened nobody
 * enters, so it counts as unscreened. In the last 15 m of a run unscreened data may come as near as what is screened.
 * Where the distance is not known, it is asked for and nothing is guessed.
 */
public final class MainsBesideSignal implements Rule {
    static final Limit SAFE = Limit.least("any signal cable from mains", 50, "mm");
    static final Limit UNSCREENED = Limit.least("unscreened data from mains (metric), beyond 15 m", 200, "mm");
    static final double LAST_M = 15;

    private static final Card CARD = new Card(
            "mains-beside-signal",
            "Is signal cable far enough from the mains it runs beside?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.ByRuleSet(
                    new Source.Published("EN 50174-2:2000 and BS 6701, as quoted", "table 1 of the first"),
                    new Source.Published("NFPA 70 (NEC), as quoted", "800.133(A)(2)")),
            Stage.DESIGN,
            List.of(SAFE, UNSCREENED));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Pathway> beside = evidence.project().venue().pathways().values().stream()
                .filter(MainsBesideSignal::isBesideMains)
                .toList();
        if (beside.isEmpty()) {
            return Stream.empty();
        }
        Map<String, Use> uses = evidence.cabling().uses();
        List<Finding> findings = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (Pathway pathway : beside) {
            List<Lead> signals = evidence.cabling().along(pathway).stream()
                    .filter(lead -> uses.getOrDefault(lead.id(), Use.OTHER) != Use.MAINS)
                    .toList();
            if (pathway.apart() == null) {
                if (!signals.isEmpty()) {
                    unknown.add(pathway.id());
                }
                continue;
            }
            near(evidence, pathway, pathway.apart().metres() * 1000, signals, uses, findings);
        }
        if (!unknown.isEmpty()) {
            findings.add(unknown(unknown));
        }
        return findings.stream();
    }

    static boolean isBesideMains(Pathway pathway) {
        return pathway.beside() != null
                && pathway.beside().toLowerCase(Locale.ROOT).contains("mains");
    }

    private static void near(
            Evidence evidence,
            Pathway pathway,
            double apart,
            List<Lead> signals,
            Map<String, Use> uses,
            List<Finding> findings) {
        double safe = evidence.limit(CARD, SAFE);
        double unscreened = evidence.ruleSet() == RuleSet.METRIC_EU ? UNSCREENED.value() : safe;
        if (apart >= Math.max(safe, unscreened)) {
            return;
        }
        List<String> cables = new ArrayList<>();
        double limit = 0;
        for (Lead lead : signals) {
            boolean open = uses.get(lead.id()) == Use.DATA
                    && lead.type() != null
                    && Boolean.FALSE.equals(lead.type().screened())
                    && !isFibre(lead)
                    && besideMetres(evidence.cabling(), lead) > LAST_M;
            double wanted = open ? Math.max(safe, unscreened) : safe;
            if (apart < wanted) {
                cables.add(lead.id());
                limit = Math.max(limit, wanted);
            }
        }
        if (cables.isEmpty()) {
            return;
        }
        List<Subject> subjects = new ArrayList<>(List.of(Said.pathway(pathway.id())));
        subjects.addAll(Said.subjects(cables));
        findings.add(CARD.finding(
                Severity.FIX,
                subjects,
                Said.place(pathway.id()) + " is too near the mains for " + Said.some(cables) + ": " + Said.number(apart)
                        + " mm, and " + Said.number(limit) + " mm are asked for without a divider.",
                List.of(new Value("distance from mains", apart, limit, "mm")),
                List.of(Fix.of(
                        "Move the pathway, put an earthed metal divider between, or take screened cable; what is mains"
                                + " is for a licensed electrician to move."))));
    }

    private static boolean isFibre(Lead lead) {
        return lead.type() != null
                && lead.type().conductor() == null
                && lead.type().impedance() == null;
    }

    private static double besideMetres(Cabling cabling, Lead lead) {
        double sum = 0;
        for (Pathway pathway : lead.pathways()) {
            Double metres = isBesideMains(pathway) ? cabling.metres(pathway) : null;
            sum += metres == null ? 0 : metres;
        }
        return sum;
    }

    private static Finding unknown(List<String> pathways) {
        return CARD.finding(
                Severity.NOTE,
                pathways.stream().map(Said::pathway).toList(),
                "Nobody has said how far "
                        + Said.some(pathways.stream().map(Said::place).toList())
                        + (pathways.size() == 1 ? " is" : " are") + " from the mains beside "
                        + (pathways.size() == 1 ? "it" : "them") + ", so it is not judged.",
                List.of(new Value("distances missing", pathways.size(), 0.0, "")),
                List.of(Fix.of(
                        "Measure it with the mains switched off or from a safe distance, and enter it as apart.")));
    }
}
