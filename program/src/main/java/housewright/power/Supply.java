package housewright.power;

import housewright.cable.Line;
import housewright.model.Ref.Address;
import housewright.signal.Present;
import org.jspecify.annotations.Nullable;

/**
 * How a thing has its mains.
 *
 * @param own what it takes itself in W, with the cards in it and what it gives away over the network; 0 where its type
 *     gives no figure
 * @param known its type gives a figure, or it takes nothing itself
 * @param outlet the one that feeds it; null where it is on a circuit directly, or on nothing
 * @param lead the mains lead plugged into it; null where none is drawn
 * @param circuit the one at the top of it; null where there is none
 */
public record Supply(
        Present thing,
        double own,
        boolean known,
        @Nullable Address outlet,
        @Nullable Line lead,
        @Nullable String circuit) {
    public String id() {
        return thing.id();
    }
}
