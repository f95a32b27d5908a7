package housewright.check.cable;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Equipment;
import housewright.model.Pathway;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.SpacePoint;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Pathways of one cable that do not lead from one to the next, or that end away from what the cable is plugged into.
 * Two places count as one where they are no farther apart than slack reaches; where the places have no coordinates, the
 * ends are not judged.
 */
public final class CableWayBroken implements Rule {
    static final Limit NEAR = Limit.most("from the end of a pathway to the next, or to the thing,", 3, "m");

    private static final Card CARD = new Card(
            "cable-way-broken",
            "Do the pathways of every cable lead from one of its ends to the other without a gap?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN,
            List.of(NEAR));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double near = evidence.limit(CARD, NEAR);
        List<Finding> findings = new ArrayList<>();
        for (Lead lead : evidence.cabling().leads()) {
            if (isJudged(lead)) {
                finding(evidence.project(), lead, near).ifPresent(findings::add);
            }
        }
        return findings.stream();
    }

    private static boolean isJudged(Lead lead) {
        return !lead.pathways().isEmpty()
                && lead.pathways().size() == lead.cable().via().size()
                && lead.pathways().stream().allMatch(pathway -> pathway.from() != null && pathway.to() != null);
    }

    private static Optional<Finding> finding(Project project, Lead lead, double near) {
        List<Pathway> pathways = lead.pathways();
        Joint joint = lead.joints().isEmpty() ? null : lead.joints().getFirst();
        Plug one = joint == null ? null : joint.from();
        Plug other = joint == null ? null : joint.to();
        Finding best = null;
        for (String start :
                List.of(end(pathways.getFirst().from()), end(pathways.getFirst().to()))) {
            String at = start;
            Finding gap = null;
            for (int i = 0; i < pathways.size() && gap == null; i++) {
                String next = through(project, pathways.get(i), at, near);
                if (next == null) { // never at the first, for its own end is where this begins
                    gap = gap(lead, pathways.get(i - 1), pathways.get(i));
                } else {
                    at = next;
                }
            }
            if (gap != null) {
                best = best == null ? gap : best;
                continue;
            }
            Optional<Finding> straight = away(project, lead, one, start, other, at, near);
            if (straight.isEmpty()
                    || away(project, lead, other, start, one, at, near).isEmpty()) {
                return Optional.empty();
            }
            best = straight.get();
        }
        return Optional.ofNullable(best);
    }

    private static String end(@Nullable String place) {
        return place == null ? "" : place;
    }

    /** The far end of a pathway that begins here; null where neither of its ends is here. */
    private static @Nullable String through(Project project, Pathway pathway, String at, double near) {
        if (at.equals(pathway.from())) {
            return pathway.to();
        }
        if (at.equals(pathway.to())) {
            return pathway.from();
        }
        return isNear(project, at, pathway.from(), near)
                ? pathway.to()
                : isNear(project, at, pathway.to(), near) ? pathway.from() : null;
    }

    private static boolean isNear(Project project, String one, @Nullable String other, double near) {
        Double metres = metres(project, one, other);
        return metres != null && metres <= near;
    }

    private static @Nullable Double metres(Project project, String one, @Nullable String other) {
        SpacePoint from = point(project, one);
        SpacePoint to = other == null ? null : point(project, other);
        return from == null || to == null
                ? null
                : (Double) Math.hypot(
                        Math.hypot(
                                from.x().metres() - to.x().metres(),
                                from.y().metres() - to.y().metres()),
                        from.z().metres() - to.z().metres());
    }

    private static @Nullable SpacePoint point(Project project, String id) {
        Place place = project.venue().places().get(id);
        return place == null ? null : place.at();
    }

    private static Finding gap(Lead lead, Pathway before, Pathway after) {
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.cable(lead.id()), Said.pathway(before.id()), Said.pathway(after.id())),
                "The way of " + lead.id() + " has a gap: " + Said.place(before.id()) + " (" + ends(before)
                        + ") does not lead to " + Said.place(after.id()) + " (" + ends(after) + ").",
                List.of(),
                List.of(Fix.of("Add the pathway that is missing between, or take out the wrong one.")));
    }

    private static String ends(Pathway pathway) {
        return Words.said(end(pathway.from())) + " to " + Words.said(end(pathway.to()));
    }

    private static Optional<Finding> away(
            Project project,
            Lead lead,
            @Nullable Plug one,
            String start,
            @Nullable Plug other,
            String finish,
            double near) {
        Optional<Finding> first = away(project, lead, one, start, near);
        return first.isPresent() ? first : away(project, lead, other, finish, near);
    }

    private static Optional<Finding> away(Project project, Lead lead, @Nullable Plug plug, String end, double near) {
        String stands = plug == null ? null : stands(project, plug.equipment());
        Double metres = stands == null || stands.equals(end) ? null : metres(project, end, stands);
        if (plug == null || stands == null || metres == null || metres <= near) {
            return Optional.empty();
        }
        return Optional.of(CARD.finding(
                Severity.FIX,
                List.of(Subject.cable(lead.id()), Subject.equipment(plug.at().thing())),
                "The way of " + lead.id() + " ends at " + Words.said(end) + ", " + Said.metres(metres) + " from "
                        + Words.said(plug.at().thing()) + ", which is at " + Words.said(stands) + "; "
                        + Said.metres(near) + " is what slack reaches.",
                List.of(new Value("from the pathway to the thing", metres, near, "m")),
                List.of(Fix.of("Add the pathway for the last piece, or correct where the thing stands."))));
    }

    /** The thing's own place, or that of the machine it is in. */
    private static @Nullable String stands(Project project, @Nullable Equipment equipment) {
        if (equipment == null || equipment.at() != null) {
            return equipment == null ? null : equipment.at();
        }
        String host = equipment.partOf() != null ? equipment.partOf() : equipment.runsOn();
        Equipment machine = host == null ? null : project.equipment().get(host);
        return machine == null ? null : machine.at();
    }
}
