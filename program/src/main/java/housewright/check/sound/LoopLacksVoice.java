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
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.signal.Cause;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.PairProof;
import housewright.sound.Patched;
import housewright.sound.Sound;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Of microphones that the project itself names together, some are in the hearing loop and others are not: whoever needs
 * the loop misses a voice. Which single microphones are for speech nobody can read from a drawing.
 */
final class LoopLacksVoice implements Rule {
    private static final Card CARD = new Card(
            "loop-lacks-voice",
            "Do those who need the hearing loop hear all voices of a feed, where they hear some?",
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
        if (evidence.project().equipment().keySet().stream().noneMatch(id -> sound.isKind(id, Kind.HEARING_LOOP))) {
            return Stream.empty();
        }
        Map<Address, Boolean> inLoop = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (FeedProof proof : evidence.signals().proofs()) {
            if (!proof.feed().never()) {
                check(evidence, proof, inLoop, findings);
            }
        }
        return findings.stream();
    }

    private static void check(
            Evidence evidence, FeedProof proof, Map<Address, Boolean> inLoop, List<Finding> findings) {
        Map<Address, PairProof> voices = new LinkedHashMap<>();
        for (PairProof pair : proof.pairs()) {
            if (pair.from().spot().name().startsWith("pickup")
                    && evidence.sound().isKind(pair.from().thing(), Kind.MICROPHONE, Kind.RADIO_TRANSMITTER)
                    && evidence.sound().isKind(pair.to().thing(), Kind.LOUDSPEAKER)
                    && isTaken(evidence, pair)) {
                voices.putIfAbsent(pair.from(), pair);
            }
        }
        if (voices.size() < 2) {
            return;
        }
        List<Address> missing = new ArrayList<>();
        Address there = null;
        for (Address voice : voices.keySet()) {
            if (inLoop.computeIfAbsent(voice, each -> isInLoop(evidence, each))) {
                there = voice;
            } else {
                missing.add(voice);
            }
        }
        if (there == null) {
            return;
        }
        for (Address voice : missing) {
            findings.add(CARD.finding(
                    Severity.FIX,
                    List.of(
                            Subject.equipment(voice.thing()),
                            Subject.feed(proof.feed().id())),
                    Words.said(voice.thing()) + " of " + proof.feed().id() + " is missing from the hearing loop, where "
                            + Words.said(there.thing()) + " is heard.",
                    List.of(),
                    List.of(fix(evidence, voices.get(voice), voices.get(there)))));
        }
    }

    /** It arrives, or gets to a channel of a desk at least; else the feed itself is all that is wrong with it. */
    private static boolean isTaken(Evidence evidence, PairProof pair) {
        return !pair.hops().isEmpty() || channel(evidence, pair) != null;
    }

    private static boolean isInLoop(Evidence evidence, Address from) {
        return evidence.signals()
                .reaches(
                        from,
                        at -> at.spot().name().equals("field")
                                && evidence.sound().isKind(at.thing(), Kind.HEARING_LOOP));
    }

    /** Patches its channel as that of the other is patched, where that leads to the loop. */
    private static Fix fix(Evidence evidence, @Nullable PairProof missing, @Nullable PairProof there) {
        Cause.ByPatch own = channel(evidence, missing);
        Cause.ByPatch other = channel(evidence, there);
        if (own != null && other != null && own.equipment().equals(other.equipment())) {
            Set<Spot> has = new HashSet<>();
            List<Patched> sends = new ArrayList<>();
            for (Patched each : evidence.sound().patched()) {
                if (each.device().equals(own.equipment())) {
                    if (each.from().equals(own.from())) {
                        has.add(each.to());
                    } else if (each.from().equals(other.from())) {
                        sends.add(each);
                    }
                }
            }
            for (Patched send : sends) {
                if (!has.contains(send.to()) && isInLoop(evidence, new Address(send.device(), send.to()))) {
                    PatchEntry e = send.entry();
                    PatchEntry entry = new PatchEntry(
                            new LocalRef(own.from().toString()),
                            List.of(new LocalRef(send.to().toString())),
                            e.tap(),
                            e.gain(),
                            e.delay(),
                            e.life(),
                            null);
                    return new Fix(
                            "Send " + own.from() + " to " + send.to() + " of " + Words.said(own.equipment()) + ", as "
                                    + other.from() + " is.",
                            List.of(new Change.Patch(own.equipment(), entry)));
                }
            }
        }
        return Fix.of("Add it to the mix that the loop has.");
    }

    /** Where its channel of the desk goes on. */
    private static Cause.@Nullable ByPatch channel(Evidence evidence, @Nullable PairProof pair) {
        if (pair != null) {
            for (Hop hop : evidence.signals().way(pair)) {
                if (hop.cause() instanceof Cause.ByPatch patch
                        && patch.from().name().startsWith("ch-")
                        && evidence.sound().isKind(patch.equipment(), Kind.MIXER)) {
                    return patch;
                }
            }
        }
        return null;
    }
}
