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
import housewright.model.Stage;
import housewright.model.Words;
import housewright.operation.Touch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a volunteer touches to start and to stop a service, counted, with what would make it fewer. */
public final class ManyThingsToStart implements Rule {
    static final Limit THINGS = Limit.most("things to touch to start a service", 12, "");
    static final Limit PLACES = Limit.most("places to go to", 6, "");

    private static final Card CARD = new Card(
            "many-things-to-start",
            "Does a volunteer start a service with few things to touch, in few places?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(THINGS, PLACES));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Touch> start = evidence.operation().start();
        Map<String, List<Touch>> places = by(start, Touch::place);
        double most = evidence.limit(CARD, THINGS);
        if (start.size() <= most && places.size() <= PLACES.value()) {
            return Stream.empty();
        }
        Map<String, List<Touch>> rooms = by(start, Touch::room);
        Map<Touch.How, Integer> how = new EnumMap<>(Touch.How.class);
        start.forEach(touch -> how.merge(touch.how(), 1, Integer::sum));
        List<String> counts = new ArrayList<>();
        how.forEach((each, count) -> counts.add(each.counted(count)));
        int stop = evidence.operation().stop().size();
        int desks = evidence.operation().desks().size();
        int buttons = evidence.operation().buttons().size();
        return Stream.of(CARD.finding(
                Severity.NOTE,
                start.stream()
                        .map(touch -> Subject.equipment(touch.thing()))
                        .distinct()
                        .toList(),
                "To start a service a volunteer touches " + Wording.counted(start.size(), "thing", "things") + " in "
                        + Wording.counted(places.size(), "place", "places") + " of "
                        + Wording.counted(rooms.size(), "room", "rooms") + ", " + Wording.some(counts, 4)
                        + "; to stop it "
                        + stop + "; while it runs "
                        + Wording.counted(desks, "desk wants", "desks want") + " hands"
                        + (buttons == 0
                                ? ""
                                : " and " + Wording.counted(buttons, "button is", "buttons are") + " there")
                        + ".",
                List.of(
                        new Value("things to start", start.size(), most, ""),
                        new Value("places", places.size(), PLACES.value(), "")),
                fixes(evidence, start)));
    }

    private static Map<String, List<Touch>> by(List<Touch> touches, Function<Touch, @Nullable String> key) {
        Map<String, List<Touch>> by = new LinkedHashMap<>();
        for (Touch each : touches) {
            by.computeIfAbsent(String.valueOf(key.apply(each)), name -> new ArrayList<>())
                    .add(each);
        }
        return by;
    }

    /** The strip behind which most of them are, so that one switch would do for all. */
    private static List<Fix> fixes(Evidence evidence, List<Touch> start) {
        List<Fix> fixes = new ArrayList<>();
        Set<String> hard = new HashSet<>(evidence.operation().shutDownFirst());
        List<Touch> plain = start.stream()
                .filter(touch ->
                        touch.how() == Touch.How.SWITCH && touch.from() != null && !hard.contains(touch.thing()))
                .toList();
        Map.Entry<String, List<Touch>> most = by(plain, Touch::from).entrySet().stream()
                .filter(each -> each.getValue().size() > 1)
                .max(Comparator.comparingInt(each -> each.getValue().size()))
                .orElse(null);
        if (most != null) {
            int fewer = most.getValue().size() - 1;
            fixes.add(Fix.of("One switched distributor or sequencer behind " + Words.said(most.getKey()) + " makes it "
                    + fewer + " fewer: "
                    + Wording.things(most.getValue().stream().map(Touch::thing).toList(), 4) + " come on together."));
        }
        long switches =
                start.stream().filter(touch -> touch.how() == Touch.How.SWITCH).count();
        fixes.add(Fix.of(
                "Let the network or a control cable switch screens and projectors, and say on the card which of the "
                        + switches + " switches stay on all week."));
        return fixes;
    }
}
