package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Equipment;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Setting;
import housewright.model.Shape.Socket;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.sound.Sound;
import housewright.sound.Voice;
import housewright.sound.Voice.Preamp;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * More gain asked of a preamplifier than it has: set so by the project, or needed to bring a microphone to 0 dBu where
 * the project says how loud it is there. A microphone of -54.5 dBV/Pa with 72 dB SPL at it needs 74.3 dB; a preamplifier
 * of 60 dB does not have that.
 */
final class PreampGainShort implements Rule {
    private static final Card CARD = new Card(
            "preamp-gain-short",
            "Has every microphone preamplifier the gain that is asked of it?",
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
        List<Finding> findings = new ArrayList<>();
        for (String id : evidence.project().equipment().keySet()) {
            Equipment thing = sound.findThing(id).orElse(null);
            if (thing != null) {
                for (Map.Entry<LocalRef, Setting> each : thing.set().entrySet()) {
                    if (each.getValue().gain() != null) {
                        each.getKey().spots().forEach(spot -> set(evidence, thing, spot, findings));
                    }
                }
            }
        }
        for (Voice voice : sound.voices()) {
            needed(voice, findings);
        }
        return findings.stream();
    }

    private static void set(Evidence evidence, Equipment thing, Spot spot, List<Finding> findings) {
        Double most = most(evidence.sound(), thing.id(), spot);
        Address at = new Address(thing.id(), spot);
        double set = evidence.sound().gain(at);
        if (most == null || set <= most) {
            return;
        }
        Map<Address, @Nullable Double> gains = new LinkedHashMap<>();
        gains.put(at, most);
        findings.add(CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(thing.id())),
                at.said() + " is set to a gain of " + GainEdit.said(set) + "; it has " + GainEdit.said(most)
                        + " at most.",
                List.of(new Value("gain set", set, most, "dB")),
                List.of(new Fix(
                        "Set it to " + GainEdit.said(most) + ", and bring the microphone nearer or take one that gives"
                                + " more.",
                        GainEdit.set(evidence.project(), gains)))));
    }

    private static @Nullable Double most(Sound sound, String thing, Spot spot) {
        Port port = sound.findShape(thing)
                .flatMap(shape -> shape.findSocket(spot.name()))
                .map(Socket::port)
                .orElse(null);
        return port == null || port.maxGain() == null ? null : port.maxGain().decibels();
    }

    private static void needed(Voice voice, List<Finding> findings) {
        Preamp preamp = voice.preamp();
        if (!voice.stated() || preamp == null || preamp.maxDb() == null) {
            return;
        }
        double needs = -preamp.arrives().value();
        if (needs > preamp.maxDb()) {
            findings.add(CARD.finding(
                    Severity.FIX,
                    List.of(
                            Subject.equipment(voice.source().thing()),
                            Subject.equipment(preamp.at().thing())),
                    Words.said(voice.source().thing()) + " needs a gain of " + GainEdit.said(needs)
                            + " at " + preamp.at().said() + " to reach 0 dBu with "
                            + voice.pressure().text() + " at it; there is " + GainEdit.said(preamp.maxDb()) + ".",
                    List.of(new Value("gain needed", needs, preamp.maxDb(), "dB")),
                    List.of(Fix.of(
                            "Bring it nearer, take a microphone that gives more, or put a preamplifier before it."))));
        }
    }
}
