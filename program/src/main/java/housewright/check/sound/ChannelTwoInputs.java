package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Kind;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Stage;
import housewright.model.change.Change;
import housewright.sound.Patched;
import housewright.sound.Sound;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A desk's channel takes one input; of two that are patched to it one is lost, and nobody knows which. */
final class ChannelTwoInputs implements Rule {
    private static final Card CARD = new Card(
            "channel-two-inputs",
            "Is every channel of a desk fed from one input only?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Sound sound = evidence.sound();
        Map<Address, List<Patched>> into = new LinkedHashMap<>();
        for (Patched each : sound.patched()) {
            if (each.to().name().startsWith("ch-") && sound.isKind(each.device(), Kind.MIXER)) {
                Shape shape = sound.findShape(each.device()).orElseThrow();
                if (shape.findSocket(each.from().name()).isPresent()
                        && shape.points().contains(each.to().name())) {
                    into.computeIfAbsent(new Address(each.device(), each.to()), key -> new ArrayList<>(1))
                            .add(each);
                }
            }
        }
        return into.entrySet().stream()
                .filter(each ->
                        each.getValue().stream().map(Patched::from).distinct().count() > 1)
                .map(each -> finding(each.getKey(), each.getValue()));
    }

    private static Finding finding(Address channel, List<Patched> all) {
        List<Change> changes = new ArrayList<>();
        Patched first = all.getFirst();
        all.stream()
                .filter(each -> !each.from().equals(first.from()))
                .forEach(each -> changes.add(new Change.Unpatch(each.device(), each.from(), each.to())));
        String inputs =
                all.stream().map(each -> each.from().toString()).distinct().collect(Collectors.joining(" and "));
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.at("patch." + channel.thing()), Subject.equipment(channel.thing())),
                channel.said() + " is patched from " + inputs + "; a channel takes one input.",
                List.of(),
                List.of(new Fix(
                        "Keep " + first.from() + ", and give the other a channel of its own where it is wanted.",
                        changes)));
    }
}
