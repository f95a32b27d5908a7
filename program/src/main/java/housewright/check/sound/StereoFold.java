package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.LocalRef;
import housewright.model.PatchEntry;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.sound.Patched;
import housewright.unit.Gain;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Left and right summed at full level: what stands in the middle, speech above all, comes out 6 dB louder. */
final class StereoFold implements Rule {
    static final Limit GAIN = Limit.most("gain of each side of a mono sum", -3, "dB");

    private static final Card CARD = new Card(
            "stereo-fold",
            "Are left and right turned down by 3 dB where they are summed to mono?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(GAIN));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        if (evidence.project().pairs().isEmpty()) {
            return Stream.empty();
        }
        double most = evidence.limit(CARD, GAIN);
        Map<Address, List<Patched>> from = new HashMap<>();
        for (Patched each : evidence.sound().patched()) {
            from.computeIfAbsent(new Address(each.device(), each.from()), key -> new ArrayList<>(2))
                    .add(each);
        }
        List<Finding> findings = new ArrayList<>();
        Set<Address> told = new HashSet<>();
        for (Map.Entry<String, List<Ref>> pair : evidence.project().pairs().entrySet()) {
            List<Address> sides = pair.getValue().stream()
                    .map(Ref::addresses)
                    .flatMap(List::stream)
                    .toList();
            if (sides.size() != 2) {
                continue;
            }
            for (Patched left : from.getOrDefault(sides.getFirst(), List.of())) {
                for (Patched right : from.getOrDefault(sides.getLast(), List.of())) {
                    if (left.to().equals(right.to())
                            && Math.max(gain(left), gain(right)) > most
                            && told.add(new Address(left.device(), left.to()))) {
                        findings.add(finding(pair.getKey(), left, right, most));
                    }
                }
            }
        }
        return findings.stream();
    }

    private static double gain(Patched patched) {
        Gain gain = patched.entry().gain();
        return gain == null ? 0 : gain.decibels();
    }

    private static Finding finding(String pair, Patched left, Patched right, double most) {
        Address to = new Address(left.device(), left.to());
        List<Change> changes = new ArrayList<>();
        for (Patched side : List.of(left, right)) {
            PatchEntry old = side.entry();
            changes.add(new Change.Unpatch(side.device(), side.from(), side.to()));
            changes.add(new Change.Patch(
                    side.device(),
                    new PatchEntry(
                            new LocalRef(side.from().toString()),
                            List.of(new LocalRef(side.to().toString())),
                            old.tap(),
                            Gain.ofDecibels(Math.min(gain(side), most)),
                            old.delay(),
                            old.life(),
                            old.note())));
        }
        return CARD.finding(
                Severity.NOTE,
                List.of(Subject.at("patch." + left.device()), Subject.equipment(left.device())),
                "Both sides of " + Words.said(pair) + " are summed at " + to.said() + " at "
                        + GainEdit.said(Math.max(gain(left), gain(right)))
                        + ": what is in the middle comes out 6 dB louder than what is at one side.",
                List.of(new Value("gain of each side", Math.max(gain(left), gain(right)), most, "dB")),
                List.of(new Fix("Send each side there at " + GainEdit.said(most) + ".", changes)));
    }
}
