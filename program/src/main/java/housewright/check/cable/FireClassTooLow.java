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
import housewright.model.Life;
import housewright.model.Pathway;
import housewright.model.PathwayKind;
import housewright.model.RuleSet;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Cable whose sheath does not say what the space asks for. In the US: plenum cable where air is moved through, riser
 * cable from floor to floor; metal conduit excuses lesser cable, so conduit is not judged. In Europe what a building
 * asks for is national; the class that the UK's standard gives is a note. What else lies there already is a note, too.
 */
public final class FireClassTooLow implements Rule {
    private static final Card CARD = new Card(
            "fire-class-too-low",
            "Does the sheath of every cable say the fire class that its space asks for?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.ByRuleSet(
                    new Source.FromMemory("EN 50575 with BS 6701"),
                    new Source.Published("NFPA 70 (NEC), as quoted", "800.113 and 800.154")),
            Stage.DESIGN);

    private static final Set<PathwayKind> VOIDS = Set.of(PathwayKind.CEILING_VOID, PathwayKind.FLOOR_VOID);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.ruleSet() == RuleSet.US ? american(evidence) : european(evidence);
    }

    private static Stream<Finding> american(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Pathway pathway : evidence.project().venue().pathways().values()) {
            boolean conduit = pathway.kind() == PathwayKind.CONDUIT;
            if (Boolean.TRUE.equals(pathway.airHandling()) && !conduit) {
                american(evidence, pathway, "CMP", "which air is moved through", FireClass::isForPlenum, findings);
            } else if (pathway.kind() == PathwayKind.RISER) {
                american(evidence, pathway, "CMR", "from floor to floor", FireClass::isForRiser, findings);
            } else if (pathway.airHandling() == null && pathway.kind() != null && VOIDS.contains(pathway.kind())) {
                airUnknown(evidence, pathway).ifPresent(findings::add);
            }
        }
        return findings.stream();
    }

    /** What is laid new in a void of which nobody has said whether the building's air goes through it. */
    private static Optional<Finding> airUnknown(Evidence evidence, Pathway pathway) {
        List<String> cables = evidence.cabling().along(pathway).stream()
                .filter(lead -> lead.cable().life() == Life.NEW)
                .filter(lead -> lead.type() == null || !FireClass.isForPlenum(lead.type()))
                .map(Lead::id)
                .toList();
        if (cables.isEmpty()) {
            return Optional.empty();
        }
        List<Subject> subjects = new ArrayList<>(List.of(Said.pathway(pathway.id())));
        subjects.addAll(Said.subjects(cables));
        return Optional.of(CARD.finding(
                Severity.NOTE,
                subjects,
                "Nobody has said whether " + Said.place(pathway.id()) + " moves the building's air, and "
                        + Said.some(cables) + (cables.size() == 1 ? " goes" : " go")
                        + " there: if it does, CMP is asked for.",
                List.of(new Value("cables not known to be for plenum", cables.size(), 0.0, "")),
                List.of(Fix.of("Ask whoever looks after the ventilation, and enter air-handling: yes or no."))));
    }

    private static void american(
            Evidence evidence,
            Pathway pathway,
            String wanted,
            String where,
            Predicate<CableType> good,
            List<Finding> findings) {
        List<Lead> bad = new ArrayList<>();
        for (Lead lead : evidence.cabling().along(pathway)) {
            CableType type = lead.type();
            if (type != null && FireClass.isAmerican(type) && !good.test(type)) {
                bad.add(lead);
            }
        }
        if (bad.isEmpty()) {
            return;
        }
        boolean laid = bad.stream().anyMatch(lead -> lead.cable().life() == Life.NEW);
        List<String> cables = bad.stream().map(Lead::id).toList();
        List<Subject> subjects = new ArrayList<>(Said.subjects(cables));
        subjects.add(Said.pathway(pathway.id()));
        List<Fix> fixes = new ArrayList<>();
        if (bad.size() == 1) {
            Lead lead = bad.getFirst();
            Recut.otherType(
                            evidence,
                            lead,
                            type -> good.test(type)
                                    && lead.type() != null
                                    && type.carries().containsAll(lead.type().carries()))
                    .ifPresent(fixes::add);
        }
        fixes.add(Fix.of(
                "Take cable marked " + wanted + " or better, or lay it in metal conduit, as the local code says."));
        findings.add(CARD.finding(
                laid ? Severity.FIX : Severity.NOTE,
                subjects,
                Said.some(cables) + " must not run in " + Said.place(pathway.id()) + ", " + where + ": marked "
                        + Said.all(classes(bad)) + ", " + wanted + " or better is asked for.",
                List.of(new Value("cables of too low a class", cables.size(), 0.0, "")),
                fixes));
    }

    private static Stream<Finding> european(Evidence evidence) {
        List<Lead> low = new ArrayList<>();
        for (Lead lead : evidence.cabling().leads()) {
            CableType type = lead.type();
            if (lead.cable().life() == Life.NEW
                    && FireClass.isLaidInside(lead)
                    && type != null
                    && FireClass.isEuropean(type)
                    && !FireClass.isLowSmoke(type)) {
                low.add(lead);
            }
        }
        if (low.isEmpty()) {
            return Stream.empty();
        }
        List<String> cables = low.stream().map(Lead::id).toList();
        return Stream.of(
                CARD.finding(
                        Severity.NOTE,
                        Said.subjects(cables),
                        (cables.size() == 1
                                        ? "A new cable in the building is "
                                        : cables.size() + " new cables in the building are ")
                                + "below Cca-s1b,d2,a2, the class the UK's BS 6701 gives for fixed cable ("
                                + Said.all(classes(low))
                                + "): " + Said.some(cables)
                                + "; what this building asks for is the local code's to say.",
                        List.of(new Value("cables below Cca-s1b,d2,a2", cables.size(), 0.0, "")),
                        List.of(
                                Fix.of(
                                        "Ask the building control or the fire officer before ordering, and take the class they name."))));
    }

    private static List<String> classes(List<Lead> leads) {
        Set<String> classes = new LinkedHashSet<>();
        leads.forEach(lead -> classes.add(FireClass.said(lead.type())));
        return List.copyOf(classes);
    }
}
