package housewright.check.complete;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Stage;
import housewright.signal.Present;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Things that stand, hang or are racked nowhere. */
public final class PlaceMissing implements Rule {
    private static final Set<Kind> CARRIED =
            EnumSet.of(Kind.MICROPHONE, Kind.RADIO_TRANSMITTER, Kind.HEADPHONES, Kind.DI);

    private static final Card CARD = new Card(
            "place-missing",
            "Is it known of everything where it goes?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.ORDER);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        if (evidence.project().venue().places().isEmpty()) {
            return Stream.empty(); // a signal plan without a room
        }
        List<String> homeless = evidence.pictures().things().stream()
                .filter(thing ->
                        thing.model() == null || !CARRIED.contains(thing.model().kind()))
                .map(Present::equipment)
                .filter(each -> each.at() == null && each.partOf() == null && each.runsOn() == null)
                .map(Equipment::id)
                .toList();
        return homeless.isEmpty()
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        Severity.FIX,
                        homeless.stream().map(Subject::equipment).toList(),
                        Wording.things(homeless, 5) + (homeless.size() == 1 ? " has" : " have")
                                + " no place: nobody knows where to fix and to connect "
                                + (homeless.size() == 1 ? "it." : "them."),
                        List.of(new Value("without a place", homeless.size(), null, "")),
                        List.of(Fix.of("Say under at: where it stands, hangs or is racked."))));
    }
}
