package housewright.signal;

import housewright.model.Ref.Address;
import java.util.List;

/**
 * Another way by which the same source arrives, and where it meets the first.
 *
 * @param laterNanos how much later it arrives there, in nanoseconds; less than 0 where a feed through a certain place comes by
 *     the slower way
 * @param louderDb its gain less that of the first, at the place where they meet
 * @param hops from the source to where they meet
 */
public record OtherPath(Address meetsAt, long laterNanos, double louderDb, List<Hop> hops) {
    public OtherPath {
        hops = List.copyOf(hops);
    }
}
