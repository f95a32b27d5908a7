package housewright.signal;

import housewright.model.Ref.Address;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One source and one destination of a feed: the path, or where it stops.
 *
 * @param proven what the feed asks for holds for this pair; for a never-feed that nothing arrives
 * @param state which of the feed's states this pair is in
 * @param delayNanos along the path, in nanoseconds; 0 where there is none
 * @param gainDb along the path, in dB
 * @param hops the path of least delay; empty where there is none
 * @param others other ways by which the same source arrives
 * @param stop where it stops; null where it arrives
 * @param assumed what the proof takes for granted beyond what holds for all: faders open, switches as set
 * @param lacking figures the proof would have needed
 */
public record PairProof(
        Address from,
        Address to,
        boolean proven,
        FeedState state,
        long delayNanos,
        double gainDb,
        List<Hop> hops,
        List<OtherPath> others,
        @Nullable Stop stop,
        List<String> assumed,
        List<String> lacking) {
    public PairProof {
        hops = List.copyOf(hops);
        others = List.copyOf(others);
        assumed = List.copyOf(assumed);
        lacking = List.copyOf(lacking);
    }
}
