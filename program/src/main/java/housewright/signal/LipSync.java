package housewright.signal;

import housewright.model.Carries;
import housewright.model.Kind;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where sound and picture of one happening arrive at one piece of equipment. They belong together when both begin in
 * the same device, or the sound at a microphone and the picture at a camera: what a player shows and what a person
 * says have no common moment.
 */
final class LipSync {
    private LipSync() {}

    static List<SoundToPicture> find(SignalGraph graph, List<FeedProof> proofs) {
        List<SoundToPicture> meetings = new ArrayList<>();
        for (FeedProof picture : proofs) {
            if (picture.feed().never() || picture.feed().carries() != Carries.PICTURE) {
                continue;
            }
            for (FeedProof sound : proofs) {
                if (sound.feed().never() || sound.feed().carries() != Carries.AUDIO) {
                    continue;
                }
                SoundToPicture meeting = meet(graph, sound, picture);
                if (meeting != null) {
                    meetings.add(meeting);
                }
            }
        }
        return meetings;
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
