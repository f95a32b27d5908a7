package housewright.plan;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where a task is done and what it is to the place.
 *
 * @param place id, or null where it does not matter
 * @param spot where within the place a hire is taken to, such as a bar; empty when there is none
 * @param remote whether it may as well be done from afar, in a person's remote times; then it needs nothing of the place
 * @param needs what the place must be meanwhile
 * @param spoils what the place cannot be meanwhile; {@link Condition#EMPTY} need not be said
 */
public record Site(@Nullable String place, String spot, boolean remote, Set<Condition> needs, Set<Condition> spoils) {
    /** Anywhere, by people who are there. */
    public static final Site ANYWHERE = new Site(null, "", false, Set.of(), Set.of());

    public Site {
        needs = Set.copyOf(needs);
        spoils = Set.copyOf(spoils);
        if (place == null && !needs.isEmpty()) {
            throw new IllegalArgumentException("What needs a place to be " + needs + " must name the place");
        }
    }
}
