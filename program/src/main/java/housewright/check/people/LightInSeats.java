package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.room.SeatLight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Fixtures that shine into the eyes of the congregation. */
public final class LightInSeats implements Rule {
    private static final Card CARD = new Card(
            "light-in-seats",
            "Does no beam shine into the eyes of the seats?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, List<SeatLight>> byPlace = new LinkedHashMap<>();
        for (SeatLight each : evidence.rooms().seatLights()) {
            byPlace.computeIfAbsent(each.place(), key -> new ArrayList<>()).add(each);
        }
        return byPlace.entrySet().stream().map(each -> finding(each.getKey(), each.getValue()));
    }

    private static Finding finding(String place, List<SeatLight> lights) {
        SeatLight worst =
                lights.stream().max(Comparator.comparingInt(SeatLight::seats)).orElseThrow();
        List<Subject> subjects = new ArrayList<>();
        lights.forEach(each -> subjects.add(Subject.equipment(each.fixture())));
        subjects.add(new Subject("place", place));
        return CARD.finding(
                Severity.NOTE,
                subjects,
                Wording.things(lights.stream().map(SeatLight::fixture).toList(), 4) + " at " + Words.said(place)
                        + (lights.size() == 1 ? " shines" : " shine") + " into the eyes of about "
                        + Math.max(1, Math.round(100.0 * worst.seats() / worst.tried())) + " % of the seats, from "
                        + Math.round(worst.lowest()) + " degrees up.",
                List.of(new Value("seats in the beam", worst.seats(), null, "")),
                List.of(Fix.of("Aim lower and nearer, or cut the beam at the first row with shutters or barn doors.")));
    }
}
