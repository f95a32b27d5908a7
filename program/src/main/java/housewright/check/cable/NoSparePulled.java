package housewright.check.cable;

import housewright.cable.Cabling;
import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
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
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Ways that cable is pulled through now and that are hard to pull through again, with nothing spare in them: a cable
 * between free sockets, or free pairs of a multicore. One note for all.
 */
public final class NoSparePulled implements Rule {
    private static final Card CARD = new Card(
            "no-spare-pulled",
            "Is something spare pulled wherever it is hard to pull again?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.ORDER);

    /** From here on any way is one that nobody wants to pull again: common practice. */
    private static final double LONG_M = 15;

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Cabling cabling = evidence.cabling();
        Set<String> spare = spare(cabling);
        List<String> without = new ArrayList<>();
        for (Pathway pathway : evidence.project().venue().pathways().values()) {
            List<Lead> leads = cabling.along(pathway);
            if (isHard(cabling, pathway)
                    && leads.stream().anyMatch(lead -> lead.cable().life() == Life.NEW)
                    && leads.stream().noneMatch(lead -> spare.contains(lead.id()))) {
                without.add(pathway.id());
            }
        }
        return without.isEmpty()
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        Severity.NOTE,
                        without.stream().map(Said::pathway).toList(),
                        "Nothing spare is pulled through "
                                + Said.some(without.stream().map(Said::place).toList())
                                + ", where new cable goes in and the next will be hard to add.",
                        List.of(new Value("ways without a spare", without.size(), 0.0, "")),
                        List.of(Fix.of("Pull one more of the commonest type, or leave a draw string in."))));
    }

    private static boolean isHard(Cabling cabling, Pathway pathway) {
        PathwayKind kind = pathway.kind();
        if (kind == PathwayKind.CONDUIT || kind == PathwayKind.RISER || kind == PathwayKind.UNDERGROUND) {
            return true;
        }
        Double metres = cabling.metres(pathway);
        return metres != null && metres >= LONG_M;
    }

    private static Set<String> spare(Cabling cabling) {
        Set<String> spare = new HashSet<>();
        for (Lead lead : cabling.leads()) {
            CableType type = lead.type();
            boolean pairsFree =
                    type != null && type.ways() != null && lead.joints().size() < type.ways();
            if (pairsFree || lead.joints().isEmpty()) {
                spare.add(lead.id());
            }
            for (Joint joint : lead.joints()) {
                if (joint.from() == null && joint.to() == null) {
                    spare.add(lead.id());
                }
            }
        }
        for (Line line : cabling.lines()) {
            if (isFree(line.from()) && isFree(line.to())) {
                spare.addAll(line.ids());
            }
        }
        return spare;
    }

    private static boolean isFree(@Nullable Plug plug) {
        return plug == null || plug.isPassive();
    }
}
