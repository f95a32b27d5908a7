package housewright.plan;

import java.util.Set;

/**
 * That an event finds a capability it needs whole: either nothing that takes the old way apart begins before the event is
 * over, or the new way is proven before it begins.
 *
 * @param event id
 * @param capability what is needed, as a person reads it, such as a feed
 * @param worksToday whether there is an old way at all
 * @param takenApartBy tasks that take the old way apart
 * @param provenBy tasks that prove the new way
 */
public record Promise(
        String event, String capability, boolean worksToday, Set<String> takenApartBy, Set<String> provenBy) {
    public Promise {
        takenApartBy = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(takenApartBy));
        provenBy = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(provenBy));
    }
}
