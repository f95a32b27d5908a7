package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.room.Workplace;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The height of the surface at which an operator sits or stands. */
public final class WorkSurfaceHeight implements Rule {
    static final Limit SEATED_MOST = Limit.most("surface above the floor, seated", 850, "mm");
    static final Limit SEATED_LEAST = Limit.least("surface above the floor, seated", 650, "mm");
    static final Limit STANDING_LEAST = Limit.least("surface above the floor, standing", 950, "mm");
    static final Limit STANDING_MOST = Limit.most("surface above the floor, standing", 1250, "mm");

    private static final Card CARD = new Card(
            "work-surface-height",
            "Is every desk at a height at which its operator can work, seated or standing?",
            Set.of(Severity.NOTE),
            new Source.Published(
                    "EN 527-1, as quoted on a trade page", "seated 650 to 850 mm, standing 950 to 1250 mm"),
            Stage.DESIGN,
            List.of(SEATED_MOST, SEATED_LEAST, STANDING_LEAST, STANDING_MOST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Workplace work : evidence.rooms().workplaces()) {
            if (work.operator() == null || work.place().at() == null) {
                continue;
            }
            boolean stands = work.operator().stands();
            double up = 1000 * (work.place().at().z().metres() - work.floor());
            double least = (stands ? STANDING_LEAST : SEATED_LEAST).value();
            double most = stands ? STANDING_MOST.value() : evidence.limit(CARD, SEATED_MOST);
            if (up < least - 0.5 || up > most + 0.5) {
                findings.add(CARD.finding(
                        Severity.NOTE,
                        Sight.subjects(work, null),
                        "The surface at " + Words.said(work.place().id()) + " is " + Wording.length(evidence, up / 1000)
                                + " above the floor; whoever " + (stands ? "stands" : "sits") + " there wants "
                                + Wording.length(evidence, least / 1000) + " to "
                                + Wording.length(evidence, most / 1000) + ".",
                        List.of(new Value("work surface", up, up < least ? least : most, "mm")),
                        List.of(Fix.of(
                                up > most && !stands
                                        ? "Give a higher chair with a footrest, or let the operator stand."
                                        : "Raise or lower the table, or the floor under the operator."))));
            }
        }
        return findings.stream();
    }
}
