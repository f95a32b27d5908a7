package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.room.View;
import housewright.room.Workplace;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A desk behind a wall from what it mixes, or in another room. */
public final class DeskOutOfSight implements Rule {
    private static final Card CARD = new Card(
            "desk-out-of-sight",
            "Is every desk in sight of what it is for?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Workplace work : evidence.rooms().workplaces()) {
            String desk = Words.said(work.place().id());
            List<String> walled =
                    work.views().stream().filter(View::wall).map(View::what).toList();
            String elsewhere = work.elsewhere();
            if (!walled.isEmpty() && 2 * walled.size() >= work.views().size()) {
                findings.add(CARD.finding(
                        Severity.FIX,
                        Sight.subjects(work, null),
                        "A wall stands between " + desk + " and " + Wording.things(walled, 4)
                                + ": whoever works there does not see the stage.",
                        List.of(new Value("hidden", walled.size(), null, "")),
                        List.of(Fix.of("Move the desk to where it sees the stage."))));
            } else if (elsewhere != null && !work.operated().isEmpty() && !hasPicture(evidence, work)) {
                findings.add(CARD.finding(
                        Severity.NOTE,
                        Sight.subjects(work, null),
                        Words.said(work.operated().getFirst()) + " stands in "
                                + Words.said(String.valueOf(work.place().room()))
                                + " and all microphones are in " + Words.said(elsewhere)
                                + ", with no picture from there at the desk.",
                        List.of(),
                        List.of(Fix.of("Bring a camera's picture to the desk, or set the desk so that nobody needs to"
                                + " work it during a service."))));
            }
        }
        return findings.stream();
    }

    private static boolean hasPicture(Evidence evidence, Workplace work) {
        return evidence.pictures().things().stream()
                .anyMatch(thing -> thing.model() != null
                        && thing.model().kind() == Kind.DISPLAY
                        && work.place().id().equals(thing.equipment().at()));
    }
}
