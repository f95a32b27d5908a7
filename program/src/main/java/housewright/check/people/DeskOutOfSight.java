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
import housewright.model.Place;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.room.View;
import housewright.room.Workplace;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

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
            } else if (elsewhere != null && !work.operated().isEmpty() && !hasPicture(evidence, work, elsewhere)) {
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

    /** A camera of that room on a screen at the desk. */
    private static boolean hasPicture(Evidence evidence, Workplace work, String room) {
        Collection<Present> things = evidence.pictures().things();
        Set<String> screens = new HashSet<>();
        for (Present thing : things) {
            if (isA(thing, Kind.DISPLAY)
                    && work.place().id().equals(thing.equipment().at())) {
                screens.add(thing.id());
            }
        }
        return !screens.isEmpty()
                && things.stream()
                        .filter(thing -> isA(thing, Kind.CAMERA) && room.equals(room(evidence, thing)))
                        .flatMap(DeskOutOfSight::points)
                        .anyMatch(from -> evidence.signals().reaches(from, at -> screens.contains(at.thing())));
    }

    private static boolean isA(Present thing, Kind kind) {
        return thing.model() != null && thing.model().kind() == kind;
    }

    private static @Nullable String room(Evidence evidence, Present thing) {
        String at = thing.equipment().at();
        Place place = at == null ? null : evidence.project().venue().places().get(at);
        return place == null ? null : place.room();
    }

    private static Stream<Address> points(Present camera) {
        return camera.model() == null
                ? Stream.empty()
                : camera.model().points().stream()
                        .flatMap(names -> names.names().stream())
                        .map(point ->
                                new Ref(camera.id() + "." + point).addresses().getFirst());
    }
}
