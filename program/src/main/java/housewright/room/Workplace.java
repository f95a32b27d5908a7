package housewright.room;

import housewright.model.Operator;
import housewright.model.Place;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where somebody works during a service.
 *
 * @param place where
 * @param operated the desks there, in the order of the file
 * @param operator what the project says of whoever works there; null where it says nothing
 * @param floor height of the floor they stand on, in m above the building's zero
 * @param low the lowest eye to reckon with, in m above the building's zero
 * @param high the highest; the same as the lowest where the project says how they sit or stand
 * @param views what must be seen from there: what is in the same room, on the other side of the seats
 * @param onDesk screens that stand on the same place, nobody says where on it
 * @param elsewhere another room, where the sources of the desk are; null where some are in this one
 */
public record Workplace(
        Place place,
        List<String> operated,
        @Nullable Operator operator,
        double floor,
        double low,
        double high,
        List<View> views,
        List<Obstacle> onDesk,
        @Nullable String elsewhere) {
    public Workplace {
        operated = List.copyOf(operated);
        views = List.copyOf(views);
        onDesk = List.copyOf(onDesk);
    }
}
