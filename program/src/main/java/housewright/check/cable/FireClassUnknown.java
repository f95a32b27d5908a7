package housewright.check.cable;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.Life;
import housewright.model.Pathway;
import housewright.model.PathwayKind;
import housewright.model.RuleSet;
import housewright.model.Stage;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Types of cable laid new in the building whose class of fire nobody has entered: one note for all. In the US only where
 * air is moved through and from floor to floor; there nothing may lie that is not marked for it.
 */
public final class FireClassUnknown implements Rule {
    private static final Card CARD = new Card(
            "fire-class-unknown",
            "Is the fire class known of every cable that is laid new in the building?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.ORDER);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        boolean american = evidence.ruleSet() == RuleSet.US;
        Set<String> types = new LinkedHashSet<>();
        Set<String> cables = new LinkedHashSet<>();
        for (Lead lead : evidence.cabling().leads()) {
            CableType type = lead.type();
            if (type == null || lead.cable().life() != Life.NEW || !FireClass.isLaidInside(lead)) {
                continue;
            }
            boolean known = american ? FireClass.isAmerican(type) : FireClass.isEuropean(type);
            if (!known && (!american || lead.pathways().stream().anyMatch(FireClassUnknown::asks))) {
                types.add(type.id());
                cables.add(lead.id());
            }
        }
        return types.isEmpty()
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        american ? Severity.FIX : Severity.NOTE,
                        Said.subjects(cables),
                        "The fire class is not known of " + Said.some(types) + ", "
                                + (types.size() == 1 ? "a type" : "types")
                                + " that " + Said.count(cables.size(), "new cable") + " in the building "
                                + (cables.size() == 1 ? "is" : "are") + " of (" + Said.some(cables) + ")"
                                + (american
                                        ? ", where air is moved through or from floor to floor: only cable marked for it"
                                                + " may lie there."
                                        : "."),
                        List.of(new Value("types without a class", types.size(), 0.0, "")),
                        List.of(Fix.of("Read it off the sheath or the data sheet, and enter it in the type."))));
    }

    private static boolean asks(Pathway pathway) {
        return pathway.kind() == PathwayKind.RISER
                || (Boolean.TRUE.equals(pathway.airHandling()) && pathway.kind() != PathwayKind.CONDUIT);
    }
}
