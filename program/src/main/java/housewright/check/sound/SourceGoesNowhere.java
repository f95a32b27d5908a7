package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Kind;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.sound.Patched;
import housewright.sound.Sound;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A microphone that is plugged in and that no channel takes. One that is not plugged in may lie there on purpose. */
final class SourceGoesNowhere implements Rule {
    private static final Card CARD = new Card(
            "source-goes-nowhere",
            "Does a channel take every microphone that is plugged in?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.INSTALL);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Sound sound = evidence.sound();
        List<Finding> findings = new ArrayList<>();
        for (String id : evidence.project().equipment().keySet()) {
            if (sound.isKind(id, Kind.MICROPHONE, Kind.RADIO_TRANSMITTER)) {
                for (String point : sound.findShape(id).orElseThrow().points()) {
                    if (point.startsWith("pickup")) {
                        check(evidence, new Address(id, new Spot(point, null)), findings);
                    }
                }
            }
        }
        return findings.stream();
    }

    private static void check(Evidence evidence, Address source, List<Finding> findings) {
        Sound sound = evidence.sound();
        Address[] furthest = new Address[1];
        boolean heard = evidence.signals().reaches(source, at -> {
            if (at.thing().equals(source.thing())) {
                return false;
            }
            furthest[0] = at;
            Shape shape = sound.findShape(at.thing()).orElse(null);
            return shape == null
                    || !shape.model().portsKnown()
                    || shape.points().contains(at.spot().name()); // it is heard there, or nobody knows
        });
        Address last = heard ? null : furthest[0];
        if (last != null && isPatched(sound, last.thing())) {
            findings.add(CARD.finding(
                    Severity.FIX,
                    List.of(Subject.equipment(source.thing()), Subject.equipment(last.thing())),
                    Words.said(source.thing()) + " is plugged in and gets as far as " + last.said()
                            + ", where no channel takes it.",
                    List.of(),
                    List.of(fix(sound, last))));
        }
    }

    private static boolean isPatched(Sound sound, String thing) {
        return sound.findShape(thing)
                .filter(shape ->
                        shape.model().patch() != null && !shape.points().isEmpty())
                .isPresent();
    }

    private static Fix fix(Sound sound, Address last) {
        Shape shape = sound.findShape(last.thing()).orElseThrow();
        String channel = sound.isKind(last.thing(), Kind.MIXER) ? free(sound, last.thing(), shape) : null;
        if (channel == null
                || shape.model().patch() == null
                || !shape.model().patch().free()) {
            return Fix.of("Patch it to a channel, or unplug it.");
        }
        PatchEntry entry = new PatchEntry(
                new LocalRef(last.spot().toString()), List.of(new LocalRef(channel)), null, null, null, null, null);
        return new Fix(
                "Patch " + last.spot() + " to " + channel + " of " + Words.said(last.thing()) + ", and send that where"
                        + " it is wanted.",
                List.of(new Change.Patch(last.thing(), entry)));
    }

    private static @Nullable String free(Sound sound, String mixer, Shape shape) {
        Set<String> taken = new HashSet<>();
        for (Patched each : sound.patched()) {
            if (each.device().equals(mixer)) {
                taken.add(each.to().name());
                taken.add(each.from().name());
            }
        }
        return shape.points().stream()
                .filter(point -> point.startsWith("ch-") && !taken.contains(point))
                .findFirst()
                .orElse(null);
    }
}
