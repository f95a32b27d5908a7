package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.sound.Patched;
import housewright.sound.Sound;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One side of a stereo pair in use and the other not: a pair that the project names, or the left and right inputs of
 * one device. Outputs are left alone, for many instruments give mono on the left one.
 */
final class StereoOneSide implements Rule {
    private static final Card CARD = new Card(
            "stereo-one-side",
            "Are both sides of every stereo pair in use?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        pairs(evidence, findings);
        inputs(evidence, findings);
        return findings.stream();
    }

    private static void pairs(Evidence evidence, List<Finding> findings) {
        Sound sound = evidence.sound();
        if (evidence.project().pairs().isEmpty()) {
            return;
        }
        Set<Address> fed = new HashSet<>();
        Set<Address> used = new HashSet<>();
        for (Patched each : sound.patched()) {
            fed.add(new Address(each.device(), each.to()));
            used.add(new Address(each.device(), each.from()));
        }
        evidence.project().pairs().forEach((name, refs) -> {
            List<Address> sides =
                    refs.stream().map(Ref::addresses).flatMap(List::stream).toList();
            if (sides.size() == 2 && sound.findThing(sides.getFirst().thing()).isPresent()) {
                if (!pair(name, sides, fed, "nothing is patched to ", findings)) {
                    pair(name, sides, used, "nothing takes ", findings);
                }
            }
        });
    }

    private static boolean pair(
            String name, List<Address> sides, Set<Address> inUse, String what, List<Finding> findings) {
        boolean left = inUse.contains(sides.getFirst());
        boolean right = inUse.contains(sides.getLast());
        if (left == right) {
            return false;
        }
        Address lone = left ? sides.getLast() : sides.getFirst();
        findings.add(CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(lone.thing()), Subject.at("patch." + lone.thing())),
                "The pair " + Words.said(name) + " has one side only: " + what + lone.said() + ".",
                List.of(),
                List.of(Fix.of("Patch the " + (left ? "right" : "left") + " side as the other is, or take the pair"
                        + " away where mono is meant."))));
        return true;
    }

    private static void inputs(Evidence evidence, List<Finding> findings) {
        Sound sound = evidence.sound();
        IdentityHashMap<Model, List<NamePattern>> known = new IdentityHashMap<>();
        for (String id : evidence.project().equipment().keySet()) {
            Model model = sound.findShape(id).map(Shape::model).orElse(null);
            if (model == null) {
                continue;
            }
            for (NamePattern sides : known.computeIfAbsent(model, StereoOneSide::stereoInputs)) {
                String left = sides.names().getFirst();
                String right = sides.names().getLast();
                boolean hasLeft = !evidence.cabling().in(id + "." + left).isEmpty();
                boolean hasRight = !evidence.cabling().in(id + "." + right).isEmpty();
                if (hasLeft != hasRight) {
                    findings.add(input(id, hasLeft ? left : right, hasLeft ? right : left));
                }
            }
        }
    }

    private static List<NamePattern> stereoInputs(Model model) {
        return model.ports().entrySet().stream()
                .filter(port -> port.getValue().in() == Signal.ANALOG_AUDIO
                        && port.getKey().text().endsWith("{L,R}"))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static Finding input(String id, String plugged, String lone) {
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(id)),
                Words.said(id) + " has a cable in " + Words.said(plugged) + " and none in " + Words.said(lone)
                        + ", so one side stays silent.",
                List.of(),
                List.of(Fix.of("Plug in the other side, or feed both from the one where mono is meant.")));
    }
}
