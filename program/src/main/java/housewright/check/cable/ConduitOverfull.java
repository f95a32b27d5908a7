package housewright.check.cable;

import housewright.cable.Cabling;
import housewright.cable.Fill;
import housewright.cable.Lead;
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
import housewright.model.RuleSet;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/**
 * More cable in a conduit or trunking than can be pulled, and later pulled out again. Everything that lies in it counts,
 * old and new. Cable of unknown diameter is left out, so a fill that is within the limit may not be.
 */
public final class ConduitOverfull implements Rule {
    static final Limit SPACE_FACTOR = Limit.most("fill (metric)", 45, "%");
    static final Limit ONE = Limit.most("fill by one cable (US)", 53, "%");
    static final Limit TWO = Limit.most("fill by two (US)", 31, "%");
    static final Limit MORE = Limit.most("fill by three and more (US)", 40, "%");
    static final Limit NIPPLE = Limit.most("fill of conduit up to 24 in between boxes (US)", 60, "%");

    private static final Card CARD = new Card(
            "conduit-overfull",
            "Does what lies in every conduit leave room to pull it?",
            Set.of(Severity.FIX),
            new Source.ByRuleSet(
                    new Source.Published("IET On-Site Guide, as quoted", "space factor"),
                    new Source.Published("NFPA 70 (NEC), as quoted", "chapter 9, table 1 and note 4 to it")),
            Stage.DESIGN,
            List.of(SPACE_FACTOR, ONE, TWO, MORE, NIPPLE));

    /** A conduit no longer than 24 in is a nipple (note 4); it must lie between boxes, which the pathway does not say. */
    private static final double NIPPLE_M = 0.6096;

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Cabling cabling = evidence.cabling();
        List<Finding> findings = new ArrayList<>();
        for (Pathway pathway : evidence.project().venue().pathways().values()) {
            if (pathway.bore() == null) {
                continue;
            }
            List<Double> diameters = new ArrayList<>();
            List<String> cables = new ArrayList<>();
            for (Lead lead : cabling.along(pathway)) {
                if (lead.type() != null && lead.type().diameter() != null) {
                    diameters.add(lead.type().diameter().metres() * 1000);
                    cables.add(lead.id());
                }
            }
            Fill fill = Fill.of(pathway.bore().metres() * 1000, diameters);
            double limit = limit(evidence, pathway, fill.cables());
            if (fill.share() * 100 > limit) {
                findings.add(finding(pathway, cables, fill, limit));
            }
        }
        return findings.stream();
    }

    private static double limit(Evidence evidence, Pathway pathway, int cables) {
        if (evidence.ruleSet() == RuleSet.METRIC_EU) {
            return evidence.limit(CARD, SPACE_FACTOR);
        }
        boolean nipple = pathway.kind() == PathwayKind.CONDUIT
                && pathway.length() != null
                && pathway.length().metres() <= NIPPLE_M + 1e-9;
        if (nipple) {
            return NIPPLE.value();
        }
        return (cables == 1 ? ONE : cables == 2 ? TWO : MORE).value();
    }

    private static Finding finding(Pathway pathway, List<String> cables, Fill fill, double limit) {
        double bore = pathway.bore() == null ? 0 : pathway.bore().metres() * 1000;
        double needed = bore * Math.sqrt(fill.share() * 100 / limit);
        List<Subject> subjects = new ArrayList<>(List.of(Said.pathway(pathway.id())));
        subjects.addAll(Said.subjects(cables));
        return CARD.finding(
                Severity.FIX,
                subjects,
                String.format(
                        Locale.ROOT,
                        "%s is too full: %s take %.0f %% of its %s mm bore, %s %% is the limit (%s).",
                        Said.place(pathway.id()),
                        Said.count(fill.cables(), "cable"),
                        fill.share() * 100,
                        Said.number(bore),
                        Said.number(limit),
                        Said.some(cables)),
                List.of(new Value("fill", fill.share() * 100, limit, "%")),
                List.of(Fix.of(String.format(
                        Locale.ROOT,
                        "Take a bore of %.0f mm or more, a second conduit, or pull out what is no longer used.",
                        Math.ceil(needed)))));
    }
}
