package housewright.signal;

import housewright.model.Carries;
import housewright.model.Kind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where sound and picture of one happening arrive at one piece of equipment. They belong together when both begin in
 * the same device, or the sound at a microphone and the picture at a camera: what a player shows and what a person
 * says have no common moment.
 */
final class LipSync {
    private LipSync() {}

    static List<SoundToPicture> find(SignalGraph graph, List<FeedProof> proofs) {
        Map<String, BitSet> soundsAt = soundsAt(proofs);
        List<SoundToPicture> meetings = new ArrayList<>();
        for (FeedProof picture : proofs) {
            if (picture.feed().never() || picture.feed().carries() != Carries.PICTURE) {
                continue;
            }
            BitSet sounds = new BitSet();
            for (PairProof seen : picture.pairs()) {
                BitSet here = soundsAt.get(seen.to().thing());
                if (here != null) {
                    sounds.or(here);
                }
            }
            for (int i = sounds.nextSetBit(0); i >= 0; i = sounds.nextSetBit(i + 1)) {
                SoundToPicture meeting = meet(graph, proofs.get(i), picture);
                if (meeting != null) {
                    meetings.add(meeting);
                }
            }
        }
        return meetings;
    }

    /** By equipment, the places of the feeds of sound that should arrive at it. */
    private static Map<String, BitSet> soundsAt(List<FeedProof> proofs) {
        Map<String, BitSet> soundsAt = new HashMap<>();
        for (int i = 0; i < proofs.size(); i++) {
            FeedProof sound = proofs.get(i);
            if (!sound.feed().never() && sound.feed().carries() == Carries.AUDIO) {
                for (PairProof heard : sound.pairs()) {
                    soundsAt.computeIfAbsent(heard.to().thing(), key -> new BitSet())
                            .set(i);
                }
            }
        }
        return soundsAt;
    }

    private static @Nullable SoundToPicture meet(SignalGraph graph, FeedProof sound, FeedProof picture) {
        for (PairProof seen : picture.pairs()) {
            for (PairProof heard : sound.pairs()) {
                boolean both = !seen.hops().isEmpty() && !heard.hops().isEmpty();
                if (both && seen.to().thing().equals(heard.to().thing()) && belong(graph, heard, seen)) {
                    return new SoundToPicture(
                            seen.to().thing(),
                            sound.feed().id(),
                            picture.feed().id(),
                            heard.delayNanos(),
                            seen.delayNanos());
                }
            }
        }
        return null;
    }

    private static boolean belong(SignalGraph graph, PairProof heard, PairProof seen) {
        if (heard.from().thing().equals(seen.from().thing())) {
            return true;
        }
        Kind ear = kind(graph, heard.from().thing());
        return kind(graph, seen.from().thing()) == Kind.CAMERA
                && (ear == Kind.MICROPHONE || ear == Kind.RADIO_TRANSMITTER);
    }

    private static @Nullable Kind kind(SignalGraph graph, String thing) {
        Integer index = graph.pieceIndex.get(thing);
        Layout layout = index == null ? null : graph.pieces.get(index).layout();
        return layout == null ? null : layout.model.kind();
    }
}
