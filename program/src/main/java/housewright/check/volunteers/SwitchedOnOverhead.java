package housewright.check.volunteers;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Place;
import housewright.model.Room;
import housewright.model.Stage;
import housewright.operation.Touch;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Things overhead with nothing but their own switch. */
public final class SwitchedOnOverhead implements Rule {
    static final Limit REACH = Limit.most("height of a switch", 2, "m");

    private static final Card CARD = new Card(
            "switched-on-overhead",
            "Can everything be switched on from the floor?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(REACH));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, Place> places = evidence.project().venue().places();
        List<String> high = new ArrayList<>();
        double highest = 0;
        double limit = evidence.limit(CARD, REACH);
        for (Touch touch : evidence.operation().start()) {
            Place place = places.get(String.valueOf(touch.place()));
            if (touch.how() != Touch.How.SWITCH || place == null || place.at() == null || place.hang() == null) {
                continue;
            }
            Room room = evidence.project().venue().rooms().get(String.valueOf(place.room()));
            double up = place.at().z().metres()
                    - (room == null || room.floor() == null ? 0 : room.floor().metres());
            if (up > limit) {
                high.add(touch.thing());
                highest = Math.max(highest, up);
            }
        }
        return high.isEmpty()
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        Severity.NOTE,
                        high.stream().map(Subject::equipment).toList(),
                        Wording.things(high, 5) + (high.size() == 1 ? " hangs" : " hang") + " up to "
                                + Wording.length(evidence, highest) + " high, and nothing but "
                                + (high.size() == 1 ? "its own switch" : "their own switches")
                                + " or a hand-held remote turns "
                                + (high.size() == 1 ? "it" : "them") + " on and off.",
                        List.of(new Value("height", highest, limit, "m")),
                        List.of(Fix.of("Bring a control cable or the network there, give it a switched supply where it"
                                + " takes that well, or write on the card where the remote lies."))));
    }
}
